// The command line as a function: arguments and a shell in, an exit code out. Everything a user can do wrong
// ends in a sentence; what remains is a bug, and says so.

import { nearestNames } from "../diagnostics/nearest.ts";
import { type Command, type CommandEntry, isWrongUse } from "./command.ts";
import { COMMANDS } from "./command-list.ts";
import { commandHelp, programHelp } from "./help.ts";
import { type OptionRule, readArguments } from "./read-arguments.ts";
import { EXIT, type ExitCode, type Shell } from "./shell.ts";

export const run = async (
  args: readonly string[],
  shell: Shell,
  trace = false,
): Promise<ExitCode> => {
  try {
    return await dispatch(args, shell);
  } catch (error) {
    shell.stderr(bugReport(error, trace));
    return EXIT.bug;
  }
};

const COMMON_OPTIONS: readonly OptionRule[] = [
  { name: "json", value: null, help: "print for programs to read" },
  { name: "help", value: null, help: "say how the command is used" },
];

const dispatch = async (args: readonly string[], shell: Shell): Promise<ExitCode> => {
  const [name = "--help", ...rest] = args;
  if (["--help", "-h", "help"].includes(name)) return help(rest[0], shell);
  if (name === "--version") return print(`${shell.version()}\n`, shell);
  const entry = COMMANDS.find((command) => command.name === name);
  return entry === undefined
    ? complain(unknownCommand(name), shell)
    : runCommand(entry, rest, shell);
};

const runCommand = async (
  entry: CommandEntry,
  args: readonly string[],
  shell: Shell,
): Promise<ExitCode> => {
  const command = withCommonOptions(await entry.load());
  const read = readArguments(args, command.options);
  if (read.kind === "wrong") return complain(`${read.why}\n${usageLine(command)}`, shell);
  const { words, switches } = read.input;
  if (switches.has("help")) return print(commandHelp(entry, command), shell);
  const { least, most } = command.words;
  if (words.length < least || words.length > most) {
    const why =
      words.length < least ? "Something is missing." : `"${words[most]}" is one too many.`;
    return complain(`${why}\n${usageLine(command)}`, shell);
  }
  const outcome = await command.run(read.input, shell);
  return isWrongUse(outcome) ? complain(outcome.why, shell) : outcome;
};

const withCommonOptions = (command: Command): Command => ({
  ...command,
  options: [...command.options, ...COMMON_OPTIONS],
});

const usageLine = ({ usage }: Command): string => `Use: consolewright ${usage}`;

const help = async (name: string | undefined, shell: Shell): Promise<ExitCode> => {
  if (name === undefined || name === "--json") return print(programHelp(COMMANDS), shell);
  const entry = COMMANDS.find((command) => command.name === name);
  if (entry === undefined) return complain(unknownCommand(name), shell);
  return print(commandHelp(entry, withCommonOptions(await entry.load())), shell);
};

const print = (text: string, shell: Shell): ExitCode => {
  shell.stdout(text);
  return EXIT.fine;
};

const complain = (why: string, shell: Shell): ExitCode => {
  shell.stderr(`${why}\n`);
  return EXIT.wrongUse;
};

const unknownCommand = (name: string): string => {
  const near = nearestNames(
    name,
    COMMANDS.map((command) => command.name),
  );
  return `There is no command "${name}". Nearest: ${near.join(", ")}.`;
};

const bugReport = (error: unknown, trace: boolean): string => {
  const known = error instanceof Error ? error : new Error(String(error));
  const detail = trace ? `\n${known.stack ?? ""}` : "";
  return `This is a bug in the program, not in your design: ${known.message}${detail}\nSet CONSOLEWRIGHT_TRACE=1 to see where.\n`;
};

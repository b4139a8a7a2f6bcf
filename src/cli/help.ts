// What `--help` prints: the commands, or one command's use and options, in columns.

import type { Command, CommandEntry } from "./command.ts";

export const programHelp = (commands: readonly CommandEntry[]): string =>
  [
    "consolewright: from a list of switches, knobs and displays to panels that can be cut.",
    "",
    "Use: consolewright COMMAND ...",
    "",
    ...columns(commands.map(({ name, summary }) => [name, summary])),
    "",
    "`consolewright COMMAND --help` says more. Every command takes --json.",
    "",
  ].join("\n");

export const commandHelp = (entry: CommandEntry, command: Command): string =>
  [
    `${entry.name}: ${entry.summary}`,
    "",
    `Use: consolewright ${command.usage}`,
    "",
    command.details,
    "",
    ...columns(
      command.options.map(({ name, value, help }) => [
        `--${name}${value === null ? "" : ` ${value}`}`,
        help,
      ]),
    ),
    "",
  ].join("\n");

const columns = (rows: readonly (readonly [string, string])[]): readonly string[] => {
  const widest = Math.max(...rows.map(([left]) => left.length));
  return rows.map(([left, right]) => `  ${left.padEnd(widest)}  ${right}`);
};

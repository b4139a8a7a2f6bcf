// Reads a command's arguments against its list of options: `--out DIR`, `--out=DIR`, `--json`, words, and `--`
// before words that begin with a hyphen. What it can't take, it says in the user's words.

import { nearestNames } from "../diagnostics/nearest.ts";

export interface OptionRule {
  /** Without the hyphens. */
  readonly name: string;
  /** What stands for its value in the help; null for a switch. */
  readonly value: string | null;
  readonly help: string;
}

export interface Arguments {
  readonly words: readonly string[];
  readonly switches: ReadonlySet<string>;
  readonly values: ReadonlyMap<string, string>;
}

export type ReadArguments =
  | { readonly kind: "read"; readonly input: Arguments }
  | { readonly kind: "wrong"; readonly why: string };

interface Reading {
  readonly rules: ReadonlyMap<string, OptionRule>;
  readonly words: string[];
  readonly switches: Set<string>;
  readonly values: Map<string, string>;
}

export const readArguments = (
  args: readonly string[],
  rules: readonly OptionRule[],
): ReadArguments => {
  const reading: Reading = {
    rules: new Map(rules.map((rule) => [rule.name, rule])),
    words: [],
    switches: new Set(),
    values: new Map(),
  };
  for (let index = 0; index < args.length; ) {
    const arg = args[index] ?? "";
    if (arg === "--") {
      reading.words.push(...args.slice(index + 1));
      break;
    }
    const step = readOne(reading, arg, args[index + 1]);
    if (typeof step === "string") return { kind: "wrong", why: step };
    index += step;
  }
  const { words, switches, values } = reading;
  return { kind: "read", input: { words, switches, values } };
};

/** How many arguments were used up, or what is wrong. */
const readOne = (reading: Reading, arg: string, next: string | undefined): number | string => {
  if (!isOption(arg)) {
    reading.words.push(arg);
    return 1;
  }
  const equals = arg.indexOf("=");
  const written = equals < 0 ? arg : arg.slice(0, equals);
  const name = written === "-h" ? "help" : written.replace(/^--/, "");
  const rule = reading.rules.get(name);
  if (rule === undefined || written === `-${name}`) return unknownOption(written, reading);
  const attached = equals < 0 ? undefined : arg.slice(equals + 1);
  return rule.value === null
    ? readSwitch(reading, rule, attached)
    : readValue(reading, rule, { attached, next });
};

// "-" alone and "-3.5" are words.
const isOption = (arg: string): boolean => /^-[^0-9.]/.test(arg);

const readSwitch = (
  reading: Reading,
  rule: OptionRule,
  attached: string | undefined,
): number | string => {
  if (attached !== undefined) return `--${rule.name} takes no value.`;
  reading.switches.add(rule.name);
  return 1;
};

const readValue = (
  reading: Reading,
  rule: OptionRule,
  given: { readonly attached: string | undefined; readonly next: string | undefined },
): number | string => {
  const value = given.attached ?? given.next;
  if (value === undefined || value === "" || (given.attached === undefined && isOption(value)))
    return `--${rule.name} needs a value: --${rule.name} ${rule.value}`;
  if (reading.values.has(rule.name)) return `--${rule.name} is given twice.`;
  reading.values.set(rule.name, value);
  return given.attached === undefined ? 2 : 1;
};

const unknownOption = (written: string, reading: Reading): string => {
  const names = [...reading.rules.keys()];
  const near = nearestNames(written.replace(/^-+/, ""), names).map((name) => `--${name}`);
  const hint = near.length === 0 ? "" : ` Nearest: ${near.join(", ")}.`;
  return `There is no option ${written}.${hint}`;
};

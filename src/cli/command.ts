// What a command is: one file in `commands/`, one line in `command-list.ts`.

import type { Arguments, OptionRule } from "./read-arguments.ts";
import type { ExitCode, Shell } from "./shell.ts";

export interface Command {
  /** How it is called, without the program's name: "make DESIGN [--out DIR]". */
  readonly usage: string;
  /** What `--help` says below the usage. */
  readonly details: string;
  readonly options: readonly OptionRule[];
  /** How many words it takes besides its options. */
  readonly words: { readonly least: number; readonly most: number };
  readonly run: (input: Arguments, shell: Shell) => Promise<ExitCode | WrongUse>;
}

/** A line of the list: enough for `--help` without loading the command. */
export interface CommandEntry {
  readonly name: string;
  readonly summary: string;
  readonly load: () => Promise<Command>;
}

/** The command was called in a way that it can't serve. */
export interface WrongUse {
  readonly kind: "wrong-use";
  readonly why: string;
}

export const wrongUse = (why: string): WrongUse => ({ kind: "wrong-use", why });

export const isWrongUse = (value: object | number): value is WrongUse =>
  typeof value === "object" && "kind" in value && value.kind === "wrong-use";

// What a command gets from the world outside: where it stands, where it writes, its disk and its library.
// Everything that a test wants to replace is in here.

import type { Library } from "../catalogue/library.ts";
import type { Kernel } from "../geometry/solid/kernel.ts";
import type { Disk } from "./disk.ts";

export interface Shell {
  readonly cwd: string;
  readonly disk: Disk;
  /** What was asked for. */
  readonly stdout: (text: string) => void;
  /** Findings and what else a person should know. */
  readonly stderr: (text: string) => void;
  /** Colour on `stderr`. */
  readonly colour: boolean;
  readonly library: () => Promise<Library>;
  /** The solid kernel, opened when print files are made. */
  readonly kernel: () => Promise<Kernel>;
  readonly version: () => string;
  /** Where the built page lies. */
  readonly pageFolder: string;
  /** Comes back when the person asks a command to end that else would run on. */
  readonly untilStopped: () => Promise<void>;
}

export const EXIT = { fine: 0, faults: 1, wrongUse: 2, bug: 70 } as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** Colour for a terminal, unless NO_COLOR is set to anything at all (no-color.org). */
export const wantsColour = (
  stream: { readonly isTTY?: boolean },
  noColour: string | undefined,
): boolean => stream.isTTY === true && (noColour ?? "") === "";

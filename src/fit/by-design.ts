// What touches because it is meant to: a panel lies on its rails.

import type { ConsoleBody } from "./console-body.ts";

/** A sheet or a print, and a rail: no fact, unless the two clash. */
export const isLyingOn = (a: ConsoleBody, b: ConsoleBody): boolean =>
  (a.role === "rail" && LYING.has(b.role)) || (b.role === "rail" && LYING.has(a.role));

const LYING: ReadonlySet<ConsoleBody["role"]> = new Set(["layer", "print"]);

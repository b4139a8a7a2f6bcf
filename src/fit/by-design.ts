// What touches because it is meant to: a panel lies on its rails, and on the tabs of ribs that stand in them.

import type { ConsoleBody } from "./console-body.ts";

/** A sheet or a print, and a rail: no fact, unless the two clash. */
export const isLyingOn = (a: ConsoleBody, b: ConsoleBody): boolean =>
  (a.role === "rail" && LYING.has(b.role)) || (b.role === "rail" && LYING.has(a.role));

/** A sheet, and a rib whose tabs end flush with the rails that the sheet lies on: no fact where they touch. */
export const isBorne = (a: ConsoleBody, b: ConsoleBody): boolean =>
  (a.role === "rib" && b.role === "layer") || (b.role === "rib" && a.role === "layer");

const LYING: ReadonlySet<ConsoleBody["role"]> = new Set(["layer", "print"]);

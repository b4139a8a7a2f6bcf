// What touches because it is meant to: a panel lies on its rails.

import type { ConsoleBody } from "./console-body.ts";
import type { PairRelation } from "./fit-facts.ts";

/** A sheet or a print at, or on, a rail: no fact, unless the two clash. */
export const isByDesign = (
  a: ConsoleBody,
  b: ConsoleBody,
  relation: Pick<PairRelation, "kind">,
): boolean =>
  relation.kind !== "clash" &&
  ((a.role === "rail" && LYING.has(b.role)) || (b.role === "rail" && LYING.has(a.role)));

const LYING: ReadonlySet<ConsoleBody["role"]> = new Set(["layer", "print"]);

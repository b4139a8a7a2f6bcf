// The door of this folder: what the seated operator of a console reaches, reads and has room for. Facts only, and none where
// the design says nothing of an operator.

import type { ConsoleLayout } from "../../layout/console/console-layout.ts";
import type { ConsoleBody } from "../console-body.ts";
import type { FitFacts } from "../fit-facts.ts";
import { frontEdgeFacts } from "./front-edges.ts";
import { kneeFact } from "./knees.ts";
import { reachFacts } from "./reaches.ts";
import { sightFacts } from "./sights.ts";

export type OperatorFacts = Pick<FitFacts, "reaches" | "sights" | "knees" | "frontEdges">;

export const operatorFacts = (
  layout: ConsoleLayout,
  bodies: readonly ConsoleBody[],
): OperatorFacts => {
  const { operator } = layout;
  if (operator === null) return { reaches: [], sights: [], knees: null, frontEdges: [] };
  return {
    reaches: reachFacts(operator, layout.panels),
    sights: sightFacts(operator, layout.panels, bodies),
    knees: kneeFact(operator, layout, bodies),
    frontEdges: frontEdgeFacts(operator, layout),
  };
};

// Controls further from the front edge of their console than a seated person works at.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { FrontEdgeFact } from "../../fit/fit-facts.ts";
import { DEPTH_FROM_FRONT_EDGE } from "../../standards/reach.ts";
import { isOver } from "../limits.ts";
import { lengthWords, measureMm } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { andMore, byCause, inPanel } from "./panel-words.ts";

const entry: CodeEntry = {
  code: "fit/front-edge",
  severity: "query",
  title: "a control too far from the console's front edge",
  why: "Controls lie within 635 mm of the front edge, measured over the surface of the panels: further back a seated person gets up for them, or leans over what lies before. Of a desk it is the edge ahead of the seat, of a console beside the seat the long edge toward it.",
  example:
    "operator: { seat-height: 430 mm, at: [0, 0] }\nbays:\n  desk: { mount: console-rail, at: [350, 0, 720], along: [1, 0, 0], length: 80 modules, depth: 80 mm }",
};

export const frontEdge: ConsoleRule = {
  entry,
  judge: (facts) =>
    byCause(
      facts.fit.frontEdges.filter(({ distance }) => isOver(distance, DEPTH_FROM_FRONT_EDGE.most)),
      ({ panel }) => panel,
      ({ distance }) => distance,
    ).map((group) => tooFar(group, facts)),
};

const tooFar = (
  group: readonly [FrontEdgeFact, ...FrontEdgeFact[]],
  facts: ConsoleFacts,
): Finding => {
  const [worst] = group;
  const { most, source } = DEPTH_FROM_FRONT_EDGE;
  const words = lengthWords(facts, worst.span);
  return finding(entry, {
    message: `${inPanel(worst)}${andMore(group.length - 1)}: ${words(worst.distance, most)} from the front edge of the console, over its panels; ${words(most, worst.distance)} is the most. ${words(worst.distance - most, 0)} nearer does.`,
    span: worst.span,
    subjects: group.map(inPanel),
    measured: measureMm(worst.distance),
    limit: measureMm(most),
    source: { kind: "standard", name: source },
    suppressed: group.length - 1,
  });
};

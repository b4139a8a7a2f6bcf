// Panels whose deepest body reaches farther behind their seat than their bay is deep.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { DepthFact } from "../../fit/fit-facts.ts";
import { decimal } from "../../geometry/number.ts";
import { isOver } from "../limits.ts";
import { lengthWords, measureMm } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { bodyName, byCause } from "./panel-words.ts";

const entry: CodeEntry = {
  code: "fit/too-deep",
  severity: "fault",
  title: "a panel that is deeper than its bay",
  why: "Behind the faces of its rails a bay is only so deep; plug, cable and the bend of the cable count. A bay that is in truth deeper says so with its depth: measure it from the face of a rail.",
  example:
    "bays:\n  aft: { mount: console-rail, at: [0, 0, 600], along: [1, 0, 0], length: 12 modules, depth: 15 mm }",
};

export const tooDeep: ConsoleRule = {
  entry,
  judge: (facts) =>
    byCause(
      facts.fit.depths.filter(({ takes, has }) => isOver(takes, has)),
      ({ bay }) => bay,
      ({ takes }) => takes,
    ).flatMap(([deepest, ...others]) => deep(deepest, others.length, facts)),
};

const deep = (
  { panel, bay, has, takes, body }: DepthFact,
  others: number,
  facts: ConsoleFacts,
): readonly Finding[] => {
  const design = facts.layout.bays.find(({ id }) => id === bay)?.design;
  if (design === undefined) return [];
  const span = spanOf(design.written, "depth");
  const words = lengthWords(facts, span);
  const value = `${decimal(Math.ceil(takes), 0)} mm`;
  return [
    finding(entry, {
      message: `${panel} takes ${words(takes, has)} behind its seat, as far as the ${bodyName(body)} reaches; bay ${bay} has ${words(has, takes)}, ${words(takes - has, 0)} too little. A bay with depth: ${value} holds it.`,
      span,
      related: [{ what: bodyName(body), span: body.span }],
      subjects: [panel, bay],
      measured: measureMm(takes),
      limit: measureMm(has),
      source: { kind: "geometry", name: `the depth of bay ${bay}` },
      remedies: [{ title: `depth: ${value} (${bay})`, edits: [facts.edit(span, value)] }],
      suppressed: others,
    }),
  ];
};

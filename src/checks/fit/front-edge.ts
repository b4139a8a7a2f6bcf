// Controls further from the front edge of their console than a seated person works at.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { FrontEdgeFact } from "../../fit/fit-facts.ts";
import { decimal } from "../../geometry/number.ts";
import type { Frame } from "../../geometry/space/frame.ts";
import { dot, minus } from "../../geometry/space/vector.ts";
import { arithmeticNoise } from "../../geometry/tolerance.ts";
import type { PlacedPanel } from "../../layout/console/console-layout.ts";
import { DEPTH_FROM_FRONT_EDGE } from "../../standards/reach.ts";
import { isOver } from "../limits.ts";
import { lengthWords, measureMm } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { freeModuleRemedies } from "./free-module.ts";
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
    message: `${inPanel(worst)}${andMore(group.length - 1)}: ${words(worst.distance, most)} from the front edge of the console, over its panels; ${words(most, worst.distance)} is the most. ${words(worst.distance - most, 0)} nearer does${nearerModule(worst, facts)}.`,
    span: worst.span,
    subjects: group.map(inPanel),
    measured: measureMm(worst.distance),
    limit: measureMm(most),
    source: { kind: "standard", name: source },
    remedies: freeModuleRemedies(panelOf(worst, facts), facts, (frame) =>
      isNear(worst, frame, facts),
    ),
    suppressed: group.length - 1,
  });
};

const panelOf = ({ panel }: FrontEdgeFact, { layout }: ConsoleFacts): PlacedPanel | undefined =>
  layout.panels.find(({ name }) => name === panel);

/** All of a panel's controls go along with it, so that the farthest of them tells. */
const isNear = (worst: FrontEdgeFact, { origin }: Frame, facts: ConsoleFacts): boolean => {
  const panel = panelOf(worst, facts);
  if (panel === undefined) return false;
  const along = dot(minus(origin, panel.frame.origin), panel.frame.y);
  return !isOver(worst.distance + worst.further * along, DEPTH_FROM_FRONT_EDGE.most);
};

/** Where the way to the front edge goes along the panel's rails: the first module that lies within. */
const nearerModule = (worst: FrontEdgeFact, facts: ConsoleFacts): string => {
  const place = panelOf(worst, facts)?.place;
  if (place?.kind !== "bay") return "";
  const pitch = facts.layout.bays.find(({ id }) => id === place.bay)?.pitch;
  if (pitch === undefined || worst.further <= arithmeticNoise) return "";
  const excess = worst.distance - DEPTH_FROM_FRONT_EDGE.most;
  const module = place.module - Math.ceil(excess / (worst.further * pitch) - arithmeticNoise);
  return module < 0 ? "" : `: module: ${decimal(module, 3)} of bay ${place.bay}, or less`;
};

// A cut-out that crosses the panel's outline or lies outside it.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { containsContour } from "../../geometry/containment.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { CutOut } from "../../layout/panel-layout.ts";
import { isOver, isUnder } from "../limits.ts";
import { onePerOwner } from "../one-finding.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { lengthWords, measureMm } from "../words.ts";
import { isClearInside } from "./clear-inside.ts";
import { excessOf } from "./instrument-fit.ts";
import { panelOpenings } from "./panel-openings.ts";
import { placingSpan } from "./placing-span.ts";

const entry: CodeEntry = {
  code: "checks/off-panel",
  severity: "fault",
  title: "a cut-out that leaves the panel",
  why: "An opening that crosses the outline is a notch in the edge. Check the distance's unit, and from which edge it was meant.",
  example: "components:\n  a: { part: led-5, at: { left: 150 mm, top: 30 mm } }",
};

export const offPanel: Rule = {
  entry,
  move: "inward",
  judge: (facts) =>
    onePerOwner(panelOpenings(facts.layout), ({ cutOut, outline }) =>
      isClearInside(contourExtent(cutOut.contour), outline, 0) ||
      excessOf(cutOut, facts.layout) !== null ||
      containsContour(outline, cutOut.contour)
        ? null
        : leaving(cutOut, facts),
    ),
};

const leaving = (cutOut: CutOut, facts: PanelFacts): Finding => {
  const { layout } = facts;
  const { edge, reaches, limit, over: beyond } = farthestOut(cutOut, facts);
  const span = placingSpan(layout, cutOut);
  const words = lengthWords(facts, span);
  const over = Math.abs(reaches - limit);
  const base = { span, subjects: [cutOut.owner] };
  if (!isOver(beyond, 0))
    return finding(entry, {
      ...base,
      message: `${cutOut.owner} runs over a rounded corner or a notch in the edge of ${cutOut.layer}, near its ${edge} edge.`,
      source: { kind: "geometry", name: `the finished outline of ${cutOut.layer}` },
    });
  return finding(entry, {
    ...base,
    message: `${cutOut.owner} leaves the panel at its ${edge} edge by ${words(over, 0)}: its opening in ${cutOut.layer} reaches to ${words(reaches, limit)}, the finished panel to ${words(limit, reaches)} from its lower left corner.`,
    measured: measureMm(reaches),
    limit: measureMm(limit),
    source: { kind: "geometry", name: "the panel's finished outline" },
  });
};

/** The side where it lies out farthest. An opening within the box crosses a rounded corner or a notch: its nearest side. */
const farthestOut = (
  cutOut: CutOut,
  { layout }: PanelFacts,
): {
  readonly edge: string;
  readonly reaches: number;
  readonly limit: number;
  readonly over: number;
} => {
  const box = contourExtent(cutOut.contour);
  const room = contourExtent(layout.outline);
  const sides = [
    { edge: "left", reaches: box.minX, limit: room.minX, over: room.minX - box.minX },
    { edge: "right", reaches: box.maxX, limit: room.maxX, over: box.maxX - room.maxX },
    { edge: "lower", reaches: box.minY, limit: room.minY, over: room.minY - box.minY },
    { edge: "upper", reaches: box.maxY, limit: room.maxY, over: box.maxY - room.maxY },
  ] as const;
  return sides.reduce((worst, side) => (isUnder(worst.over, side.over) ? side : worst));
};

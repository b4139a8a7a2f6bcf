// A marking that leaves the panel.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { containsContour } from "../../geometry/containment.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { rectangle } from "../../geometry/shapes.ts";
import type { PanelLayout, PlacedMarking } from "../../layout/panel-layout.ts";
import { isOver } from "../limits.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { lengthWords, measureMm } from "../words.ts";
import { isClearInside } from "./clear-inside.ts";
import { capitalised, isShown, markingName } from "./marking-shapes.ts";

const entry: CodeEntry = {
  code: "checks/marking-off-panel",
  severity: "fault",
  title: "a marking that leaves the panel",
  why: "What lies beyond the outline is engraved into the waste, or not at all.",
  example: "markings:\n  - legend: { text: A LONG LEGEND, at: { x: 140 mm, y: 20 mm } }",
};

export const markingOffPanel: Rule = {
  entry,
  move: "inward",
  judge: (facts) =>
    facts.layout.markings.filter(isShown).flatMap((marking) => {
      const side = farthestOut(marking, facts.layout);
      const isOut = isOver(side.over, 0) || !isOnLayer(marking, facts.layout);
      return isOut ? [leaving(marking, side, facts)] : [];
    }),
};

const isOnLayer = (marking: PlacedMarking, layout: PanelLayout): boolean => {
  const outline = layout.layers.find(({ id }) => id === marking.layer)?.outline ?? layout.outline;
  return (
    isClearInside(marking.box, outline, 0) ||
    containsContour(outline, rectangle(marking.box)) ||
    isWithinShapes(marking, outline)
  );
};

/** At a rounded corner or a notch the box may stick out while the letters don't. */
const isWithinShapes = (marking: PlacedMarking, outline: PanelLayout["outline"]): boolean =>
  marking.strokes.length === 0 &&
  marking.fills.every((fill) => containsContour(outline, fill.outline));

interface Side {
  readonly edge: string;
  readonly reaches: number;
  readonly limit: number;
  readonly over: number;
}

const farthestOut = ({ box }: PlacedMarking, layout: PanelLayout): Side => {
  const room = contourExtent(layout.outline);
  const sides: readonly [Side, ...Side[]] = [
    { edge: "left", reaches: box.minX, limit: room.minX, over: room.minX - box.minX },
    { edge: "right", reaches: box.maxX, limit: room.maxX, over: box.maxX - room.maxX },
    { edge: "lower", reaches: box.minY, limit: room.minY, over: room.minY - box.minY },
    { edge: "upper", reaches: box.maxY, limit: room.maxY, over: box.maxY - room.maxY },
  ];
  return sides.reduce((worst, side) => (side.over > worst.over ? side : worst));
};

const leaving = (marking: PlacedMarking, side: Side, facts: PanelFacts): Finding => {
  const words = lengthWords(facts, marking.span);
  const where =
    side.over > 0
      ? `leaves the panel at its ${side.edge} edge by ${words(side.over, 0)}: it reaches to ${words(side.reaches, side.limit)}, the finished panel to ${words(side.limit, side.reaches)} from its lower left corner`
      : `runs over a corner or notch of the panel, at its ${side.edge} edge`;
  return finding(entry, {
    message: `${capitalised(markingName(marking))} ${where}.`,
    span: marking.span,
    subjects: [marking.owner],
    measured: measureMm(side.reaches),
    limit: measureMm(side.limit),
    source: { kind: "geometry", name: "the panel's finished outline" },
  });
};

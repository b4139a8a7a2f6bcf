// Two markings that run into each other: neither can be read.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { containsContour } from "../../geometry/containment.ts";
import type { Region } from "../../geometry/contour.ts";
import { contourDistance, contourToPathDistance } from "../../geometry/distance.ts";
import { extentCentre, extentsOverlap } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { PlacedMarking } from "../../layout/panel-layout.ts";
import { onePerPair } from "../one-finding.ts";
import { type PairMember, pairRemedies, rowOf } from "../pair-remedies.ts";
import { eachNearPair } from "../pairs.ts";
import { partingOf } from "../parting.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { lengthWords, measureMm } from "../words.ts";
import { capitalised, isShown, markingName } from "./marking-shapes.ts";

const entry: CodeEntry = {
  code: "checks/markings-overlap",
  severity: "fault",
  title: "two markings that run into each other",
  why: "Letters engraved over letters are neither. Give one of them another side, a line break, fewer letters or a smaller height, or set the components farther apart.",
  example:
    "components:\n  lamps: { row: { part: led-5, count: 2, pitch: 12 mm, left: 40 mm, top: 30 mm }, legends: [PAY OUT, HAUL IN] }",
};

export const markingsOverlap: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const boxed = facts.layout.markings.filter(isShown).map((thing) => ({ thing, box: thing.box }));
    const found: Finding[] = [];
    eachNearPair(boxed, 0, (first, second) => {
      if (!runIntoEachOther(first, second)) return;
      const [a, b] = first.span.start <= second.span.start ? [first, second] : [second, first];
      found.push(overlap(a, b, facts));
    });
    return onePerPair(found);
  },
};

const overlap = (a: PlacedMarking, b: PlacedMarking, facts: PanelFacts): Finding => {
  const { apart, needed } = partingOf(a.box, b.box, b.capHeight ?? b.strokeWidth);
  const words = lengthWords(facts, b.span);
  return finding(entry, {
    message: `${capitalised(markingName(a))} and ${markingName(b)} run into each other: their middles are ${words(apart, needed)} apart, ${words(needed, apart)} would leave a letter's gap, ${words(needed - apart, 0)} more.`,
    span: b.span,
    related: [{ what: markingName(a), span: a.span }],
    subjects: [b.owner, a.owner],
    measured: measureMm(apart),
    limit: measureMm(needed),
    source: { kind: "geometry", name: "the edge of the other marking" },
    remedies: ofOneRow(a, b, { more: needed - apart, facts }),
  });
};

/** Legends of one row want a larger pitch; what else would part two markings is for a person to choose. */
const ofOneRow = (
  a: PlacedMarking,
  b: PlacedMarking,
  options: { readonly more: number; readonly facts: PanelFacts },
): Finding["remedies"] =>
  a.owner !== b.owner && rowOf(a.owner, b.owner, options.facts.layout) !== null
    ? pairRemedies(placed(a), placed(b), options)
    : [];

const placed = ({ owner, box }: PlacedMarking): PairMember => ({
  owner,
  centre: extentCentre(box),
});

const runIntoEachOther = (a: PlacedMarking, b: PlacedMarking): boolean =>
  a.fills.some((one) => b.fills.some((other) => regionsMeet(one, other))) ||
  strokesMeet(a, b) ||
  strokesMeet(b, a);

const regionsMeet = (a: Region, b: Region): boolean => {
  if (!extentsOverlap(contourExtent(a.outline), contourExtent(b.outline))) return false;
  if (!contourDistance(a.outline, b.outline).overlaps) return false;
  // What lies in the open middle of a ring does not touch it.
  const isInside = (outer: Region, inner: Region): boolean =>
    outer.holes.some((hole) => containsContour(hole, inner.outline));
  return !isInside(a, b) && !isInside(b, a);
};

/** Single-line letters against shapes; two single-line texts meet where their boxes do, which the sweep has found. */
const strokesMeet = (a: PlacedMarking, b: PlacedMarking): boolean =>
  a.strokes.some(
    ({ path }) =>
      b.strokes.length > 0 ||
      b.fills.some(({ outline, holes }) => {
        if (!contourToPathDistance(outline, path).overlaps) return false;
        return !holes.some((hole) => isDrawnInside(hole, path));
      }),
  );

/** A stroke in the open middle of a ring. */
const isDrawnInside = (
  hole: Region["outline"],
  path: PlacedMarking["strokes"][number]["path"],
): boolean => {
  const { gap, overlaps } = contourToPathDistance(hole, path);
  return overlaps && gap > 0;
};

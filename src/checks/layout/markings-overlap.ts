// Two markings that run into each other: neither can be read.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { containsContour } from "../../geometry/containment.ts";
import type { Region } from "../../geometry/contour.ts";
import { contourDistance, contourToPathDistance } from "../../geometry/distance.ts";
import { extentsOverlap } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { PlacedMarking } from "../../layout/panel-layout.ts";
import { eachNearPair } from "../pairs.ts";
import type { Rule } from "../rule.ts";
import { measureMm } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/markings-overlap",
  severity: "fault",
  title: "two markings that run into each other",
  why: "Letters engraved over letters are neither. Give one of them another side, a line break, fewer letters or a smaller height, or set the components farther apart.",
  example:
    "components:\n  lamps: { row: { part: led-5, count: 4, pitch: 10 mm, left: 24 mm, top: 30 mm }, legends: [PAY OUT, HAUL IN, SLIP, TRIP] }",
};

export const markingsOverlap: Rule = {
  entry,
  judge: ({ layout }) => {
    const boxed = layout.markings
      .filter(({ fills, strokes }) => fills.length + strokes.length > 0)
      .map((thing) => ({ thing, box: thing.box }));
    const found: ReturnType<Rule["judge"]>[number][] = [];
    eachNearPair(boxed, 0, (first, second) => {
      if (!runIntoEachOther(first, second)) return;
      const [a, b] = first.span.start <= second.span.start ? [first, second] : [second, first];
      found.push(
        finding(entry, {
          message: `${nameOf(a)} and ${nameOf(b)} run into each other.`,
          span: b.span,
          related: [{ what: nameOf(a), span: a.span }],
          subjects: [b.owner, a.owner],
          measured: measureMm(0),
          limit: measureMm(0),
          source: { kind: "geometry", name: "markings lie apart" },
        }),
      );
    });
    return found;
  },
};

const nameOf = (marking: PlacedMarking): string =>
  marking.text === null
    ? `the ${marking.kind} of ${marking.owner}`
    : `"${marking.text.replaceAll("\n", " / ").slice(0, 24)}"`;

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
      b.fills.some(({ outline }) => contourToPathDistance(outline, path).overlaps),
  );

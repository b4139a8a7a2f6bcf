// What one engraved area or one stroked marking measures in the file against what it must: process, place, size, and area
// (of fills) or length (of strokes). A letter counts as one thing with its legend: areas are summed.

import { point } from "../geometry/contour.ts";
import {
  type Extent,
  extentHeight,
  extentWidth,
  grownExtent,
  joinedExtent,
} from "../geometry/extent.ts";
import { engravedAllowance, engravedAreaAllowance, placeAllowance } from "./allowance.ts";
import { runBeside, WIDE_PROBING } from "./beside.ts";
import type { ExpectedFeature } from "./expectation.ts";
import { areaBeside } from "./kerf-opinion.ts";
import { loopArea, loopLength } from "./loop.ts";
import { type MarkPlace, placeOfMark } from "./mark-place.ts";
import type { MatchedLine } from "./matching.ts";
import { processReading } from "./process-reading.ts";
import { length, numberReading, type Reading, roundedDifference } from "./row.ts";

/** `inset`: how far within their outlines areas are drawn. */
export const markReadings = (
  feature: ExpectedFeature,
  matched: readonly MatchedLine[],
  inset: number,
): readonly Reading[] => {
  const drawn = joined(matched.map(({ line }) => line.box));
  if (drawn === null) return [missing(feature)];
  const isFill = feature.kind === "fill";
  const target = grownExtent(feature.box, isFill ? -inset : 0);
  const place = placeOfMark(drawn, target, isFill ? inset : null);
  const lines = matched.map(({ line }) => line);
  return [
    processReading(feature, lines, isFill ? "fill" : "line"),
    placeReading(feature, "x", place.stray.x),
    placeReading(feature, "y", place.stray.y),
    {
      feature: feature.feature,
      what: "size",
      expected: boxText(target),
      measured: boxText(drawn),
      difference: roundedDifference(place.misfit),
      passed: roundedDifference(place.misfit) <= 2 * allowanceOf(feature),
    },
    isFill ? areaReading(feature, matched, inset) : lengthReading(feature, matched),
    outlineReading(feature, matched, { inset, place }),
  ];
};

const allowanceOf = (feature: ExpectedFeature): number =>
  feature.kind === "fill" ? engravedAllowance : placeAllowance;

const placeReading = (feature: ExpectedFeature, axis: "x" | "y", stray: number): Reading =>
  numberReading(feature.feature, axis, {
    expected: feature.centre[axis],
    measured: feature.centre[axis] + stray,
    allowance: allowanceOf(feature),
  });

const joined = (boxes: readonly Extent[]): Extent | null => {
  const [first, ...others] = boxes;
  return first === undefined ? null : others.reduce(joinedExtent, first);
};

const missing = (feature: ExpectedFeature): Reading => ({
  feature: feature.feature,
  what: "outline",
  expected: `${feature.loops.length} lines`,
  measured: "not in the file",
  difference: null,
  passed: false,
});

const boxText = (box: Extent): string =>
  `${length(extentWidth(box))} x ${length(extentHeight(box))}`;

/** An outline counts for its area, a hole against it, whichever way they run. */
const areaReading = (
  feature: ExpectedFeature,
  matched: readonly MatchedLine[],
  inset: number,
): Reading => {
  const expected = feature.loops.reduce(
    (sum, loop) => sum - loop.side * areaBeside(loop.edges, loop.side * inset, "round"),
    0,
  );
  const measured = matched.reduce(
    (sum, { line, expected: loop }) => sum - loop.side * Math.abs(loopArea(line.edges)),
    0,
  );
  const run = feature.loops.reduce((sum, loop) => sum + loopLength(loop.edges), 0);
  return numberReading(feature.feature, "area", {
    expected,
    measured,
    allowance: engravedAreaAllowance(run),
  });
};

const lengthReading = (feature: ExpectedFeature, matched: readonly MatchedLine[]): Reading => {
  const expected = feature.loops.reduce((sum, loop) => sum + loopLength(loop.edges), 0);
  const measured = matched.reduce((sum, { line }) => sum + loopLength(line.edges), 0);
  return numberReading(feature.feature, "length", {
    expected,
    measured,
    allowance: placeAllowance * (1 + feature.loops.length),
  });
};

/** How evenly the drawn lines run beside the letters: at half the spot within them, or upon them where they are strokes. */
const outlineReading = (
  feature: ExpectedFeature,
  matched: readonly MatchedLine[],
  run: { readonly inset: number; readonly place: MarkPlace },
): Reading => {
  const allowance = allowanceOf(feature);
  // What is whole but out of place has rows for that: its form is judged where it stands.
  const { stray, misfit } = run.place;
  const isMoved = Math.max(Math.abs(stray.x), Math.abs(stray.y)) > allowance;
  const shift = isMoved && misfit <= allowance ? stray : point(0, 0);
  const offset = feature.kind === "fill" ? run.inset : 0;
  let worst = 0;
  for (const { line, expected } of matched) {
    const beside = runBeside(line.edges, expected.bounds, { parts: WIDE_PROBING, shift });
    worst = Math.max(worst, beside.spread, Math.abs(beside.offset - offset));
  }
  const difference = roundedDifference(worst);
  return {
    feature: feature.feature,
    what: "outline",
    expected: `${length(offset)} within the area as seen`,
    measured: `astray by ${length(worst)} at most`,
    difference,
    passed: difference <= allowance,
  };
};

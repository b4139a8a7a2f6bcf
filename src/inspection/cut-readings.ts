// What one hole, window or outline measures in the file against what it must: process, place, size, area and the form of
// its line. Form is judged after place, and size as the file draws it: cut size with kerf taken into account once.

import { type Extent, extentHeight, extentWidth } from "../geometry/extent.ts";
import { mm } from "../geometry/quantity.ts";
import { areaAllowance, closedGap, placeAllowance } from "./allowance.ts";
import { CLOSE_PROBING, runBeside, shiftOfBox } from "./beside.ts";
import type { ExpectedFeature } from "./expectation.ts";
import { lineBeside } from "./kerf-opinion.ts";
import { loopArea, loopLength } from "./loop.ts";
import type { MatchedLine } from "./matching.ts";
import { processReading } from "./process-reading.ts";
import { length, numberReading, type Reading, roundedDifference } from "./row.ts";

/** `kerf`: full width as the file carries it. */
export const cutReadings = (
  feature: ExpectedFeature,
  matched: readonly MatchedLine[],
  kerf: number,
): readonly Reading[] => {
  const [only, ...others] = matched;
  if (only === undefined) return [brokenOutline(feature, "not in the file")];
  if (others.length > 0) return [brokenOutline(feature, `${matched.length} loops`)];
  const process = processReading(feature, [only.line], "line");
  const { line, expected } = only;
  if (line.gap > closedGap) {
    return [process, brokenOutline(feature, `open by ${length(line.gap)}`)];
  }
  if (line.chains !== 1) return [process, brokenOutline(feature, `${line.chains} chains`)];
  const offset = (expected.side * kerf) / 2;
  const target = lineBeside(expected.edges, expected.box, offset);
  const shift = shiftOfBox(line.box, target.box);
  const run = runBeside(line.edges, expected.edges, { parts: CLOSE_PROBING, shift });
  return [
    process,
    placeReading(feature, "x", shift.x),
    placeReading(feature, "y", shift.y),
    sizeReading(feature, target.box, line.box),
    numberReading(feature.feature, "area", {
      expected: target.area,
      measured: Math.abs(loopArea(line.edges)),
      allowance: areaAllowance(loopLength(expected.edges)),
    }),
    {
      feature: feature.feature,
      what: "outline",
      expected: ONE_LOOP,
      measured: `one closed loop, even within ${length(run.spread)}`,
      difference: roundedDifference(run.spread),
      passed: run.spread <= placeAllowance,
    },
  ];
};

const ONE_LOOP = "one closed loop, evenly beside the cut size";

const brokenOutline = (feature: ExpectedFeature, measured: string): Reading => ({
  feature: feature.feature,
  what: "outline",
  expected: ONE_LOOP,
  measured,
  difference: null,
  passed: false,
});

const placeReading = (feature: ExpectedFeature, axis: "x" | "y", shift: number): Reading => {
  const expected = feature.centre[axis];
  return numberReading(feature.feature, axis, {
    expected,
    measured: mm(expected + shift),
    allowance: placeAllowance,
  });
};

const sizeReading = (feature: ExpectedFeature, target: Extent, drawn: Extent): Reading => {
  const across = roundedDifference(extentWidth(target) - extentWidth(drawn));
  const up = roundedDifference(extentHeight(target) - extentHeight(drawn));
  const difference = Math.max(across, up);
  return {
    feature: feature.feature,
    what: "size",
    expected: sizeText(target, feature.isRound),
    measured: sizeText(drawn, feature.isRound),
    difference,
    passed: difference <= placeAllowance,
  };
};

/** A round thing by its diameter, as long as it is round to the last digit shown. */
const sizeText = (box: Extent, isRound: boolean): string => {
  const [across, up] = [length(extentWidth(box)), length(extentHeight(box))];
  return isRound && across === up ? `diameter ${across}` : `${across} x ${up}`;
};

// The thinnest stroke of an outline face, in cap heights: the stem of I and the bars of E, measured where they are plain.
// An estimate for the face, not for each letter: thin joins, diagonals and punctuation may be finer.

import type { Region } from "../geometry/contour.ts";
import { extentHeight, extentWidth } from "../geometry/extent.ts";
import { flattened } from "../geometry/flatten.ts";
import { invariant } from "../geometry/invariant.ts";
import { curveFit } from "../geometry/tolerance.ts";
import type { Glyph } from "./glyph-source.ts";

/** Cap height that letters are measured at; the answer is a ratio. */
const MEASURED_AT = 16;
/** Half-way up I is clear of serifs. */
const UP_THE_STEM = 0.5;
/** Past the stem of E, short of the end of its middle bar in every face tried (the shortest ends at 0.72 of the width). */
const ALONG_THE_BARS = 0.6;

export const thinnestStroke = (
  draw: (character: string, capHeight: number) => Glyph | null,
): number => {
  const stem = measuredSpans(draw("I", MEASURED_AT), "across");
  const bars = measuredSpans(draw("E", MEASURED_AT), "up");
  return Math.min(...stem, ...bars) / MEASURED_AT;
};

/** Lengths of material that a line through the glyph crosses, across at mid height or up at the bars' place. */
const measuredSpans = (glyph: Glyph | null, way: "across" | "up"): readonly number[] => {
  invariant(glyph?.box !== null && glyph !== null, "an outline font has capitals E and I");
  const { box, fills } = glyph;
  const level =
    way === "across"
      ? box.minY + UP_THE_STEM * extentHeight(box)
      : box.minX + ALONG_THE_BARS * extentWidth(box);
  const crossings = fills.flatMap((region) => regionCrossings(region, way, level));
  crossings.sort((a, b) => a - b);
  invariant(crossings.length > 1, "a stroke has two edges");
  return crossings.flatMap((start, index) =>
    index % 2 === 0 ? [(crossings[index + 1] ?? start) - start] : [],
  );
};

const regionCrossings = (
  region: Region,
  way: "across" | "up",
  level: number,
): readonly number[] => {
  const crossings: number[] = [];
  for (const contour of [region.outline, ...region.holes]) {
    const points = flattened(contour, curveFit);
    for (const [index, from] of points.entries()) {
      const to = points[(index + 1) % points.length] ?? from;
      const [fromAlong, fromOver] = way === "across" ? [from.x, from.y] : [from.y, from.x];
      const [toAlong, toOver] = way === "across" ? [to.x, to.y] : [to.y, to.x];
      if (fromOver > level === toOver > level) continue;
      const share = (level - fromOver) / (toOver - fromOver);
      crossings.push(fromAlong + share * (toAlong - fromAlong));
    }
  }
  return crossings;
};

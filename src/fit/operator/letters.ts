// The letters of a marking as boxes on its panel: the words in a border, without the border; the figures and ticks of a scale,
// without the knob that it stands round.

import { type Extent, extentHeight, extentWidth, joinedExtent } from "../../geometry/extent.ts";
import { contourExtent, pathExtent } from "../../geometry/measure.ts";
import type { PlacedMarking } from "../../layout/panel-layout.ts";

/** A long text is told by this many of its letters, evenly spread. */
const ENOUGH = 12;

/** A capital is at most as wide as it is high (DOD-HDBK-791, 6-5.3.2); tails and accents reach beyond it. */
const LARGEST = 1.6;

export const lettersOf = (marking: PlacedMarking): readonly Extent[] => {
  const size = (marking.capHeight ?? 0) * LARGEST;
  const boxes = [
    ...marking.fills.map(({ outline }) => contourExtent(outline)),
    ...marking.strokes.map(({ path }) => pathExtent(path)),
  ].filter((box) => extentWidth(box) <= size && extentHeight(box) <= size);
  if (boxes.length === 0) return [marking.box];
  const count = Math.min(ENOUGH, boxes.length);
  return Array.from(
    { length: count },
    (_, index) => boxes[Math.floor((index * boxes.length) / count)]!,
  );
};

/** The box round its letters. */
export const wordsBox = (marking: PlacedMarking): Extent => lettersOf(marking).reduce(joinedExtent);

// Corners of an outline for a drawing at a scale: its arcs as chords that nobody tells from arcs on paper, and never so few
// that a small hole falls flat.

import type { Contour, Point } from "../geometry/contour.ts";
import { extentHeight, extentWidth } from "../geometry/extent.ts";
import { flattened } from "../geometry/flatten.ts";
import { contourExtent } from "../geometry/measure.ts";
import type { ConsoleView } from "./console-view.ts";

/** On the paper, in mm: less than half of the thinnest line. */
const CHORD = 0.05;
/** Of an outline's lesser side: a circle keeps seven corners. */
const SHARE = 1 / 8;

export const drawnCorners = (contour: Contour, { scale }: ConsoleView): readonly Point[] => {
  const box = contourExtent(contour);
  const side = Math.min(extentWidth(box), extentHeight(box));
  return flattened(contour, Math.min(CHORD * scale, side * SHARE));
};

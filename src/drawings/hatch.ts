// Hatching of a cut area: lines at 45 degrees, a pitch apart, clipped to a box. Lines of neighbouring boxes of one hatch
// continue each other, because they are counted from the drawing's origin.

import type { Path } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import { segment } from "./items.ts";

export interface Hatch {
  readonly pitch: number;
  /** Rising to the right, falling, or both. */
  readonly lean: "rising" | "falling" | "crossed";
}

export const hatchLines = (box: Extent, hatch: Hatch): readonly Path[] => {
  if (hatch.lean === "crossed")
    return [
      ...hatchLines(box, { ...hatch, lean: "rising" }),
      ...hatchLines(box, { ...hatch, lean: "falling" }),
    ];
  // y = lean x + c; c runs over whole pitches.
  const lean = hatch.lean === "rising" ? 1 : -1;
  const step = hatch.pitch * Math.SQRT2;
  const ends = [box.minX, box.maxX].map((x) => lean * x);
  const least = box.minY - Math.max(...ends);
  const most = box.maxY - Math.min(...ends);
  const lines: Path[] = [];
  for (let count = Math.ceil(least / step); count * step < most; count += 1) {
    const line = clipped(box, lean, count * step);
    if (line !== null) lines.push(line);
  }
  return lines;
};

const clipped = (box: Extent, lean: number, start: number): Path | null => {
  const atFoot = (box.minY - start) * lean;
  const atHead = (box.maxY - start) * lean;
  const low = Math.max(box.minX, Math.min(atFoot, atHead));
  const high = Math.min(box.maxX, Math.max(atFoot, atHead));
  return low < high ? segment(low, lean * low + start, high, lean * high + start) : null;
};

// Hatching of a cut area: lines at 45 degrees, a pitch apart, clipped to a box or an area. Lines of neighbouring areas of one
// hatch continue each other, because they are counted from the drawing's origin.

import { type Path, point, type Region } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import { lineStretches } from "../geometry/line-stretches.ts";
import { contourExtent } from "../geometry/measure.ts";
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
  const lean = leanOf(hatch);
  return startsIn(box, hatch).flatMap((start) => clipped(box, lean, start) ?? []);
};

/** The same lines in an area of any shape, its holes left free. */
export const regionHatch = (region: Region, hatch: Hatch): readonly Path[] => {
  if (hatch.lean === "crossed")
    return [
      ...regionHatch(region, { ...hatch, lean: "rising" }),
      ...regionHatch(region, { ...hatch, lean: "falling" }),
    ];
  const along = { x: Math.SQRT1_2, y: leanOf(hatch) * Math.SQRT1_2 };
  return startsIn(contourExtent(region.outline), hatch).flatMap((start) =>
    lineStretches([region], { at: point(0, start), along }).map(({ low, high }) =>
      segment(low * along.x, start + low * along.y, high * along.x, start + high * along.y),
    ),
  );
};

const leanOf = ({ lean }: Hatch): 1 | -1 => (lean === "rising" ? 1 : -1);

/** y = lean x + c; c runs over whole pitches. */
const startsIn = (box: Extent, hatch: Hatch): readonly number[] => {
  const lean = leanOf(hatch);
  const step = hatch.pitch * Math.SQRT2;
  const ends = [box.minX, box.maxX].map((x) => lean * x);
  const least = box.minY - Math.max(...ends);
  const most = box.maxY - Math.min(...ends);
  const starts: number[] = [];
  for (let count = Math.ceil(least / step); count * step < most; count += 1)
    starts.push(count * step);
  return starts;
};

const clipped = (box: Extent, lean: number, start: number): Path | null => {
  const atFoot = (box.minY - start) * lean;
  const atHead = (box.maxY - start) * lean;
  const low = Math.max(box.minX, Math.min(atFoot, atHead));
  const high = Math.min(box.maxX, Math.max(atFoot, atHead));
  return low < high ? segment(low, lean * low + start, high, lean * high + start) : null;
};

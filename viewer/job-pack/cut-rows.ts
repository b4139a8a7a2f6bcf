// The sizes of each cut side by side: what stands in the file as it was read, what leaves the machine, what it is when it is
// finished. Not every format carries names: a cut of the file is found by its place, and by its size where two have one middle.

import type { Contour } from "../../src/geometry/contour.ts";
import { type Extent, extentCentre, extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { decimal } from "../../src/geometry/number.ts";
import type { Edge, ReadFile } from "../../src/inspection/read-file.ts";
import type { CutFeature } from "./pack-messages.ts";

export interface CutRow {
  readonly feature: string;
  /** null: nothing lies there in the file. */
  readonly file: string | null;
  readonly cut: string;
  /** null: nothing is said of it. */
  readonly finished: string | null;
}

export const cutRows = (
  features: readonly CutFeature[],
  { items }: ReadFile,
): readonly CutRow[] => {
  const drawn = items.flatMap(({ look, loops }) =>
    look === "fill" ? [] : loops.map(({ box, edges }) => ({ box, isRound: isRound(edges) })),
  );
  return features.map(({ feature, box, cut, finished }) => {
    const there = drawn
      .filter((each) => isSameMiddle(each.box, box))
      .toSorted((a, b) => awayFrom(a.box, box) - awayFrom(b.box, box))[0];
    return {
      feature,
      cut,
      finished,
      file: there === undefined ? null : words(there.box, there.isRound),
    };
  });
};

/** "diameter 16.25", or "60 by 50". */
export const contourWords = (contour: Contour): string =>
  words(contourExtent(contour), contour.kind === "circle");

/** A micrometre, as the inspection measures. */
const PLACES = 3;

const words = (box: Extent, isCircle: boolean): string => {
  const [across, up] = [extentWidth(box), extentHeight(box)].map((side) => decimal(side, PLACES));
  return isCircle && across === up ? `diameter ${across}` : `${across} by ${up}`;
};

const isRound = (edges: readonly Edge[]): boolean =>
  edges.length > 0 && edges.every(({ kind }) => kind === "arc");

/** Kerf and paint are taken from both sides alike. In mm. */
const SAME_MIDDLE = 0.01;

const isSameMiddle = (one: Extent, other: Extent): boolean => {
  const [a, b] = [extentCentre(one), extentCentre(other)];
  return Math.abs(a.x - b.x) <= SAME_MIDDLE && Math.abs(a.y - b.y) <= SAME_MIDDLE;
};

const awayFrom = (one: Extent, other: Extent): number =>
  Math.abs(extentWidth(one) - extentWidth(other)) +
  Math.abs(extentHeight(one) - extentHeight(other));

// What keeps pairs of points from saying one map between two planes: too few of them, two at one place, three in line. Any
// four of which no three lie in a line are enough, however the others lie. Facts only; whoever asked says it in words.

import { distanceOf, type PointPair } from "./homography-pair.ts";
import { coincidentShare, degenerateTriangle } from "./tolerance.ts";

export type HomographyTrouble =
  | { readonly kind: "too-few"; readonly count: number }
  /** Indices of two pairs, and in which plane they are one place. */
  | { readonly kind: "coincident"; readonly pairs: readonly number[]; readonly side: Side }
  /** Indices of three pairs. */
  | { readonly kind: "collinear"; readonly pairs: readonly number[]; readonly side: Side }
  /** The horizon would run between the points: two of them are exchanged. */
  | { readonly kind: "folded" };

export type Side = "from" | "to";

export const degeneracyOf = (pairs: readonly PointPair[]): HomographyTrouble | null => {
  const { length: count } = pairs;
  if (count < 4) return { kind: "too-few", count };
  const areas = [areasOf(pairs, "from"), areasOf(pairs, "to")];
  const isTriangle: IsTriangle = (i, j, k) =>
    areas.every((areaOf) => Math.abs(areaOf(i, j, k)) > degenerateTriangle);
  return hasFour(count, isTriangle) ? null : (flattest(pairs, areas) ?? null);
};

type IsTriangle = (i: number, j: number, k: number) => boolean;
type AreaOf = (i: number, j: number, k: number) => number;

/** Twice the area of a triangle of three points, where the points' mean distance from their middle is 1. */
const areasOf = (pairs: readonly PointPair[], side: Side): AreaOf => {
  const points = pairs.map((pair) => pair[side]);
  const middle = {
    x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
    y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
  };
  const spread = points.reduce((sum, at) => sum + distanceOf(at, middle), 0) / points.length;
  return (i, j, k) => {
    const [a, b, c] = [points[i], points[j], points[k]];
    if (a === undefined || b === undefined || c === undefined || spread === 0) return 0;
    return ((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) / (spread * spread);
  };
};

const hasFour = (count: number, isTriangle: IsTriangle): boolean =>
  triples(count).some(
    ([i, j, k]) =>
      isTriangle(i, j, k) &&
      indices(count).some(
        (l) => l > k && isTriangle(i, j, l) && isTriangle(i, k, l) && isTriangle(j, k, l),
      ),
  );

/** Two points at one place before three in a line: it is the nearer cause. */
const flattest = (
  pairs: readonly PointPair[],
  areas: readonly AreaOf[],
): HomographyTrouble | null => {
  let best: { readonly trouble: HomographyTrouble; readonly area: number } | null = null;
  for (const [index, side] of (["from", "to"] as const).entries()) {
    const twice = coincidentPair(pairs, side);
    if (twice !== null) return { kind: "coincident", pairs: twice, side };
    for (const three of triples(pairs.length)) {
      const [i, j, k] = three;
      const area = Math.abs(areas[index]?.(i, j, k) ?? 0);
      if (best === null || area < best.area)
        best = { trouble: { kind: "collinear", pairs: three, side }, area };
    }
  }
  return best?.trouble ?? null;
};

/** A pair of points whose distance is a thousandth of the others' spread. */
const coincidentPair = (pairs: readonly PointPair[], side: Side): readonly number[] | null => {
  const points = pairs.map((pair) => pair[side]);
  const longest = Math.max(...points.flatMap((a) => points.map((b) => distanceOf(a, b))));
  for (const [i, a] of points.entries())
    for (const [j, b] of points.entries())
      if (i < j && distanceOf(a, b) <= longest * coincidentShare) return [i, j];
  return null;
};

type Three = readonly [number, number, number];

const triples = (count: number): readonly Three[] =>
  indices(count).flatMap((i) =>
    indices(count)
      .filter((j) => j > i)
      .flatMap((j) =>
        indices(count)
          .filter((k) => k > j)
          .map((k): Three => [i, j, k]),
      ),
  );

const indices = (count: number): readonly number[] => [...Array(count).keys()];

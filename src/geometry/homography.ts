// The map from one plane to another as a pinhole camera makes it, found from four or more pairs of points: the direct linear
// transformation on normalised points (Hartley and Zisserman, Multiple View Geometry, 2nd edition, algorithm 4.2). Units
// are those of the two planes: the points are plain numbers. What no map can be found from is given back, not thrown.

import { distanceOf, type PlanePoint, type PointPair } from "./homography-pair.ts";
import { degeneracyOf, type HomographyTrouble } from "./homography-trouble.ts";
import { invariant } from "./invariant.ts";
import { leastEigenvector } from "./least-eigenvector.ts";

/** Row by row. Its sign is such that the third coordinate is above zero on the near side of the horizon. */
export type Homography = readonly [
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
];

export type HomographyFit =
  | {
      readonly kind: "fit";
      readonly map: Homography;
      /** How far the pairs' own points lie from where the map puts them: root mean square, in the unit of `to`. */
      readonly rms: number;
    }
  | { readonly kind: "degenerate"; readonly trouble: HomographyTrouble };

export const fitHomography = (pairs: readonly PointPair[]): HomographyFit => {
  const trouble = degeneracyOf(pairs);
  if (trouble !== null) return { kind: "degenerate", trouble };
  const before = normalising(pairs.map(({ from }) => from));
  const after = normalising(pairs.map(({ to }) => to));
  const inner = directLinear(
    pairs.map(({ from, to }) => ({ from: scaled(before, from), to: scaled(after, to) })),
  );
  const whole = composed(composed(unscaling(after), inner), scaling(before));
  return turnedToPairs(whole, pairs);
};

/** Where the map puts a place; null on the horizon and beyond it, where no camera sees. */
export const mapped = (map: Homography, { x, y }: PlanePoint): PlanePoint | null => {
  const depth = depthAt(map, { x, y });
  return depth > 0
    ? {
        x: (map[0] * x + map[1] * y + map[2]) / depth,
        y: (map[3] * x + map[4] * y + map[5]) / depth,
      }
    : null;
};

/** The way back. Near stays near: what `map` puts on its near side is put back. */
export const inverted = (map: Homography): Homography => {
  const [a, b, c, d, e, f, g, h, i] = map;
  const [p, q, r] = [e * i - f * h, f * g - d * i, d * h - e * g];
  const volume = a * p + b * q + c * r;
  invariant(volume !== 0, "a map of a plane onto a plane can be inverted");
  return [
    p / volume,
    (c * h - b * i) / volume,
    (b * f - c * e) / volume,
    q / volume,
    (a * i - c * g) / volume,
    (c * d - a * f) / volume,
    r / volume,
    (b * g - a * h) / volume,
    (a * e - b * d) / volume,
  ];
};

/** `second` after `first`. */
export const composed = (second: Homography, first: Homography): Homography => {
  const at = (row: number, column: number): number =>
    second[3 * row]! * first[column]! +
    second[3 * row + 1]! * first[3 + column]! +
    second[3 * row + 2]! * first[6 + column]!;
  return [at(0, 0), at(0, 1), at(0, 2), at(1, 0), at(1, 1), at(1, 2), at(2, 0), at(2, 1), at(2, 2)];
};

/** Whether left and right change places on the way, as they do from a picture (y down) to a panel (y up). */
export const isMirroring = (map: Homography, at: PlanePoint): boolean => {
  const [a, b, c, d, e, f, g, h, i] = map;
  const volume = a * (e * i - f * h) + b * (f * g - d * i) + c * (d * h - e * g);
  return depthAt(map, at) > 0 ? volume < 0 : volume > 0;
};

/** How long a step of 1 in `from` becomes in `to` about a place, where it becomes longest. */
export const stretchAt = (map: Homography, at: PlanePoint): number => {
  const depth = depthAt(map, at);
  const middle = mapped(map, at);
  if (middle === null) return Number.POSITIVE_INFINITY;
  const [a, b, d, e] = [
    (map[0] - map[6] * middle.x) / depth,
    (map[1] - map[7] * middle.x) / depth,
    (map[3] - map[6] * middle.y) / depth,
    (map[4] - map[7] * middle.y) / depth,
  ];
  // The larger singular value of the derivative.
  const sum = a * a + b * b + d * d + e * e;
  const area = a * e - b * d;
  return Math.sqrt((sum + Math.sqrt(Math.max(0, sum * sum - 4 * area * area))) / 2);
};

/** Distances between where a map puts the points and where they are. */
const residualsOf = (map: Homography, pairs: readonly PointPair[]): readonly number[] =>
  pairs.map(({ from, to }) => {
    const put = mapped(map, from);
    return put === null ? Number.POSITIVE_INFINITY : distanceOf(put, to);
  });

const depthAt = (map: Homography, { x, y }: PlanePoint): number => map[6] * x + map[7] * y + map[8];

/** Middle at the origin, mean distance √2 from it (Hartley and Zisserman, 4.4.4). */
interface Normalising {
  readonly middle: PlanePoint;
  readonly scale: number;
}

const normalising = (points: readonly PlanePoint[]): Normalising => {
  const middle = { x: mean(points.map(({ x }) => x)), y: mean(points.map(({ y }) => y)) };
  const spread = mean(points.map((point) => distanceOf(point, middle)));
  return { middle, scale: Math.SQRT2 / spread };
};

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const scaled = ({ middle, scale }: Normalising, { x, y }: PlanePoint): PlanePoint => ({
  x: scale * (x - middle.x),
  y: scale * (y - middle.y),
});

const scaling = ({ middle, scale }: Normalising): Homography => [
  scale,
  0,
  -scale * middle.x,
  0,
  scale,
  -scale * middle.y,
  0,
  0,
  1,
];

const unscaling = ({ middle, scale }: Normalising): Homography => [
  1 / scale,
  0,
  middle.x,
  0,
  1 / scale,
  middle.y,
  0,
  0,
  1,
];

/** Least squares of the two equations that each pair gives for the nine numbers. */
const directLinear = (pairs: readonly PointPair[]): Homography => {
  const sums = Array.from({ length: 9 }, () => Array.from({ length: 9 }, () => 0));
  for (const { from, to } of pairs)
    for (const row of equationsOf(from, to))
      for (const [i, a] of row.entries())
        for (const [j, b] of row.entries()) sums[i]![j] = sums[i]![j]! + a * b;
  const found = leastEigenvector(sums);
  const at = (index: number): number => found[index]!;
  return [at(0), at(1), at(2), at(3), at(4), at(5), at(6), at(7), at(8)];
};

const equationsOf = ({ x, y }: PlanePoint, to: PlanePoint): readonly (readonly number[])[] => [
  [-x, -y, -1, 0, 0, 0, to.x * x, to.x * y, to.x],
  [0, 0, 0, -x, -y, -1, to.y * x, to.y * y, to.y],
];

/** The sign that puts the pairs on the near side. Pairs on both sides are in an order that no camera shows. */
const turnedToPairs = (map: Homography, pairs: readonly PointPair[]): HomographyFit => {
  const depths = pairs.map(({ from }) => depthAt(map, from));
  const near = depths.filter((depth) => depth > 0).length;
  if (near !== 0 && near !== depths.length)
    return { kind: "degenerate", trouble: { kind: "folded" } };
  const turned = near === 0 ? negated(map) : map;
  const rms = Math.sqrt(mean(residualsOf(turned, pairs).map((residual) => residual * residual)));
  return { kind: "fit", map: turned, rms };
};

const negated = ([a, b, c, d, e, f, g, h, i]: Homography): Homography => [
  -a,
  -b,
  -c,
  -d,
  -e,
  -f,
  -g,
  -h,
  -i,
];

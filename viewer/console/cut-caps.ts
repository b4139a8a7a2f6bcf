// What a plane cuts of closed triangles: the faces that a saw would leave. Takes corners and triangles, gives triangles in
// the plane; where the triangles do not close, what can't be joined to a loop is left out.

import { Earcut } from "three/src/extras/Earcut.js";

/** Points with `normal · p = offset`. Axis-parallel: `axis` 0 forward, 1 left, 2 up, in the frame of what is cut. */
export interface CutPlane {
  readonly normal: readonly [number, number, number];
  readonly offset: number;
}

export interface Triangles {
  readonly positions: ArrayLike<number>;
  readonly triangles: ArrayLike<number>;
  /** Triangles to be cut: from, and how many. */
  readonly from: number;
  readonly count: number;
}

export interface Caps {
  readonly positions: number[];
  /** Two points each: the outlines of what is cut. */
  readonly edges: number[];
}

export const cutCaps = (body: Triangles, plane: CutPlane): Caps => {
  const caps: Caps = { positions: [], edges: [] };
  const axes = planeAxes(plane);
  const loops = closedLoops(cutLines(body, plane)).map((loop) => ({
    loop: loop.map((point): Flat => [dot(point, axes.right), dot(point, axes.up)]),
    points: loop,
  }));
  for (const { points } of loops)
    for (const [index, point] of points.entries())
      caps.edges.push(...point, ...points[(index + 1) % points.length]!);
  for (const { outer, holes } of nested(loops.map(({ loop }) => loop))) {
    const flat = [outer, ...holes];
    const starts: number[] = [];
    let count = outer.length;
    for (const hole of holes) {
      starts.push(count);
      count += hole.length;
    }
    const corners = flat.flat();
    for (const corner of Earcut.triangulate(corners.flat(), starts, 2))
      caps.positions.push(...lifted(corners[corner]!, axes, plane.offset));
  }
  return caps;
};

type Point = readonly [number, number, number];
type Flat = readonly [number, number];

interface PlaneAxes {
  readonly right: Point;
  readonly up: Point;
  readonly normal: Point;
}

const planeAxes = ({ normal }: CutPlane): PlaneAxes => {
  const other: Point = Math.abs(normal[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0];
  const right = unit(cross(other, normal));
  return { right, up: cross(normal, right), normal };
};

const lifted = ([x, y]: Flat, { right, up, normal }: PlaneAxes, offset: number): Point => [
  right[0] * x + up[0] * y + normal[0] * offset,
  right[1] * x + up[1] * y + normal[1] * offset,
  right[2] * x + up[2] * y + normal[2] * offset,
];

/** Directed lines, with what is solid on one side: from where a triangle's edge comes through to where it goes back. */
const cutLines = (body: Triangles, { normal, offset }: CutPlane): Map<string, [Point, Point][]> => {
  const lines = new Map<string, [Point, Point][]>();
  const { positions, triangles, from, count } = body;
  const corner = (at: number): Point => {
    const index = triangles[at]! * 3;
    return [positions[index]!, positions[index + 1]!, positions[index + 2]!];
  };
  for (let triangle = from; triangle < from + count; triangle += 1) {
    const corners = [0, 1, 2].map((side) => corner(3 * triangle + side));
    // A corner in the plane counts as above it: then no line is met twice, and none is lost.
    const heights = corners.map((point) => dot(point, normal) - offset);
    const crossings: { point: Point; isRising: boolean }[] = [];
    for (let side = 0; side < 3; side += 1) {
      const [a, b] = [heights[side]!, heights[(side + 1) % 3]!];
      if (a >= 0 === b >= 0) continue;
      const [p, q] = [corners[side]!, corners[(side + 1) % 3]!];
      crossings.push({ point: crossing(p, q, { a, b }), isRising: a < 0 });
    }
    const rising = crossings.find(({ isRising }) => isRising);
    const falling = crossings.find(({ isRising }) => !isRising);
    if (rising === undefined || falling === undefined) continue;
    const key = keyOf(rising.point);
    if (key === keyOf(falling.point)) continue;
    const waiting = lines.get(key);
    if (waiting === undefined) lines.set(key, [[rising.point, falling.point]]);
    else waiting.push([rising.point, falling.point]);
  }
  return lines;
};

/** The same bits whichever of its two triangles asks. */
const crossing = (
  p: Point,
  q: Point,
  { a, b }: { readonly a: number; readonly b: number },
): Point => {
  if (a > b) return crossing(q, p, { a: b, b: a });
  const share = a / (a - b);
  return [p[0] + (q[0] - p[0]) * share, p[1] + (q[1] - p[1]) * share, p[2] + (q[2] - p[2]) * share];
};

/** Places a ten-thousandth of a millimetre apart are one. */
const keyOf = (point: Point): string => point.map((value) => Math.round(value * 1e4)).join(" ");

const closedLoops = (lines: Map<string, [Point, Point][]>): readonly (readonly Point[])[] => {
  const loops: Point[][] = [];
  for (const start of lines.keys()) {
    for (;;) {
      const loop = followed(lines, start);
      if (loop === null) break;
      if (loop.length > 2) loops.push(loop);
    }
  }
  return loops;
};

const followed = (lines: Map<string, [Point, Point][]>, start: string): Point[] | null => {
  const loop: Point[] = [];
  let key = start;
  for (;;) {
    const line = lines.get(key)?.pop();
    if (line === undefined) return null;
    loop.push(line[0]);
    key = keyOf(line[1]);
    if (key === start) return loop;
  }
};

interface Nested {
  readonly outer: readonly Flat[];
  readonly holes: readonly (readonly Flat[])[];
}

/** A loop within an odd number of others is a hole of the smallest of them. */
const nested = (loops: readonly (readonly Flat[])[]): readonly Nested[] => {
  const around = loops.map((loop, index) =>
    loops
      .map((other, at) => ({ other, at }))
      .filter(({ other, at }) => at !== index && isInside(loop[0]!, other)),
  );
  return loops.flatMap((outer, index) => {
    if (around[index]!.length % 2 === 1) return [];
    const holes = loops.filter(
      (_, at) =>
        around[at]!.length === around[index]!.length + 1 &&
        around[at]!.some((parent) => parent.at === index),
    );
    return [{ outer, holes }];
  });
};

const isInside = ([x, y]: Flat, loop: readonly Flat[]): boolean => {
  let inside = false;
  for (const [index, [ax, ay]] of loop.entries()) {
    const [bx, by] = loop[(index + 1) % loop.length]!;
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  }
  return inside;
};

const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

const cross = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

const unit = (a: Point): Point => {
  const length = Math.hypot(...a);
  return [a[0] / length, a[1] / length, a[2] / length];
};

// Triangles in a tree of boxes, so that a ray meets a few dozen of them and not all: split at the middle triangle along the
// longest side of the box. Flat numbers throughout: a dark box takes a million rays.

export type Vector = readonly [number, number, number];

export interface TriangleTree {
  /** Some triangle lies on the ray, nearer than `most` lengths of its direction. */
  isMet(from: Vector, way: Vector, most?: number): boolean;
}

interface Tree {
  /** Six bounds a node. */
  readonly boxes: number[];
  /** First child, the second follows its subtree: -1 in a leaf. */
  readonly second: number[];
  /** Along which the first child is the lower one. */
  readonly axis: number[];
  /** Nine corners a triangle, leaf by leaf; where each leaf's run starts and ends. */
  readonly corners: number[];
  readonly start: number[];
  readonly end: number[];
}

const LEAF = 6;
/** A ray does not meet what it starts on, nor what lies at its very end. */
const START = 1e-6;

export const openTriangleTree = (corners: Float64Array): TriangleTree => {
  const tree: Tree = { boxes: [], second: [], axis: [], corners: [], start: [], end: [] };
  grow(
    Array.from({ length: corners.length / 9 }, (_, index) => index),
    corners,
    tree,
  );
  const flat = {
    boxes: Float64Array.from(tree.boxes),
    second: Int32Array.from(tree.second),
    axis: Int32Array.from(tree.axis),
    corners: Float64Array.from(tree.corners),
    start: Int32Array.from(tree.start),
    end: Int32Array.from(tree.end),
  };
  return {
    isMet: (from, way, most = Number.POSITIVE_INFINITY) =>
      isMet(flat, { from, way, over: [1 / way[0], 1 / way[1], 1 / way[2]], most }),
  };
};

/** Nodes in the order of a walk: a node's first child follows it. */
const grow = (triangles: readonly number[], corners: Float64Array, tree: Tree): void => {
  const node = tree.second.length;
  const box = boxOf(triangles, corners);
  tree.boxes.push(...box);
  tree.second.push(-1);
  tree.axis.push(0);
  tree.start.push(tree.corners.length);
  tree.end.push(tree.corners.length);
  if (triangles.length <= LEAF) {
    for (const index of triangles) tree.corners.push(...corners.subarray(index * 9, index * 9 + 9));
    tree.end[node] = tree.corners.length;
    return;
  }
  const axis = [0, 1, 2].reduce((a, b) => (box[b + 3]! - box[b]! > box[a + 3]! - box[a]! ? b : a));
  tree.axis[node] = axis;
  const middle = (index: number): number =>
    corners[index * 9 + axis]! + corners[index * 9 + 3 + axis]! + corners[index * 9 + 6 + axis]!;
  const sorted = triangles.toSorted((a, b) => middle(a) - middle(b));
  const half = sorted.length >> 1;
  grow(sorted.slice(0, half), corners, tree);
  tree.second[node] = tree.second.length;
  grow(sorted.slice(half), corners, tree);
};

const boxOf = (triangles: readonly number[], corners: Float64Array): readonly number[] => {
  const box = [Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity];
  for (const index of triangles)
    for (let at = 0; at < 9; at += 1) {
      const value = corners[index * 9 + at]!;
      const axis = at % 3;
      box[axis] = Math.min(box[axis]!, value);
      box[axis + 3] = Math.max(box[axis + 3]!, value);
    }
  return box;
};

interface FlatTree {
  readonly boxes: Float64Array;
  readonly second: Int32Array;
  readonly axis: Int32Array;
  readonly corners: Float64Array;
  readonly start: Int32Array;
  readonly end: Int32Array;
}

interface Ray {
  readonly from: Vector;
  readonly way: Vector;
  /** One over each of the direction's lengths. */
  readonly over: Vector;
  readonly most: number;
}

const stack = new Int32Array(64);

/** Neighbouring rays mostly end on one triangle: the last one that was met is asked first. */
let lastMet: { readonly tree: FlatTree; readonly at: number } | null = null;

const isMet = (tree: FlatTree, ray: Ray): boolean => {
  if (lastMet?.tree === tree && meetsTriangle(tree.corners, lastMet.at, ray)) return true;
  let depth = 1;
  stack[0] = 0;
  while (depth > 0) {
    depth -= 1;
    const node = stack[depth]!;
    if (!meetsBox(tree.boxes, node * 6, ray)) continue;
    if (tree.second[node]! >= 0) {
      // The nearer child is looked into first: a ray in a closed box ends soon.
      const isUpward = ray.way[tree.axis[node]!]! >= 0;
      stack[depth] = isUpward ? tree.second[node]! : node + 1;
      stack[depth + 1] = isUpward ? node + 1 : tree.second[node]!;
      depth += 2;
    } else if (meetsLeaf(tree, node, ray)) return true;
  }
  return false;
};

const meetsLeaf = (tree: FlatTree, node: number, ray: Ray): boolean => {
  const end = tree.end[node]!;
  for (let at = tree.start[node]!; at < end; at += 9)
    if (meetsTriangle(tree.corners, at, ray)) {
      lastMet = { tree, at };
      return true;
    }
  return false;
};

/** Axis by axis, without a loop: most of a dark box's time goes here. */
const meetsBox = (boxes: Float64Array, at: number, { from, over, most }: Ray): boolean => {
  const ax = (boxes[at]! - from[0]) * over[0];
  const bx = (boxes[at + 3]! - from[0]) * over[0];
  const ay = (boxes[at + 1]! - from[1]) * over[1];
  const by = (boxes[at + 4]! - from[1]) * over[1];
  const az = (boxes[at + 2]! - from[2]) * over[2];
  const bz = (boxes[at + 5]! - from[2]) * over[2];
  const near = Math.max(0, Math.min(ax, bx), Math.min(ay, by), Math.min(az, bz));
  const far = Math.min(most, Math.max(ax, bx), Math.max(ay, by), Math.max(az, bz));
  return near <= far;
};

/** Möller and Trumbore, Journal of Graphics Tools 2(1), 1997: both sides count. */
const meetsTriangle = (c: Float64Array, at: number, { from, way, most }: Ray): boolean => {
  const ax = c[at]!;
  const ay = c[at + 1]!;
  const az = c[at + 2]!;
  const ex = c[at + 3]! - ax;
  const ey = c[at + 4]! - ay;
  const ez = c[at + 5]! - az;
  const fx = c[at + 6]! - ax;
  const fy = c[at + 7]! - ay;
  const fz = c[at + 8]! - az;
  const px = way[1] * fz - way[2] * fy;
  const py = way[2] * fx - way[0] * fz;
  const pz = way[0] * fy - way[1] * fx;
  const size = ex * px + ey * py + ez * pz;
  if (size === 0) return false;
  const tx = from[0] - ax;
  const ty = from[1] - ay;
  const tz = from[2] - az;
  const u = (tx * px + ty * py + tz * pz) / size;
  if (u < 0 || u > 1) return false;
  const qx = ty * ez - tz * ey;
  const qy = tz * ex - tx * ez;
  const qz = tx * ey - ty * ex;
  const v = (way[0] * qx + way[1] * qy + way[2] * qz) / size;
  if (v < 0 || u + v > 1) return false;
  const distance = (fx * qx + fy * qy + fz * qz) / size;
  return distance > START && distance < most - START;
};

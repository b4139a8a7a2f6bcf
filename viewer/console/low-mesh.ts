// A recipe as few triangles and the lines that a draughtsman would draw, for the eye alone: no kernel, and nothing is taken
// out of composed solids. Takes a recipe and a frame, adds to a lot.

import { Earcut } from "three/src/extras/Earcut.js";
import type { Contour, Point } from "../../src/geometry/contour.ts";
import { flattened } from "../../src/geometry/flatten.ts";
import type { Mesh } from "../../src/geometry/solid/mesh.ts";
import type {
  LoftedSolid,
  RevolvedSolid,
  Solid,
  SolidLayer,
} from "../../src/geometry/solid/solid.ts";
import { turnMatrix } from "../../src/geometry/solid/turn.ts";
import { type Frame, frameWithin, pointOut } from "../../src/geometry/space/frame.ts";
import { type Vector, vector } from "../../src/geometry/space/vector.ts";
import { meshEdges } from "./mesh-edges.ts";

/** Grows in place while a lot is packed. */
export interface GrowingLot {
  readonly positions: number[];
  readonly triangles: number[];
  readonly edges: number[];
}

/** Chords of circles stray by so much, mm: a hole of 12 mm has 13 corners. */
const CHORD = 0.18;

export const addSolid = (lot: GrowingLot, solid: Solid, frame: Frame): void => {
  switch (solid.kind) {
    case "layered":
      for (const layer of solid.layers) addLayer(lot, layer, frame);
      return;
    case "revolved":
      addRevolved(lot, solid, frame);
      return;
    case "lofted":
      addLofted(lot, solid, frame);
      return;
    case "composed":
      for (const piece of solid.add) addSolid(lot, piece, frame);
      return;
    case "placed": {
      const { x, y, z } = solid.to;
      const within: Frame = { ...turnMatrix(solid.turn), origin: vector(x, y, z) };
      addSolid(lot, solid.solid, frameWithin(frame, within));
    }
  }
};

export const addMesh = (lot: GrowingLot, mesh: Mesh, frame: Frame): void => {
  const first = lot.positions.length / 3;
  const { positions, triangles } = mesh;
  for (let at = 0; at < positions.length; at += 3)
    addPoint(
      lot.positions,
      pointOut(frame, vector(positions[at]!, positions[at + 1]!, positions[at + 2]!)),
    );
  for (const corner of triangles) lot.triangles.push(first + corner);
  const edges = meshEdges(mesh);
  for (let at = 0; at < edges.length; at += 3)
    addPoint(lot.edges, pointOut(frame, vector(edges[at]!, edges[at + 1]!, edges[at + 2]!)));
};

/** A flat shape at a height, seen from the front: what is printed or engraved on a face. */
export const addFlat = (
  lot: GrowingLot,
  region: { readonly outline: Contour; readonly holes: readonly Contour[] },
  height: number,
): void => {
  const rings = ringsOf(region.outline, region.holes);
  const first = lot.positions.length / 3;
  for (const { x, y } of rings.flat()) lot.positions.push(x, y, height);
  for (const corner of capOf(rings)) lot.triangles.push(first + corner);
};

const addLayer = (lot: GrowingLot, { from, to, regions }: SolidLayer, frame: Frame): void => {
  for (const { outline, holes } of regions) {
    const rings = ringsOf(
      outline.contour,
      holes.map(({ contour }) => contour),
    );
    addStacked(lot, { rings, heights: [from, to] }, frame);
  }
};

const addLofted = (lot: GrowingLot, { sections }: LoftedSolid, frame: Frame): void => {
  const [low] = sections;
  const high = sections.at(-1);
  if (low === undefined || high === undefined) return;
  // Between the lowest and the highest section the eye is content with a straight wall.
  const rings = ringsOf(low.outline, low.holes);
  const others = ringsOf(high.outline, high.holes);
  const isAlike = rings.every((ring, index) => ring.length === others[index]?.length);
  addStacked(
    lot,
    { rings, heights: [low.height, high.height], ...(isAlike ? { top: others } : {}) },
    frame,
  );
};

interface Stacked {
  readonly rings: readonly (readonly Point[])[];
  readonly heights: readonly [number, number];
  /** The same corners at the top; absent: as at the foot. */
  readonly top?: readonly (readonly Point[])[];
}

const addStacked = (lot: GrowingLot, stacked: Stacked, frame: Frame): void => {
  const { rings, heights, top = rings } = stacked;
  const first = lot.positions.length / 3;
  const foot = rings.flat().map(({ x, y }) => pointOut(frame, vector(x, y, heights[0])));
  const head = top.flat().map(({ x, y }) => pointOut(frame, vector(x, y, heights[1])));
  for (const corner of [...foot, ...head]) addPoint(lot.positions, corner);
  const cap = capOf(rings);
  for (let at = 0; at < cap.length; at += 3) {
    const [a, b, c] = [cap[at]!, cap[at + 1]!, cap[at + 2]!];
    lot.triangles.push(first + a, first + c, first + b);
    lot.triangles.push(first + foot.length + a, first + foot.length + b, first + foot.length + c);
  }
  let start = 0;
  for (const ring of rings) {
    addWall(lot, { ring, start, first, foot, head });
    start += ring.length;
  }
};

interface Wall {
  readonly ring: readonly Point[];
  readonly start: number;
  readonly first: number;
  readonly foot: readonly Vector[];
  readonly head: readonly Vector[];
}

const addWall = (lot: GrowingLot, { ring, start, first, foot, head }: Wall): void => {
  for (const index of ring.keys()) {
    const here = start + index;
    const next = start + ((index + 1) % ring.length);
    const up = first + foot.length;
    lot.triangles.push(first + here, first + next, up + next, first + here, up + next, up + here);
    addEdge(lot, foot[here]!, foot[next]!);
    addEdge(lot, head[here]!, head[next]!);
    if (isSharp(ring, index)) addEdge(lot, foot[here]!, head[here]!);
  }
};

/** Turned by more than 50 degrees there: chords of a circle of 4 mm and more turn by less. */
const SHARP = Math.cos((50 * Math.PI) / 180);

const isSharp = (ring: readonly Point[], index: number): boolean => {
  const at = ring[index]!;
  const before = ring.at(index - 1)!;
  const after = ring[(index + 1) % ring.length]!;
  const [ax, ay, bx, by] = [at.x - before.x, at.y - before.y, after.x - at.x, after.y - at.y];
  const lengths = Math.hypot(ax, ay) * Math.hypot(bx, by);
  return lengths > 0 && (ax * bx + ay * by) / lengths < SHARP;
};

const TURN_SIDES = 20;

const addRevolved = (lot: GrowingLot, { at, profile }: RevolvedSolid, frame: Frame): void => {
  const corners = counterClockwise(flattened(profile, CHORD));
  const first = lot.positions.length / 3;
  const placeAt = (side: number, { x, y }: Point): Vector => {
    const angle = (2 * Math.PI * side) / TURN_SIDES;
    return pointOut(frame, vector(at.x + x * Math.cos(angle), at.y + x * Math.sin(angle), y));
  };
  for (let side = 0; side < TURN_SIDES; side += 1)
    for (const corner of corners) addPoint(lot.positions, placeAt(side, corner));
  const count = corners.length;
  for (let side = 0; side < TURN_SIDES; side += 1) {
    const [here, there] = [first + side * count, first + ((side + 1) % TURN_SIDES) * count];
    for (const [index, corner] of corners.entries()) {
      const next = (index + 1) % count;
      lot.triangles.push(here + index, there + index, there + next);
      lot.triangles.push(here + index, there + next, here + next);
      if (isSharp(corners, index)) addEdge(lot, placeAt(side, corner), placeAt(side + 1, corner));
    }
  }
};

const ringsOf = (outline: Contour, holes: readonly Contour[]): readonly (readonly Point[])[] => [
  counterClockwise(flattened(outline, CHORD)),
  ...holes.map((hole) => [...counterClockwise(flattened(hole, CHORD))].reverse()),
];

const capOf = (rings: readonly (readonly Point[])[]): readonly number[] => {
  const starts: number[] = [];
  let count = rings[0]?.length ?? 0;
  for (const ring of rings.slice(1)) {
    starts.push(count);
    count += ring.length;
  }
  return Earcut.triangulate(
    rings.flatMap((ring) => ring.flatMap(({ x, y }) => [x, y])),
    starts,
    2,
  );
};

const counterClockwise = (ring: readonly Point[]): readonly Point[] =>
  signedArea(ring) < 0 ? [...ring].reverse() : ring;

const signedArea = (ring: readonly Point[]): number => {
  let twice = 0;
  for (const [index, { x, y }] of ring.entries()) {
    const next = ring[(index + 1) % ring.length]!;
    twice += x * next.y - next.x * y;
  }
  return twice / 2;
};

const addPoint = (to: number[], { x, y, z }: Vector): void => {
  to.push(x, y, z);
};

const addEdge = (lot: GrowingLot, a: Vector, b: Vector): void => {
  lot.edges.push(a.x, a.y, a.z, b.x, b.y, b.z);
};

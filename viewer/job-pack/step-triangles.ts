// A solid of a STEP file as triangles and lines to be drawn: flat faces within their bounds, round ones in strips, true arcs as
// chords. A face that can't be made from what stands in the file is counted and left to its edges.

import { ShapeUtils, Vector2 } from "three";
import { cross, dot, scaled, type Vector } from "../../src/geometry/space/vector.ts";
import type {
  StepEdge,
  StepFace,
  StepPlacement,
  StepSolid,
  UsedStepEdge,
} from "../../src/inspection/step-shape.ts";
import { chordsOf } from "./step-chords.ts";
import { roundStrips } from "./step-round-face.ts";

/** Three numbers a place; three places a triangle, two a line. */
export interface DrawnStep {
  readonly corners: Float32Array;
  /** One a corner, out of the solid: round faces are shaded round. */
  readonly normals: Float32Array;
  readonly lines: Float32Array;
  /** Faces that are drawn by their edges alone. */
  readonly undrawn: number;
}

export const drawnStep = ({ faces, edges }: StepSolid): DrawnStep => {
  const chords: Chords = new Map(edges.map((edge) => [edge, chordsOf(edge)]));
  const to: Triangles = { corners: [], normals: [] };
  let undrawn = 0;
  for (const face of faces) {
    const isDrawn =
      face.surface.kind === "plane" ? drawFlat(face, chords, to) : drawRound(face, to);
    if (!isDrawn) undrawn += 1;
  }
  return {
    corners: Float32Array.from(to.corners),
    normals: Float32Array.from(to.normals),
    lines: linesOf(chords),
    undrawn,
  };
};

type Chords = ReadonlyMap<StepEdge, readonly Vector[]>;

interface Triangles {
  readonly corners: number[];
  readonly normals: number[];
}

const put = (numbers: number[], { x, y, z }: Vector): void => {
  numbers.push(x, y, z);
};

const linesOf = (chords: Chords): Float32Array => {
  const lines: number[] = [];
  for (const places of chords.values()) {
    let before: Vector | null = null;
    for (const place of places) {
      if (before !== null) {
        put(lines, before);
        put(lines, place);
      }
      before = place;
    }
  }
  return Float32Array.from(lines);
};

/** A bound in its plane, and each of its corners where it is in space. */
interface FlatBound {
  readonly flat: readonly Vector2[];
  readonly places: readonly Vector[];
  readonly area: number;
}

const drawFlat = (
  { surface, isOutward, bounds }: StepFace,
  chords: Chords,
  to: Triangles,
): boolean => {
  const runs = bounds
    .map((bound) => flatBound(bound, chords, surface.at))
    // The outline has the largest area; the others are its holes.
    .toSorted((a, b) => Math.abs(b.area) - Math.abs(a.area));
  const [outline, ...holes] = runs;
  if (outline === undefined) return false;
  const parts = ShapeUtils.triangulateShape(
    [...outline.flat],
    holes.map(({ flat }) => [...flat]),
  );
  const flat = runs.flatMap((run) => run.flat);
  const places = runs.flatMap((run) => run.places);
  const triangles = parts.map((corners) => turnedLeft(corners, flat));
  const wanted = Math.abs(outline.area) - sum(holes.map(({ area }) => Math.abs(area)));
  if (!(Math.abs(sum(triangles.map(({ area }) => area)) - wanted) <= SAME_AREA * wanted))
    return false;
  const normal = isOutward ? surface.at.along : scaled(surface.at.along, -1);
  for (const { corners } of triangles)
    for (const corner of isOutward ? corners : corners.toReversed()) {
      put(to.corners, places[corner] ?? surface.at.origin);
      put(to.normals, normal);
    }
  return true;
};

/** Of the face: what its triangles leave out or have twice. Numbers of the file and of the sums agree far better. */
const SAME_AREA = 1e-6;

const flatBound = (
  bound: readonly UsedStepEdge[],
  chords: Chords,
  { origin, along, right }: StepPlacement,
): FlatBound => {
  const up = cross(along, right);
  // Each edge without its last corner, which is the first of the next.
  const places = bound.flatMap(({ edge, isForward }) => {
    const run = chords.get(edge) ?? [];
    return (isForward ? run : run.toReversed()).slice(0, -1);
  });
  const from = { right: dot(origin, right), up: dot(origin, up) };
  const flat = places.map(
    (place) => new Vector2(dot(place, right) - from.right, dot(place, up) - from.up),
  );
  return { flat, places, area: ShapeUtils.area([...flat]) };
};

const turnedLeft = (
  corners: readonly number[],
  flat: readonly Vector2[],
): { readonly corners: readonly number[]; readonly area: number } => {
  const area = ShapeUtils.area(corners.map((corner) => flat[corner] ?? new Vector2()));
  return { corners: area < 0 ? corners.toReversed() : corners, area: Math.abs(area) };
};

const sum = (numbers: readonly number[]): number => numbers.reduce((all, each) => all + each, 0);

const drawRound = (face: StepFace, to: Triangles): boolean => {
  const strips = roundStrips(face);
  if (strips === null || strips.length === 0) return false;
  for (const { corners, outward } of strips)
    for (const corner of face.isOutward ? OUTWARD : INWARD) {
      put(to.corners, corners[corner]);
      const [first, second] = outward;
      put(
        to.normals,
        scaled(corner === 1 || corner === 2 ? second : first, face.isOutward ? 1 : -1),
      );
    }
  return true;
};

/** The corners of a strip's two triangles, turning left as seen from outside or from the axis. */
const OUTWARD = [0, 1, 2, 0, 2, 3] as const;
const INWARD = [0, 2, 1, 0, 3, 2] as const;

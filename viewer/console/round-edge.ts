// Whether an edge of a picture is a piece of a circle: shapes for the eye have polygons for circles. Takes lines, two points each,
// and the place of one of them; gives the middle of its circle and how far it is across.

import {
  cross,
  dot,
  minus,
  plus,
  scaled,
  spaceDistance,
  type Vector,
  vector,
  vectorLength,
} from "../../src/geometry/space/vector.ts";

export interface Ring {
  readonly at: Vector;
  readonly across: number;
}

/** Corners that a circle is drawn with at least, those of 3 mm and less: a nut has six. */
const FEWEST = 7;
/** Off its circle, mm: what a corner's single precision is good for, some metres from the middle of the console. */
const OFF = 0.01;
/** Round the middle no two neighbours stand farther apart, in degrees: else it is an arc, whose middle lies in no hole. */
const WIDEST = 60;

/** `at`: where the line begins in `lines`. null: an edge of something else. */
export const roundEdge = (lines: ArrayLike<number>, at: number): Ring | null => {
  const [a, b] = [pointAt(lines, at), pointAt(lines, at + 3)];
  for (const c of beyond(lines, a, b)) {
    const ring = circleThrough(a, b, c);
    if (ring !== null && isDrawn(lines, ring)) return { at: ring.middle, across: 2 * ring.radius };
  }
  return null;
};

const pointAt = (lines: ArrayLike<number>, at: number): Vector =>
  vector(lines[at]!, lines[at + 1]!, lines[at + 2]!);

const ends = (lines: ArrayLike<number>): readonly (readonly [Vector, Vector])[] =>
  Array.from({ length: Math.floor(lines.length / 6) }, (_, index) => [
    pointAt(lines, 6 * index),
    pointAt(lines, 6 * index + 3),
  ]);

/** The other ends of lines that go on from `b`. */
const beyond = (lines: ArrayLike<number>, a: Vector, b: Vector): readonly Vector[] =>
  ends(lines).flatMap(([from, to]) => {
    if (spaceDistance(from, b) < OFF && spaceDistance(to, a) > OFF) return [to];
    return spaceDistance(to, b) < OFF && spaceDistance(from, a) > OFF ? [from] : [];
  });

interface Circle {
  readonly middle: Vector;
  readonly radius: number;
  /** A unit vector along its axis. */
  readonly normal: Vector;
}

/** By its circumcentre; null where the three lie in a line. */
const circleThrough = (a: Vector, b: Vector, c: Vector): Circle | null => {
  const [u, v] = [minus(b, a), minus(c, a)];
  const normal = cross(u, v);
  const size = dot(normal, normal);
  if (Math.sqrt(size) < OFF * vectorLength(v)) return null;
  const toMiddle = scaled(
    minus(scaled(cross(v, normal), dot(u, u)), scaled(cross(u, normal), dot(v, v))),
    1 / (2 * size),
  );
  return {
    middle: plus(a, toMiddle),
    radius: vectorLength(toMiddle),
    normal: scaled(normal, 1 / Math.sqrt(size)),
  };
};

/** Whether corners stand on it all the way round. */
const isDrawn = (lines: ArrayLike<number>, { middle, radius, normal }: Circle): boolean => {
  const on = ends(lines)
    .flat()
    .map((point) => minus(point, middle))
    .filter(
      (out) => Math.abs(dot(out, normal)) < OFF && Math.abs(vectorLength(out) - radius) < OFF,
    );
  const [first] = on;
  if (first === undefined) return false;
  const aside = cross(normal, first);
  const turns = [
    ...new Set(
      on.map((out) => Math.round((Math.atan2(dot(out, aside), dot(out, first)) * 1800) / Math.PI)),
    ),
  ].toSorted((a, b) => a - b);
  const isClosed = turns.every((turn, index) => {
    const next = turns[index + 1] ?? turns[0]! + 3600;
    return next - turn < 10 * WIDEST;
  });
  // A half turn is found at either end of the count.
  const isTwice = turns[0] === -1800 && turns.at(-1) === 1800;
  return isClosed && turns.length - (isTwice ? 1 : 0) >= FEWEST;
};

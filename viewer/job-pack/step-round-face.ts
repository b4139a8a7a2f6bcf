// A round face of a STEP file in strips along its axis: between two angles it reaches from one of its arcs to the next. Only faces
// bounded by level arcs and by lines along the axis are made; others give null.

import { dot, minus, plus, scaled, type Vector } from "../../src/geometry/space/vector.ts";
import type { StepFace, StepPlacement } from "../../src/inspection/step-shape.ts";
import { outwardAt, stepsBetween } from "./step-chords.ts";

/** Four corners, turning left as seen from outside the cylinder: two at the first angle, two at the second. */
export interface RoundStrip {
  readonly corners: readonly [Vector, Vector, Vector, Vector];
  /** Away from the axis, at the first angle and at the second. */
  readonly outward: readonly [Vector, Vector];
}

export const roundStrips = ({ surface, bounds }: StepFace): readonly RoundStrip[] | null => {
  if (surface.kind !== "cylinder") return null;
  const arcs: LevelArc[] = [];
  for (const { edge } of bounds.flat()) {
    if (edge.kind === "line") {
      if (!isAlong(minus(edge.to, edge.from), surface.at)) return null;
      continue;
    }
    if (!isAlong(edge.at.along, surface.at)) return null;
    const turn = dot(edge.at.along, surface.at.along) * edge.sweep;
    const begin = angleAt(turn > 0 ? edge.from : edge.to, surface.at);
    const height = dot(minus(edge.from, surface.at.origin), surface.at.along);
    arcs.push({ begin, sweep: Math.abs(turn), height });
  }
  const angles = anglesOf(arcs);
  const strips = angles.map((angle, index) =>
    stripsFrom(angle, angles[index + 1] ?? (angles[0] ?? 0) + TURN, arcs),
  );
  if (strips.some((strip) => strip === null)) return null;
  return strips.flatMap((strip) => (strip ?? []).map((each) => placed(each, surface)));
};

interface LevelArc {
  readonly begin: number;
  readonly sweep: number;
  readonly height: number;
}

interface Strip {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
}

const TURN = 2 * Math.PI;

/**
 * Sine squared of 3e-5 radians. Far more than rounding turns a way by: directions are written to twelve decimals, places to nine.
 * What is farther off is no line along the axis.
 */
const PARALLEL = 1e-9;

const isAlong = (way: Vector, { along }: StepPlacement): boolean => {
  const length = dot(way, along);
  const aside = minus(way, scaled(along, length));
  return dot(aside, aside) <= PARALLEL * dot(way, way);
};

const angleAt = (place: Vector, at: StepPlacement): number => {
  const out = minus(place, at.origin);
  return around(Math.atan2(dot(out, outwardAt(at, TURN / 4)), dot(out, at.right)));
};

/** From nothing up to less than a whole turn. */
const around = (angle: number): number => angle - TURN * Math.floor(angle / TURN);

/** Where an arc begins or ends, and every whole step between. */
const anglesOf = (arcs: readonly LevelArc[]): readonly number[] =>
  [
    ...new Set(
      arcs.flatMap(({ begin, sweep }) =>
        [begin, ...stepsBetween(begin, begin + sweep), begin + sweep].map(around),
      ),
    ),
  ].toSorted((a, b) => a - b);

/** Arcs that end on one line differ by rounding there: a strip between their ends is none. Radians. */
const NARROW = 1e-6;

/** The face lies between the first and the second arc over the strip, the third and the fourth. */
const stripsFrom = (
  from: number,
  to: number,
  arcs: readonly LevelArc[],
): readonly Strip[] | null => {
  if (to - from < NARROW) return [];
  const middle = (from + to) / 2;
  const heights = arcs
    .filter(({ begin, sweep }) => around(middle - begin) < sweep)
    .map(({ height }) => height)
    .toSorted((a, b) => a - b);
  if (heights.length % 2 !== 0) return null;
  return heights.flatMap((low, index) =>
    index % 2 === 0 ? [{ from, to, low, high: heights[index + 1] ?? low }] : [],
  );
};

const placed = (
  { from, to, low, high }: Strip,
  { at, radius }: Extract<StepFace["surface"], { readonly kind: "cylinder" }>,
): RoundStrip => {
  const outward = [outwardAt(at, from), outwardAt(at, to)] as const;
  const place = (side: Vector, height: number): Vector =>
    plus(plus(at.origin, scaled(at.along, height)), scaled(side, radius));
  const [first, second] = outward;
  return {
    corners: [place(first, low), place(second, low), place(second, high), place(first, high)],
    outward,
  };
};

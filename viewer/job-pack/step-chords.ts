// An edge of a STEP file as places along it: a line by its ends, a true arc by chords. Their steps are counted from the arc's own
// first axis, so that a round face over it, which counts alike, has its corners on the same places.

import { cross, plus, scaled, type Vector } from "../../src/geometry/space/vector.ts";
import type { StepEdge, StepPlacement } from "../../src/inspection/step-shape.ts";

/** 5 degrees: an arc of 10 mm is drawn within 0.01 mm, less than a pixel unless one comes very near. Radians. */
const CHORD = Math.PI / 36;

export const chordsOf = (edge: StepEdge): readonly Vector[] => {
  if (edge.kind === "line") return [edge.from, edge.to];
  const { at, radius, start, sweep } = edge;
  const [low, high] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
  const between = stepsBetween(low, high).map((angle) => placeAt(at, radius, angle));
  return [edge.from, ...(sweep > 0 ? between : between.toReversed()), edge.to];
};

/** Whole steps that lie between two angles, without those that are as good as at them. */
export const stepsBetween = (low: number, high: number): readonly number[] => {
  const first = Math.floor(low / CHORD + AS_GOOD) + 1;
  const last = Math.ceil(high / CHORD - AS_GOOD) - 1;
  return Array.from(
    { length: Math.max(0, last - first + 1) },
    (_, index) => (first + index) * CHORD,
  );
};

/** Of a step: a thousandth of it can't be seen. */
const AS_GOOD = 1e-3;

const placeAt = (at: StepPlacement, radius: number, angle: number): Vector =>
  plus(at.origin, scaled(outwardAt(at, angle), radius));

/** Away from the axis, at this angle from its first axis. */
export const outwardAt = ({ along, right }: StepPlacement, angle: number): Vector =>
  plus(scaled(right, Math.cos(angle)), scaled(cross(along, right), Math.sin(angle)));

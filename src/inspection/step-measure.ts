// Measures a solid that was read from a STEP file, exactly for its planes, cylinders and true arcs: surface, volume, box, how many
// shells hang together, and faces that look the wrong way. Facts only; the table says what they should be.

import { joinGroups, ownLeaders } from "../geometry/leaders.ts";
import { radians } from "../geometry/quantity.ts";
import { cross, dot, minus, plus, scaled, type Vector, vector } from "../geometry/space/vector.ts";
import { arcTangent2, cosine, sine } from "../geometry/trigonometry.ts";
import type { MeasuredBox } from "./box-readings.ts";
import type { StepEdge, StepFace, StepPlacement, StepSolid, UsedStepEdge } from "./step-shape.ts";
import { TURN } from "./turn.ts";

export interface StepMeasures extends MeasuredBox {
  /** mm², of all faces. */
  readonly surface: number;
  /** mm³; below zero where the solid is inside out. */
  readonly volume: number;
  /** Groups of faces that hang together by their edges. */
  readonly shells: number;
  /** Faces whose bounds run clockwise seen from outside. */
  readonly turned: number;
}

export const measuredStep = (solid: StepSolid): StepMeasures => {
  const faces = solid.faces.map(measuredFace);
  return {
    surface: faces.reduce((sum, { area }) => sum + Math.abs(area), 0),
    volume: faces.reduce((sum, { flow }) => sum + flow, 0) / 3,
    shells: shellCount(solid.faces),
    turned: faces.filter(({ area }) => !(area > 0)).length,
    ...boxOf(solid.edges),
  };
};

interface MeasuredFace {
  /** Above zero where the bounds run counter-clockwise seen from outside. */
  readonly area: number;
  /** The place vector through the face: a third of the sum over a closed shell is its volume (Gauss). */
  readonly flow: number;
}

/** Turned over, both its normal and the way round its bounds change sign: of the flow nothing is seen. */
const measuredFace = (face: StepFace): MeasuredFace => {
  const { surface } = face;
  const outward = face.isOutward ? 1 : -1;
  if (surface.kind === "cylinder") {
    const { area, flow } = cylinderSums(face, surface);
    return { area: outward * area, flow };
  }
  const area = planeArea(face, surface.at);
  return { area: outward * area, flow: area * dot(surface.at.origin, surface.at.along) };
};

/** By Green, seen against the plane's normal: chords from corner to corner, and what arcs bow beyond them. */
const planeArea = ({ bounds }: StepFace, { origin, along }: StepPlacement): number => {
  let sum = 0;
  for (const use of bounds.flat()) {
    const { edge } = use;
    const [from, to] = [startOf(use), endOf(use)];
    sum += dot(cross(minus(from, origin), minus(to, origin)), along);
    if (edge.kind === "arc") {
      const sweep = wayOf(use) * edge.sweep * Math.sign(dot(edge.at.along, along));
      sum += edge.radius * edge.radius * (sweep - sine(radians(sweep)));
    }
  }
  return sum / 2;
};

/**
 * Unrolled: across by the angle, up along the axis. Green's sum of -height d(angle); with it the axis's own way from the
 * origin, whose part across the surface comes from the chord. Lines run along the axis and add nothing.
 */
const cylinderSums = (
  { bounds }: StepFace,
  { at, radius }: { readonly at: StepPlacement; readonly radius: number },
): MeasuredFace => {
  let area = 0;
  let across = 0;
  for (const use of bounds.flat()) {
    const { edge } = use;
    if (edge.kind === "line") continue;
    const height = dot(minus(edge.at.origin, at.origin), at.along);
    const sweep = wayOf(use) * edge.sweep * Math.sign(dot(edge.at.along, at.along));
    const chord = minus(endOf(use), startOf(use));
    area -= height * radius * sweep;
    across -= height * dot(at.origin, cross(chord, at.along));
  }
  return { area, flow: radius * area + across };
};

const wayOf = ({ isForward }: UsedStepEdge): number => (isForward ? 1 : -1);

const startOf = ({ edge, isForward }: UsedStepEdge): Vector => (isForward ? edge.from : edge.to);

const endOf = ({ edge, isForward }: UsedStepEdge): Vector => (isForward ? edge.to : edge.from);

const shellCount = (faces: readonly StepFace[]): number => {
  const leaders = ownLeaders(faces.length);
  const firstFace = new Map<StepEdge, number>();
  for (const [index, { bounds }] of faces.entries())
    for (const { edge } of bounds.flat()) {
      const first = firstFace.get(edge);
      if (first === undefined) firstFace.set(edge, index);
      else joinGroups(leaders, first, index);
    }
  return leaders.filter((leader, index) => leader === index).length;
};

const AXES = [vector(1, 0, 0), vector(0, 1, 0), vector(0, 0, 1)] as const;

/** Corners, and where an arc between them turns back along an axis. Surfaces reach no farther than their edges where whole. */
const boxOf = (edges: readonly StepEdge[]): MeasuredBox => {
  const sides = AXES.map((axis) => {
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (const edge of edges)
      for (const place of [edge.from, edge.to, ...turningPlaces(edge, axis)]) {
        const value = dot(place, axis);
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
    return { low, high };
  });
  const [x, y, z] = [sides[0]!, sides[1]!, sides[2]!];
  return { low: [x.low, y.low, z.low], high: [x.high, y.high, z.high] };
};

/** At most two: opposite one another. */
const turningPlaces = (edge: StepEdge, axis: Vector): readonly Vector[] => {
  if (edge.kind === "line") return [];
  const { at, radius, start, sweep } = edge;
  const up = cross(at.along, at.right);
  const [across, upward] = [dot(at.right, axis), dot(up, axis)];
  if (across === 0 && upward === 0) return [];
  const farthest = arcTangent2(upward, across);
  return [farthest, farthest + Math.PI]
    .filter((angle) => isWithin(angle, start, sweep))
    .map((angle) => {
      const [right, over] = [cosine(radians(angle)), sine(radians(angle))];
      return plus(at.origin, plus(scaled(at.right, radius * right), scaled(up, radius * over)));
    });
};

const isWithin = (angle: number, start: number, sweep: number): boolean => {
  const turned = (((sweep > 0 ? angle - start : start - angle) % TURN) + TURN) % TURN;
  return turned <= Math.abs(sweep);
};

// Curves and surfaces of a STEP file (ISO 10303-42, 4.4 and 4.5): points, directions, placements, lines, circles, planes and
// cylinders. An edge is as long as its curve between its two corners.

import {
  cross,
  dot,
  minus,
  plus,
  scaled,
  type Vector,
  vector,
  vectorLength,
} from "../geometry/space/vector.ts";
import { arcTangent2 } from "../geometry/trigonometry.ts";
import type { StepEntity } from "./step-instances.ts";
import type { StepEdge, StepPlacement, StepSurface } from "./step-shape.ts";
import type { StepLookUp } from "./step-values.ts";
import { TURN } from "./turn.ts";

export interface EdgeWritten {
  readonly number: number;
  readonly from: number | null;
  readonly to: number | null;
  readonly curve: number | null;
  /** Whether it runs as its curve does. */
  readonly isAlong: boolean;
}

export interface Curves {
  surface(number: number | null): StepSurface | null;
  edge(written: EdgeWritten): StepEdge | null;
}

export const curvesOf = (look: StepLookUp): Curves => ({
  surface: (number) => {
    const surface = look.oneOf(number, ["PLANE", "CYLINDRICAL_SURFACE"]);
    const at = surface === null ? null : placementOf(look.reference(surface, 1), look);
    if (surface === null || at === null) return null;
    return surface.name === "PLANE"
      ? { kind: "plane", at }
      : { kind: "cylinder", at, radius: look.number(surface, 2) };
  },
  edge: (written) => {
    const [from, to] = [vertexOf(written.from, look), vertexOf(written.to, look)];
    const drawn = look.oneOf(written.curve, ["LINE", "CIRCLE"]);
    if (from === null || to === null || drawn === null) return null;
    const between = { from, to };
    return drawn.name === "LINE"
      ? lineEdge(drawn, { written, between, look })
      : arcEdge(drawn, { written, between, look });
  },
});

interface Writing {
  readonly written: EdgeWritten;
  readonly between: { readonly from: Vector; readonly to: Vector };
  readonly look: StepLookUp;
}

const lineEdge = (drawn: StepEntity, { written, between, look }: Writing): StepEdge | null => {
  const line = lineOf(drawn, look);
  if (line === null) return null;
  const { through, along } = line;
  return {
    kind: "line",
    ...between,
    through,
    along: written.isAlong ? along : scaled(along, -1),
  };
};

const arcEdge = (drawn: StepEntity, { written, between, look }: Writing): StepEdge | null => {
  const at = placementOf(look.reference(drawn, 1), look);
  if (at === null) return null;
  const [start, end] = [angleAt(between.from, at), angleAt(between.to, at)];
  const isWhole = written.from === written.to;
  const left = isWhole ? TURN : positive(end - start);
  const right = isWhole ? TURN : positive(start - end);
  const sweep = written.isAlong ? left : -right;
  return { kind: "arc", ...between, at, radius: look.number(drawn, 2), start, sweep };
};

/** LINE(name, point, VECTOR(name, direction, length)). */
const lineOf = (
  line: StepEntity,
  look: StepLookUp,
): { readonly through: Vector; readonly along: Vector } | null => {
  const through = pointOf(look.reference(line, 1), look);
  const way = look.named(look.reference(line, 2), "VECTOR");
  const along = way === null ? null : directionOf(look.reference(way, 1), look);
  return through === null || along === null ? null : { through, along };
};

const positive = (angle: number): number => (angle > 0 ? angle : angle + TURN);

const angleAt = (place: Vector, { origin, along, right }: StepPlacement): number => {
  const out = minus(place, origin);
  return arcTangent2(dot(out, cross(along, right)), dot(out, right));
};

const vertexOf = (number: number | null, look: StepLookUp): Vector | null => {
  const vertex = look.named(number, "VERTEX_POINT");
  return vertex === null ? null : pointOf(look.reference(vertex, 1), look);
};

const pointOf = (number: number | null, look: StepLookUp): Vector | null => {
  const point = look.named(number, "CARTESIAN_POINT");
  return point === null ? null : tripleOf(look.numbers(point, 1));
};

const directionOf = (number: number | null, look: StepLookUp): Vector | null => {
  const direction = look.named(number, "DIRECTION");
  const triple = direction === null ? null : tripleOf(look.numbers(direction, 1));
  const length = triple === null ? 0 : vectorLength(triple);
  return triple === null || length === 0 ? null : scaled(triple, 1 / length);
};

const tripleOf = ([x, y, z]: readonly number[]): Vector | null =>
  x === undefined || y === undefined || z === undefined ? null : vector(x, y, z);

/** AXIS2_PLACEMENT_3D(name, location, axis, ref_direction): the last is what of it lies upright to the axis. */
const placementOf = (number: number | null, look: StepLookUp): StepPlacement | null => {
  const placement = look.named(number, "AXIS2_PLACEMENT_3D");
  if (placement === null) return null;
  const origin = pointOf(look.reference(placement, 1), look);
  const along = directionOf(look.reference(placement, 2), look);
  const toward = directionOf(look.reference(placement, 3), look);
  if (origin === null || along === null || toward === null) return null;
  const level = plus(toward, scaled(along, -dot(toward, along)));
  const length = vectorLength(level);
  return length === 0 ? null : { origin, along, right: scaled(level, 1 / length) };
};

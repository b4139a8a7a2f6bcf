// Whether the faces and edges of a solid that was read agree with one another: corners lie on their lines and arcs, they and the middles
// between them on their surfaces, each bound comes back to where it began and goes round no cylinder alone, and each edge is used
// by two faces in opposite directions, so that the shell is closed.

import { radians } from "../geometry/quantity.ts";
import {
  cross,
  dot,
  minus,
  plus,
  scaled,
  spaceDistance,
  type Vector,
  vectorLength,
} from "../geometry/space/vector.ts";
import { cosine, sine } from "../geometry/trigonometry.ts";
import type { StepEdge, StepFace, StepSolid, StepSurface, UsedStepEdge } from "./step-shape.ts";

/** What a STEP file of this trade says of itself as `distance_accuracy_value`: a tenth of a micrometre. In mm. */
const AGREES = 1e-4;

export const strangersAmong = ({ name, faces, edges }: StepSolid): readonly string[] => [
  ...counted(edges.filter((edge) => !isOnItsCurve(edge)).length, (count) =>
    count === 1
      ? `${name}: an edge does not lie between its corners`
      : `${name}: ${count} edges do not lie between their corners`,
  ),
  ...counted(faces.filter((face) => !isOnItsSurface(face)).length, (count) =>
    count === 1
      ? `${name}: a face does not lie in its bounds`
      : `${name}: ${count} faces do not lie in their bounds`,
  ),
  ...counted(faces.filter(({ bounds }) => !bounds.every(isClosed)).length, (count) =>
    count === 1
      ? `${name}: the bound of a face is open`
      : `${name}: the bounds of ${count} faces are open`,
  ),
  ...counted(unpaired(faces), (count) =>
    count === 1
      ? `${name}: an edge has not two faces`
      : `${name}: ${count} edges have not two faces`,
  ),
];

const counted = (count: number, words: (count: number) => string): readonly string[] =>
  count === 0 ? [] : [words(count)];

const isOnItsCurve = (edge: StepEdge): boolean => {
  if (edge.kind === "line") return isOnItsLine(edge);
  const { at, radius } = edge;
  return [edge.from, edge.to].every((corner) => {
    const out = minus(corner, at.origin);
    const isLevel = Math.abs(dot(out, at.along)) <= AGREES;
    return isLevel && Math.abs(vectorLength(out) - radius) <= AGREES;
  });
};

/** And as the line runs. */
const isOnItsLine = ({ from, to, through, along }: Extract<StepEdge, { kind: "line" }>): boolean =>
  dot(minus(to, from), along) > 0 &&
  [from, to].every((corner) => vectorLength(cross(minus(corner, through), along)) <= AGREES);

const isOnItsSurface = ({ surface, bounds }: StepFace): boolean =>
  bounds.flat().every(({ edge }) => placesOf(edge).every((at) => isNear(at, surface))) &&
  (surface.kind === "plane" || isLedBack(bounds.flat(), surface.at.along));

/** Corners that lie on it say nothing of the way between them: a half circle may stand out of the plane of its face. */
const placesOf = (edge: StepEdge): readonly Vector[] => [edge.from, edge.to, middleOf(edge)];

const middleOf = (edge: StepEdge): Vector => {
  if (edge.kind === "line") return scaled(plus(edge.from, edge.to), 1 / 2);
  const { at, radius, start, sweep } = edge;
  const angle = radians(start + sweep / 2);
  const up = cross(at.along, at.right);
  return plus(
    at.origin,
    plus(scaled(at.right, radius * cosine(angle)), scaled(up, radius * sine(angle))),
  );
};

/**
 * Round a cylinder the bounds of a face turn as far one way as the other. An arc that is run round the other side lies on the same
 * cylinder, but leaves a whole turn or two: half of one tells them apart.
 */
const isLedBack = (uses: readonly UsedStepEdge[], axis: Vector): boolean => {
  const turned = uses.reduce((sum, { edge, isForward }) => {
    if (edge.kind === "line") return sum;
    return sum + (isForward ? 1 : -1) * Math.sign(dot(edge.at.along, axis)) * edge.sweep;
  }, 0);
  return Math.abs(turned) < Math.PI;
};

/** Written so that what is no number is not near. */
const isNear = (place: Vector, surface: StepSurface): boolean => {
  const out = minus(place, surface.at.origin);
  return surface.kind === "plane"
    ? Math.abs(dot(out, surface.at.along)) <= AGREES
    : Math.abs(vectorLength(cross(out, surface.at.along)) - surface.radius) <= AGREES;
};

const endOf = ({ edge, isForward }: UsedStepEdge): Vector => (isForward ? edge.to : edge.from);

const startOf = ({ edge, isForward }: UsedStepEdge): Vector => (isForward ? edge.from : edge.to);

const isClosed = (bound: readonly UsedStepEdge[]): boolean =>
  bound.length > 0 &&
  bound.every((use, index) => {
    const next = bound[(index + 1) % bound.length];
    return next !== undefined && spaceDistance(endOf(use), startOf(next)) <= AGREES;
  });

const unpaired = (faces: readonly StepFace[]): number => {
  const uses = new Map<StepEdge, { forward: number; backward: number }>();
  for (const { edge, isForward } of faces.flatMap(({ bounds }) => bounds.flat())) {
    const known = uses.get(edge) ?? { forward: 0, backward: 0 };
    if (isForward) known.forward += 1;
    else known.backward += 1;
    uses.set(edge, known);
  }
  return [...uses.values()].filter(({ forward, backward }) => forward !== 1 || backward !== 1)
    .length;
};

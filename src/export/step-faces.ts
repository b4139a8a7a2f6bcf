// Faces of a layered solid as STEP topology: level faces on planes, walls on planes and cylinders, with edges that are
// lines and circles. Each edge is one instance, used by two faces in opposite directions.

import type { Edge } from "../geometry/edges.ts";
import { pointDistance } from "../geometry/point.ts";
import {
  cartesianPoint,
  directionOf,
  downward,
  type Entities,
  placementOf,
  type Reference,
  real,
  rightward,
  upward,
} from "./step-entities.ts";
import type { Cap } from "./step-level.ts";
import type { Places } from "./step-places.ts";
import { type DirectedSpan, endOf, startOf } from "./step-spans.ts";

/** A face and the edges round it, by which the faces of one shell hang together. */
export interface Face {
  readonly reference: Reference;
  readonly edges: readonly Reference[];
}

export interface FaceWriter {
  readonly to: Entities;
  readonly places: Places;
}

/** A level face at a height. */
export const capFace = (cap: Cap, height: number, writer: FaceWriter): Face => {
  const isUp = cap.faces === "up";
  const bounds = cap.loops.map((run) => {
    const turned = isUp ? run : run.toReversed().map(reversed);
    return turned.map((span) => levelEdge(span, height, writer));
  });
  const origin = { x: 0, y: 0, z: height };
  const axes = { z: isUp ? upward : downward, x: rightward };
  const plane = writer.to.add(`PLANE('',${placementOf(writer.to, origin, axes)})`);
  return faceOf(bounds, { surface: plane, isSurfaceOutward: true }, writer.to);
};

export interface Wall {
  readonly edge: Edge;
  readonly from: number;
  readonly to: number;
  /** The edge's spans at foot and head. */
  readonly foot: readonly DirectedSpan[];
  readonly head: readonly DirectedSpan[];
}

/** The face over one edge, with material on the edge's left. */
export const wallFace = (wall: Wall, writer: FaceWriter): Face => {
  const { edge, from, to, foot, head } = wall;
  const bound = [
    ...foot.map((span) => levelEdge(span, from, writer)),
    uprightEdge(endOf(foot.at(-1)!), wall, { writer, isUp: true }),
    ...head.toReversed().map((span) => levelEdge(reversed(span), to, writer)),
    uprightEdge(startOf(foot[0]!), wall, { writer, isUp: false }),
  ];
  const isSurfaceOutward = edge.kind === "line" || edge.turnsLeft;
  return faceOf([bound], { surface: wallSurface(edge, from, writer), isSurfaceOutward }, writer.to);
};

const reversed = ({ span, isForward }: DirectedSpan): DirectedSpan => ({
  span,
  isForward: !isForward,
});

/** A plane whose normal looks away from the material, or the cylinder round the arc's centre. */
const wallSurface = (edge: Edge, height: number, { to }: FaceWriter): Reference => {
  if (edge.kind === "arc") {
    const origin = { ...edge.centre, z: height };
    const axis = placementOf(to, origin, { z: upward, x: rightward });
    return to.add(`CYLINDRICAL_SURFACE('',${axis},${real(edge.radius)})`);
  }
  const length = pointDistance(edge.from, edge.to);
  const x = (edge.to.x - edge.from.x) / length;
  const y = (edge.to.y - edge.from.y) / length;
  const origin = { ...edge.from, z: height };
  const axes = { z: { x: y, y: -x, z: 0 }, x: { x, y, z: 0 } };
  return to.add(`PLANE('',${placementOf(to, origin, axes)})`);
};

interface UsedEdge {
  readonly edge: Reference;
  readonly isForward: boolean;
}

const faceOf = (
  bounds: readonly (readonly UsedEdge[])[],
  on: { readonly surface: Reference; readonly isSurfaceOutward: boolean },
  to: Entities,
): Face => {
  const loops = bounds.map((bound, index) => {
    const uses = bound.map(({ edge, isForward }) =>
      to.add(`ORIENTED_EDGE('',*,*,${edge},${truth(isForward)})`),
    );
    const kind = index === 0 ? "FACE_OUTER_BOUND" : "FACE_BOUND";
    return to.add(`${kind}('',${to.add(`EDGE_LOOP('',(${uses.join(",")}))`)},.T.)`);
  });
  const face = `ADVANCED_FACE('',(${loops.join(",")}),${on.surface},${truth(on.isSurfaceOutward)})`;
  return { reference: to.add(face), edges: bounds.flat().map(({ edge }) => edge) };
};

const truth = (value: boolean): string => (value ? ".T." : ".F.");

const vertexAt = (place: number, height: number, { to, places }: FaceWriter): Reference =>
  to.add(`VERTEX_POINT('',${cartesianPoint(to, { ...places.at(place), z: height })})`);

const levelEdge = (
  { span, isForward }: DirectedSpan,
  height: number,
  writer: FaceWriter,
): UsedEdge => {
  const { to, places } = writer;
  const ends = `${vertexAt(span.from, height, writer)},${vertexAt(span.to, height, writer)}`;
  const { edge } = span;
  const curve =
    edge.kind === "arc"
      ? to.add(
          `CIRCLE('',${placementOf(to, { ...edge.centre, z: height }, { z: upward, x: rightward })},${real(edge.radius)})`,
        )
      : lineBetween(places.at(span.from), places.at(span.to), { to, height });
  const isAlong = edge.kind === "line" || edge.turnsLeft;
  return { edge: to.add(`EDGE_CURVE('',${ends},${curve},${truth(isAlong)})`), isForward };
};

const lineBetween = (
  from: { readonly x: number; readonly y: number },
  end: { readonly x: number; readonly y: number },
  { to, height }: { readonly to: Entities; readonly height: number },
): Reference => {
  const dx = end.x - from.x;
  const dy = end.y - from.y;
  const length = Math.sqrt(dx * dx + dy * dy);
  const along = directionOf(to, { x: dx / length, y: dy / length, z: 0 });
  const start = cartesianPoint(to, { ...from, z: height });
  return to.add(`LINE('',${start},${to.add(`VECTOR('',${along},1.)`)})`);
};

const uprightEdge = (
  place: number,
  { from, to: head }: Wall,
  { writer, isUp }: { readonly writer: FaceWriter; readonly isUp: boolean },
): UsedEdge => {
  const { to, places } = writer;
  const ends = `${vertexAt(place, from, writer)},${vertexAt(place, head, writer)}`;
  const start = cartesianPoint(to, { ...places.at(place), z: from });
  const line = to.add(`LINE('',${start},${to.add(`VECTOR('',${directionOf(to, upward)},1.)`)})`);
  return { edge: to.add(`EDGE_CURVE('',${ends},${line},.T.)`), isForward: isUp };
};

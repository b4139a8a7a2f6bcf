// The edges of a contour or path as lines and arcs, with the arc's centre and radius worked out of its bulge.
// A circle gives two half turns, from its left to its right and back.

import { type Contour, type Path, type Point, point } from "./contour.ts";
import { type Mm, mm, type Radians, radians } from "./quantity.ts";
import { straightSagitta } from "./tolerance.ts";
import { arcTangent } from "./trigonometry.ts";

export interface LineEdge {
  readonly kind: "line";
  readonly from: Point;
  readonly to: Point;
}

export interface ArcEdge {
  readonly kind: "arc";
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  readonly radius: Mm;
  /** Counter-clockwise from `from` to `to`. */
  readonly turnsLeft: boolean;
  /** Included angle, positive whichever way it turns. */
  readonly sweep: Radians;
}

export type Edge = LineEdge | ArcEdge;

export const edgesOf = (shape: Contour | Path): readonly Edge[] => {
  if (shape.kind === "circle") return halfTurns(shape.centre, shape.radius);
  const places = shape.vertices.map((corner) => point(corner.x, corner.y));
  const count = shape.kind === "loop" ? places.length : places.length - 1;
  const edges: Edge[] = [];
  for (let index = 0; index < count; index += 1) {
    const to = places[(index + 1) % places.length]!;
    edges.push(edgeBetween(places[index]!, to, shape.vertices[index]!.bulge));
  }
  return edges;
};

export const edgeBetween = (from: Point, to: Point, bulge: number): Edge => {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const chord = Math.sqrt(dx * dx + dy * dy);
  if (Math.abs(bulge) * chord <= 2 * straightSagitta) return { kind: "line", from, to };
  const fromChord = (1 / bulge - bulge) / 4;
  return {
    kind: "arc",
    from,
    to,
    centre: point((from.x + to.x) / 2 - dy * fromChord, (from.y + to.y) / 2 + dx * fromChord),
    radius: mm((chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge))),
    turnsLeft: bulge > 0,
    sweep: radians(4 * arcTangent(Math.abs(bulge))),
  };
};

const halfTurns = (centre: Point, radius: Mm): readonly Edge[] => {
  const left = point(centre.x - radius, centre.y);
  const right = point(centre.x + radius, centre.y);
  const shared = { kind: "arc", centre, radius, turnsLeft: true, sweep: radians(Math.PI) } as const;
  return [
    { ...shared, from: left, to: right },
    { ...shared, from: right, to: left },
  ];
};

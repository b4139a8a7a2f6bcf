// The edges of a contour or path as lines and arcs, with the arc's centre and radius worked out of its bulge.
// A circle gives two half turns, from its left to its right and back. Kept by identity: contours never change.

import { type Contour, type Path, type Point, point, type Vertex } from "./contour.ts";
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
  const known = kept.get(shape);
  if (known !== undefined) return known;
  const edges = shape.kind === "circle" ? halfTurns(shape.centre, shape.radius) : runOf(shape);
  kept.set(shape, edges);
  return edges;
};

/** The edge from `from` to `to` with `from`'s bulge. */
export const edgeBetween = (from: Vertex, to: Point): Edge => {
  const start = point(from.x, from.y);
  const end = point(to.x, to.y);
  const dx = end.x - start.x;
  const dy = end.y - start.y;
  const chord = Math.sqrt(dx * dx + dy * dy);
  const bulge = from.bulge;
  if (Math.abs(bulge) * chord <= 2 * straightSagitta) return { kind: "line", from: start, to: end };
  const fromChord = (1 / bulge - bulge) / 4;
  return {
    kind: "arc",
    from: start,
    to: end,
    centre: point((start.x + end.x) / 2 - dy * fromChord, (start.y + end.y) / 2 + dx * fromChord),
    radius: mm((chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge))),
    turnsLeft: bulge > 0,
    sweep: radians(4 * arcTangent(Math.abs(bulge))),
  };
};

const kept = new WeakMap<Contour | Path, readonly Edge[]>();

const runOf = (shape: Exclude<Contour | Path, { readonly kind: "circle" }>): readonly Edge[] => {
  const corners = shape.vertices;
  const count = shape.kind === "loop" ? corners.length : corners.length - 1;
  const edges: Edge[] = [];
  for (let index = 0; index < count; index += 1)
    edges.push(edgeBetween(corners[index]!, corners[(index + 1) % corners.length]!));
  return edges;
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

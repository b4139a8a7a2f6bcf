// Lines and arcs for the inspection alone: written from their definitions and sharing nothing with the
// code that makes the files, so that one mistake can't be on both sides of a comparison.

import { type Point, point, type Vertex } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import { mm, radians } from "../geometry/quantity.ts";
import { arcTangent, arcTangent2, cosine, sine } from "../geometry/trigonometry.ts";
import type { Edge } from "./read-file.ts";

const FULL_TURN = 2 * Math.PI;

/** The edge that a polyline's vertex starts: a bulge is tan(sweep / 4). */
const edgeOfBulge = (from: Point, to: Point, bulge: number): Edge => {
  if (bulge === 0) return { kind: "line", from, to };
  const chordX = to.x - from.x;
  const chordY = to.y - from.y;
  const chord = Math.sqrt(chordX * chordX + chordY * chordY);
  // The centre lies off the chord's middle, to its left where the arc turns left by less than half a turn.
  const off = (1 - bulge * bulge) / (4 * bulge);
  return {
    kind: "arc",
    from,
    to,
    centre: point((from.x + to.x) / 2 - chordY * off, (from.y + to.y) / 2 + chordX * off),
    radius: (chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge)),
    sweep: 4 * arcTangent(bulge),
  };
};

/** The edges of a run of vertices; the last vertex leads back to the first where it is closed. */
export const edgesOfVertices = (vertices: readonly Vertex[], closed: boolean): readonly Edge[] =>
  vertices.flatMap((from, index) => {
    const to = vertices[index + 1] ?? (closed ? vertices[0] : undefined);
    return to === undefined || samePoint(from, to) ? [] : [edgeOfBulge(from, to, from.bulge)];
  });

export const edgeOfCircle = (centre: Point, radius: number): Edge => {
  const from = point(centre.x + radius, centre.y);
  return { kind: "arc", from, to: from, centre, radius, sweep: FULL_TURN };
};

/** An arc between two ends about a centre, turning left (counter-clockwise) or right; never a whole circle. */
export const edgeOfArc = (
  from: Point,
  to: Point,
  arc: { readonly centre: Point; readonly radius: number; readonly turnsLeft: boolean },
): Edge => {
  const { centre, radius, turnsLeft } = arc;
  const first = angleOf(from, centre);
  const turned = angleOf(to, centre) - first;
  const left = turned < 0 ? turned + FULL_TURN : turned;
  return { kind: "arc", from, to, centre, radius, sweep: turnsLeft ? left : left - FULL_TURN };
};

export const edgeLength = (edge: Edge): number =>
  edge.kind === "line" ? between(edge.from, edge.to) : edge.radius * Math.abs(edge.sweep);

/** Twice the area that the edge sweeps as seen from the origin; summed round a loop, twice its signed area. */
export const edgeSweptArea = (edge: Edge): number => {
  const chord = edge.from.x * edge.to.y - edge.to.x * edge.from.y;
  if (edge.kind === "line") return chord;
  return chord + edge.radius * edge.radius * (edge.sweep - sine(radians(edge.sweep)));
};

export const edgeExtent = (edge: Edge): Extent => {
  const { from, to } = edge;
  let minX = mm(Math.min(from.x, to.x));
  let minY = mm(Math.min(from.y, to.y));
  let maxX = mm(Math.max(from.x, to.x));
  let maxY = mm(Math.max(from.y, to.y));
  if (edge.kind === "line") return { minX, minY, maxX, maxY };
  const { centre, radius } = edge;
  if (isWithinSweep(edge, 1, 0)) maxX = mm(Math.max(maxX, centre.x + radius));
  if (isWithinSweep(edge, 0, 1)) maxY = mm(Math.max(maxY, centre.y + radius));
  if (isWithinSweep(edge, -1, 0)) minX = mm(Math.min(minX, centre.x - radius));
  if (isWithinSweep(edge, 0, -1)) minY = mm(Math.min(minY, centre.y - radius));
  return { minX, minY, maxX, maxY };
};

/** The point at `part` (0 to 1) of the edge. */
export const pointAlong = (edge: Edge, part: number): Point => {
  const { from, to } = edge;
  if (part === 0) return from;
  if (part === 1) return to;
  if (edge.kind === "line") {
    return point(from.x + (to.x - from.x) * part, from.y + (to.y - from.y) * part);
  }
  if (part === HALF) {
    const middle = middleOfArc(edge);
    if (middle !== null) return middle;
  }
  const turned = radians(edge.sweep * part);
  const x = from.x - edge.centre.x;
  const y = from.y - edge.centre.y;
  return point(
    edge.centre.x + x * cosine(turned) - y * sine(turned),
    edge.centre.y + x * sine(turned) + y * cosine(turned),
  );
};

const HALF = 0.5;
/** Of the radius: ends that nearly face each other do not tell where the middle lies. */
const NEARLY_FACING = 0.1;

/** Without an angle: the middle lies on the line from the centre through the middle of the chord. */
const middleOfArc = (arc: Extract<Edge, { kind: "arc" }>): Point | null => {
  const { from, to, centre, radius, sweep } = arc;
  const x = from.x - centre.x + (to.x - centre.x);
  const y = from.y - centre.y + (to.y - centre.y);
  const size = Math.sqrt(x * x + y * y);
  if (size < NEARLY_FACING * radius) return null;
  const reach = (Math.abs(sweep) <= Math.PI ? radius : -radius) / size;
  return point(centre.x + x * reach, centre.y + y * reach);
};

/** Unit direction in which the edge leaves its start or arrives at its end. */
export const tangentAt = (
  edge: Edge,
  end: "from" | "to",
): { readonly x: number; readonly y: number } => {
  if (edge.kind === "line") {
    const length = between(edge.from, edge.to);
    return { x: (edge.to.x - edge.from.x) / length, y: (edge.to.y - edge.from.y) / length };
  }
  const turn = edge.sweep > 0 ? 1 : -1;
  const place = edge[end];
  return {
    x: (-turn * (place.y - edge.centre.y)) / edge.radius,
    y: (turn * (place.x - edge.centre.x)) / edge.radius,
  };
};

/** Distance from a point to the nearest point of the edge. */
export const distanceToEdge = (edge: Edge, place: Point): number => {
  if (edge.kind === "line") return distanceToLine(edge.from, edge.to, place);
  const x = place.x - edge.centre.x;
  const y = place.y - edge.centre.y;
  if (isWithinSweep(edge, x, y)) return Math.abs(Math.sqrt(x * x + y * y) - edge.radius);
  return Math.min(between(place, edge.from), between(place, edge.to));
};

export const between = (a: Point, b: Point): number =>
  Math.sqrt((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y));

/** The edge seen in a mirror that stands upright at `axisX`. */
export const mirroredEdge = (edge: Edge, axisX: number): Edge => {
  const seen = (place: Point): Point => point(2 * axisX - place.x, place.y);
  const from = seen(edge.from);
  const to = seen(edge.to);
  if (edge.kind === "line") return { kind: "line", from, to };
  return { ...edge, from, to, centre: seen(edge.centre), sweep: -edge.sweep };
};

/** The edge moved, and drawn `scale` times as large about the origin first. */
export const movedEdge = (edge: Edge, by: Point, scale = 1): Edge => {
  const moved = (place: Point): Point => point(place.x * scale + by.x, place.y * scale + by.y);
  const from = moved(edge.from);
  const to = moved(edge.to);
  if (edge.kind === "line") return { kind: "line", from, to };
  return { ...edge, from, to, centre: moved(edge.centre), radius: edge.radius * scale };
};

const samePoint = (a: Point, b: Point): boolean => a.x === b.x && a.y === b.y;

/** Direction from a centre, in radians counter-clockwise from +x. */
export const angleOf = (place: Point, centre: Point): number =>
  arcTangent2(place.y - centre.y, place.x - centre.x);

const distanceToLine = (from: Point, to: Point, place: Point): number => {
  const x = to.x - from.x;
  const y = to.y - from.y;
  const square = x * x + y * y;
  if (square === 0) return between(from, place);
  const along = ((place.x - from.x) * x + (place.y - from.y) * y) / square;
  if (along <= 0) return between(from, place);
  if (along >= 1) return between(to, place);
  return Math.abs((place.x - from.x) * y - (place.y - from.y) * x) / Math.sqrt(square);
};

/** True where the direction (x, y) from the centre lies between the arc's ends. */
const isWithinSweep = (edge: Extract<Edge, { kind: "arc" }>, x: number, y: number): boolean => {
  const turn = Math.abs(edge.sweep);
  if (turn >= FULL_TURN) return true;
  const start = edge.sweep > 0 ? edge.from : edge.to;
  const end = edge.sweep > 0 ? edge.to : edge.from;
  const afterStart = (start.x - edge.centre.x) * y - (start.y - edge.centre.y) * x >= 0;
  const beforeEnd = x * (end.y - edge.centre.y) - y * (end.x - edge.centre.x) >= 0;
  return turn <= Math.PI ? afterStart && beforeEnd : afterStart || beforeEnd;
};

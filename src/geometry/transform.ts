// Moving, turning and mirroring. Loops keep running counter-clockwise (or clockwise) through a mirror:
// the order of their vertices is turned round.

import {
  type Contour,
  circle,
  type Loop,
  loop,
  type Path,
  type Point,
  path,
  point,
  type Region,
  type Vertex,
  vertex,
} from "./contour.ts";
import { reversedContour } from "./measure.ts";
import { type Degrees, degrees, type Mm, mm } from "./quantity.ts";
import { type Direction, direction } from "./trigonometry.ts";

/** Where a thing drawn about its own origin goes: mirrored (x to -x) first, then turned, then moved. */
export interface Placement {
  readonly x: Mm;
  readonly y: Mm;
  readonly turn: Degrees;
  readonly mirrored: boolean;
}

export const placement = (x: number, y: number, turn: Degrees = degrees(0)): Placement => ({
  x: mm(x),
  y: mm(y),
  turn,
  mirrored: false,
});

export const placedPoint = (from: Point, at: Placement): Point =>
  pointMap(at, direction(at.turn))(from);

export const placedContour = (contour: Contour, at: Placement): Contour =>
  mappedContour(contour, pointMap(at, direction(at.turn)), at.mirrored);

export const placedPath = (stroke: Path, at: Placement): Path =>
  mappedPath(stroke, pointMap(at, direction(at.turn)), at.mirrored);

export const placedRegion = (region: Region, at: Placement): Region =>
  mappedRegion(region, pointMap(at, direction(at.turn)), at.mirrored);

/** x to 2 axisX - x. */
export const mirroredPoint = (from: Point, axisX: Mm): Point => mirrorMap(axisX)(from);

export const mirroredContour = (contour: Contour, axisX: Mm): Contour =>
  mappedContour(contour, mirrorMap(axisX), true);

export const mirroredPath = (stroke: Path, axisX: Mm): Path =>
  mappedPath(stroke, mirrorMap(axisX), true);

export const mirroredRegion = (region: Region, axisX: Mm): Region =>
  mappedRegion(region, mirrorMap(axisX), true);

type PointMap = (from: Point) => Point;

const pointMap =
  (at: Placement, along: Direction): PointMap =>
  (from) => {
    const x = at.mirrored ? -from.x : from.x;
    return point(at.x + x * along.x - from.y * along.y, at.y + x * along.y + from.y * along.x);
  };

const mirrorMap =
  (axisX: Mm): PointMap =>
  (from) =>
    point(2 * axisX - from.x, from.y);

const mappedContour = (contour: Contour, map: PointMap, mirrors: boolean): Contour => {
  if (contour.kind === "circle") return circle(map(contour.centre), contour.radius);
  const mapped: Loop = loop(mappedVertices(contour.vertices, map, mirrors));
  return mirrors ? reversedContour(mapped) : mapped;
};

const mappedPath = (stroke: Path, map: PointMap, mirrors: boolean): Path =>
  path(mappedVertices(stroke.vertices, map, mirrors));

const mappedRegion = (region: Region, map: PointMap, mirrors: boolean): Region => ({
  outline: mappedContour(region.outline, map, mirrors),
  holes: region.holes.map((hole) => mappedContour(hole, map, mirrors)),
});

const mappedVertices = (
  corners: readonly Vertex[],
  map: PointMap,
  mirrors: boolean,
): readonly Vertex[] =>
  corners.map((corner) => {
    const at = map(corner);
    const bulge = mirrors && corner.bulge !== 0 ? -corner.bulge : corner.bulge;
    return vertex(at.x, at.y, bulge);
  });

// A glyph's outline as regions of lines and arcs, holes told from material by the non-zero rule that type is drawn for.
// Takes contours in font units and how to place a font point in millimetres; curves become arcs within `curveFit`.
// Only a glyph whose contours cross goes through the polygon union; the others keep every arc.

import { cubicArcs, quadraticArcs } from "../geometry/biarc.ts";
import { woundRegions } from "../geometry/boolean.ts";
import { containsPoint } from "../geometry/containment.ts";
import {
  type Loop,
  loop,
  type Point,
  type Region,
  type Vertex,
  vertex,
} from "../geometry/contour.ts";
import { contourArea, reversedContour } from "../geometry/measure.ts";
import { curveFit } from "../geometry/tolerance.ts";
import { hasCrossings } from "./outline-crossing.ts";
import type { FontPoint, OutlineContour, OutlineCurve } from "./outline-font.ts";

export type FontPlacing = (point: FontPoint) => Point;

export const glyphRegions = (
  contours: readonly OutlineContour[],
  placing: FontPlacing,
): readonly Region[] => {
  const loops = contours.map((contour) => arcLoop(contour, placing)).filter(hasArea);
  return hasCrossings(contours) ? woundRegions(loops) : nestedRegions(loops);
};

/** A curve of a glyph as arcs: its start included, its end left to the next curve. */
export const curveVertices = (
  from: FontPoint,
  curve: OutlineCurve,
  placing: FontPlacing,
): readonly Vertex[] => {
  const start = placing(from);
  const end = placing(curve.to);
  if (curve.kind === "line") return [vertex(start.x, start.y)];
  if (curve.kind === "quadratic")
    return quadraticArcs(start, placing(curve.control), end, curveFit);
  return cubicArcs(start, placing(curve.first), placing(curve.second), end, curveFit);
};

const arcLoop = (contour: OutlineContour, placing: FontPlacing): Loop => {
  const vertices: Vertex[] = [];
  let from = contour.start;
  for (const curve of contour.curves) {
    const isPoint = curve.kind === "line" && curve.to.x === from.x && curve.to.y === from.y;
    if (!isPoint) vertices.push(...curveVertices(from, curve, placing));
    from = curve.to;
  }
  return loop(vertices);
};

const hasArea = (shape: Loop): boolean => shape.vertices.length > 1 && contourArea(shape) !== 0;

interface WoundLoop {
  readonly shape: Loop;
  readonly area: number;
  /** Windings round it from the loops that hold it, and just inside it. */
  readonly outside: number;
  readonly inside: number;
}

/** Loops that keep clear of each other: each lies wholly inside or outside every other, so one of its points tells. */
const nestedRegions = (loops: readonly Loop[]): readonly Region[] => {
  const wound = loops.map((shape) => woundLoop(shape, loops));
  const holes = wound.filter((loop) => loop.outside !== 0 && loop.inside === 0);
  return wound
    .filter((loop) => loop.outside === 0)
    .map((outline) => ({
      outline: turnedLoop(outline.shape, 1),
      holes: holes
        .filter((hole) => nearestOutline(hole, wound) === outline)
        .map((hole) => turnedLoop(hole.shape, -1)),
    }));
};

const woundLoop = (shape: Loop, loops: readonly Loop[]): WoundLoop => {
  const area = contourArea(shape);
  let outside = 0;
  for (const other of loops)
    if (other !== shape && isInside(shape, other)) outside += Math.sign(contourArea(other));
  return { shape, area, outside, inside: outside + Math.sign(area) };
};

const isInside = (inner: Loop, outer: Loop): boolean => {
  const corner = inner.vertices[0];
  return corner !== undefined && containsPoint(outer, corner);
};

const nearestOutline = (hole: WoundLoop, wound: readonly WoundLoop[]): WoundLoop | null => {
  let nearest: WoundLoop | null = null;
  for (const outline of wound)
    if (
      outline.outside === 0 &&
      isInside(hole.shape, outline.shape) &&
      (nearest === null || Math.abs(outline.area) < Math.abs(nearest.area))
    )
      nearest = outline;
  return nearest;
};

const turnedLoop = (shape: Loop, sign: 1 | -1): Loop =>
  Math.sign(contourArea(shape)) === sign ? shape : reversedContour(shape);

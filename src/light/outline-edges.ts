// A contour as flat numbers, for ten thousand questions a panel: does a straight way seen from the front cross it, and is
// a place inside it. Arcs stay arcs.

import type { Contour } from "../geometry/contour.ts";
import { edgesOf } from "../geometry/edges.ts";
import type { Extent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";

export interface OutlineEdges {
  readonly box: Extent;
  /** x, y from, x, y to: four numbers a straight edge. */
  readonly lines: Float64Array;
  /** x, y from, x, y to, x, y of the centre, radius, 1 where it turns left: eight numbers an arc. */
  readonly arcs: Float64Array;
}

const LINE = 4;
const ARC = 8;

/** Kept by identity: contours never change, and the same walls are asked for every lamp. */
export const outlineEdges = (contour: Contour): OutlineEdges => {
  const known = kept.get(contour);
  if (known !== undefined) return known;
  const lines: number[] = [];
  const arcs: number[] = [];
  for (const edge of edgesOf(contour)) {
    const { from, to } = edge;
    if (edge.kind === "line") lines.push(from.x, from.y, to.x, to.y);
    else
      arcs.push(
        ...[from.x, from.y, to.x, to.y, edge.centre.x, edge.centre.y],
        ...[edge.radius, edge.turnsLeft ? 1 : 0],
      );
  }
  const flat = {
    box: contourExtent(contour),
    lines: Float64Array.from(lines),
    arcs: Float64Array.from(arcs),
  };
  kept.set(contour, flat);
  return flat;
};

const kept = new WeakMap<Contour, OutlineEdges>();

/** Both ends of a stretch in plan. */
export interface Stretch {
  readonly fromX: number;
  readonly fromY: number;
  readonly toX: number;
  readonly toY: number;
}

/** The stretch passes from one side of the outline to the other at some place. */
export const crossesOutline = (stretch: Stretch, outline: OutlineEdges): boolean =>
  meetsBox(stretch, outline.box) &&
  (crossesLines(stretch, outline.lines) || crossesArcs(stretch, outline.arcs));

/** The boxes of both touch. */
export const meetsBox = ({ fromX, fromY, toX, toY }: Stretch, box: Extent): boolean =>
  (fromX < toX ? fromX : toX) <= box.maxX &&
  (fromX > toX ? fromX : toX) >= box.minX &&
  (fromY < toY ? fromY : toY) <= box.maxY &&
  (fromY > toY ? fromY : toY) >= box.minY;

const crossesLines = ({ fromX, fromY, toX, toY }: Stretch, lines: Float64Array): boolean => {
  const dx = toX - fromX;
  const dy = toY - fromY;
  for (let at = 0; at < lines.length; at += LINE) {
    const ax = lines[at]! - fromX;
    const ay = lines[at + 1]! - fromY;
    const bx = lines[at + 2]! - fromX;
    const by = lines[at + 3]! - fromY;
    if (dx * ay - dy * ax > 0 === dx * by - dy * bx > 0) continue;
    const ex = bx - ax;
    const ey = by - ay;
    const start = ey * ax - ex * ay;
    const end = ey * (ax - dx) - ex * (ay - dy);
    if (start > 0 !== end > 0) return true;
  }
  return false;
};

const crossesArcs = ({ fromX, fromY, toX, toY }: Stretch, arcs: Float64Array): boolean => {
  const dx = toX - fromX;
  const dy = toY - fromY;
  const length = dx * dx + dy * dy;
  for (let at = 0; at < arcs.length; at += ARC) {
    const cx = fromX - arcs[at + 4]!;
    const cy = fromY - arcs[at + 5]!;
    const radius = arcs[at + 6]!;
    const along = cx * dx + cy * dy;
    const under = along * along - length * (cx * cx + cy * cy - radius * radius);
    if (under <= 0) continue;
    const root = Math.sqrt(under);
    for (const t of [(-along - root) / length, (-along + root) / length])
      if (t >= 0 && t <= 1 && isOnBow(fromX + t * dx, fromY + t * dy, arcs, at)) return true;
  }
  return false;
};

/** A place of the arc's circle lies on the bow's side of its chord. */
const isOnBow = (x: number, y: number, arcs: Float64Array, at: number): boolean => {
  const fromX = arcs[at]!;
  const fromY = arcs[at + 1]!;
  const side = (arcs[at + 2]! - fromX) * (y - fromY) - (arcs[at + 3]! - fromY) * (x - fromX);
  return arcs[at + 7] === 1 ? side <= 0 : side >= 0;
};

/** Even or odd: how often a way to +x crosses the chords, and the bows that the place lies in. */
export const isInOutline = (x: number, y: number, { box, lines, arcs }: OutlineEdges): boolean => {
  if (x < box.minX || x > box.maxX || y < box.minY || y > box.maxY) return false;
  let inside = false;
  for (let at = 0; at < lines.length; at += LINE)
    if (chordCrosses(x, y, lines, at)) inside = !inside;
  for (let at = 0; at < arcs.length; at += ARC) {
    if (chordCrosses(x, y, arcs, at)) inside = !inside;
    if (isInBow(x, y, arcs, at)) inside = !inside;
  }
  return inside;
};

const chordCrosses = (x: number, y: number, edges: Float64Array, at: number): boolean => {
  const fromY = edges[at + 1]!;
  const toY = edges[at + 3]!;
  if (fromY > y === toY > y) return false;
  const fromX = edges[at]!;
  return x < fromX + ((y - fromY) / (toY - fromY)) * (edges[at + 2]! - fromX);
};

/** On the chord itself it may say either: no way is aimed there to the last bit. */
const isInBow = (x: number, y: number, arcs: Float64Array, at: number): boolean => {
  const dx = x - arcs[at + 4]!;
  const dy = y - arcs[at + 5]!;
  const radius = arcs[at + 6]!;
  return dx * dx + dy * dy < radius * radius && isOnBow(x, y, arcs, at);
};

// Axis-parallel bounding boxes, in millimetres.

import type { Point } from "./contour.ts";
import { type Mm, mm } from "./quantity.ts";

export interface Extent {
  readonly minX: Mm;
  readonly minY: Mm;
  readonly maxX: Mm;
  readonly maxY: Mm;
}

export const extent = (minX: number, minY: number, maxX: number, maxY: number): Extent => ({
  minX: mm(minX),
  minY: mm(minY),
  maxX: mm(maxX),
  maxY: mm(maxY),
});

export const extentWidth = (box: Extent): Mm => mm(box.maxX - box.minX);

export const extentHeight = (box: Extent): Mm => mm(box.maxY - box.minY);

export const extentCentre = (box: Extent): Point => ({
  x: mm((box.minX + box.maxX) / 2),
  y: mm((box.minY + box.maxY) / 2),
});

/** The smallest box that holds both. */
export const joinedExtent = (a: Extent, b: Extent): Extent =>
  extent(
    Math.min(a.minX, b.minX),
    Math.min(a.minY, b.minY),
    Math.max(a.maxX, b.maxX),
    Math.max(a.maxY, b.maxY),
  );

/** A box grown by `margin` on every side (shrunk where it is negative). */
export const grownExtent = (box: Extent, margin: number): Extent =>
  extent(box.minX - margin, box.minY - margin, box.maxX + margin, box.maxY + margin);

export const movedExtent = (box: Extent, dx: number, dy: number): Extent =>
  extent(box.minX + dx, box.minY + dy, box.maxX + dx, box.maxY + dy);

/** True where the boxes share more than an edge. */
export const extentsOverlap = (a: Extent, b: Extent): boolean =>
  a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;

/** Distance between the boxes; 0 where they touch or overlap. */
export const extentGap = (a: Extent, b: Extent): Mm => {
  const dx = Math.max(0, a.minX - b.maxX, b.minX - a.maxX);
  const dy = Math.max(0, a.minY - b.maxY, b.minY - a.maxY);
  return mm(dx === 0 ? dy : dy === 0 ? dx : Math.sqrt(dx * dx + dy * dy));
};

/** The least distance inward from one box to another; negative where the inner one reaches out. */
export const leastInset = (outer: Extent, inner: Extent): number =>
  Math.min(
    inner.minX - outer.minX,
    inner.minY - outer.minY,
    outer.maxX - inner.maxX,
    outer.maxY - inner.maxY,
  );

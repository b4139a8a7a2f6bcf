// The few ways in which a drawing paints: areas, outlines, lines. Widths follow ISO 128-2's steps of root two, thin to thick.

import type { Contour, Path, Point, Region } from "../geometry/contour.ts";
import { path, point, vertex } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { rectangle } from "../geometry/shapes.ts";
import type { DrawingItem, Ink } from "./drawing.ts";

/** ISO 128-2:2020, table of line widths: 0.13, 0.18, 0.25, 0.35 ... */
export const HAIR = mm(0.13);
export const THIN = mm(0.18);
export const MEDIUM = mm(0.25);

export interface LineLook {
  readonly ink: Ink;
  readonly width: Mm;
  readonly dashed?: boolean;
}

export const areas = (regions: readonly Region[], ink: Ink): DrawingItem => ({
  kind: "fill",
  regions,
  ink,
});

/** Areas without holes. */
export const filled = (contours: readonly Contour[], ink: Ink): DrawingItem =>
  areas(
    contours.map((outline) => ({ outline, holes: [] })),
    ink,
  );

export const filledBox = (box: Extent, ink: Ink): DrawingItem => filled([rectangle(box)], ink);

export const outlined = (contours: readonly Contour[], look: LineLook): DrawingItem => ({
  kind: "outline",
  contours,
  ink: look.ink,
  width: look.width,
  dashed: look.dashed ?? false,
});

export const stroked = (paths: readonly Path[], look: LineLook): DrawingItem => ({
  kind: "stroke",
  paths,
  ink: look.ink,
  width: look.width,
  dashed: look.dashed ?? false,
});

/** Straight lines from point to point. */
export const run = (...points: readonly Point[]): Path =>
  path(points.map(({ x, y }) => vertex(x, y)));

/** A straight line by its four numbers. */
export const segment = (fromX: number, fromY: number, toX: number, toY: number): Path =>
  run(point(fromX, fromY), point(toX, toY));

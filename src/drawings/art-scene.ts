// What the artists of components look at, and the few shapes that they share.

import { type Contour, circle, loop, type Point, point, vertex } from "../geometry/contour.ts";
import { extentHeight, extentWidth } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { degrees } from "../geometry/quantity.ts";
import { clockDirection, type Direction } from "../geometry/trigonometry.ts";
import type { CutOut, PlacedBody, PlacedComponent } from "../layout/panel-layout.ts";
import type { ArtPiece, Tone } from "./tone.ts";

export interface Scene {
  readonly component: PlacedComponent;
  /** What an operator can see of it, the nearest to the panel first. */
  readonly bodies: readonly PlacedBody[];
  /** Its openings in the face. */
  readonly openings: readonly Contour[];
  readonly screws: readonly CutOut[];
  /** The body nearest to the operator of these roles. */
  readonly body: (...roles: readonly PlacedBody["role"][]) => PlacedBody | null;
}

export const at = (scene: Scene): Point => scene.component.at;

/** A circle (no corners) or a regular polygon round a point, its first corner at a clock angle. */
export const around = (
  centre: Point,
  size: { readonly radius: number; readonly corners: number; readonly first: number },
): Contour => {
  if (size.corners === 0) return circle(centre, size.radius);
  const corners = Array.from({ length: size.corners }, (_, index) => {
    const toward = clockDirection(degrees(size.first - (index * 360) / size.corners));
    return vertex(centre.x + size.radius * toward.x, centre.y + size.radius * toward.y);
  });
  return loop(corners);
};

export const disc = (centre: Point, radius: number): Contour => circle(centre, radius);

/** From the panel's twelve o'clock: a part's own clock angle less its turn. */
export const turned = (scene: Scene, clock: number): Direction =>
  clockDirection(degrees(clock - scene.component.turn));

export const along = (from: Point, toward: Direction, distance: number): Point =>
  point(from.x + toward.x * distance, from.y + toward.y * distance);

/** A bar with square ends between two points. */
export const bar = (from: Point, to: Point, width: number): Contour => {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const length = Math.sqrt(dx * dx + dy * dy);
  const sideX = (-dy / length) * (width / 2);
  const sideY = (dx / length) * (width / 2);
  return loop([
    vertex(from.x - sideX, from.y - sideY),
    vertex(to.x - sideX, to.y - sideY),
    vertex(to.x + sideX, to.y + sideY),
    vertex(from.x + sideX, from.y + sideY),
  ]);
};

export const area = (tone: Tone, ...contours: readonly Contour[]): ArtPiece => ({
  kind: "area",
  tone,
  contours,
});

/** Half the lesser side: the radius of what is round. */
export const reachOf = (contour: Contour): number => {
  const box = contourExtent(contour);
  return Math.min(extentWidth(box), extentHeight(box)) / 2;
};

// Points: the distance between two, one moved, one half way.

import { type Point, point } from "./contour.ts";
import { type Mm, mm } from "./quantity.ts";

export const pointDistance = (a: Point, b: Point): Mm => {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  return mm(Math.sqrt(dx * dx + dy * dy));
};

export const offsetPoint = (from: Point, dx: number, dy: number): Point =>
  point(from.x + dx, from.y + dy);

export const midpoint = (a: Point, b: Point): Point => point((a.x + b.x) / 2, (a.y + b.y) / 2);

// Datasheet shapes as contours, centred on the part's axis. `grow` moves every side outward by that much: paint on the
// walls, a fit, a clearance. Bulges come from similar triangles (+ - * / and square roots), so every arc is exact.

import {
  type Contour,
  circle,
  type Loop,
  loop,
  type Point,
  point,
  vertex,
} from "../geometry/contour.ts";
import { filletedLoop } from "../geometry/corners.ts";
import { extent } from "../geometry/extent.ts";
import { invariant } from "../geometry/invariant.ts";
import { contourExtent } from "../geometry/measure.ts";
import { offsetContour } from "../geometry/offset.ts";
import { type Degrees, type Mm, mm } from "../geometry/quantity.ts";
import { polygon, roundedRectangle } from "../geometry/shapes.ts";
import { clockDirection } from "../geometry/trigonometry.ts";
import type { Shape } from "./shape.ts";

/** The outline of a shape, counter-clockwise. A shape that its own sizes forbid is a bug here: the record linter refuses it. */
export function shapeContour(shape: Shape, grow: Mm = mm(0)): Contour {
  switch (shape.kind) {
    case "round":
      return roundContour(shape.diameter / 2 + grow);
    case "flat":
      return flatLoop(shape.diameter / 2 + grow, shape.flat + grow, shape.clock);
    case "double-flat":
      return doubleFlatLoop(shape.diameter / 2 + grow, shape.across / 2 + grow, shape.clock);
    case "notch":
      return notchLoop({
        radius: shape.diameter / 2 + grow,
        halfWidth: shape.width / 2 + grow,
        bottom: shape.over - shape.diameter / 2 + grow,
        clock: shape.clock,
      });
    case "rectangle":
      return rectangleLoop(shape.width / 2 + grow, shape.height / 2 + grow, shape.corner, grow);
    case "slot":
      return slotLoop(shape.length / 2 + grow, shape.width / 2 + grow, shape.clock);
    case "polygon":
      return polygonContour(shape.points, shape.corner, grow);
  }
}

/** What a gauge compares: the diameter of a round shape with or without flats, else the least width. */
export function shapeSize(shape: Shape): Mm {
  switch (shape.kind) {
    case "round":
    case "flat":
    case "double-flat":
    case "notch":
      return shape.diameter;
    case "rectangle":
      return mm(Math.min(shape.width, shape.height));
    case "slot":
      return shape.width;
    case "polygon": {
      const box = contourExtent(polygon(shape.points));
      return mm(Math.min(box.maxX - box.minX, box.maxY - box.minY));
    }
  }
}

/** A frame turned so that `out` runs along the clock angle and `left` counter-clockwise of it. */
interface Frame {
  readonly at: (out: number, left: number) => Point;
}

function frameAt(clock: Degrees): Frame {
  const out = clockDirection(clock);
  return {
    at: (along, left) => ({
      x: mm(along * out.x - left * out.y),
      y: mm(along * out.y + left * out.x),
    }),
  };
}

const corner = (at: Point, bulge = 0) => vertex(at.x, at.y, bulge);

/** tan(angle / 2) of the angle at a circle's centre whose sine is `half / radius` and whose cosine is `along / radius`. */
const halfTangent = (half: number, radius: number, along: number): number =>
  half / (radius + along);

function roundContour(radius: number): Contour {
  invariant(radius > 0, "a circle keeps some size");
  return circle(point(0, 0), radius);
}

function flatLoop(radius: number, flat: number, clock: Degrees): Loop {
  invariant(Math.abs(flat) < radius, "a flat cuts its circle");
  const half = Math.sqrt(radius * radius - flat * flat);
  const { at } = frameAt(clock);
  return loop([
    corner(at(flat, -half)),
    corner(at(flat, half), 1 / halfTangent(half, radius, flat)),
  ]);
}

function doubleFlatLoop(radius: number, flat: number, clock: Degrees): Loop {
  invariant(flat > 0 && flat < radius, "two flats cut their circle");
  const half = Math.sqrt(radius * radius - flat * flat);
  const tangent = halfTangent(half, radius, flat);
  const bulge = (1 - tangent) / (1 + tangent);
  const { at } = frameAt(clock);
  return loop([
    corner(at(flat, -half)),
    corner(at(flat, half), bulge),
    corner(at(-flat, half)),
    corner(at(-flat, -half), bulge),
  ]);
}

interface NotchSizes {
  readonly radius: number;
  readonly halfWidth: number;
  readonly bottom: number;
  readonly clock: Degrees;
}

function notchLoop({ radius, halfWidth, bottom, clock }: NotchSizes): Loop {
  invariant(halfWidth > 0 && halfWidth < radius, "a notch is narrower than its hole");
  const mouth = Math.sqrt(radius * radius - halfWidth * halfWidth);
  invariant(bottom > mouth, "a notch reaches beyond its hole");
  const { at } = frameAt(clock);
  return loop([
    corner(at(mouth, -halfWidth)),
    corner(at(bottom, -halfWidth)),
    corner(at(bottom, halfWidth)),
    corner(at(mouth, halfWidth), 1 / halfTangent(halfWidth, radius, mouth)),
  ]);
}

function rectangleLoop(halfWidth: number, halfHeight: number, radius: Mm, grow: Mm): Loop {
  invariant(halfWidth > 0 && halfHeight > 0, "a rectangle keeps some size");
  return roundedRectangle(
    extent(-halfWidth, -halfHeight, halfWidth, halfHeight),
    grownCorner(radius, grow),
  );
}

/** A round corner grows with its sides and goes sharp when its sides shrink past it; a sharp one stays sharp. */
const grownCorner = (radius: Mm, grow: Mm): number => (radius > 0 ? Math.max(0, radius + grow) : 0);

function slotLoop(halfLength: number, halfWidth: number, clock: Degrees): Loop {
  invariant(halfWidth > 0 && halfLength > halfWidth, "a slot is longer than it is wide");
  const { at } = frameAt(clock);
  const straight = halfLength - halfWidth;
  return loop([
    corner(at(straight, halfWidth)),
    corner(at(-straight, halfWidth), 1),
    corner(at(-straight, -halfWidth)),
    corner(at(straight, -halfWidth), 1),
  ]);
}

function polygonContour(points: readonly Point[], radius: Mm, grow: Mm): Contour {
  const outline = polygon(points);
  const rounded = radius > 0 ? filletedLoop(outline, radius) : outline;
  if (grow === 0) return rounded;
  const grown = offsetContour(rounded, grow, "miter");
  invariant(grown.kind === "offset", "a polygon keeps its shape when its sides move");
  return grown.contour;
}

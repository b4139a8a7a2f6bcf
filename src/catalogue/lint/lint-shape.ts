// Whether a shape can be drawn at all: flats that cut their circle, corners that fit, outlines that are simple.
// Everything else may only be judged once its shapes are sound.

import type { Point } from "../../geometry/contour.ts";
import { largestFillet } from "../../geometry/corners.ts";
import { polygon } from "../../geometry/shapes.ts";
import { loopFaults } from "../../geometry/simple.ts";
import type { Part } from "../part.ts";
import type { Shape } from "../shape.ts";
import { type LintFault, unless } from "./lint-fault.ts";

export function shapeFaults(shape: Shape, path: string): readonly LintFault[] {
  switch (shape.kind) {
    case "round":
      return unless(shape.diameter > 0, path, "a diameter is more than zero");
    case "flat":
      return unless(shape.flat < shape.diameter / 2, path, "the flat lies outside its circle");
    case "double-flat":
      return unless(shape.across < shape.diameter, path, "the flats lie outside their circle");
    case "notch":
      return notchFaults(shape, path);
    case "rectangle":
      return unless(
        2 * shape.corner <= Math.min(shape.width, shape.height),
        path,
        "the corners are rounder than the rectangle is wide",
      );
    case "slot":
      return unless(shape.length > shape.width, path, "a slot is longer than it is wide");
    case "polygon":
      return polygonFaults(shape.points, shape.corner, path);
  }
}

/** Every shape of a part, by path. */
export const shapesOf = (part: Part): readonly (readonly [string, Shape])[] => [
  ["openings.clamp", part.openings.clamp],
  ["openings.passes", part.openings.passes],
  ...optional("openings.front", part.openings.front),
  ...optional("openings.behind", part.openings.behind),
  ...part.openings.tabs.map((tab, index) => [`openings.tabs.${index}`, tab.shape] as const),
  ...part.bodies.map((body, index) => [`bodies.${index}`, body.shape] as const),
  ...part.face.map((outline, index) => [`face.${index}`, outline.shape] as const),
  ...optional("display.window", part.display?.window.shape ?? null),
];

const optional = (path: string, shape: Shape | null): readonly (readonly [string, Shape])[] =>
  shape === null ? [] : [[path, shape]];

function notchFaults(
  shape: Shape & { readonly kind: "notch" },
  path: string,
): readonly LintFault[] {
  const radius = shape.diameter / 2;
  if (shape.width >= shape.diameter) {
    return [{ path, says: "the notch is as wide as its hole" }];
  }
  const mouth = Math.sqrt(radius * radius - (shape.width * shape.width) / 4);
  return unless(shape.over - radius > mouth, path, "the notch does not reach out of its hole");
}

function polygonFaults(
  points: readonly Point[],
  corner: number,
  path: string,
): readonly LintFault[] {
  const outline = polygon(points);
  const crossing = loopFaults(outline);
  if (crossing.length > 0) return [{ path, says: "the outline crosses or touches itself" }];
  return unless(corner <= largestFillet(outline), path, "the corners are too round for the sides");
}

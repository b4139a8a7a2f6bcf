// Whether every shape of a part can be drawn. Records are proved when they are read; what a design measured over them is not,
// and a diameter of -3 or a corner rounder than its window must become a finding here, not a hole.

import type { LintFault } from "../catalogue/lint/lint-fault.ts";
import { shapeFaults, shapesOf } from "../catalogue/lint/lint-shape.ts";
import type { Part } from "../catalogue/part.ts";
import type { Shape } from "../catalogue/shape.ts";

/** What is wrong, by field; empty for a sound part. Kept by part: most entries share theirs. */
export const undrawable = (part: Part): readonly LintFault[] => {
  const known = KEPT.get(part);
  if (known !== undefined) return known;
  const faults = [
    ...shapesOf(part).flatMap(([path, shape]) => [
      ...sizeFaults(shape, path),
      ...shapeFaults(shape, path),
    ]),
    ...screwFaults(part),
  ];
  KEPT.set(part, faults);
  return faults;
};

const KEPT = new WeakMap<Part, readonly LintFault[]>();

const sizeFaults = (shape: Shape, path: string): readonly LintFault[] => {
  const smallest = Math.min(...sizesOf(shape));
  return smallest > 0 ? [] : [{ path, says: "a size is more than zero" }];
};

const sizesOf = (shape: Shape): readonly number[] => {
  switch (shape.kind) {
    case "round":
      return [shape.diameter];
    case "flat":
      return [shape.diameter, shape.diameter / 2 + shape.flat];
    case "double-flat":
      return [shape.diameter, shape.across];
    case "notch":
      return [shape.diameter, shape.width, shape.over];
    case "rectangle":
      return [shape.width, shape.height, shape.corner < 0 ? shape.corner : shape.width];
    case "slot":
      return [shape.length, shape.width];
    case "polygon":
      return shape.corner < 0 ? [shape.corner] : [1];
  }
};

const screwFaults = ({ hold }: Part): readonly LintFault[] =>
  hold.kind !== "screws"
    ? []
    : hold.holes.flatMap(({ diameter }, index) =>
        diameter > 0
          ? []
          : [{ path: `hold.holes.${index}.diameter`, says: "a diameter is more than zero" }],
      );

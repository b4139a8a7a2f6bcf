// How far a lever comes over the face in its travel, seen straight on, about its own axis. The lever turns about the plane
// that its part is seated on: records hold no other pivot, and the true one lies a few millimetres in front of it, in the
// bush, so that a real lever comes no farther.

import type { Cap, Hardware } from "../catalogue/hardware.ts";
import type { Part } from "../catalogue/part.ts";
import { shapeContour } from "../catalogue/shape-contour.ts";
import { extentHeight, extentWidth } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { type Degrees, type Mm, mm } from "../geometry/quantity.ts";
import { sine, toRadians } from "../geometry/trigonometry.ts";

export interface LeverTravel {
  /** From the axis to the far side of the tip, or of the cap on it, thrown to either end. */
  readonly reach: Mm;
  /** Across its line. */
  readonly width: Mm;
  /** Clock angle of its line, and how far it leans from upright. */
  readonly line: Degrees;
  readonly throw: Degrees;
}

export const leverTravel = ({ lever }: Part, fitted: readonly Hardware[]): LeverTravel | null => {
  if (lever === null) return null;
  const cap = fitted.find((hardware): hardware is Cap => hardware.kind === "cap");
  const leans = sine(toRadians(lever.throw));
  const tip = cap === undefined ? lever.tip : Math.max(lever.tip, widest(cap));
  const end = lever.length + (cap === undefined ? 0 : cap.height / 2);
  return {
    reach: mm(end * leans + tip / 2),
    width: mm(tip),
    line: lever.line,
    throw: lever.throw,
  };
};

const widest = ({ shape }: Cap): number => {
  const box = contourExtent(shapeContour(shape));
  return Math.max(extentWidth(box), extentHeight(box));
};

// How much wider an opening would have to be for a body that stands past its edge. Takes the two outlines; gives how wide the
// opening is, its narrow side, and how wide it would have to be, grown alike all round from where it is.

import { containsPoint } from "../../geometry/containment.ts";
import type { Contour } from "../../geometry/contour.ts";
import { pointToContour } from "../../geometry/distance.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { flattened } from "../../geometry/flatten.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { pointDistance } from "../../geometry/point.ts";
import { booleanChord } from "../../geometry/tolerance.ts";

export interface OpeningLack {
  readonly has: number;
  readonly needs: number;
}

export const openingLack = (body: Contour, opening: Contour): OpeningLack => {
  const box = contourExtent(opening);
  const has = Math.min(extentWidth(box), extentHeight(box));
  return { has, needs: has + 2 * Math.max(0, beyond(body, opening)) };
};

/** How far the body reaches past the opening's edge. */
const beyond = (body: Contour, opening: Contour): number =>
  body.kind === "circle" && opening.kind === "circle"
    ? pointDistance(body.centre, opening.centre) + body.radius - opening.radius
    : Math.max(
        ...flattened(body, booleanChord)
          .filter((at) => !containsPoint(opening, at))
          .map((at) => pointToContour(at, opening).gap),
        0,
      );

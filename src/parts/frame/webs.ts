// The wood that stands between openings of a frame's part, and between an opening and its edge: facts for whoever says how
// much is enough.

import { containsContour, containsPoint } from "../../geometry/containment.ts";
import type { Contour, Point } from "../../geometry/contour.ts";
import { contourDistance, pointToContour } from "../../geometry/distance.ts";
import { flattened } from "../../geometry/flatten.ts";
import { booleanChord } from "../../geometry/tolerance.ts";
import type { FrameHole, FramePart } from "./frame-part.ts";

export interface Web {
  /** `slot.floor.1`. */
  readonly opening: string;
  /** `slot.floor.1 and its edge`. */
  readonly between: string;
  /** 0 where two openings run into one another; negative: so far an opening stands out over its edge. */
  readonly gap: number;
}

/** Openings by their feature: those that are asked about, and those that they are held against beside the edge. */
export interface AskedWebs {
  readonly from: (feature: string) => boolean;
  readonly to: (feature: string) => boolean;
}

/** null where it has no such opening. */
export const thinnestWeb = (
  { holes, region }: Pick<FramePart, "holes" | "region">,
  { from, to }: AskedWebs,
): Web | null => {
  const asked = holes.filter(({ feature }) => from(feature));
  const others = holes.filter(({ feature }) => to(feature));
  const webs = asked.flatMap((hole) => [
    ...others.filter((other) => other !== hole).map((other) => webBetween(hole, other)),
    {
      opening: hole.feature,
      between: `${hole.feature} and its edge`,
      gap: gapToEdge(hole.contour, region.outline),
    },
  ]);
  return webs.toSorted((a, b) => a.gap - b.gap)[0] ?? null;
};

const webBetween = (hole: FrameHole, other: FrameHole): Web => {
  const { gap, overlaps } = contourDistance(hole.contour, other.contour);
  const between = `${hole.feature} and ${other.feature}`;
  return { opening: hole.feature, between, gap: overlaps ? 0 : gap };
};

const gapToEdge = (hole: Contour, outline: Contour): number =>
  containsContour(outline, hole) ? contourDistance(hole, outline).gap : -farthestOut(hole, outline);

/** 0 where it only touches. */
const farthestOut = (hole: Contour, outline: Contour): number => {
  const out = (at: Point): number => {
    const { gap } = pointToContour(at, outline);
    return containsPoint(outline, at) ? -gap : gap;
  };
  const most =
    hole.kind === "circle"
      ? out(hole.centre) + hole.radius
      : Math.max(...flattened(hole, booleanChord).map(out));
  return Math.max(0, most);
};

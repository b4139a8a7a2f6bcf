// The wood that stands between openings of a frame's part, and between an opening and its edge: facts for whoever says how
// much is enough.

import { containsContour } from "../../geometry/containment.ts";
import type { Contour } from "../../geometry/contour.ts";
import { contourDistance } from "../../geometry/distance.ts";
import type { FrameHole, FramePart } from "./frame-part.ts";

export interface Web {
  /** `slot.floor.1 and its edge`. */
  readonly between: string;
  readonly isAtEdge: boolean;
  /** 0 where the two run into one another. */
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
      between: `${hole.feature} and its edge`,
      isAtEdge: true,
      gap: gapToEdge(hole.contour, region.outline),
    },
  ]);
  // Of two that are gone, the one between two openings: what runs out at an edge is a notch.
  return (
    webs.toSorted((a, b) => a.gap - b.gap || Number(a.isAtEdge) - Number(b.isAtEdge))[0] ?? null
  );
};

const webBetween = (hole: FrameHole, other: FrameHole): Web => {
  const { gap, overlaps } = contourDistance(hole.contour, other.contour);
  const between = `${hole.feature} and ${other.feature}`;
  return { between, isAtEdge: false, gap: overlaps ? 0 : gap };
};

const gapToEdge = (hole: Contour, outline: Contour): number =>
  containsContour(outline, hole) ? contourDistance(hole, outline).gap : 0;

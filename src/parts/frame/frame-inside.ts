// The space within a frame, as facts for the fit: what its cheeks show from the side, from the inner face of the one to that
// of the other. Boards and ribs in it are bodies of their own.

import type { Span } from "../../diagnostics/finding.ts";
import { union } from "../../geometry/boolean.ts";
import { type Contour, type Point, point } from "../../geometry/contour.ts";
import { polygon } from "../../geometry/shapes.ts";
import { layered, solidLayer, solidRegion } from "../../geometry/solid/solid.ts";
import { scaled } from "../../geometry/space/vector.ts";
import type { EnvelopeLayout } from "../../layout/console/console-layout.ts";
import type { FramePlan } from "./frame-plan.ts";
import { outOfProfile, type Profile } from "./profile.ts";

/**
 * One region for each section. Cheeks of a canted bay differ in height, and what lies below its panels is bounded by their
 * seats: a place counts as within where either cheek covers it.
 */
export const frameInside = (
  plans: readonly FramePlan[],
  { profile, span }: { readonly profile: Profile; readonly span: Span },
): EnvelopeLayout => {
  const outlines = plans.flatMap(({ cheeks }) => [cheeks.left, cheeks.right].map(upAndForward));
  const from = Math.min(...plans.map(({ across }) => across.from));
  const to = Math.max(...plans.map(({ across }) => across.to));
  const regions = union(outlines).map((region) => solidRegion(region));
  return {
    solid: layered([solidLayer(0, to - from, regions)]),
    frame: {
      x: profile.up,
      y: profile.forward,
      z: scaled(profile.right, -1),
      origin: outOfProfile(profile, point(0, 0), to),
    },
    span,
  };
};

/** As a written envelope is drawn: x up and y forward, so that z runs to the left. */
const upAndForward = (corners: readonly Point[]): Contour =>
  polygon(corners.map(({ x, y }) => point(y, x)).toReversed());

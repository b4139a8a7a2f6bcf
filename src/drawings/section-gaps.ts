// Where a section runs through openings: the stretches of y that a layer is open over. The cut is stepped: it passes
// through the axis of every component of its column, and through whatever else lies on the plane itself.

import {
  contourStretches,
  joinedStretches,
  type Stretch,
  stretchesWithout,
} from "../geometry/line-stretches.ts";
import { planeAcrossX } from "../geometry/solid/solid-section.ts";
import type { LayerLayout } from "../layout/panel-layout.ts";
import type { SectionPlane } from "./section-planes.ts";

/** Rising, and apart from each other. */
export const openStretches = (layer: LayerLayout, plane: SectionPlane): readonly Stretch[] => {
  const axes = new Map(plane.components.map(({ id, at }) => [id, at.x]));
  return joinedStretches(
    layer.cutOuts.flatMap(({ owner, contour }) =>
      contourStretches(contour, planeAcrossX(axes.get(owner) ?? plane.x)),
    ),
  );
};

/** What is left of a length between the open stretches. */
export const solidStretches = (whole: Stretch, open: readonly Stretch[]): readonly Stretch[] =>
  stretchesWithout([whole], open);

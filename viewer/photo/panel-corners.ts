// The corners of the open panel, to be marked in a picture.

import type { FourPoints } from "../../src/design/photo-design.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { panel } from "../desk.ts";

/**
 * Of the finished panel, as it can be marked in a picture: lower left, lower right, upper right, upper left. null where the
 * panel could not be laid out.
 */
export const panelCorners = (): FourPoints | null => {
  const layout = panel.value?.layout ?? null;
  if (layout === null) return null;
  const { minX, minY, maxX, maxY } = contourExtent(layout.outline);
  return [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
  ];
};

// The rear of a panel as it lies on its rails: the sheet that bears, the strips that the rails cover, what stands behind.

import { type Extent, extentsOverlap } from "../../geometry/extent.ts";
import type { LayerLayout, PanelLayout, PlacedBody } from "../../layout/panel-layout.ts";
import { lastRigidSheet } from "../../layout/stack.ts";

/** The sheet that lies on the rails and that the mount's fasteners clamp; null where there is none. */
export const seatedLayer = (layout: PanelLayout): LayerLayout | null =>
  layout.layers[lastRigidSheet(layout.layers)] ?? null;

export const isRearBody = (body: Pick<PlacedBody, "low">, layout: PanelLayout): boolean =>
  body.low < (seatedLayer(layout)?.rear ?? Number.NEGATIVE_INFINITY);

export const railsMeet = (layout: PanelLayout, box: Extent): boolean =>
  layout.rails.some((rail) => extentsOverlap(box, rail));

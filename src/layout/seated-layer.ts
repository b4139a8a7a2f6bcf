// The sheet that lies on the rails and that the mount's fasteners clamp.

import type { LayerLayout, PanelLayout } from "./panel-layout.ts";
import { lastRigidSheet } from "./stack.ts";

/** null where the stack has no sheet. */
export const seatedLayer = (layout: PanelLayout): LayerLayout | null =>
  layout.layers[lastRigidSheet(layout.layers)] ?? null;

// A panel seen along its bay: y runs from its low end to its high end, x across, z toward the operator. A panel that is
// counted by its width lies with its own x along the bay.

import { type Extent, extent } from "../../geometry/extent.ts";
import type { Frame } from "../../geometry/space/frame.ts";
import { scaled } from "../../geometry/space/vector.ts";
import type { PlacedPanel } from "../../layout/console/console-layout.ts";

export interface RunFrame {
  readonly frame: Frame;
  /** The nominal outline in that frame. */
  readonly nominal: Extent;
}

export const runFrameOf = ({ frame, layout }: PlacedPanel): RunFrame => {
  const { nominal, mount } = layout;
  if (mount.counts === "height") return { frame, nominal };
  const { minX, minY, maxX, maxY } = nominal;
  return {
    frame: { ...frame, x: scaled(frame.y, -1), y: frame.x },
    nominal: extent(-maxY, minX, -minY, maxX),
  };
};

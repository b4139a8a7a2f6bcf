// How wide a bay is, and how wide it is clear between its rails. A mount says both, or the builder who measured; where neither
// does, the panels that stand on the bay say it. Takes a bay and the places of its panels; gives widths and fastener places.

import type { Mount } from "../../catalogue/mount.ts";
import type { BayDesign } from "../../design/console-design.ts";
import type { Point } from "../../geometry/contour.ts";
import { point } from "../../geometry/contour.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import type { MountHole, PanelLayout } from "../panel-layout.ts";
import type { BayLayout, BayScrew } from "./console-layout.ts";

export type BayWidths = Pick<BayLayout, "width" | "clearWidth" | "screws">;

/** A panel of the bay, and how far along the bay it begins. */
export interface PanelOnBay {
  readonly layout: Pick<PanelLayout, "name" | "mount" | "nominal" | "mountHoles">;
  readonly from: number;
}

export const bayWidths = (
  { mount, design }: { readonly mount: Mount; readonly design: BayDesign },
  panels: readonly PanelOnBay[],
): BayWidths => ({
  width: widthOf(mount, design, panels),
  clearWidth: clearWidthOf(mount, design, panels),
  screws: panels.flatMap(screwsOf),
});

/** Of a mount that names none: what goes in between what was measured, else its widest panel. */
const widthOf = (mount: Mount, design: BayDesign, panels: readonly PanelOnBay[]): Mm =>
  widthOfMount(mount) ??
  (design.clearWidth === null
    ? mm(Math.max(0, ...panels.map(acrossOf)))
    : mm(design.clearWidth + 2 * mount.seat));

/** The width of all its panels; null where each has its own. */
export const widthOfMount = (mount: Mount): Mm | null =>
  mount.counts === "width" ? mount.fixedHeight : mount.width;

/**
 * 0 where nothing says it, less where the narrowest panel is narrower than the strips that it lies on: they overlap by that. A mount without a seat has no rails that could have been measured: what was measured there is the
 * room that its panels go into, and what they are screwed to lies under them.
 */
const clearWidthOf = (mount: Mount, design: BayDesign, panels: readonly PanelOnBay[]): Mm => {
  const measured = design.clearWidth ?? mount.clearWidth;
  if (panels.length === 0 || (measured !== null && mount.seat > 0)) return measured ?? mm(0);
  const clear = panels.flatMap(clearOf);
  return clear.length === 0 ? mm(0) : mm(Math.min(...clear));
};

/**
 * What a panel leaves open between the strips that it lies on: as wide as the mount's seat, and where that names none with its
 * screws in the middle of them; nothing of one without screws.
 */
const clearOf = (panel: PanelOnBay): readonly number[] => {
  const { mount } = panel.layout;
  const width = acrossOf(panel);
  if (mount.seat > 0) return [width - 2 * mount.seat];
  const insets = screwsOf(panel).map(({ x }) => width / 2 - Math.abs(x));
  return insets.length === 0 ? [] : [width - 4 * Math.min(...insets)];
};

/** Nominal size across the bay. */
const acrossOf = ({ layout: { mount, nominal } }: PanelOnBay): number =>
  mount.counts === "height" ? extentWidth(nominal) : extentHeight(nominal);

const screwsOf = (panel: PanelOnBay): readonly BayScrew[] =>
  panel.layout.mountHoles.map((hole) => ({
    ...screwAt(panel, hole),
    name: `${hole.id} of ${panel.layout.name}`,
  }));

/** In the bay's own plane; a panel that is counted by its width lies with its x along the bay. */
const screwAt = ({ layout: { mount, nominal }, from }: PanelOnBay, { at }: MountHole): Point =>
  mount.counts === "height"
    ? point(at.x - extentWidth(nominal) / 2, from + at.y)
    : point(extentHeight(nominal) / 2 - at.y, from + at.x);

// Where a part behind a panel may stand: inside the panel's outline, clear of the rails and of the fasteners that hold it.

import { difference, intersection } from "../../geometry/boolean.ts";
import { type Contour, circle, type Region } from "../../geometry/contour.ts";
import { type Extent, extent, extentWidth, grownExtent } from "../../geometry/extent.ts";
import { contourExtent, regionArea } from "../../geometry/measure.ts";
import { mm } from "../../geometry/quantity.ts";
import { rectangle } from "../../geometry/shapes.ts";
import type { PanelLayout } from "../../layout/panel-layout.ts";
import { openedRegions, plainRegion } from "./grown-regions.ts";
import { USUAL_CLEARANCES } from "./print-allowance.ts";

/** Free space to rail, neighbour and fastener: a loose fit, a side. */
const SURROUND = USUAL_CLEARANCES.loose;

/** Tongues of the outline narrower than this would break off: common practice for printed walls. */
const LEAST_TONGUE = 6;

/** The largest area that is left; null where the mount leaves none. */
export const spacerOutline = (layout: PanelLayout): Contour | null => {
  const inner = intersection(
    [plainRegion(layout.outline)],
    [plainRegion(rectangle(clearBox(layout)))],
  );
  const heads = layout.mountHoles.map(({ at }) =>
    circle(at, layout.mount.headClearance / 2 + SURROUND),
  );
  return largest(openedRegions(difference(inner, heads), LEAST_TONGUE));
};

/** Between the rails, and between whatever else the mount's clear width keeps free. */
const clearBox = ({ nominal, rails, mount, outline }: PanelLayout): Extent => {
  const box = grownExtent(contourExtent(outline), -SURROUND);
  const strips = rails.reduce((free, rail) => besideStrip(free, rail, nominal), box);
  const clear = mount.clearWidth;
  if (clear === null) return strips;
  const side = (extentWidth(nominal) - clear) / 2 + SURROUND;
  return {
    ...strips,
    minX: mm(Math.max(strips.minX, nominal.minX + side)),
    maxX: mm(Math.min(strips.maxX, nominal.maxX - side)),
  };
};

/** What a strip along one side of the panel leaves. */
const besideStrip = (free: Extent, strip: Extent, nominal: Extent): Extent => {
  const isUpright = strip.maxY - strip.minY >= nominal.maxY - nominal.minY;
  const low = isUpright ? strip.minX <= nominal.minX : strip.minY <= nominal.minY;
  if (isUpright)
    return low
      ? extent(Math.max(free.minX, strip.maxX + SURROUND), free.minY, free.maxX, free.maxY)
      : extent(free.minX, free.minY, Math.min(free.maxX, strip.minX - SURROUND), free.maxY);
  return low
    ? extent(free.minX, Math.max(free.minY, strip.maxY + SURROUND), free.maxX, free.maxY)
    : extent(free.minX, free.minY, free.maxX, Math.min(free.maxY, strip.minY - SURROUND));
};

const largest = (regions: readonly Region[]): Contour | null =>
  regions.toSorted((a, b) => regionArea(b) - regionArea(a))[0]?.outline ?? null;

// Things that stand on a plate, or are cut out of what stands there, each from height to height; and the plate with all of
// them as layers.

import { unionRegions } from "../../geometry/boolean.ts";
import type { Contour, Region } from "../../geometry/contour.ts";
import { type LayeredSolid, layered } from "../../geometry/solid/solid.ts";
import { plainRegion } from "./grown-regions.ts";
import { tidy } from "./opaque-wall.ts";
import { layerOf, openedBy } from "./region-sums.ts";

export interface Upright {
  readonly does: "stand" | "cut";
  readonly contour: Contour;
  readonly from: number;
  readonly to: number;
}

/** `plate` from `rear` to `top`, where all that stands begins; whatever is cut is cut from plate and standing things alike. */
export const platedSolid = (
  plate: { readonly regions: readonly Region[]; readonly rear: number; readonly top: number },
  uprights: readonly Upright[],
): LayeredSolid => {
  const heights = uprights.flatMap(({ from, to }) => [from, to]);
  const steps = [...new Set([plate.rear, plate.top, ...heights].map(tidy))].sort((a, b) => a - b);
  const layers = steps.slice(1).flatMap((to, index) => {
    const from = steps[index]!;
    const here = uprights.filter((one) => tidy(one.from) <= from && tidy(one.to) >= to);
    const standing = here.filter(({ does }) => does === "stand");
    // Nothing stands lower than the plate's top: the plate itself needs no sum.
    const base =
      to <= tidy(plate.top)
        ? plate.regions
        : unionRegions(standing.map(({ contour }) => plainRegion(contour)));
    const cut = here.filter(({ does }) => does === "cut").map(({ contour }) => contour);
    const regions = openedBy(base, cut);
    return regions.length === 0 ? [] : [layerOf(from, to, { regions, loops: "clear" })];
  });
  return layered(layers);
};

// Finished size to cut size: paint narrows a hole and thickens an edge, so that holes are cut larger and outlines smaller.
// Kerf is not in here: it belongs to the machine and is applied once, when a file is written.

import type { KerfReading } from "../design/workshop-design.ts";
import type { Contour } from "../geometry/contour.ts";
import { madeOnceWith } from "../geometry/made-once.ts";
import { offsetContour } from "../geometry/offset.ts";
import type { CutOut, LayerLayout } from "../layout/panel-layout.ts";

export type CutSize =
  | { readonly kind: "cut"; readonly contour: Contour }
  | { readonly kind: "refused"; readonly why: string };

/** A hole as it is cut, so that it measures its finished size once painted. */
export const holeCutSize = (
  cutOut: CutOut,
  layer: LayerLayout,
  reading: KerfReading | null,
): CutSize => {
  const allowance = (reading?.holeAllowance ?? 0) / 2;
  return grownOnce(cutOut.contour, { by: cutOut.asCut ? 0 : layer.holePaint.nominal + allowance });
};

/** The outline as it is cut: paint on its edge brings it to its finished size. */
export const outlineCutSize = (outline: Contour, layer: LayerLayout): CutSize =>
  grownOnce(outline, { by: -layer.holePaint.nominal });

const grownOnce = madeOnceWith((contour: Contour, { by }: { readonly by: number }): CutSize => {
  if (by === 0) return { kind: "cut", contour };
  const offset = offsetContour(contour, by);
  return offset.kind === "offset" ? { kind: "cut", contour: offset.contour } : offset;
});

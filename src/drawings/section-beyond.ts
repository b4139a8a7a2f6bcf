// What of a printed part stands beyond the cut, in outline: the far rim of a spacer, the standoffs on a tray. Each area of each
// layer gives the box that it looks like from the side; pieces that are turned or turn round give none.

import { unionRegions } from "../geometry/boolean.ts";
import type { Region } from "../geometry/contour.ts";
import { extent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { rectangle } from "../geometry/shapes.ts";
import type { Solid } from "../geometry/solid/solid.ts";

/** In the section's own frame: x is the panel's y, y its z. */
export const beyondRegions = (solid: Solid, x: number): readonly Region[] =>
  unionRegions(boxesBeyond(solid, x));

const boxesBeyond = (solid: Solid, x: number): readonly Region[] => {
  switch (solid.kind) {
    case "layered":
      return solid.layers.flatMap(({ from, to, regions }) =>
        regions
          .map(({ outline }) => contourExtent(outline.contour))
          .filter(({ minX }) => minX < x)
          .map(({ minY, maxY }) => ({
            outline: rectangle(extent(minY, from, maxY, to)),
            holes: [],
          })),
      );
    case "composed":
      return solid.add.flatMap((piece) => boxesBeyond(piece, x));
    case "lofted":
    case "revolved":
    case "placed":
      return [];
  }
};

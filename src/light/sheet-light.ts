// What a sheet does with light: stops it, or lets it through where it is bare. Opal and frosted sheets spread it as well;
// here the straight way on counts for both.

import type { Contour, Region } from "../geometry/contour.ts";
import type { LayerLayout } from "../layout/panel-layout.ts";

/** Light passes its material. */
export const isSeeThrough = ({ kind, stock }: LayerLayout): boolean =>
  kind === "sheet" && stock !== null && stock.light !== "opaque";

/** Its front carries opaque paint. Filling an engraving leaves the rest bare. */
export const hasPaintedFront = ({ finish }: LayerLayout): boolean =>
  finish !== null && finish.order !== "engrave-fill";

/** Paint before cutting leaves every cut edge bare. */
export const hasPaintedEdges = ({ finish }: LayerLayout): boolean =>
  finish?.order === "cut-paint-engrave";

/** The sheet less everything that is cut out of it. */
export const sheetRegion = ({ outline, cutOuts }: LayerLayout): Region => ({
  outline,
  holes: cutOuts.map(({ contour }): Contour => contour),
});

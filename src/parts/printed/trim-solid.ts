// A trim's recipe: the body in the fascia's opening, the flange on its face, a bevel outside and a flare inside that run
// together to the front. Drawn about the display's axis, then put where the display is.

import { unionRegions } from "../../geometry/boolean.ts";
import { type Contour, circle } from "../../geometry/contour.ts";
import { type Extent, grownExtent } from "../../geometry/extent.ts";
import { mm } from "../../geometry/quantity.ts";
import { roundedRectangle } from "../../geometry/shapes.ts";
import {
  composed,
  layered,
  lofted,
  type Solid,
  type SolidLayer,
} from "../../geometry/solid/solid.ts";
import { type Placement, placedContour } from "../../geometry/transform.ts";
import { TRIM_OPENING_CORNER } from "../../layout/trim-plan.ts";
import { plainRegion } from "./grown-regions.ts";
import { layerOf } from "./region-sums.ts";
import type { TrimSizes } from "./trim-sizes.ts";

export interface TrimShape {
  readonly solid: Solid;
  readonly inner: Contour;
  readonly body: Contour;
  readonly room: Contour;
  readonly filter: Contour | null;
}

/** Inside corners of a printed part: about a line of a 0.4 mm nozzle (common practice). */
const INNER_CORNER = 0.5;
/** A cut sheet's corner passes a printed one: rounder by half a millimetre. The flange's is what a hand slides over. Own choice. */
const FILTER_CORNER = 1;
const FLANGE_CORNER = 3;

export const trimShape = (sizes: TrimSizes, at: Placement): TrimShape => {
  const put = (contour: Contour): Contour => placedContour(contour, at);
  const inner = (grow: number): Contour => put(rounded(sizes.inner, INNER_CORNER, grow));
  const room = put(rounded(sizes.room, INNER_CORNER, 0));
  const bodyCorner = TRIM_OPENING_CORNER - sizes.clearance;
  const body = put(rounded(sizes.body, Math.max(INNER_CORNER, bodyCorner), 0));
  const flange = (shrink: number): Contour =>
    put(rounded(sizes.plan.flangeBox, FLANGE_CORNER, -shrink));
  const { rear, lip, front, bevel, holes, hasBody } = sizes.heights;
  const shoulder = front - bevel;
  const bores =
    sizes.screw === null
      ? []
      : sizes.plan.screws.map((screw) => put(circle(screw, sizes.screw!.modelled / 2)));
  const outlineAt = (from: number): readonly Contour[] =>
    from < 0 ? [body, ...sizes.ribs.map(put)] : [flange(0)];
  const steps = [...new Set([hasBody ? rear : 0, lip, 0, holes, shoulder])]
    .filter((height) => height >= (hasBody ? rear : 0) && height <= shoulder)
    .sort((a, b) => a - b);
  const layers = steps.slice(1).map((to, index): SolidLayer => {
    const from = steps[index]!;
    const hole = from < lip ? room : inner(0);
    const cut = [hole, ...(from < holes ? bores : [])];
    const regions = unionRegions(outlineAt(from).map(plainRegion)).map(({ outline }) => ({
      outline,
      holes: cut,
    }));
    return layerOf(from, to, { regions, loops: "clear" });
  });
  const top = lofted([
    { height: mm(shoulder), outline: flange(0), holes: [inner(0)] },
    { height: front, outline: flange(bevel), holes: [inner(bevel)] },
  ]);
  const filter = sizes.filter === null ? null : put(rounded(sizes.filter, FILTER_CORNER, 0));
  return { solid: composed([layered(layers), top]), inner: inner(0), body, room, filter };
};

/** A rounded rectangle moved outward on every side, its corners with it. */
const rounded = (box: Extent, corner: number, grow: number): Contour =>
  roundedRectangle(grownExtent(box, grow), corner + grow);

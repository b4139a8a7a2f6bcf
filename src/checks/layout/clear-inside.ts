// Does a box lie inside an outline with a margin all round: the quick answer for most things on a panel. Where it says no,
// the exact distance has to be asked.

import { boxedEdgesOf } from "../../geometry/boxed-edges.ts";
import { containsPoint } from "../../geometry/containment.ts";
import type { Contour } from "../../geometry/contour.ts";
import { type Extent, extentCentre, extentGap } from "../../geometry/extent.ts";

export const isClearInside = (box: Extent, outline: Contour, margin: number): boolean =>
  boxedEdgesOf(outline).every((edge) => extentGap(edge.box, box) > margin) &&
  containsPoint(outline, extentCentre(box));

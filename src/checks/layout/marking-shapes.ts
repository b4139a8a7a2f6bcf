// Does a marking lie on a shape: any of its fills or strokes shares area with it. And what findings call a marking.

import { entryName } from "../../design/entry-name.ts";
import { containsContour } from "../../geometry/containment.ts";
import type { Contour, Region } from "../../geometry/contour.ts";
import { contourDistance, contourToPathDistance } from "../../geometry/distance.ts";
import { type Extent, extentsOverlap } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { PlacedMarking } from "../../layout/panel-layout.ts";

export const isShown = ({ fills, strokes }: PlacedMarking): boolean =>
  fills.length + strokes.length > 0;

/** `box` is the contour's own. */
export const isMarkedOn = (marking: PlacedMarking, contour: Contour, box: Extent): boolean =>
  extentsOverlap(box, marking.box) &&
  (marking.fills.some((fill) => isFilledOn(fill, contour, box)) ||
    marking.strokes.some(({ path }) => contourToPathDistance(contour, path).overlaps));

/** A ring round a hole does not lie on it: the shape's own holes count. */
const isFilledOn = (fill: Region, contour: Contour, box: Extent): boolean =>
  extentsOverlap(contourExtent(fill.outline), box) &&
  contourDistance(fill.outline, contour).overlaps &&
  !fill.holes.some((hole) => containsContour(hole, contour));

const MOST_SHOWN = 24;

/** `"PAY OUT" (warn.1)`, or `the scale of speed`; a legend by itself by its words alone, a member of a row of them with its name. */
export const markingName = (marking: PlacedMarking): string => {
  if (marking.text === null || marking.kind === "scale" || marking.kind === "dial")
    return `the ${marking.kind} of ${marking.owner}`;
  const line = marking.text.replaceAll("\n", " / ");
  const text = line.length > MOST_SHOWN ? `${line.slice(0, MOST_SHOWN)}…` : line;
  const isByItself = marking.owner === marking.id && entryName(marking.id) === marking.id;
  return isByItself ? `"${text}"` : `"${text}" (${marking.owner})`;
};

/** At the head of a sentence. */
export const capitalised = (words: string): string =>
  `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`;

// The numbers of the windows on the rear of a lamp box's lid: mirrored in the panel's coordinates, since they are read from
// behind, and clear of the LEDs.

import { type Point, point, type Region } from "../../geometry/contour.ts";
import {
  type Extent,
  extentCentre,
  extentHeight,
  extentsOverlap,
  extentWidth,
  grownExtent,
  joinedExtent,
} from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { mm } from "../../geometry/quantity.ts";
import { mirroredRegion, placedRegion, placement } from "../../geometry/transform.ts";
import type { Face } from "../../lettering/face.ts";
import type { Lettering } from "../../lettering/lettering.ts";
import type { LampBoxSizes, LampCell } from "./lamp-box-sizes.ts";
import { reliefFace, reliefText } from "./relief-text.ts";

export interface LidNumber {
  readonly window: string;
  readonly number: number;
  readonly regions: readonly Region[];
}

/** Two layers of 0.2 mm: seen and felt, and no obstacle to a wire. */
export const NUMBER_RELIEF = 0.4;

/** The tallest that stays clear of the LEDs is taken; below the last a print is not read. */
const HEIGHTS: readonly number[] = [4, 3.5, 3, 2.5, 2];
const GAP = 0.4;

/** A cell that is all LED has no number; the others keep theirs. */
export const lampBoxNumbers = (sizes: LampBoxSizes, lettering: Lettering): readonly LidNumber[] => {
  const face = reliefFace(lettering);
  if (face === null) return [];
  return sizes.cells.flatMap((cell) => {
    const regions = numberRegions(cell, sizes.rim.modelled, face);
    return regions === null ? [] : [{ window: cell.id, number: cell.number, regions }];
  });
};

const numberRegions = (cell: LampCell, rim: number, face: Face): readonly Region[] | null => {
  for (const height of HEIGHTS) {
    const regions = reliefText(face, String(cell.number), mm(height));
    const box = regions.map(({ outline }) => contourExtent(outline)).reduce(joinedExtent);
    const centre = freePlace(cell, box, rim);
    if (centre !== null) return placedNumber(regions, extentCentre(box), centre);
  }
  return null;
};

/** In the middle, else midway between the middle and the cell's sides. */
const freePlace = (cell: LampCell, number: Extent, rim: number): Point | null => {
  const middle = extentCentre(cell.inside);
  const half = { x: extentWidth(number) / 2, y: extentHeight(number) / 2 };
  const [width, height] = [extentWidth(cell.inside), extentHeight(cell.inside)];
  const places = [
    middle,
    point(middle.x, cell.inside.minY + half.y),
    point(middle.x, cell.inside.maxY - half.y),
    point(middle.x - width / 4, middle.y),
    point(middle.x + width / 4, middle.y),
    point(middle.x - width / 4, middle.y - height / 4),
  ];
  const isFree = (at: Point): boolean => {
    const box = grownExtent(boxAt(at, half), GAP);
    return cell.leds.every((led) => !extentsOverlap(box, boxAt(led, { x: rim / 2, y: rim / 2 })));
  };
  return places.find(isFree) ?? null;
};

const boxAt = (at: Point, half: { readonly x: number; readonly y: number }): Extent => ({
  minX: mm(at.x - half.x),
  minY: mm(at.y - half.y),
  maxX: mm(at.x + half.x),
  maxY: mm(at.y + half.y),
});

const placedNumber = (regions: readonly Region[], own: Point, centre: Point): readonly Region[] => {
  const at = placement(centre.x - own.x, centre.y - own.y);
  return regions.map((region) => mirroredRegion(placedRegion(region, at), centre.x));
};

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
} from "../../geometry/extent.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { mirroredRegion, placedRegion, placement } from "../../geometry/transform.ts";
import type { Face } from "../../lettering/face.ts";
import type { Lettering } from "../../lettering/lettering.ts";
import { type SetText, setText } from "../../lettering/set-text.ts";
import type { LampBoxSizes, LampCell } from "./lamp-box-sizes.ts";

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

/** An even face without islands that would break off: any outline face prints; the boldest there is reads best. */
export const reliefFace = ({ faces }: Lettering): Face | null => {
  const outlines = [...faces.values()].filter(({ kind }) => kind === "outline");
  return outlines.find(({ id }) => id.includes("bold")) ?? outlines[0] ?? null;
};

const numberRegions = (cell: LampCell, rim: number, face: Face): readonly Region[] | null => {
  for (const height of HEIGHTS) {
    const set = setText(face, String(cell.number), { capHeight: mm(height), align: "middle" });
    const centre = freePlace(cell, set, rim);
    if (centre !== null) return placedNumber(set, centre);
  }
  return null;
};

/** In the middle, else midway between the middle and the cell's sides. */
const freePlace = (cell: LampCell, set: SetText, rim: number): Point | null => {
  const middle = extentCentre(cell.inside);
  const half = { x: extentWidth(set.box) / 2, y: extentHeight(set.box) / 2 };
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

const placedNumber = (set: SetText, centre: Point): readonly Region[] => {
  const own = extentCentre(set.box);
  const at = placement(centre.x - own.x, centre.y - own.y);
  const axis: Mm = centre.x;
  return set.fills.map((region) => mirroredRegion(placedRegion(region, at), axis));
};

// The room that a display's trim takes in the fascia, about the display's axis: the opening that it stands in, the flange
// round it, its screws. What is inside the opening is the printed part's own.

import type { Part } from "../catalogue/part.ts";
import { shapeContour } from "../catalogue/shape-contour.ts";
import type { TrimDesign } from "../design/printed-design.ts";
import { type Contour, type Point, point } from "../geometry/contour.ts";
import { type Extent, extent, grownExtent, joinedExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { roundedRectangle } from "../geometry/shapes.ts";
import { placedContour, placement } from "../geometry/transform.ts";

export interface TrimPlan {
  /** What enters the display's hole, and the part of it that is read. */
  readonly display: Extent;
  readonly window: Extent;
  /** The least room inside the trim, behind its lip. */
  readonly seat: Extent;
  readonly openingBox: Extent;
  readonly opening: Contour;
  readonly flangeBox: Extent;
  readonly flange: Contour;
  /** In the clamped sheets; the screws go into the trim from behind. */
  readonly screws: readonly Point[];
}

/** Free space round the display's glass behind the lip: a loose fit in print (common practice: 0.3 to 0.5). */
const DISPLAY_ROOM = 0.4;
/** What a filter lies on at each side, and the least lip beside the window. */
const FILTER_LEDGE = 1.5;
/** Wall and fit of the trim inside the opening: five lines of 0.45 mm and a snug fit. */
export const TRIM_WALL_ROOM = 2.5;
/** A lip of 1.5 to 2 mm over an edge keeps light in (common practice); it hides the cut edge of the fascia too. */
const FLANGE_OVERLAP = 2;
/** How far the trim stands proud of the face: eight layers of 0.2 mm. The printed part may be a few layers higher. */
export const TRIM_HEIGHT: Mm = mm(1.6);
/** Sharp inside corners start cracks: common practice. */
export const TRIM_OPENING_CORNER: Mm = mm(1);
const FLANGE_CORNER = 3;
/** A thread-forming M2 screw has plastic of its own diameter round it: common practice. */
const TRIM_SCREW_ROOM = 6;

export const trimPlan = (part: Part, trim: TrimDesign): TrimPlan => {
  const display = contourExtent(shapeContour(part.openings.passes));
  const hole = contourExtent(shapeContour(part.openings.clamp));
  const window = windowBox(part, hole);
  const seat = [grownExtent(display, DISPLAY_ROOM), hole, grownExtent(window, FILTER_LEDGE)].reduce(
    joinedExtent,
  );
  const walled = grownExtent(seat, TRIM_WALL_ROOM);
  const side = trim.fixing === "screw" ? TRIM_SCREW_ROOM : 0;
  const openingBox = extent(walled.minX - side, walled.minY, walled.maxX + side, walled.maxY);
  const flangeBox = grownExtent(openingBox, FLANGE_OVERLAP);
  const level = (walled.minY + walled.maxY) / 2;
  const reach = side / 2 + TRIM_WALL_ROOM / 2;
  return {
    display,
    window,
    seat,
    openingBox,
    opening: roundedRectangle(openingBox, TRIM_OPENING_CORNER),
    flangeBox,
    flange: roundedRectangle(flangeBox, FLANGE_CORNER),
    screws:
      side === 0
        ? []
        : [point(openingBox.minX + reach, level), point(openingBox.maxX - reach, level)],
  };
};

/** A part that is no display shows what its hole shows. */
const windowBox = ({ display }: Part, hole: Extent): Extent => {
  if (display === null) return hole;
  const { shape, at } = display.window;
  return contourExtent(placedContour(shapeContour(shape), placement(at.x, at.y)));
};

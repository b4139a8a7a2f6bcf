// What holds where a design says nothing: the trade's usual values, in one place so that they can be listed.

import { type Degrees, degrees, type Mm, mm } from "../geometry/quantity.ts";
import { upToTenth } from "../geometry/tenths.ts";

/** The version of the format that this program writes; it reads this one. */
export const FORMAT_VERSION = "1";

/** Seat to console face, the distance that legend heights are usually given for. Common practice. */
export const VIEWING_DISTANCE: Mm = mm(700);

/** A face made for instrument panels and read well at small sizes; SIL Open Font License. */
export const FONT = "b612";

/** Between a legend and what it belongs to: half of a 4 mm capital. Common practice. */
export const LEGEND_GAP: Mm = mm(2);

/** Labels stand above what they name (NUREG-0700, labels; from memory, unverified). */
export const LEGEND_SIDE = "above";

/**
 * Cap height at a viewing distance: 20 arc minutes (NUREG-0700 Rev 3, 11.4.1.5-1: preferred), that is 2 D tan(10'),
 * taken up to the next tenth of a millimetre.
 */
export const legendHeight = (viewingDistance: Mm): Mm =>
  mm(upToTenth(viewingDistance * TWICE_TANGENT_OF_10_MINUTES));

/** 2 tan(10 / 60 degrees) = 0.00581777..., by the series x + x^3/3. */
const TWICE_TANGENT_OF_10_MINUTES = 0.005817774;

export const REVISION = "A";

/** Border and bracket round a group: its distance from the group, and its corner. Common practice. */
export const BORDER_GAP: Mm = mm(4);
export const BORDER_CORNER: Mm = mm(2);

/** Windows: corners carry a radius, because sharp inside corners start cracks. Common practice for a laser. */
export const WINDOW_CORNER: Mm = mm(0.5);

/**
 * From a legend to the edge of the window behind it. Layers lie out of register by a dowel's play (0.1 mm) and two cutters'
 * spread (0.1 mm each), and as much again is left for light that comes aslant. Common practice.
 */
export const WINDOW_MARGIN: Mm = mm(0.6);

/** Least web between two openings of a sheet (common practice: 1 mm is fragile, the sheet's thickness recommended). */
export const LEAST_WEB: Mm = mm(1.5);

/** Least rim between an opening and a sheet's edge. Common practice. */
export const LEAST_RIM: Mm = mm(2.5);

/** From a lit area's components and legends to its wall: common practice, a little over a printed wall. */
export const AREA_GAP: Mm = mm(2);

export const UNTURNED: Degrees = degrees(0);
export const NOTHING: Mm = mm(0);

/** Two in a window light the whole text (common practice); 3 mm ones have room in any window. */
export const LAMP_BOX_LEDS = 2;
export const LAMP_BOX_LED = "led-3";
export const LAMP_BOX_DIFFUSER = "frosted-acrylic-3";

/** 3 to 4 mm: common practice. */
export const LAMP_BOX_FLANGE: Mm = mm(3);

/** Room for the head of an M4 screw beside the wall (ISO 7380-1: 7.6). */
export const BOX_FLANGE: Mm = mm(12);
export const BOX_STOCK = "black-petg";

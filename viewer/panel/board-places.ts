// Between the screen and the sheet: pixels of the drawing and millimetres of the panel, and how the whole panel is fitted in.

import { type Extent, extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import type { Sight } from "./board.ts";
import type { Shift } from "./snap.ts";

export interface Room {
  readonly width: number;
  readonly height: number;
}

/** Width of a ruler, and paper round the panel, in pixels. */
export const RULER = 26;
const PAPER = 22;

/** `covered` is what the ticket may take of the height, pixels: nothing of the whole panel is drawn there. */
export function fitted(panel: Extent, room: Room, covered = 0): Sight {
  const free = room.height - covered;
  const across = (room.width - RULER - 2 * PAPER) / extentWidth(panel);
  const up = (free - RULER - 2 * PAPER) / extentHeight(panel);
  const scale = Math.max(LEAST_SCALE, Math.min(across, up));
  // In the middle of all the room as long as nothing of it comes under what covers it.
  const lowest = free - PAPER - (scale * extentHeight(panel)) / 2;
  const middle = {
    x: RULER + (room.width - RULER) / 2,
    y: Math.min(RULER + (room.height - RULER) / 2, lowest),
  };
  return {
    scale,
    x: middle.x - (scale * (panel.minX + panel.maxX)) / 2,
    y: middle.y + (scale * (panel.minY + panel.maxY)) / 2,
  };
}

const LEAST_SCALE = 0.5;
const MOST_SCALE = 80;

/** Larger or smaller about a place of the drawing that stays where it is. */
export function zoomed({ scale, x, y }: Sight, by: number, about: Shift): Sight {
  const next = Math.min(MOST_SCALE, Math.max(LEAST_SCALE, scale * by));
  const share = next / scale;
  return { scale: next, x: about.x - (about.x - x) * share, y: about.y - (about.y - y) * share };
}

/** Millimetres on the panel, y up, of a place in the drawing. */
export const onPanel = ({ scale, x, y }: Sight, at: Shift): Shift => ({
  x: (at.x - x) / scale,
  y: (y - at.y) / scale,
});

/** The place in the drawing, in pixels, of a place on the panel. */
export const onScreen = ({ scale, x, y }: Sight, at: Shift): Shift => ({
  x: x + at.x * scale,
  y: y - at.y * scale,
});

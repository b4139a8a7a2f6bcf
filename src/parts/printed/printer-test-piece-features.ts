// What stands on a printer's test piece, and what is read from it: nominal sizes in mm, by the names of the measuring page.

import { decimal } from "../../geometry/number.ts";

/** Through the plate. */
export const TEST_HOLES: readonly number[] = [2, 3, 4, 5, 6, 8, 10, 12, 15];

/** Standing on it. */
export const TEST_PEGS: readonly number[] = [3, 5, 8, 12];

/** A side, between the loose key and its slots. */
export const TEST_CLEARANCES: readonly number[] = [0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5];

/** Lines thick: whole lines of the printer. */
export const TEST_WALLS: readonly number[] = [1, 2, 3, 4, 5, 6];

/** Added to an M3 insert's pilot. */
export const TEST_PILOTS: readonly number[] = [0.1, 0.2, 0.3, 0.4, 0.5];

export const TEST_KEY = { width: 3, length: 10, height: 20 } as const;

/** Width of the plate, read at its foot and above the first layers. */
export const TEST_PLATE = { width: 130, height: 96, thickness: 4 } as const;

export interface PrinterTestFeature {
  readonly id: string;
  readonly nominal: number | null;
  readonly how: string;
}

export const PRINTER_TEST_FEATURES: readonly PrinterTestFeature[] = [
  ...TEST_HOLES.map((nominal) => ({
    id: `hole-${nominal}`,
    nominal,
    how: "diameter of the hole in the middle of the plate's thickness, two ways: note the smaller",
  })),
  ...TEST_PEGS.map((nominal) => ({
    id: `peg-${nominal}`,
    nominal,
    how: "diameter of the peg half way up, two ways: note the larger",
  })),
  { id: "foot", nominal: TEST_PLATE.width, how: "width of the plate at its very foot" },
  { id: "above", nominal: TEST_PLATE.width, how: "width of the plate above its first layers" },
  {
    id: "press",
    nominal: null,
    how: "the slot that the key enters with a push and stays in: its number",
  },
  {
    id: "snug",
    nominal: null,
    how: "the slot that the key enters by hand without play: its number",
  },
  { id: "sliding", nominal: null, how: "the slot that the key slides in by itself: its number" },
  { id: "loose", nominal: null, how: "the slot that the key falls through: its number" },
  {
    id: "opaque",
    nominal: null,
    how: "the thinnest wall that shows no light of a bright lamp in a dark room: its number of lines",
  },
  {
    id: "insert",
    nominal: null,
    how: "the boss that took an M3 insert straight, flush and without a bulge: its number",
  },
];

/** As it stands beside the feature. */
export const testLabel = (value: number): string => decimal(value, 2);

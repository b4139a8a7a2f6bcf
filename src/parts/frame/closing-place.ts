// Where the strip that closes the last bay begins: at its end; beyond it by the strip's own thickness where the bay rises
// steeply, so that the strip lies on its end like a lid.

import type { Point } from "../../geometry/contour.ts";
import { type FrameBay, inBay } from "./frame-bay.ts";
import { GAP } from "./frame-practice.ts";

/** Sine of 45 degrees: from there on an end is more of a top than of a face. */
const STEEP = Math.SQRT1_2;

export const closingPlace = (bay: FrameBay, thickness: number): Point =>
  inBay(bay, bay.length + closingLift(bay, thickness), 0);

/** How far beyond its end. */
export const closingLift = ({ along }: FrameBay, thickness: number): number =>
  along.y > STEEP ? thickness + 2 * GAP : 0;

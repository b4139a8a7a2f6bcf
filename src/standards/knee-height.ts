// How high the room over a seated person's lap must be.

import { type Mm, mm } from "../geometry/quantity.ts";
import { SEATED_PERSON } from "./reach.ts";

/** Height from the floor that knees and thighs of the largest person want, on a seat of this height. */
export const kneeHeightNeeded = (seatHeight: number): Mm =>
  mm(Math.max(SEATED_PERSON.kneeHeight.large, seatHeight + SEATED_PERSON.thighClearance.large));

// A measured pair in words.

import { decimal } from "../../src/geometry/number.ts";
import type { MeasuredPair } from "./measured-pair.ts";

/** Shapes of the picture are coarser than a hundredth: one digit is what they are good for. */
const PLACES = 1;

export const measureWords = ({ distance, forward, aside, up }: MeasuredPair): string =>
  `${decimal(distance, PLACES)} mm: ${decimal(forward, PLACES)} forward, ${decimal(aside, PLACES)} aside, ${decimal(up, PLACES)} up`;

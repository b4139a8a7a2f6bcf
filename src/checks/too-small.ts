// The sentence for what does not pass an opening: a part and a machine's bed, a section and the doorway. Takes what is missing;
// gives both pairs of sides in the order in which the opening is written, and how much it lacks.

import type { Shortage } from "../parts/frame/bed.ts";
import { millimetres } from "./words.ts";

export interface Opening {
  /** `the bed of router`. */
  readonly name: string;
  readonly room: readonly [number, number];
}

/** `piece`: `cheek-left with its waste`. */
export const tooSmall = (piece: string, { name, room }: Opening, short: Shortage): string => {
  const { measured, limit } = short;
  const size = room[0] <= room[1] ? [short.short, short.long] : [short.long, short.short];
  return `${piece} is ${sides(size, measured, limit)}; ${name} is ${sides(room, limit, measured)}, ${millimetres(measured - limit, 0)} too small.`;
};

/** The side that is too long is told from the opening's; the other is none the worse for it. */
const sides = (both: readonly number[], compared: number, beside: number): string =>
  both
    .map((side) => (side === compared ? millimetres(side, beside) : millimetres(side)))
    .join(" x ");

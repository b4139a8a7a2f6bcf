// A colour of the screen as the linear shares of light that glTF's materials are made of.
// Takes #rrggbb, gives red, green and blue in 0 to 1. Plain arithmetic and square root alone, so that every engine writes the
// same digits: Math.pow differs between engines in its last bit.

import { invariant } from "../geometry/invariant.ts";

export const linearColour = (colour: string): readonly [number, number, number] => {
  const digits = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(colour);
  invariant(digits !== null, "a colour is # and six hexadecimal digits");
  const share = (at: number): number => linearShare(Number.parseInt(digits[at] ?? "", 16) / 255);
  return [share(1), share(2), share(3)];
};

/** The transfer function of sRGB and its inverse: IEC 61966-2-1:1999. */
const linearShare = (value: number): number =>
  value <= 0.04045 ? value / 12.92 : power12Of5((value + 0.055) / 1.055);

/** value to the power 2.4: its square times the fifth root of its square. */
const power12Of5 = (value: number): number => {
  const square = value * value;
  return square * fifthRoot(square);
};

/** Newton's steps from 1 fall toward the root of any number in 0 to 1; 60 are more than double precision needs from 0.003 up. */
const STEPS = 60;

const fifthRoot = (value: number): number => {
  let root = 1;
  for (let step = 0; step < STEPS; step += 1) {
    const fourth = root * root * root * root;
    root -= (root * fourth - value) / (5 * fourth);
  }
  return root;
};

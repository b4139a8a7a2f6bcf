// How well a colour stands out from the one behind it: the ratio of their luminances, and how large it must be to be read.
// WCAG 2.2 (W3C Recommendation, 12 December 2024): relative luminance, contrast ratio, success criterion 1.4.3.

/** For words that are not large print; engraved legends are thin, whatever their height. */
export const LEAST_CONTRAST = 4.5;

/** From 1 (the same) to 21 (black on white), in either order. `#rrggbb` each. */
export function contrastRatio(a: string, b: string): number {
  const both = [luminance(a), luminance(b)];
  return (Math.max(...both) + FLARE) / (Math.min(...both) + FLARE);
}

/** What a surface throws back of the room's light whatever its colour, as a share of white. */
const FLARE = 0.05;

/** 0 for black, 1 for white. */
function luminance(colour: string): number {
  const share = (at: number): number => linear(Number.parseInt(colour.slice(at, at + 2), 16) / 255);
  return 0.2126 * share(1) + 0.7152 * share(3) + 0.0722 * share(5);
}

const linear = (value: number): number =>
  value <= 0.04045 ? value / 12.92 : power((value + 0.055) / 1.055);

/** To 2.4: the square times the fifth root of the square. Engines differ in the last bit of their own powers. */
function power(value: number): number {
  const square = value * value;
  let root = 1;
  for (let step = 0; step < NEWTON_STEPS; step += 1)
    root = (4 * root + square / (root * root * root * root)) / 5;
  return square * root;
}

/** From 1 down to the fifth root of 0.008, the least that is asked for, to the last bit. */
const NEWTON_STEPS = 20;

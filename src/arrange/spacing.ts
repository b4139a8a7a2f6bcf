// How far apart two units must stand: along a row, and from one row to the next.

import type { Extent } from "../geometry/extent.ts";
import { separation } from "../standards/separation.ts";
import type { Unit } from "./unit.ts";

export interface Spacing {
  /** Between solids: a web, a nut, a finger behind the panel. */
  readonly solid: number;
  /** Between the legends of neighbours: the gap between words, a character (NUREG-0700 Rev 3, 11.4.1.5-7). */
  readonly words: number;
}

/** Distance of the axes of two neighbours in a row. */
export const alongRow = (left: Unit, right: Unit, spacing: Spacing): number =>
  Math.max(
    span(left.solid, right.solid) + spacing.solid,
    handSpan(left, right),
    wordSpan(left, right, spacing),
  );

const span = (left: Extent, right: Extent): number => left.maxX - right.minX;

const handSpan = (left: Unit, right: Unit): number => {
  const rule = separation(left.hand, right.hand);
  if (rule === null || left.grasp === null || right.grasp === null) return 0;
  return span(left.grasp, right.grasp) + rule.least;
};

/** Legends clear each other, and each clears the neighbour's solid where it stands beside it. */
const wordSpan = (left: Unit, right: Unit, spacing: Spacing): number => {
  const both =
    left.words !== null && right.words !== null ? span(left.words, right.words) + spacing.words : 0;
  const first =
    left.words !== null && overlapsUp(left.words, right.solid)
      ? span(left.words, right.solid) + 1
      : 0;
  const second =
    right.words !== null && overlapsUp(left.solid, right.words)
      ? span(left.solid, right.words) + 1
      : 0;
  return Math.max(both, first, second);
};

const overlapsUp = (a: Extent, b: Extent): boolean => a.minY < b.maxY && b.minY < a.maxY;

/** Least drop from a unit of the upper row to one of the lower, whose axes lie `across` apart, for a hand. */
export const handDrop = (upper: Unit, lower: Unit, across: number): number => {
  const rule = separation(upper.hand, lower.hand);
  if (rule === null || upper.grasp === null || lower.grasp === null) return 0;
  const halfWidths = (width(upper.grasp) + width(lower.grasp)) / 2;
  const aside = Math.max(0, Math.abs(across) - halfWidths);
  if (aside >= rule.least) return 0;
  const down = Math.sqrt(rule.least * rule.least - aside * aside);
  return lower.grasp.maxY - upper.grasp.minY + down;
};

const width = (box: Extent): number => box.maxX - box.minX;

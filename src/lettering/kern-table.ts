// The old `kern` table (OpenType 1.9, "kern", version 0, format 0): a flat list of pairs.
// Only asked where a font has no pair kerning in GPOS, as shapers do.

import type { Sfnt } from "./sfnt.ts";

/** Change of advance between two glyphs (by index), in font units; negative pulls them together. */
export type PairKerning = (left: number, right: number) => number;

const HORIZONTAL = 0x0001;
const NOT_PLAIN_KERNING = 0xff06;

export const kernTablePairs = (font: Sfnt): PairKerning => {
  const start = font.tables.get("kern");
  const pairs = new Map<number, number>();
  if (start !== undefined) {
    const { view } = font;
    let subtable = start + 4;
    for (let index = 0; index < view.getUint16(start + 2); index += 1) {
      const coverage = view.getUint16(subtable + 4);
      if ((coverage & HORIZONTAL) !== 0 && (coverage & NOT_PLAIN_KERNING) === 0)
        addPairs(pairs, view, subtable);
      subtable += view.getUint16(subtable + 2);
    }
  }
  return (left, right) => pairs.get(pairKey(left, right)) ?? 0;
};

const addPairs = (pairs: Map<number, number>, view: DataView, subtable: number): void => {
  for (let index = 0; index < view.getUint16(subtable + 6); index += 1) {
    const record = subtable + 14 + 6 * index;
    const key = pairKey(view.getUint16(record), view.getUint16(record + 2));
    pairs.set(key, (pairs.get(key) ?? 0) + view.getInt16(record + 4));
  }
};

const pairKey = (left: number, right: number): number => left * 0x10000 + right;

// Pair kerning read from a font's GPOS table (lookup type 2, both formats, also wrapped in type 9), or from its old
// `kern` table where GPOS has none. Takes an sfnt, gives the change of the left glyph's advance in font units.
// Own code because the outline library ignores kerning that sits behind an extension lookup.

import { kernTablePairs, type PairKerning } from "./kern-table.ts";
import { coverageIndex, glyphClass } from "./opentype-layout.ts";
import { type Sfnt, tagAt } from "./sfnt.ts";

const NO_FEATURE = 0xffff;
const PAIR_LOOKUP = 2;
const EXTENSION_LOOKUP = 9;

export const pairKerning = (font: Sfnt): PairKerning => {
  const lookups = kernLookups(font);
  if (lookups.length === 0) return kernTablePairs(font);
  const { view } = font;
  return (left, right) => {
    let total = 0;
    for (const subtables of lookups)
      for (const subtable of subtables) {
        const change = pairAdjustment(view, subtable, { left, right });
        if (change === null) continue;
        total += change;
        break;
      }
    return total;
  };
};

/** For each lookup of the Latin `kern` feature, in order: where its pair subtables start. */
const kernLookups = (font: Sfnt): readonly (readonly number[])[] => {
  const start = font.tables.get("GPOS");
  if (start === undefined) return [];
  const { view } = font;
  const list = start + view.getUint16(start + 8);
  return kernLookupIndices(view, start)
    .map((index) => pairSubtables(view, list + view.getUint16(list + 2 + 2 * index)))
    .filter((subtables) => subtables.length > 0);
};

const pairSubtables = (view: DataView, lookup: number): readonly number[] => {
  const subtables: number[] = [];
  for (let index = 0; index < view.getUint16(lookup + 4); index += 1) {
    let type = view.getUint16(lookup);
    let place = lookup + view.getUint16(lookup + 6 + 2 * index);
    if (type === EXTENSION_LOOKUP) {
      type = view.getUint16(place + 2);
      place += view.getUint32(place + 4);
    }
    if (type === PAIR_LOOKUP) subtables.push(place);
  }
  return subtables;
};

/** Lookups apply in the order of the lookup list, whichever feature names them (OpenType 1.9, "Lookup List Table"). */
const kernLookupIndices = (view: DataView, gpos: number): readonly number[] => {
  const features = gpos + view.getUint16(gpos + 6);
  const found = new Set<number>();
  for (const index of latinFeatures(view, gpos + view.getUint16(gpos + 4))) {
    const record = features + 2 + 6 * index;
    if (tagAt(view, record) !== "kern") continue;
    const feature = features + view.getUint16(record + 4);
    for (let item = 0; item < view.getUint16(feature + 2); item += 1)
      found.add(view.getUint16(feature + 4 + 2 * item));
  }
  return [...found].sort((a, b) => a - b);
};

/** Feature indices of the Latin script's default language; of the default script where a font has no Latin. */
const latinFeatures = (view: DataView, scripts: number): readonly number[] => {
  const places = new Map<string, number>();
  for (let index = 0; index < view.getUint16(scripts); index += 1) {
    const record = scripts + 2 + 6 * index;
    places.set(tagAt(view, record), scripts + view.getUint16(record + 4));
  }
  const script = places.get("latn") ?? places.get("DFLT");
  if (script === undefined || view.getUint16(script) === 0) return [];
  const language = script + view.getUint16(script);
  const required = view.getUint16(language + 2);
  const features = required === NO_FEATURE ? [] : [required];
  for (let index = 0; index < view.getUint16(language + 4); index += 1)
    features.push(view.getUint16(language + 6 + 2 * index));
  return features;
};

interface GlyphPair {
  readonly left: number;
  readonly right: number;
}

/** What one subtable says of a pair; null where it says nothing and the next one must be asked. */
const pairAdjustment = (view: DataView, subtable: number, pair: GlyphPair): number | null => {
  const covered = coverageIndex(view, subtable + view.getUint16(subtable + 2), pair.left);
  if (covered < 0) return null;
  const record =
    view.getUint16(subtable) === 1
      ? listedPair(view, subtable, { covered, right: pair.right })
      : classPair(view, subtable, pair);
  return record === null ? null : advanceChange(view, record, view.getUint16(subtable + 4));
};

/** Format 1: a sorted list of right-hand glyphs for each left-hand one. Gives where the pair's values start. */
const listedPair = (
  view: DataView,
  subtable: number,
  sought: { readonly covered: number; readonly right: number },
): number | null => {
  const set = subtable + view.getUint16(subtable + 10 + 2 * sought.covered);
  const size =
    2 + valueSize(view.getUint16(subtable + 4)) + valueSize(view.getUint16(subtable + 6));
  let low = 0;
  let high = view.getUint16(set) - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const record = set + 2 + middle * size;
    const right = view.getUint16(record);
    if (right === sought.right) return record + 2;
    if (right < sought.right) low = middle + 1;
    else high = middle - 1;
  }
  return null;
};

/** Format 2: a table of left-hand classes by right-hand classes. */
const classPair = (view: DataView, subtable: number, pair: GlyphPair): number => {
  const leftClass = glyphClass(view, subtable + view.getUint16(subtable + 8), pair.left);
  const rightClass = glyphClass(view, subtable + view.getUint16(subtable + 10), pair.right);
  const size = valueSize(view.getUint16(subtable + 4)) + valueSize(view.getUint16(subtable + 6));
  const columns = view.getUint16(subtable + 14);
  return subtable + 16 + (leftClass * columns + rightClass) * size;
};

const X_ADVANCE = 0x0004;
const BEFORE_X_ADVANCE = 0x0003;

/** A value record holds a 16-bit number for each bit that its format sets, lowest bit first. */
const advanceChange = (view: DataView, record: number, format: number): number =>
  (format & X_ADVANCE) === 0 ? 0 : view.getInt16(record + valueSize(format & BEFORE_X_ADVANCE));

const valueSize = (format: number): number => {
  let bytes = 0;
  for (let rest = format; rest > 0; rest >>= 1) bytes += 2 * (rest & 1);
  return bytes;
};

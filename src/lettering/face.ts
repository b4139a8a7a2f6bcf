// A face: one font, opened when a character of it is first asked for, with our own arrows and triangles added.
// Glyphs are drawn once for each doubling of the cap height and kept, so that setting a legend only moves and scales.

import type { Path, Region } from "../geometry/contour.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { characterOf } from "./characters.ts";
import type { FaceKind } from "./font-record.ts";
import type { Glyph, GlyphSource } from "./glyph-source.ts";
import { scaledExtent, scaledPath, scaledRegion } from "./scaled.ts";
import {
  isSymbol,
  type SymbolCharacter,
  symbolAdvance,
  symbolExtent,
  symbolRegions,
  symbolStrokes,
} from "./symbols.ts";

export interface Face {
  readonly id: string;
  readonly title: string;
  readonly kind: FaceKind;
  readonly licence: string;
  /** True where this one character (accents composed) can be set in the face. */
  has(character: string): boolean;
  /** The character's shape, drawn at `drawnHeight(capHeight)`; null where the face lacks it. */
  glyph(character: string, drawnAt: Mm): Glyph | null;
  /** Change of advance between neighbours, in cap heights. */
  kerning(left: Glyph, right: Glyph): number;
  /** The thinnest stroke in cap heights; 0 for a single-line face. */
  thinnest(): number;
}

export interface FaceParts {
  readonly id: string;
  readonly title: string;
  readonly kind: FaceKind;
  readonly licence: string;
}

/** `open` is called once, when the face is first used. */
export const faceOf = (parts: FaceParts, open: () => GlyphSource): Face => {
  let opened: GlyphSource | null = null;
  const source = (): GlyphSource => {
    opened ??= open();
    return opened;
  };
  const kept = new Map<number, Map<string, Glyph | null>>();
  const kernings = new Map<number, number>();
  return {
    ...parts,
    has: (character) => {
      const single = characterOf(character);
      return single !== null && (isSymbol(single) || source().has(single));
    },
    glyph: (character, drawnAt) => {
      const glyphs = keptAt(kept, drawnAt, () => new Map<string, Glyph | null>());
      const known = glyphs.get(character);
      if (known !== undefined) return known;
      const glyph = isSymbol(character)
        ? symbolGlyph(character, { kind: parts.kind, shaft: source().thinnest, drawnAt })
        : settableGlyph(source(), character, drawnAt);
      glyphs.set(character, glyph);
      return glyph;
    },
    kerning: (left, right) => {
      if (left.index < 0 || right.index < 0) return 0;
      const key = left.index * 0x10000 + right.index;
      return keptAt(kernings, key, () => source().kerning(left, right));
    },
    thinnest: () => source().thinnest,
  };
};

/** Where shapes are fitted to 2 µm: the least doubling of this height that the legend does not exceed. */
const LEAST_DRAWN_HEIGHT = 4;

/**
 * The cap height that a legend's glyphs are drawn at: a power of two, so that scaling down to the legend is exact for
 * a full cap height and never makes an arc's misfit larger.
 */
export const drawnHeight = (capHeight: number): Mm => {
  let drawn = LEAST_DRAWN_HEIGHT;
  while (drawn < capHeight && Number.isFinite(drawn)) drawn *= 2;
  return mm(drawn);
};

const keptAt = <Value>(kept: Map<number, Value>, key: number, make: () => Value): Value => {
  const known = kept.get(key);
  if (known !== undefined) return known;
  const made = make();
  kept.set(key, made);
  return made;
};

const settableGlyph = (source: GlyphSource, character: string, drawnAt: Mm): Glyph | null =>
  characterOf(character) === character ? source.draw(character, drawnAt) : null;

const symbolGlyph = (
  symbol: SymbolCharacter,
  options: { readonly kind: FaceKind; readonly shaft: number; readonly drawnAt: Mm },
): Glyph => {
  const { kind, shaft, drawnAt } = options;
  const place = { scale: drawnAt, dx: 0, dy: 0 };
  const fills: readonly Region[] = kind === "single-line" ? [] : symbolRegions(symbol, shaft);
  const strokes: readonly Path[] = kind === "single-line" ? symbolStrokes(symbol) : [];
  return {
    index: -1,
    advance: symbolAdvance(symbol),
    drawnAt,
    fills: fills.map((region) => scaledRegion(region, place)),
    strokes: strokes.map((stroke) => scaledPath(stroke, place)),
    box: scaledExtent(symbolExtent(symbol), place),
  };
};

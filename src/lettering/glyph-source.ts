// What a font gives, whatever its format: the shape of one character at a cap height, and kerning between two.
// Everything is measured so that a capital E (H in a single-line font) stands on y = 0 and is one cap height tall.

import type { Path, Region } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import type { Mm } from "../geometry/quantity.ts";

/** One character's outline or strokes, its origin at (0, 0), drawn at a stated cap height. */
export interface Glyph {
  /** Index in the font; -1 for a shape that is ours and never kerned. */
  readonly index: number;
  /** Distance to the next character's origin, in cap heights. */
  readonly advance: number;
  readonly drawnAt: Mm;
  readonly fills: readonly Region[];
  readonly strokes: readonly Path[];
  /** Around fills and strokes (the strokes' centre lines); null for a space. */
  readonly box: Extent | null;
}

export interface GlyphSource {
  has(character: string): boolean;
  /** null where the font has no shape for the character: never a box, a question mark or a look-alike. */
  draw(character: string, capHeight: Mm): Glyph | null;
  /** In cap heights. */
  kerning(left: Glyph, right: Glyph): number;
  /** The thinnest stroke, in cap heights; 0 for a single-line font. */
  readonly thinnest: number;
}

// One line of a legend as glyphs on a baseline: where each character's origin lies, kerned and tracked.
// Setting and measuring both start here, so that they can't disagree about where a letter is.

import type { Mm } from "../geometry/quantity.ts";
import { charactersOf } from "./characters.ts";
import { drawnHeight, type Face } from "./face.ts";
import type { Glyph } from "./glyph-source.ts";

/** A character with the place of its origin, from the start of its line. */
export interface PlacedGlyph {
  readonly character: string;
  readonly glyph: Glyph;
  readonly x: number;
}

export interface TextLine {
  readonly glyphs: readonly PlacedGlyph[];
  readonly advance: number;
  /** Characters that the face lacks, each time that they occur. */
  readonly missing: readonly string[];
}

export const linesOf = (text: string): readonly string[] => text.split(/\r\n|\n|\r/);

export const glyphsOfLine = (
  face: Face,
  line: string,
  setting: { readonly capHeight: Mm; readonly tracking?: Mm },
): TextLine => {
  const { capHeight, tracking = 0 } = setting;
  const drawnAt = drawnHeight(capHeight);
  const glyphs: PlacedGlyph[] = [];
  const missing: string[] = [];
  let previous: Glyph | null = null;
  let x = 0;
  for (const character of charactersOf(line)) {
    const glyph = face.glyph(character, drawnAt);
    if (glyph === null) {
      missing.push(character);
      continue;
    }
    if (previous !== null) x += face.kerning(previous, glyph) * capHeight + tracking;
    glyphs.push({ character, glyph, x });
    x += glyph.advance * capHeight;
    previous = glyph;
  }
  return { glyphs, advance: x, missing };
};

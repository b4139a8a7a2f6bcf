// The clear gaps inside a legend, between neighbouring letters and between words: what spacing rules are judged by.
// Gaps are the shortest distances between the shapes themselves, not between their boxes.

import { type Mm, mm } from "../geometry/quantity.ts";
import type { Face } from "./face.ts";
import { glyphGap } from "./glyph-gap.ts";
import { glyphsOfLine, linesOf, type PlacedGlyph } from "./text-line.ts";

export interface CharacterGap {
  readonly left: string;
  readonly right: string;
  readonly between: "characters" | "words";
  /** Between outlines; between centre lines in a single-line face. Below 0 where the shapes share ground. */
  readonly gap: Mm;
}

/** In reading order, line by line. Spaces and missing characters have no gaps of their own. */
export const characterGaps = (
  face: Face,
  text: string,
  setting: { readonly capHeight: Mm; readonly tracking?: Mm },
): readonly CharacterGap[] =>
  linesOf(text).flatMap((line) => {
    const { glyphs } = glyphsOfLine(face, line, setting);
    return lineGaps(glyphs, setting.capHeight);
  });

const lineGaps = (glyphs: readonly PlacedGlyph[], capHeight: Mm): readonly CharacterGap[] => {
  const gaps: CharacterGap[] = [];
  let last: PlacedGlyph | null = null;
  let isNewWord = false;
  for (const placed of glyphs) {
    if (placed.glyph.box === null) {
      isNewWord = true;
      continue;
    }
    if (last !== null) {
      const scale = capHeight / placed.glyph.drawnAt;
      const gap = glyphGap(last.glyph, placed.glyph, (placed.x - last.x) / scale) * scale;
      const between = isNewWord ? "words" : "characters";
      gaps.push({ left: last.character, right: placed.character, between, gap: mm(gap) });
    }
    last = placed;
    isNewWord = false;
  }
  return gaps;
};

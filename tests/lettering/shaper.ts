// HarfBuzz as the second opinion on everything that a font says: advances, kerning, glyph outlines.
// Latin script and language are set, never guessed; ligatures and alternates are off, because legends have none.

import { Blob, Buffer, Direction, Face, Feature, Font, shape } from "harfbuzzjs";
import { bytesFromBase64 } from "../../src/lettering/base64.ts";
import type { FontRecord } from "../../src/lettering/font-record.ts";
import { openSfnt } from "../../src/lettering/sfnt.ts";

export interface Shaper {
  readonly unitsPerEm: number;
  /** Advance width of the whole text, in font units. */
  width(text: string): number;
  /** Sum of the advances of the characters, each alone. */
  unkernedWidth(text: string): number;
  /** Glyph index of one character; 0 where the font has none. */
  glyphIndex(character: string): number;
  /** SVG path of one character, in font units, y up. */
  outline(character: string): string;
}

const PLAIN_SETTING = ["liga", "clig", "calt", "ccmp", "locl", "dlig"].map(
  (tag) => new Feature(tag, 0),
);

export const shaperOf = (record: FontRecord): Shaper => {
  const face = new Face(new Blob(openSfnt(bytesFromBase64(record.base64)).bytes));
  const font = new Font(face);
  const shaped = (text: string): Buffer => {
    const buffer = new Buffer();
    buffer.addText(text);
    buffer.setDirection(Direction.LTR);
    buffer.setScript("Latn");
    buffer.setLanguage("en");
    shape(font, buffer, PLAIN_SETTING);
    return buffer;
  };
  const width = (text: string): number =>
    shaped(text)
      .getGlyphPositions()
      .reduce((total, position) => total + position.xAdvance, 0);
  const glyphIndex = (character: string): number =>
    shaped(character).getGlyphInfos()[0]?.codepoint ?? 0;
  return {
    unitsPerEm: face.upem,
    width,
    unkernedWidth: (text) => [...text].reduce((total, character) => total + width(character), 0),
    glyphIndex,
    outline: (character) => font.glyphToPath(glyphIndex(character)),
  };
};

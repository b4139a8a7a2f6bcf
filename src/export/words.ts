// Words on paper: text set in a face as drawing items, so that no reader of a drawing needs a font.
// Takes any text; a character that the face lacks is shown as `?`, because a gap in a caption would not be seen.

import type { DrawingItem, Ink } from "../drawings/drawing.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { type Placement, placedPath, placedRegion } from "../geometry/transform.ts";
import type { Face } from "../lettering/face.ts";
import { setText } from "../lettering/set-text.ts";
import { plainText } from "./plain-text.ts";

export interface WordSetting {
  readonly capHeight: Mm;
  readonly align: "start" | "middle" | "end";
  readonly ink: Ink;
}

/** Stroke of single-line letters, a share of their cap height (DOD-HDBK-791, 6-5.3.2: 1/7 to 1/8). */
const STROKE_SHARE = 1 / 8;

/** One line of text with its baseline's start, middle or end at the placement. */
export const wordItems = (
  face: Face,
  text: string,
  options: WordSetting & { readonly at: Placement },
): readonly DrawingItem[] => {
  const { capHeight, align, ink, at } = options;
  const set = setText(face, settable(face, text), { capHeight, align });
  const items: DrawingItem[] = [];
  if (set.fills.length > 0)
    items.push({ kind: "fill", regions: set.fills.map((region) => placedRegion(region, at)), ink });
  if (set.strokes.length > 0)
    items.push({
      kind: "stroke",
      paths: set.strokes.map((path) => placedPath(path, at)),
      ink,
      width: mm(capHeight * STROKE_SHARE),
      dashed: false,
    });
  return items;
};

/** Length of the line that `wordItems` would set. */
export const wordsWidth = (face: Face, text: string, capHeight: Mm): Mm =>
  setText(face, settable(face, text), { capHeight, align: "start" }).advance;

/** The text in lines that fit the width; a word that is wider than a line is broken where the line ends. */
export const wrappedWords = (
  face: Face,
  text: string,
  options: { readonly capHeight: Mm; readonly width: Mm },
): readonly string[] => {
  const fits = (line: string): boolean =>
    wordsWidth(face, line, options.capHeight) <= options.width;
  const lines: string[] = [];
  let line = "";
  for (const word of plainText(text)
    .split(" ")
    .flatMap((long) => brokenWord(long, fits))) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (fits(longer)) line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line];
};

const brokenWord = (word: string, fits: (line: string) => boolean): readonly string[] => {
  if (fits(word)) return [word];
  const pieces: string[] = [];
  let piece = "";
  for (const character of word) {
    if (piece !== "" && !fits(piece + character)) {
      pieces.push(piece);
      piece = "";
    }
    piece += character;
  }
  return [...pieces, piece];
};

const settable = (face: Face, text: string): string =>
  Array.from(plainText(text), (character) =>
    character === " " || face.has(character) ? character : "?",
  ).join("");

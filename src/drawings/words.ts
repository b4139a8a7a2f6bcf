// Words on a drawing: any text at all as outlines, with the box that they fill. What a face can't set is shown as `?`,
// because a gap would not be seen; line breaks and other controls become spaces, so that a name stays on its line.

import type { Point } from "../geometry/contour.ts";
import { type Extent, extent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { type Degrees, degrees, type Mm, mm } from "../geometry/quantity.ts";
import { rectangle } from "../geometry/shapes.ts";
import { placedContour, placedPath, placedRegion, placement } from "../geometry/transform.ts";
import type { Face } from "../lettering/face.ts";
import type { Lettering } from "../lettering/lettering.ts";
import { setText } from "../lettering/set-text.ts";
import type { DrawingItem, Ink } from "./drawing.ts";
import { areas, stroked } from "./items.ts";

export interface Words {
  readonly items: readonly DrawingItem[];
  /** From the baseline to the cap height, over the advance width. */
  readonly box: Extent;
}

export interface WordLook {
  readonly capHeight: number;
  readonly align: "start" | "middle" | "end";
  readonly ink: Ink;
  readonly turn?: Degrees;
}

/** A narrow face, so that names fit beside their things; else the first filled one; null where a library has none. */
export const paperFace = (lettering: Lettering): Face | null =>
  lettering.faces.get("barlow-condensed") ??
  [...lettering.faces.values()].find(({ kind }) => kind === "outline") ??
  [...lettering.faces.values()][0] ??
  null;

/** Stroke of single-line letters, a share of their cap height (DOD-HDBK-791, 6-5.3.2: 1/7 to 1/8). */
const STROKE_SHARE = 1 / 8;

/** One line; `at` is the start, middle or end of its baseline. */
export const words = (face: Face | null, text: string, at: Point, look: WordLook): Words => {
  const { capHeight, align, ink, turn = degrees(0) } = look;
  if (face === null) return { items: [], box: extent(at.x, at.y, at.x, at.y) };
  const place = placement(at.x, at.y, turn);
  const set = setText(face, settable(face, text), { capHeight: mm(capHeight), align });
  const items: DrawingItem[] = [];
  if (set.fills.length > 0)
    items.push(
      areas(
        set.fills.map((region) => placedRegion(region, place)),
        ink,
      ),
    );
  if (set.strokes.length > 0)
    items.push(
      stroked(
        set.strokes.map((stroke) => placedPath(stroke, place)),
        { ink, width: mm(capHeight * STROKE_SHARE) },
      ),
    );
  const start = { start: 0, middle: -0.5, end: -1 }[align] * set.advance;
  const flat = extent(start, 0, start + set.advance, capHeight);
  return { items, box: contourExtent(placedContour(rectangle(flat), place)) };
};

export const wordsWidth = (face: Face | null, text: string, capHeight: number): Mm =>
  face === null
    ? mm(0)
    : setText(face, settable(face, text), { capHeight: mm(capHeight), align: "start" }).advance;

/** The text in lines that fit the width; a word wider than a line is broken where the line ends. */
export const wrapped = (
  face: Face | null,
  text: string,
  room: { readonly capHeight: number; readonly width: number },
): readonly string[] => {
  if (face === null) return [];
  const measure = (piece: string): number => wordsWidth(face, piece, room.capHeight);
  const space = room.capHeight * SPACE_SHARE;
  const lines: string[] = [];
  let line = "";
  let used = 0;
  for (const word of oneLine(text).split(" ")) {
    for (const piece of brokenWord(word, measure, room.width)) {
      const width = measure(piece);
      if (line !== "" && used + space + width > room.width) {
        lines.push(line);
        line = "";
      }
      used = line === "" ? width : used + space + width;
      line = line === "" ? piece : `${line} ${piece}`;
    }
  }
  return [...lines, line];
};

/** Room for a word space in cap heights: wider than any face of the library sets it. */
const SPACE_SHARE = 0.45;

const brokenWord = (
  word: string,
  measure: (piece: string) => number,
  width: number,
): readonly string[] => {
  if (measure(word) <= width) return [word];
  const pieces: string[] = [];
  let piece = "";
  let used = 0;
  for (const character of word) {
    const own = measure(character);
    if (piece !== "" && used + own > width) {
      pieces.push(piece);
      piece = "";
      used = 0;
    }
    piece += character;
    used += own;
  }
  return [...pieces, piece];
};

/** One line that fits the width: what is too long ends in dots, so that a reader sees that there is more. */
export const shortened = (
  face: Face | null,
  text: string,
  room: { readonly capHeight: number; readonly width: number },
): string => {
  const plain = oneLine(text);
  if (wordsWidth(face, plain, room.capHeight) <= room.width) return plain;
  const [first = ""] = wrapped(face, plain, {
    ...room,
    width: room.width - wordsWidth(face, DOTS, room.capHeight),
  });
  return `${first}${DOTS}`;
};

const DOTS = "...";

const settable = (face: Face, text: string): string =>
  Array.from(oneLine(text), (character) =>
    character === " " || face.has(character) ? character : "?",
  ).join("");

/** Controls, and the marks that turn the direction of writing round, become spaces. */
const oneLine = (text: string): string =>
  text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\s]+/gu, " ").trim();

// A single-line SVG font read into strokes: each glyph's advance and its pieces of line and curve, in font units, y up.
// Takes the file's text. The fonts that we ship hold M, L, C and Z with absolute numbers; anything else is a broken font.

import { invariant } from "../geometry/invariant.ts";
import type { FontPoint } from "./outline-font.ts";
import type { StrokeCurve, StrokePiece } from "./stroke-piece.ts";

export interface StrokeGlyph {
  readonly index: number;
  readonly advance: number;
  readonly pieces: readonly StrokePiece[];
}

/** Glyphs by the one character that they stand for; ligatures are left out. */
export const readSvgFont = (text: string): ReadonlyMap<string, StrokeGlyph> => {
  const font = /<font\s([^>]*)>/.exec(text);
  const usualAdvance = Number(attributesOf(font?.[1] ?? "").get("horiz-adv-x") ?? 0);
  const glyphs = new Map<string, StrokeGlyph>();
  for (const [, written = ""] of text.matchAll(/<glyph\s([^>]*?)\/?>/g)) {
    const attributes = attributesOf(written);
    const character = attributes.get("unicode") ?? "";
    if ([...character].length !== 1 || glyphs.has(character)) continue;
    glyphs.set(character, {
      index: glyphs.size,
      advance: Number(attributes.get("horiz-adv-x") ?? usualAdvance),
      pieces: strokePieces(attributes.get("d") ?? ""),
    });
  }
  return glyphs;
};

const attributesOf = (written: string): ReadonlyMap<string, string> =>
  new Map(
    [...written.matchAll(/([\w-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g)].map(
      ([, name = "", double, single]) => [name, decodedEntities(double ?? single ?? "")],
    ),
  );

const NAMED_ENTITIES: ReadonlyMap<string, string> = new Map([
  ["amp", "&"],
  ["lt", "<"],
  ["gt", ">"],
  ["quot", '"'],
  ["apos", "'"],
]);

/** XML 1.0, section 4.1: five names, and numbers in decimal or hexadecimal. One pass, so that "&amp;lt;" stays "&lt;". */
const decodedEntities = (text: string): string =>
  text.replace(/&(?:#x([0-9a-fA-F]+)|#([0-9]+)|(\w+));/g, (whole, hex, decimal, name) => {
    if (hex !== undefined) return String.fromCodePoint(Number.parseInt(hex, 16));
    if (decimal !== undefined) return String.fromCodePoint(Number.parseInt(decimal, 10));
    return NAMED_ENTITIES.get(name) ?? whole;
  });

const NUMBERS_OF = { M: 2, L: 2, C: 6, Z: 0 } as const;

const strokePieces = (data: string): readonly StrokePiece[] => {
  const pieces: StrokePiece[] = [];
  let start: FontPoint = { x: 0, y: 0 };
  let from = start;
  for (const { command, numbers } of pathSteps(data)) {
    const to = command === "Z" ? start : lastPoint(numbers);
    if (command === "M") start = to;
    else if (command === "C") pieces.push({ from, curve: cubicCurve(numbers, to) });
    else if (to.x !== from.x || to.y !== from.y) pieces.push({ from, curve: { kind: "line", to } });
    from = to;
  }
  return pieces;
};

interface PathStep {
  readonly command: keyof typeof NUMBERS_OF;
  readonly numbers: readonly number[];
}

/** Path data as steps of one command each; numbers beyond a command's first set repeat it (a repeated M draws lines). */
const pathSteps = (data: string): readonly PathStep[] => {
  const steps: PathStep[] = [];
  for (const [, letter = "", written = ""] of data.matchAll(/([A-Za-z])((?:[^A-DF-Za-df-z])*)/g)) {
    invariant(isKnownCommand(letter), "a single-line font is drawn with M, L, C and Z");
    const numbers = [...written.matchAll(/[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?/g)].map(Number);
    const count = NUMBERS_OF[letter];
    invariant(
      count === 0 ? numbers.length === 0 : numbers.length > 0 && numbers.length % count === 0,
      "a path command of a single-line font has its full set of numbers",
    );
    if (count === 0) steps.push({ command: letter, numbers });
    for (let first = 0; first < numbers.length; first += count) {
      const command = letter === "M" && first > 0 ? "L" : letter;
      steps.push({ command, numbers: numbers.slice(first, first + count) });
    }
  }
  return steps;
};

const isKnownCommand = (letter: string): letter is keyof typeof NUMBERS_OF => letter in NUMBERS_OF;

const cubicCurve = (numbers: readonly number[], to: FontPoint): StrokeCurve => ({
  kind: "cubic",
  first: { x: numbers[0] ?? 0, y: numbers[1] ?? 0 },
  second: { x: numbers[2] ?? 0, y: numbers[3] ?? 0 },
  to,
});

const lastPoint = (numbers: readonly number[]): FontPoint => ({
  x: numbers.at(-2) ?? 0,
  y: numbers.at(-1) ?? 0,
});

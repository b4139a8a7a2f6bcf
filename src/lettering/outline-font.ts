// The outlines of single characters, in font units with y up, from a TrueType or OpenType file.
// The library is asked for nothing else: its text layout, kerning and path printing are known to go wrong.

import * as opentypeModule from "opentype.js";
import type { Sfnt } from "./sfnt.ts";

/** A piece of an outline; it starts where the one before it ends. */
export type OutlineCurve =
  | { readonly kind: "line"; readonly to: FontPoint }
  | { readonly kind: "quadratic"; readonly control: FontPoint; readonly to: FontPoint }
  | {
      readonly kind: "cubic";
      readonly first: FontPoint;
      readonly second: FontPoint;
      readonly to: FontPoint;
    };

/** A point in font units. */
export interface FontPoint {
  readonly x: number;
  readonly y: number;
}

/** One closed contour of a glyph; its last curve ends at `start`. */
export interface OutlineContour {
  readonly start: FontPoint;
  readonly curves: readonly OutlineCurve[];
}

export interface OutlineGlyph {
  readonly index: number;
  readonly advance: number;
  readonly contours: readonly OutlineContour[];
}

export interface OutlineFont {
  glyphIndex(character: string): number;
  glyph(character: string): OutlineGlyph;
}

export const openOutlineFont = (font: Sfnt): OutlineFont => {
  const opened = outlineLibrary.parse(exactBuffer(font.bytes));
  return {
    glyphIndex: (character) => opened.charToGlyphIndex(character),
    glyph: (character) => {
      const found = opened.charToGlyph(character);
      return {
        index: opened.charToGlyphIndex(character),
        advance: found.advanceWidth ?? 0,
        contours: contoursOf(found.path.commands),
      };
    },
  };
};

interface PathCommand {
  readonly type: "M" | "L" | "Q" | "C" | "Z";
  readonly x?: number;
  readonly y?: number;
  readonly x1?: number;
  readonly y1?: number;
  readonly x2?: number;
  readonly y2?: number;
}

interface OutlineLibrary {
  parse(file: ArrayBuffer): {
    charToGlyphIndex(character: string): number;
    charToGlyph(character: string): {
      readonly advanceWidth?: number;
      readonly path: { readonly commands: readonly PathCommand[] };
    };
  };
}

/** A bundler takes the package's module build, which has no default export; Node takes its CommonJS one, which is all default. */
const outlineLibrary: OutlineLibrary = (
  "default" in opentypeModule ? opentypeModule.default : opentypeModule
) as OutlineLibrary;

const exactBuffer = (bytes: Uint8Array): ArrayBuffer => {
  const copy = new ArrayBuffer(bytes.byteLength);
  new Uint8Array(copy).set(bytes);
  return copy;
};

/** A contour is closed by the next "M" or by the end: the library writes no "Z" for most fonts. */
const contoursOf = (commands: readonly PathCommand[]): readonly OutlineContour[] => {
  const contours: { start: FontPoint; curves: OutlineCurve[] }[] = [];
  for (const command of commands) {
    const to = fontPoint(command.x, command.y);
    if (command.type === "M") contours.push({ start: to, curves: [] });
    else if (command.type !== "Z") contours.at(-1)?.curves.push(curveOf(command, to));
  }
  return contours.filter((contour) => contour.curves.length > 0).map(closedContour);
};

const curveOf = (command: PathCommand, to: FontPoint): OutlineCurve => {
  const control = fontPoint(command.x1, command.y1);
  if (command.type === "Q") return { kind: "quadratic", control, to };
  if (command.type === "C")
    return { kind: "cubic", first: control, second: fontPoint(command.x2, command.y2), to };
  return { kind: "line", to };
};

const fontPoint = (x: number | undefined, y: number | undefined): FontPoint => ({
  x: x ?? 0,
  y: y ?? 0,
});

const closedContour = (contour: OutlineContour): OutlineContour => {
  const { start, curves } = contour;
  const last = curves.at(-1)?.to ?? start;
  if (last.x === start.x && last.y === start.y) return contour;
  return { start, curves: [...curves, { kind: "line", to: start }] };
};

// What a piece of a component looks like, by what it is; one table says how a picture and how a paper drawing paint it.
// On paper every piece also gets its outline, so that it is seen without any ink for its area.

import type { Contour, Path } from "../geometry/contour.ts";
import type { Mm } from "../geometry/quantity.ts";
import type { DrawingItem, Ink } from "./drawing.ts";
import { filled, HAIR, outlined, stroked, THIN } from "./items.ts";

export type Tone =
  | "well"
  | "metal"
  | "metal-dark"
  | "metal-light"
  | "knob"
  | "knob-rim"
  | "knob-top"
  | "knob-shine"
  | "pointer"
  | "lens-red"
  | "lens-amber"
  | "lens-green"
  | "lens-white"
  | "shine"
  | "glass"
  | "lit"
  | "unlit"
  | "dial"
  | "needle"
  | "guard"
  | "guard-rib"
  | "key";

export type ArtPiece =
  | { readonly kind: "area"; readonly tone: Tone; readonly contours: readonly Contour[] }
  | {
      readonly kind: "line";
      readonly tone: Tone;
      readonly paths: readonly Path[];
      readonly width: Mm;
    };

export type Style = "picture" | "paper";

const INKS: Readonly<Record<Tone, Readonly<Record<Style, Ink | null>>>> = {
  well: { picture: "well", paper: "paper" },
  metal: { picture: "metal", paper: "paper" },
  "metal-dark": { picture: "metal-dark", paper: "metal" },
  "metal-light": { picture: "metal-light", paper: "paper" },
  knob: { picture: "well", paper: "paper" },
  "knob-rim": { picture: "knob-rim", paper: "metal" },
  "knob-top": { picture: "knob-top", paper: "paper" },
  "knob-shine": { picture: "knob-shine", paper: null },
  pointer: { picture: "pointer", paper: "line" },
  "lens-red": { picture: "lens-red", paper: "lens-red" },
  "lens-amber": { picture: "lens-amber", paper: "lens-amber" },
  "lens-green": { picture: "lens-green", paper: "lens-green" },
  "lens-white": { picture: "lens-white", paper: "lens-white" },
  shine: { picture: "shine", paper: null },
  glass: { picture: "glass-dark", paper: "glass" },
  lit: { picture: "segment-lit", paper: "dimension" },
  unlit: { picture: "segment-off", paper: "faint" },
  dial: { picture: "dial-face", paper: "paper" },
  needle: { picture: "segment-lit", paper: null },
  guard: { picture: "guard", paper: "paper" },
  "guard-rib": { picture: "guard-rib", paper: "faint" },
  key: { picture: "key-top", paper: "paper" },
};

/** Tones that are marks, not things: no outline of their own on paper. */
const MARKS: readonly Tone[] = ["pointer", "shine", "knob-shine", "lit", "unlit"];

export const artItems = (
  pieces: readonly ArtPiece[],
  style: Style,
  look: { readonly dashed: boolean },
): readonly DrawingItem[] =>
  pieces.flatMap((piece): readonly DrawingItem[] => {
    const ink = INKS[piece.tone][style];
    if (piece.kind === "line")
      return ink === null ? [] : [stroked(piece.paths, { ink, width: piece.width })];
    const area = ink === null || piece.contours.length === 0 ? [] : [filled(piece.contours, ink)];
    if (style === "picture" || MARKS.includes(piece.tone)) return area;
    const width = look.dashed ? HAIR : THIN;
    return [...area, outlined(piece.contours, { ink: "line", width, dashed: look.dashed })];
  });

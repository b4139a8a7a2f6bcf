// What a body looks made of, and at which level of its panel's stack it stands. Takes a body and its panel's layout.

import type { Ink } from "../../src/drawings/drawing.ts";
import { faceLook } from "../../src/drawings/face-look.ts";
import type { ConsoleBody } from "../../src/fit/console-body.ts";
import type { LayerLayout, PanelLayout } from "../../src/layout/panel-layout.ts";
import type { Tone } from "./console-messages.ts";

export const toneOf = (body: ConsoleBody, layout: PanelLayout | null): Tone => {
  switch (body.role) {
    case "layer":
      return sheetTone(layout?.layers.find(({ id }) => id === body.thing));
    case "print":
      return "print";
    case "sweep":
      return body.what === "knob" ? "knob" : "sweep";
    case "tails":
    case "cable":
    case "latch":
      return "wire";
    case "plug":
      return "case";
    case "front":
    case "rear":
      return PART_TONES.get(body.what) ?? "case";
    case "rail":
      return "rail";
    case "frame":
    case "rib":
      return "timber";
    case "wall":
      return "wall";
    case "obstacle":
      return "obstacle";
  }
};

export const sheetTone = (layer: LayerLayout | undefined): Tone => {
  if (layer?.finish != null) return FACE_TONES.get(faceLook(layer).face) ?? "painted";
  switch (layer?.stock?.light) {
    case "clear":
      return "clear";
    case "translucent":
      return "opal";
    case "opaque":
    case undefined:
      return "opaque";
  }
};

/** Light faces; all others are painted dark enough for light words. */
const FACE_TONES: ReadonlyMap<Ink, Tone> = new Map([
  ["face-aluminium", "metal"],
  ["face-white", "pale"],
  ["face-opal", "pale"],
]);

/** As the panel's own picture has its words: dark on a light face. */
export const markingTone = (carrier: LayerLayout): Tone =>
  faceLook(carrier).legend === "legend" ? "dark-marking" : "marking";

const PART_TONES: ReadonlyMap<string, Tone> = new Map([
  ["flange", "metal"],
  ["nut", "metal"],
  ["washer", "metal"],
  ["bush", "metal"],
  ["shaft", "metal"],
  ["needle", "guard"],
  ["guard", "guard"],
  ["cap", "cap"],
  ["button", "button"],
  ["lens", "lamp"],
  ["glass", "display"],
  ["board", "board"],
]);

type LevelBody = Pick<ConsoleBody, "role" | "thing" | "what">;
type LevelLayout = Pick<PanelLayout, "name"> & {
  readonly layers: readonly Pick<LayerLayout, "id">[];
};

/** The box of which a panel is the lid: it holds everything that hangs behind, and stands behind it. */
export const isOwnBox = (
  { role, thing, what }: LevelBody,
  { name }: Pick<PanelLayout, "name">,
): boolean => role === "print" && thing === name && what === "angled box";

/**
 * 0 before the face, 1 and on the layers front to back, one more for what hangs behind, and one more for the box that the
 * whole panel is the lid of.
 */
export const levelOf = (body: LevelBody, layout: LevelLayout): number => {
  const behind = layout.layers.length + 1;
  if (isOwnBox(body, layout)) return behind + 1;
  const own = layout.layers.findIndex(({ id }) => id === body.thing);
  if (own >= 0) return own + 1;
  if (body.role === "front" || body.role === "sweep") return 0;
  return BEFORE_THE_FACE.has(body.what) ? 0 : behind;
};

/** Pass through the face, and are seen before it. */
const BEFORE_THE_FACE: ReadonlySet<string> = new Set([
  "guard",
  "cap",
  "lens",
  "glass",
  "button",
  "trim",
  "angled box",
]);

// The ink of everything that a drawing names by what it stands for: one table for SVG and PDF, made for a light page.
// Signals follow the trade (warning red, caution amber, advisory green: MIL-STD-411F); processes have the cut files' colours.

import type { Ink } from "../drawings/drawing.ts";
import { DEFAULT_COLOURS } from "./process-colours.ts";

/** `#rrggbb`. */
export const INK_COLOURS: Readonly<Record<Ink, string>> = {
  paper: "#ffffff",
  line: "#1a1a1a",
  faint: "#b3b3b3",
  dimension: "#33506b",
  opaque: "#3a3d42",
  translucent: "#e8e2d0",
  clear: "#dceaf0",
  metal: "#b9bec4",
  printed: "#6b6f76",
  legend: "#111111",
  component: "#8a8f96",
  knob: "#55595f",
  lamp: "#f0e442",
  glass: "#bcd4de",
  alert: "#c1121f",
  caution: "#b36b00",
  advisory: "#1b7f3b",
  hold: "#a3195b",
  rail: "#d8c9a8",
  engrave: DEFAULT_COLOURS.engrave,
  score: DEFAULT_COLOURS.score,
  "cut-inner": DEFAULT_COLOURS["cut-inner"],
  "cut-outer": DEFAULT_COLOURS["cut-outer"],
  witness: DEFAULT_COLOURS.witness,
  drill: DEFAULT_COLOURS.drill,
};

/** Dash and gap in mm; a broken line stays broken on a 300 dpi printer. */
export const DASHES: readonly [number, number] = [2, 1];

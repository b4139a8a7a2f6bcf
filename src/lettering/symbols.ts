// Arrows and triangles of our own, the same in every face: ▲ ▼ ◀ ▶ ← → ↑ ↓, and heads for the arrows of a panel.
// A unit symbol is measured in cap heights, stands centred on half the cap height and starts at x = 0.

import { type Path, path, type Region, vertex } from "../geometry/contour.ts";
import { type Extent, extent } from "../geometry/extent.ts";
import { polygon } from "../geometry/shapes.ts";

export type SymbolCharacter = "▲" | "▼" | "◀" | "▶" | "←" | "→" | "↑" | "↓";

interface Offset {
  readonly x: number;
  readonly y: number;
}

interface SymbolPlan {
  readonly shape: "triangle" | "arrow";
  /** Quarter turns counter-clockwise from pointing right. */
  readonly quarters: 0 | 1 | 2 | 3;
}

const PLANS: Readonly<Record<SymbolCharacter, SymbolPlan>> = {
  "▲": { shape: "triangle", quarters: 1 },
  "▼": { shape: "triangle", quarters: 3 },
  "◀": { shape: "triangle", quarters: 2 },
  "▶": { shape: "triangle", quarters: 0 },
  "←": { shape: "arrow", quarters: 2 },
  "→": { shape: "arrow", quarters: 0 },
  "↑": { shape: "arrow", quarters: 1 },
  "↓": { shape: "arrow", quarters: 3 },
};

/** Half the width and half the depth of a triangle with equal sides of one cap height. */
const HALF_SIDE = 0.5;
const HALF_DEPTH = Math.sqrt(3) / 4;
/** An arrow is one cap height long; its head takes this much of it, and this much across (house proportions). */
const HALF_LENGTH = 0.5;
const HEAD_LENGTH = 0.42;
const HALF_HEAD = 0.3;
/** Clear on both sides of a symbol. */
const SIDE_BEARING = 0.12;

export const isSymbol = (character: string): character is SymbolCharacter => character in PLANS;

/** Filled, one region; an arrow's shaft is `shaft` thick, so that it matches the strokes of the face. */
export const symbolRegions = (symbol: SymbolCharacter, shaft: number): readonly Region[] => {
  const plan = PLANS[symbol];
  const outline = plan.shape === "triangle" ? TRIANGLE : arrowOutline(shaft / 2);
  return [{ outline: polygon(placedOffsets(outline, plan)), holes: [] }];
};

/** As strokes of a single-line face: a triangle's outline, an arrow's shaft and barbs. */
export const symbolStrokes = (symbol: SymbolCharacter): readonly Path[] => {
  const plan = PLANS[symbol];
  const lines = plan.shape === "triangle" ? [[...TRIANGLE, ...TRIANGLE.slice(0, 1)]] : ARROW_LINES;
  return lines.map((line) => path(placedOffsets(line, plan).map(({ x, y }) => vertex(x, y))));
};

/** The symbol's box, without side bearings. */
export const symbolExtent = (symbol: SymbolCharacter): Extent => {
  const { width, height } = symbolSize(PLANS[symbol]);
  return extent(SIDE_BEARING, 0.5 - height / 2, SIDE_BEARING + width, 0.5 + height / 2);
};

export const symbolAdvance = (symbol: SymbolCharacter): number =>
  symbolSize(PLANS[symbol]).width + 2 * SIDE_BEARING;

/** The head of a drawn arrow: its tip at the origin, pointing right, in millimetres. */
export const arrowHead = (length: number, width: number): Region => ({
  outline: polygon([vertex(0, 0), vertex(-length, width / 2), vertex(-length, -width / 2)]),
  holes: [],
});

/** Pointing right, centred on the origin, counter-clockwise. */
const TRIANGLE: readonly Offset[] = [
  { x: HALF_DEPTH, y: 0 },
  { x: -HALF_DEPTH, y: HALF_SIDE },
  { x: -HALF_DEPTH, y: -HALF_SIDE },
];

const NECK = HALF_LENGTH - HEAD_LENGTH;

const arrowOutline = (halfShaft: number): readonly Offset[] => [
  { x: HALF_LENGTH, y: 0 },
  { x: NECK, y: HALF_HEAD },
  { x: NECK, y: halfShaft },
  { x: -HALF_LENGTH, y: halfShaft },
  { x: -HALF_LENGTH, y: -halfShaft },
  { x: NECK, y: -halfShaft },
  { x: NECK, y: -HALF_HEAD },
];

const ARROW_LINES: readonly (readonly Offset[])[] = [
  [
    { x: -HALF_LENGTH, y: 0 },
    { x: HALF_LENGTH, y: 0 },
  ],
  [
    { x: NECK, y: HALF_HEAD },
    { x: HALF_LENGTH, y: 0 },
    { x: NECK, y: -HALF_HEAD },
  ],
];

const symbolSize = (plan: SymbolPlan): { readonly width: number; readonly height: number } => {
  const along = plan.shape === "triangle" ? 2 * HALF_DEPTH : 2 * HALF_LENGTH;
  const across = plan.shape === "triangle" ? 2 * HALF_SIDE : 2 * HALF_HEAD;
  return plan.quarters % 2 === 0
    ? { width: along, height: across }
    : { width: across, height: along };
};

/** Turned by whole quarters (exactly), stood on the line of half the cap height, past the left side bearing. */
const placedOffsets = (offsets: readonly Offset[], plan: SymbolPlan) => {
  const middle = SIDE_BEARING + symbolSize(plan).width / 2;
  return offsets.map((offset) => {
    const turned = quarterTurned(offset, plan.quarters);
    return vertex(middle + turned.x, 0.5 + turned.y);
  });
};

const quarterTurned = ({ x, y }: Offset, quarters: SymbolPlan["quarters"]): Offset => {
  if (quarters === 1) return { x: -y, y: x };
  if (quarters === 2) return { x: -x, y: -y };
  if (quarters === 3) return { x: y, y: -x };
  return { x, y };
};

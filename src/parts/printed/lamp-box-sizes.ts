// Every size of a lamp box: walls in whole lines between its cells, the seat of each diffuser, and where the LEDs stand.
// LEDs divide a cell's length evenly, so that a text as long as its window is nowhere farther from one than half a pitch.

import type { Insert } from "../../catalogue/insert.ts";
import type { Part } from "../../catalogue/part.ts";
import type { LampBoxDesign } from "../../design/printed-design.ts";
import type { PrinterDesign, StockDesign } from "../../design/workshop-design.ts";
import { type Point, point } from "../../geometry/contour.ts";
import { type Extent, extentHeight, extentWidth, grownExtent } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { arithmeticNoise } from "../../geometry/tolerance.ts";
import { shapeAtContour } from "../../layout/bodies.ts";
import { LAMP_BOX_WALL_ROOM, type LampBoxPlan, lampBoxPlan } from "../../layout/lamp-box-plan.ts";
import type { PanelLayout, PlacedComponent, Range } from "../../layout/panel-layout.ts";
import { type OpaqueWall, opaqueWall, tidy, wholeSteps } from "./opaque-wall.ts";
import { type AllowedHole, allowedHole, clearancesOf } from "./print-allowance.ts";

export interface LampBoxScene {
  readonly layout: PanelLayout;
  readonly members: readonly PlacedComponent[];
  readonly design: LampBoxDesign;
  readonly stock: StockDesign;
  readonly printer: PrinterDesign | null;
  readonly diffuser: Range;
  readonly led: SeatedLed;
  readonly insert: Insert | null;
}

/** A bare LED with a round rim. */
export interface SeatedLed {
  readonly part: Part;
  readonly lens: Mm;
  readonly rim: Mm;
  /** From its rim's front to the tip of its lens. */
  readonly reach: Mm;
}

export interface LampBoxSizes {
  readonly plan: LampBoxPlan;
  readonly wall: OpaqueWall;
  /** Lines between neighbours, the fewest of both ways; null where there is one cell. */
  readonly innerLines: { readonly across: number | null; readonly up: number | null };
  readonly outerLines: number;
  /** The box's outside, without flange and ears. */
  readonly outside: Extent;
  readonly cells: readonly LampCell[];
  readonly ledge: Mm;
  /** Of the diffuser in its seat and of the lid's plugs, a side. */
  readonly clearance: Mm;
  readonly shelfDepth: Mm;
  readonly flangeThickness: Mm;
  readonly lidThickness: Mm;
  readonly plug: Mm;
  readonly lens: AllowedHole;
  readonly rim: AllowedHole;
  readonly pilot: AllowedHole | null;
}

export interface LampCell {
  readonly id: string;
  readonly number: number;
  readonly opening: Extent;
  readonly inside: Extent;
  readonly leds: readonly Point[];
  readonly pitch: { readonly across: Mm | null; readonly up: Mm | null };
}

/** What a diffuser lies on: two lines. */
const LEDGE_LINES = 2;
/** A lid that stays flat: common practice for printed lids of this size. */
const LID_THICKNESS = 2;
const PLUG = 1.6;

export const lampBoxSizes = (scene: LampBoxScene): LampBoxSizes => {
  const { members, design, stock, printer, layout, led, insert } = scene;
  const plan = lampBoxPlan(members, design, layout.layers);
  const wall = opaqueWall(stock, printer);
  const [first] = plan.windows;
  const size = { across: extentWidth(first!.box), up: extentHeight(first!.box) };
  const across = between(plan.columns, size.across, wall.line);
  const up = between(plan.rows, size.up, wall.line);
  const spare = Math.min(across.spare, up.spare);
  const outerLines = linesIn(LAMP_BOX_WALL_ROOM - spare, wall.line);
  const ledge = tidy(LEDGE_LINES * wall.line);
  const clearance = clearancesOf(printer).sliding;
  const cells = plan.windows.map(({ id, box }, index) => {
    const opening = grown(box, across.spare, up.spare);
    const inside = grownExtent(opening, -ledge);
    return { id, number: index + 1, opening, inside, ...ledPlaces(inside, design.leds) };
  });
  return {
    plan,
    wall,
    innerLines: { across: across.lines, up: up.lines },
    outerLines,
    outside: grownExtent(grown(plan.inside, across.spare, up.spare), tidy(outerLines * wall.line)),
    cells,
    ledge,
    clearance,
    shelfDepth: tidy(wholeSteps(scene.diffuser.high, wall.layer) * wall.layer),
    flangeThickness: wall.floor,
    lidThickness: tidy(wholeSteps(Math.max(LID_THICKNESS, wall.floor), wall.layer) * wall.layer),
    plug: tidy(wholeSteps(PLUG, wall.layer) * wall.layer),
    lens: allowedHole(led.lens, led.part.figures.source, printer),
    rim: allowedHole(led.rim + 2 * clearance, led.part.figures.source, printer),
    pilot: insert === null ? null : allowedHole(insert.pilot, insert.figures.source, printer),
  };
};

const grown = (box: Extent, x: number, y: number): Extent => ({
  minX: mm(box.minX - x),
  minY: mm(box.minY - y),
  maxX: mm(box.maxX + x),
  maxY: mm(box.maxY + y),
});

/** Whole lines of wall between neighbours, and what is left of the gap for each of them. */
const between = (
  centres: readonly Mm[],
  size: number,
  line: number,
): { readonly lines: number | null; readonly spare: number } => {
  const gaps = centres.slice(1).map((centre, index) => centre - centres[index]! - size);
  if (gaps.length === 0) return { lines: null, spare: 0 };
  const gap = Math.min(...gaps);
  const lines = Math.max(0, linesIn(gap, line));
  return { lines, spare: Math.max(0, (gap - lines * line) / 2) };
};

const linesIn = (length: number, line: number): number =>
  Math.floor(length / line + arithmeticNoise);

/** In as many rows as make the widest of both pitches least. */
const ledPlaces = (inside: Extent, leds: number): Pick<LampCell, "leds" | "pitch"> => {
  const [width, height] = [extentWidth(inside), extentHeight(inside)];
  const rows = Array.from({ length: leds }, (_, index) => index + 1)
    .filter((count) => leds % count === 0)
    .map((count) => ({ count, widest: Math.max((width * count) / leds, height / count) }))
    .reduce((best, one) => (one.widest < best.widest - arithmeticNoise ? one : best)).count;
  const columns = leds / rows;
  return {
    leds: Array.from({ length: leds }, (_, index) =>
      point(
        inside.minX + (width * ((index % columns) + 1 / 2)) / columns,
        inside.maxY - (height * (Math.floor(index / columns) + 1 / 2)) / rows,
      ),
    ),
    pitch: {
      across: columns > 1 ? mm(width / columns) : null,
      up: rows > 1 ? mm(height / rows) : null,
    },
  };
};

/** null where the part is no bare LED with a round lens and a round rim. */
export const seatedLed = (part: Part): SeatedLed | null => {
  const rim = part.bodies.find(({ role, shape }) => role === "flange" && shape.kind === "round");
  const lens = part.bodies.find(({ role, shape }) => role === "lens" && shape.kind === "round");
  const { clamp } = part.openings;
  if (part.hold.kind !== "behind" || rim === undefined || lens === undefined) return null;
  if (clamp.kind !== "round") return null;
  const box = contourExtent(shapeAtContour(rim));
  return { part, lens: clamp.diameter, rim: extentWidth(box), reach: mm(lens.to - rim.to) };
};

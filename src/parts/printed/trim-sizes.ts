// Every size of a trim, about the display's axis and in the panel's heights: from the opening inward its fit, its wall, the
// room behind the lip and the lip's edge; from the clamped sheet upward the room, the lip and the bevel.

import type { TrimDesign } from "../../design/printed-design.ts";
import type { PrinterDesign, StockDesign } from "../../design/workshop-design.ts";
import { type Contour, circle, type Point, point } from "../../geometry/contour.ts";
import { type Extent, extentHeight, extentWidth, grownExtent } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { arithmeticNoise } from "../../geometry/tolerance.ts";
import { shapeAtContour } from "../../layout/bodies.ts";
import type { PanelLayout, PlacedComponent, Range } from "../../layout/panel-layout.ts";
import { TRIM_HEIGHT, TRIM_WALL_ROOM, type TrimPlan, trimPlan } from "../../layout/trim-plan.ts";
import { type OpaqueWall, opaqueWall, tidy, wholeSteps } from "./opaque-wall.ts";
import { type AllowedHole, allowedHole, clearancesOf } from "./print-allowance.ts";
import type { TrimFitFact } from "./trim-facts.ts";

export interface TrimSizes {
  readonly plan: TrimPlan;
  readonly wall: OpaqueWall;
  /** Lines that fit between opening and seat; fewer than the wall needs is a finding. */
  readonly wallLines: number;
  readonly fit: TrimFitFact["fit"];
  readonly clearance: Mm;
  readonly body: Extent;
  readonly room: Extent;
  readonly inner: Extent;
  /** null without a filter. */
  readonly filter: Extent | null;
  readonly filterClearance: Mm;
  /** Ribs that hold a snapped trim in its opening; empty otherwise. */
  readonly ribs: readonly Contour[];
  readonly screw: AllowedHole | null;
  readonly heights: TrimHeights;
  readonly isGlassBehind: boolean;
  readonly play: Mm;
}

export interface TrimHeights {
  readonly rear: Mm;
  /** Rear of the lip; the same as `rear` where nothing lies behind it. */
  readonly lip: Mm;
  readonly front: Mm;
  readonly bevel: Mm;
  /** Where screw holes end. */
  readonly holes: Mm;
  /** There are sheets in front of the display's own, and the body stands in them. */
  readonly hasBody: boolean;
}

export interface TrimScene {
  readonly layout: PanelLayout;
  readonly component: PlacedComponent;
  readonly design: TrimDesign;
  readonly stock: StockDesign;
  readonly printer: PrinterDesign | null;
  /** Thickness of the filter; null without one. */
  readonly filter: Range | null;
}

const FITS = { snap: "snug", glue: "sliding", screw: "loose" } as const;

/** Ribs stand this far into the opening's wall, to be crushed: the press end of common practice, 0 to 0.1 a side. */
const RIB_CRUSH = 0.1;
const RIB_RADIUS = 1;

/** A bevel of 45 degrees at most as high as this: it prints on the bed without support. */
const MOST_BEVEL = 1;

/** Hole for a thread-forming M2 screw in plastic: 0.85 of its diameter (common practice; from memory, unverified). */
const FORMING_PILOT = 1.7;

export const trimSizes = (scene: TrimScene): TrimSizes => {
  const { component, design, stock, printer } = scene;
  const plan = trimPlan(component.part, design);
  const wall = opaqueWall(stock, printer);
  const fit = FITS[design.fixing];
  const clearances = clearancesOf(printer);
  const clearance = clearances[fit];
  const wallLines = Math.floor((TRIM_WALL_ROOM - clearance) / wall.line + arithmeticNoise);
  const spare = TRIM_WALL_ROOM - clearance - wallLines * wall.line;
  const room = grownExtent(plan.seat, spare);
  const body = grownExtent(plan.openingBox, -clearance);
  const isGlassBehind = glassBehind(component, plan);
  return {
    plan,
    wall,
    wallLines,
    fit,
    clearance,
    body,
    room,
    inner: design.lip === null ? plan.window : grownExtent(plan.display, -design.lip),
    filter: scene.filter === null ? null : grownExtent(room, -clearances.sliding),
    filterClearance: clearances.sliding,
    ribs: design.fixing === "snap" ? ribsOf(body, clearance) : [],
    screw:
      design.fixing === "screw"
        ? allowedHole(FORMING_PILOT, "thread-forming M2, from memory, unverified", printer)
        : null,
    heights: heightsOf(scene, wall, isGlassBehind),
    isGlassBehind,
    play: playOf(component),
  };
};

const heightsOf = (
  { layout, component, filter }: TrimScene,
  wall: OpaqueWall,
  isGlassBehind: boolean,
): TrimHeights => {
  const first = component.clamped.first;
  const rear = mm(layout.layers[first]?.front ?? 0);
  const { display } = component.part;
  const glass = display === null || isGlassBehind ? rear : component.seat + display.proud;
  const lip = tidy(Math.max(rear, glass) + (filter?.high ?? 0));
  const bevel = mm(MOST_BEVEL);
  const cover = Math.max(wall.floor, bevel + wall.layer);
  const front = tidy(wholeSteps(Math.max(TRIM_HEIGHT, lip + cover), wall.layer) * wall.layer);
  return { rear, lip, front, bevel, holes: tidy(front - cover), hasBody: first > 0 };
};

/** Nothing of a glass that is larger than its hole stands in the hole. */
const glassBehind = ({ part }: PlacedComponent, plan: TrimPlan): boolean =>
  part.bodies
    .filter(({ role }) => role === "glass")
    .map((body) => contourExtent(shapeAtContour(body)))
    .some(
      (glass) =>
        extentWidth(glass) > extentWidth(plan.window) &&
        extentHeight(glass) > extentHeight(plan.window) &&
        (extentWidth(plan.window) > extentWidth(plan.display) ||
          extentHeight(plan.window) > extentHeight(plan.display)),
    );

/** Half of what the display's hole is larger than the display. */
const playOf = ({ part }: PlacedComponent): Mm => {
  const at = point(0, 0);
  const hole = contourExtent(shapeAtContour({ shape: part.openings.clamp, at }));
  const display = contourExtent(shapeAtContour({ shape: part.openings.passes, at }));
  const across = extentWidth(hole) - extentWidth(display);
  const up = extentHeight(hole) - extentHeight(display);
  return mm(Math.max(0, across, up) / 2);
};

/** Two on each long side and one on each short side, half buried. */
const ribsOf = (body: Extent, clearance: number): readonly Contour[] => {
  const inward = RIB_RADIUS - clearance - RIB_CRUSH;
  const middle: Point = point((body.minX + body.maxX) / 2, (body.minY + body.maxY) / 2);
  const quarter = extentWidth(body) / 4;
  return [
    point(middle.x - quarter, body.minY + inward),
    point(middle.x + quarter, body.minY + inward),
    point(middle.x - quarter, body.maxY - inward),
    point(middle.x + quarter, body.maxY - inward),
    point(body.minX + inward, middle.y),
    point(body.maxX - inward, middle.y),
  ].map((at) => circle(at, RIB_RADIUS));
};

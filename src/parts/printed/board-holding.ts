// What a tray holds a board with: standoffs under its holes, no wider than its parts allow, for screws that form their own
// thread; or corner posts with a ledge and a snap lip, where it has no holes.

import type { Board } from "../../catalogue/board.ts";
import type { PrinterDesign } from "../../design/workshop-design.ts";
import { type Contour, circle } from "../../geometry/contour.ts";
import { type Extent, extent } from "../../geometry/extent.ts";
import { mm } from "../../geometry/quantity.ts";
import { rectangle } from "../../geometry/shapes.ts";
import { arithmeticNoise } from "../../geometry/tolerance.ts";
import { placedContour } from "../../geometry/transform.ts";
import {
  CLEARANCE_HOLES,
  type MetricThread,
  THREAD_DIAMETER,
} from "../../standards/metric-fasteners.ts";
import { onTray, type PlacedBoard } from "./board-places.ts";
import { type OpaqueWall, tidy } from "./opaque-wall.ts";
import { allowedHole, clearancesOf } from "./print-allowance.ts";
import type { BossFact } from "./printed-facts.ts";
import type { Upright } from "./upright.ts";

export interface Holding {
  readonly uprights: readonly Upright[];
  readonly bosses: readonly BossFact[];
}

export interface HoldingScene {
  readonly printer: PrinterDesign | null;
  readonly wall: OpaqueWall;
  /** z of the plate's rear and top. */
  readonly rear: number;
  readonly top: number;
  /** z of the board's front. */
  readonly front: number;
}

export const boardHolding = (placed: PlacedBoard, scene: HoldingScene): Holding => {
  switch (placed.board.holding) {
    case "holes":
      return standoffs(placed, scene);
    case "clip":
      return { uprights: cornerPosts(placed, scene, "lip"), bosses: [] };
    case "socket":
      return { uprights: cornerPosts(placed, scene, "no-lip"), bosses: [] };
  }
};

/** Pilot of a screw that forms its thread in plastic: 0.8 of its diameter (common practice). */
const FORMED_PILOT = 0.8;
/** A standoff where the record gives no limit: common practice. */
const USUAL_STANDOFF = 6;
/** Solid plastic below a standoff's hole: four layers of 0.2 mm of its plate (common practice: three to five). */
const PLATE_BELOW = 0.8;

const standoffs = (placed: PlacedBoard, scene: HoldingScene): Holding => {
  const { board } = placed;
  const under = scene.front - board.thickness;
  const made = board.holes.map((hole, index) => {
    const thread = threadFor(hole.diameter);
    const pilot = allowedHole(
      FORMED_PILOT * THREAD_DIAMETER[thread],
      "0.8 of the thread, formed in plastic (common practice)",
      scene.printer,
    );
    const room = board.headLimit ?? USUAL_STANDOFF;
    const lines = Math.max(1, linesIn((room - pilot.modelled) / 2, scene.wall.line));
    const outside = tidy(pilot.modelled + 2 * lines * scene.wall.line);
    const at = onTray(hole.at, placed);
    const from = scene.rear + PLATE_BELOW;
    const uprights: readonly Upright[] = [
      { does: "stand", contour: circle(at, outside / 2), from: scene.top, to: under },
      { does: "cut", contour: circle(at, pilot.modelled / 2), from, to: under },
    ];
    const fact: BossFact = {
      owner: `${board.id}/hole.${index + 1}`,
      at,
      kind: "thread-forming",
      thread,
      hole: pilot,
      outside,
      wall: tidy(lines * scene.wall.line),
      depth: tidy(under - from),
      below: mm(PLATE_BELOW),
      insert: null,
    };
    return { uprights, fact };
  });
  return {
    uprights: made.flatMap(({ uprights }) => uprights),
    bosses: made.map(({ fact }) => fact),
  };
};

/** Two lines that fit exactly are two: 3.8 - 2 is 1.7999999999999998. */
const linesIn = (thickness: number, line: number): number =>
  Math.floor(thickness / line + arithmeticNoise);

const THREADS: readonly MetricThread[] = ["m4", "m3", "m2.5", "m2"];

/** The thickest screw that passes the board's hole. */
const threadFor = (hole: number): MetricThread =>
  THREADS.find((thread) => CLEARANCE_HOLES[thread].fine <= hole) ?? "m2";

/** A ledge so wide at each corner, clear of the pins along the sides (common practice). */
const LEDGE = 2;
/** A post beside it, as wide as three pairs of lines: own choice. */
const POST = 3;
/** How far a lip reaches over the board, and how thick it is: it springs aside (common practice). */
const LIP_OVER = 0.6;
const LIP_LAYERS = 5;

/** At each corner a ledge under the board, walls round its corner, and over it a lip on the long side. */
const cornerPosts = (
  placed: PlacedBoard,
  scene: HoldingScene,
  lip: "lip" | "no-lip",
): readonly Upright[] => {
  const { board } = placed;
  const gap = clearancesOf(scene.printer).sliding;
  const wall = 2 * scene.wall.line;
  const under = scene.front - board.thickness;
  const held = tidy(scene.front + gap);
  const over = tidy(held + LIP_LAYERS * scene.wall.layer);
  return CORNERS.flatMap(({ x, y }): readonly Upright[] => {
    const box = (along: readonly [number, number], across: readonly [number, number]): Contour =>
      placedContour(rectangle(atCorner(board, { x, y }, { along, across })), placed.at);
    const post = box([-gap - wall, POST], [-gap - wall, POST]);
    const inner = box([-gap, POST], [-gap, POST]);
    const beyondLedge = box([LEDGE, POST], [LEDGE, POST]);
    const lipped: readonly Upright[] =
      lip === "lip"
        ? [
            {
              does: "stand",
              contour: box([-gap - wall, POST], [-gap - wall, LIP_OVER]),
              from: held,
              to: over,
            },
          ]
        : [];
    return [
      { does: "stand", contour: post, from: scene.top, to: held },
      { does: "cut", contour: beyondLedge, from: scene.top, to: under },
      { does: "cut", contour: inner, from: under, to: held },
      ...lipped,
    ];
  });
};

const CORNERS = [
  { x: 0, y: 0 },
  { x: 1, y: 0 },
  { x: 0, y: 1 },
  { x: 1, y: 1 },
] as const;

/** A box measured inward from a corner of the board, along x and across it. */
const atCorner = (
  board: Board,
  { x, y }: { readonly x: 0 | 1; readonly y: 0 | 1 },
  reach: { readonly along: readonly [number, number]; readonly across: readonly [number, number] },
): Extent => {
  const [x0, x1] = reach.along.map((away) => (x === 0 ? away : board.width - away));
  const [y0, y1] = reach.across.map((away) => (y === 0 ? away : board.height - away));
  return extent(
    Math.min(x0 ?? 0, x1 ?? 0),
    Math.min(y0 ?? 0, y1 ?? 0),
    Math.max(x0 ?? 0, x1 ?? 0),
    Math.max(y0 ?? 0, y1 ?? 0),
  );
};

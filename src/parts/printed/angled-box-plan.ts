// Every size of an angled box, and how the console's plane and the panel's lie to one another: the panel's middle is over
// the middle of the footprint, its x is the footprint's, and its y runs up the slope.

import type { Insert } from "../../catalogue/insert.ts";
import type { AngledBoxDesign } from "../../design/printed-design.ts";
import type { PrinterDesign, StockDesign } from "../../design/workshop-design.ts";
import { type Contour, type Loop, type Point, point } from "../../geometry/contour.ts";
import { type Extent, extentCentre, grownExtent } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { offsetContour } from "../../geometry/offset.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { largestCorner, polygon, roundedRectangle } from "../../geometry/shapes.ts";
import { loopFaults } from "../../geometry/simple.ts";
import { direction } from "../../geometry/trigonometry.ts";
import type { PanelLayout } from "../../layout/panel-layout.ts";
import { HEAT_SET_BOSS } from "../../standards/heat-set.ts";
import { type OpaqueWall, opaqueWall, tidy, wholeSteps } from "./opaque-wall.ts";
import { type AllowedHole, allowedHole } from "./print-allowance.ts";

export interface AngledBoxScene {
  readonly layout: PanelLayout;
  readonly design: AngledBoxDesign;
  readonly stock: StockDesign;
  readonly printer: PrinterDesign | null;
  readonly insert: Insert;
}

export interface AngledBoxPlan {
  readonly wall: OpaqueWall;
  readonly lines: number;
  /** On the console. */
  readonly outer: Loop;
  readonly inner: Loop;
  readonly flange: Contour;
  readonly flangeThickness: Mm;
  readonly flangeHoles: readonly Point[];
  readonly flangeHole: AllowedHole;
  /** Height of the face's underside at a y of the footprint. */
  readonly undersideAt: (y: number) => number;
  readonly slope: { readonly cosine: number; readonly sine: number; readonly tangent: number };
  /** In the panel: walls where they meet the face's underside, the face itself, its opening. */
  readonly faceOuter: Loop;
  readonly faceInner: Loop;
  readonly face: Contour;
  readonly opening: Extent;
  readonly openingContour: Contour;
  readonly heights: AngledBoxHeights;
  readonly boss: { readonly outside: Mm; readonly hole: AllowedHole };
  readonly middle: { readonly console: Point; readonly panel: Point };
}

/** z in the panel. */
export interface AngledBoxHeights {
  readonly front: Mm;
  readonly underside: Mm;
  readonly holeEnd: Mm;
  readonly bossEnd: Mm;
}

/** Walls that are leaned on: common practice for a box of a hand's size. */
const LEAST_WALL = 2;
/** Face and flange take screws and hands: common practice, seven lines of 0.45 mm. */
const FACE_THICKNESS = 3;
const FLANGE_THICKNESS = 3;
/** The face stands out over the walls and hides the step that the slope makes there. Own choice; no source. */
const FACE_OVERHANG = 1.5;
const OPENING_CORNER = 3;
/** A printed edge beside a boss: a loose fit, 0.3 to 0.5 mm a side (common practice). */
const BOSS_GAP = 0.4;
/** M4 screws hold the box on the console: one a side, and one every 80 mm (common practice). */
const FLANGE_SCREW = { nominal: 4.5, source: "ISO 273, medium", apart: 80, room: 10 };

export const angledBoxPlan = (scene: AngledBoxScene): AngledBoxPlan | null => {
  const { layout, design, stock, printer, insert } = scene;
  const wall = opaqueWall(stock, printer);
  const lines = Math.max(wall.lines, wholeSteps(LEAST_WALL, wall.line));
  const outer = footprintLoop(design);
  const inner = outer === null ? null : insetLoop(outer, lines * wall.line);
  if (outer === null || inner === null) return null;
  const flange = offsetContour(outer, design.flange);
  const slope = slopeOf(design);
  const box = contourExtent(outer);
  const middle = { console: extentCentre(box), panel: extentCentre(layout.nominal) };
  const onFace = faceMap(middle, slope.cosine);
  const faceOuter = polygon(outer.vertices.map(onFace));
  const faceInner = polygon(inner.vertices.map(onFace));
  const face = offsetContour(faceOuter, FACE_OVERHANG);
  if (flange.kind === "refused" || face.kind === "refused") return null;
  const boss = {
    outside: mm(Math.max(insert.boss, HEAT_SET_BOSS.outsideOverInsert * insert.outside)),
    hole: allowedHole(insert.pilot, insert.figures.source, printer),
  };
  const opening = openingBox(layout, boss.outside);
  return {
    wall,
    lines,
    outer,
    inner,
    flange: flange.contour,
    flangeThickness: tidy(wholeSteps(FLANGE_THICKNESS, wall.layer) * wall.layer),
    flangeHoles: design.flange >= FLANGE_SCREW.room ? flangeHoles(outer, design.flange) : [],
    flangeHole: allowedHole(FLANGE_SCREW.nominal, FLANGE_SCREW.source, printer),
    undersideAt: (y) => design.rise + (y - box.minY) * slope.tangent,
    slope,
    faceOuter,
    faceInner,
    face: face.contour,
    opening,
    openingContour: roundedRectangle(
      opening,
      Math.max(0, Math.min(OPENING_CORNER, largestCorner(opening))),
    ),
    heights: heightsOf(scene, wall),
    boss,
    middle,
  };
};

const slopeOf = ({ slope }: AngledBoxDesign): AngledBoxPlan["slope"] => {
  const { x: cosine, y: sine } = direction(slope);
  return { cosine, sine, tangent: sine / cosine };
};

/** null where the corners cross or lie on one line. */
const footprintLoop = ({ footprint }: AngledBoxDesign): Loop | null => {
  const loop = polygon(footprint.map(({ x, y }) => point(x, y)));
  return loopFaults(loop).length === 0 ? loop : null;
};

/** null where the walls meet, or where a corner that turns in can't be followed with straight sides. */
const insetLoop = (outer: Loop, wall: number): Loop | null => {
  const moved = offsetContour(outer, -wall, "miter");
  if (moved.kind === "refused" || moved.contour.kind === "circle") return null;
  return moved.contour.vertices.every(({ bulge }) => bulge === 0) ? moved.contour : null;
};

const faceMap =
  (middle: AngledBoxPlan["middle"], cosine: number) =>
  ({ x, y }: { readonly x: number; readonly y: number }): Point =>
    point(middle.panel.x + x - middle.console.x, middle.panel.y + (y - middle.console.y) / cosine);

/** The panel less what it lies on, clear of the bosses. */
const openingBox = ({ nominal, mount, mountHoles }: PanelLayout, boss: number): Extent => {
  const insets = mountHoles.map(({ at }) =>
    clearInset(
      Math.min(at.x - nominal.minX, nominal.maxX - at.x),
      Math.min(at.y - nominal.minY, nominal.maxY - at.y),
      boss / 2 + BOSS_GAP,
    ),
  );
  return grownExtent(nominal, -Math.max(mount.seat, ...insets));
};

/**
 * How far in a rectangular opening must begin to keep `room` from a hole that lies `x` and `y` in from the sides: by its
 * corner where the hole lies at a corner, by its edge where it lies beside one.
 */
const clearInset = (x: number, y: number, room: number): number => {
  const under = 2 * room * room - (x - y) * (x - y);
  const byCorner = under < 0 ? 0 : (x + y + Math.sqrt(under)) / 2;
  return byCorner >= Math.max(x, y) ? byCorner : Math.min(x, y) + room;
};

const heightsOf = ({ layout, insert }: AngledBoxScene, wall: OpaqueWall): AngledBoxHeights => {
  const sheet = layout.layers.findLast(({ kind }) => kind === "sheet");
  const front = mm(sheet?.rear ?? 0);
  const thickness = wholeSteps(FACE_THICKNESS, wall.layer) * wall.layer;
  const hole = insert.length + HEAT_SET_BOSS.holeBeyondInsert.most;
  return {
    front,
    underside: tidy(front - thickness),
    holeEnd: tidy(front - hole),
    bossEnd: tidy(front - hole - HEAT_SET_BOSS.solidBelow),
  };
};

/** Evenly along every side that is long enough for one. */
const flangeHoles = (outer: Loop, width: number): readonly Point[] =>
  outer.vertices.flatMap((from, index) => {
    const to = outer.vertices[(index + 1) % outer.vertices.length]!;
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const length = Math.sqrt(dx * dx + dy * dy);
    if (length < 2 * FLANGE_SCREW.room) return [];
    const count = Math.ceil(length / FLANGE_SCREW.apart);
    return Array.from({ length: count }, (_, place) => {
      const along = (place + 1 / 2) / count;
      return point(
        from.x + dx * along + (dy / length) * (width / 2),
        from.y + dy * along - (dx / length) * (width / 2),
      );
    });
  });

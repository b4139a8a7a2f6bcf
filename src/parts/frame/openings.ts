// What is cut in the boards beside their joints: the hatch and its opening, passes for cables, vents, and holes for the bolts
// between sections. What finds no room on its board is said, not squeezed in.

import type { FramePanel } from "../../design/frame-design.ts";
import { circle, point } from "../../geometry/contour.ts";
import { type Extent, grownExtent } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { degrees, mm } from "../../geometry/quantity.ts";
import { slotContour } from "../../geometry/shapes.ts";
import type { FrameHole } from "./frame-part.ts";
import type { FramePlan } from "./frame-plan.ts";
import { BOLT, CABLE_HEIGHT, VENT } from "./frame-practice.ts";
import { type HatchOptions, hatched, type OpenedHatch } from "./hatch.ts";
import { type Piece, withHoles } from "./piece.ts";

export interface Opened extends OpenedHatch {
  /** In words: what was left out. */
  readonly leftOut: readonly string[];
}

export const withOpenings = (
  plan: FramePlan,
  pieces: readonly Piece[],
  options: HatchOptions,
): Opened => {
  const leftOut: string[] = [];
  const opened = pieces.map((piece) => {
    const holes = openingsOf(plan, piece, { ...options, leftOut });
    return holes.length === 0 ? piece : withHoles(piece, holes);
  });
  const hatch = hatched(plan, opened, options);
  if (hatch.missing !== null) leftOut.push(hatch.missing);
  return { ...hatch, leftOut };
};

type Scene = HatchOptions & { readonly leftOut: string[] };

const openingsOf = (plan: FramePlan, piece: Piece, scene: Scene): readonly FrameHole[] => {
  const panel = panelOf(piece, scene);
  if (panel === null) return [];
  const { cables, vents } = plan.design;
  const box = contourExtent(piece.outline);
  const middle = (box.minX + box.maxX) / 2;
  const isEnd = panel === "front" || panel === "back";
  const ends =
    isEnd && ((panel === "back" && scene.isFirst) || (panel === "front" && scene.isLast));
  const room = { piece, box, leftOut: scene.leftOut };
  return [
    ...(cables.through.includes(panel)
      ? fitted(room, "cable pass", [
          {
            feature: "cable-pass",
            contour: circle(point(middle, cableHeight(panel, box)), cables.diameter / 2),
          },
        ])
      : []),
    ...(ends && vents.inlet === panel
      ? fitted(room, "vents", vent(middle, box.minY + VENT.low, "inlet"))
      : []),
    ...(ends && vents.outlet === panel
      ? fitted(room, "vents", vent(middle, box.maxY - VENT.high, "outlet"))
      : []),
    ...(isEnd && !ends ? bolts(plan, panel, box) : []),
  ];
};

const panelOf = (piece: Piece, { suffix }: HatchOptions): FramePanel | null => {
  const found = (["front", "back", "floor"] as const).find(
    (panel) => piece.id === `${panel}${suffix}`,
  );
  return found ?? (piece.role === "strip" ? "top" : null);
};

const cableHeight = (panel: FramePanel, box: Extent): number =>
  panel === "floor" || panel === "top" ? (box.minY + box.maxY) / 2 : box.minY + CABLE_HEIGHT;

const vent = (x: number, y: number, name: string): readonly FrameHole[] =>
  Array.from({ length: VENT.count }, (_, index) => ({
    feature: `vent-${name}.${index + 1}`,
    contour: slotContour(point(x, y + (name === "inlet" ? 1 : -1) * index * VENT.pitch), {
      length: mm(VENT.length),
      width: mm(VENT.width),
      turn: degrees(0),
    }),
  }));

/** Near both cheeks and the foot, at places that the end boards of two sections share. */
const bolts = ({ across }: FramePlan, panel: FramePanel, box: Extent): readonly FrameHole[] =>
  [across.from + BOLT.inset, across.to - BOLT.inset].flatMap((x, column) =>
    [BOLT.inset, 3 * BOLT.inset].map((up, row) => ({
      feature: `bolt.${2 * column + row + 1}`,
      // The front's good face looks forward: its x runs to the left.
      contour: circle(point(panel === "front" ? -x : x, box.minY + up), BOLT.hole / 2),
    })),
  );

/** The holes where they lie on the board with a web round them. */
const fitted = (
  room: { readonly piece: Piece; readonly box: Extent; readonly leftOut: string[] },
  what: string,
  holes: readonly FrameHole[],
): readonly FrameHole[] => {
  const clear = grownExtent(room.box, -VENT.pitch / 2);
  const fits = holes.every(({ contour }) => isWithin(contourExtent(contour), clear));
  if (fits) return holes;
  room.leftOut.push(`${what} in ${room.piece.id}`);
  return [];
};

const isWithin = (inner: Extent, outer: Extent): boolean =>
  inner.minX >= outer.minX &&
  inner.maxX <= outer.maxX &&
  inner.minY >= outer.minY &&
  inner.maxY <= outer.maxY;

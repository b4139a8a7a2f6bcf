// What is cut in the boards beside their joints: the hatch and its opening, passes for cables, vents, and holes for the bolts
// between sections. What finds no room on its board is said, not squeezed in.

import type { FramePanel, FrameSide } from "../../design/frame-design.ts";
import { circle, type Point, point } from "../../geometry/contour.ts";
import {
  type Extent,
  extent,
  extentHeight,
  extentWidth,
  grownExtent,
} from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { degrees, mm } from "../../geometry/quantity.ts";
import { rectangle, roundedRectangle, slotContour } from "../../geometry/shapes.ts";
import { movedFrame } from "../../geometry/space/frame.ts";
import { scaled } from "../../geometry/space/vector.ts";
import type { FrameHole } from "./frame-part.ts";
import type { FramePlan } from "./frame-plan.ts";
import { BOLT, CABLE_HEIGHT, HATCH, SCREW, VENT } from "./frame-practice.ts";
import { type Piece, withHoles } from "./piece.ts";

export interface Opened {
  readonly pieces: readonly Piece[];
  /** In words: what was left out. */
  readonly leftOut: readonly string[];
}

export interface OpeningOptions {
  readonly suffix: string;
  readonly isFirst: boolean;
  readonly isLast: boolean;
}

export const withOpenings = (
  plan: FramePlan,
  pieces: readonly Piece[],
  options: OpeningOptions,
): Opened => {
  const leftOut: string[] = [];
  const opened = pieces.map((piece) => {
    const holes = openingsOf(plan, piece, { ...options, leftOut });
    return holes.length === 0 ? piece : withHoles(piece, holes);
  });
  return hatched(plan, opened, { ...options, leftOut });
};

type Scene = OpeningOptions & { readonly leftOut: string[] };

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

const panelOf = (piece: Piece, { suffix }: OpeningOptions): FramePanel | null => {
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

const hatched = (plan: FramePlan, pieces: readonly Piece[], scene: Scene): Opened => {
  const { hatch } = plan.design;
  const { leftOut, suffix } = scene;
  if (
    hatch === "none" ||
    (hatch === "back" && !scene.isFirst) ||
    (hatch === "front" && !scene.isLast)
  )
    return { pieces, leftOut };
  const id =
    hatch === "left" || hatch === "right" ? `cheek-${hatch}${suffix}` : `${hatch}${suffix}`;
  const carrier = pieces.find((piece) => piece.id === id);
  const opening = carrier === undefined ? null : hatchOpening(plan, carrier, hatch);
  if (carrier === undefined || opening === null)
    return { pieces, leftOut: [...leftOut, `hatch in ${id}`] };
  const cover = hatchCover(carrier, opening, suffix);
  const holes: readonly FrameHole[] = [
    { feature: "hatch-opening", contour: roundedRectangle(opening, HATCH.corner) },
    ...screwPlaces(opening).map((at, index) => ({
      feature: `hatch-pilot.${index + 1}`,
      contour: circle(at, SCREW.pilot / 2),
    })),
  ];
  const opened = pieces.map((piece) => (piece === carrier ? withHoles(piece, holes) : piece));
  return { pieces: [...opened, cover], leftOut };
};

const hatchOpening = (plan: FramePlan, carrier: Piece, hatch: FrameSide): Extent | null => {
  const { along, up } = plan.below;
  const box = contourExtent(carrier.outline);
  const sign = hatch === "left" ? -1 : 1;
  const clear =
    hatch === "left" || hatch === "right"
      ? extent(
          Math.min(sign * along.from, sign * along.to) + HATCH.away,
          up.from + HATCH.away,
          Math.max(sign * along.from, sign * along.to) - HATCH.away,
          up.to - HATCH.away,
        )
      : extent(
          box.minX + HATCH.away,
          box.minY + VENT.low + VENT.count * VENT.pitch + HATCH.lap,
          box.maxX - HATCH.away,
          box.maxY - VENT.high - VENT.count * VENT.pitch - HATCH.lap,
        );
  const width = Math.min(HATCH.widest, extentWidth(clear));
  const height = Math.min(HATCH.highest, extentHeight(clear));
  if (width < HATCH.least || height < HATCH.least) return null;
  const x = (clear.minX + clear.maxX) / 2;
  const y = (clear.minY + clear.maxY) / 2;
  return extent(x - width / 2, y - height / 2, x + width / 2, y + height / 2);
};

const screwPlaces = (opening: Extent): readonly Point[] => {
  const { minX, minY, maxX, maxY } = grownExtent(opening, HATCH.lap / 2);
  return [point(minX, minY), point(maxX, minY), point(maxX, maxY), point(minX, maxY)];
};

/** On the carrier's good face. */
const hatchCover = (carrier: Piece, opening: Extent, suffix: string): Piece => ({
  id: `hatch${suffix}`,
  role: "hatch",
  title: "Hatch",
  section: carrier.section,
  frame: carrier.frame,
  outline: rectangle(grownExtent(opening, HATCH.lap)),
  holes: screwPlaces(opening).map((at, index) => ({
    feature: `hatch-screw.${index + 1}`,
    contour: circle(at, SCREW.clearance / 2),
  })),
  handOperations: [],
});

/** The cover stands out by its own thickness. */
export const proud = (piece: Piece, thickness: number): Piece =>
  piece.role === "hatch"
    ? { ...piece, frame: movedFrame(piece.frame, scaled(piece.frame.z, thickness)) }
    : piece;

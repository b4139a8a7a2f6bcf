// The slots of a cheek that half-lapped ribs are dropped into, open at its upper edge; and the way down to them. Takes the
// plan; gives what a slot takes of the profile, and how much of the cheek stands in a rib's way.

import { intersection } from "../../geometry/boolean.ts";
import type { Loop } from "../../geometry/contour.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { invariant } from "../../geometry/invariant.ts";
import { contourArea, contourExtent } from "../../geometry/measure.ts";
import { polygon } from "../../geometry/shapes.ts";
import { type Board, boardSection, type Span } from "./board.ts";
import type { FramePlan } from "./frame-plan.ts";
import { onEdge } from "./frame-tolerance.ts";

/** A rib that does not come down to its slot: the cheek over it is in the way. */
export interface BarredLap {
  readonly rib: string;
  readonly bay: string;
  readonly side: "left" | "right";
  /** How much of the way is barred, along it. */
  readonly barred: number;
}

/** In the profile, on through the cheek's edge: that stands `beyond` over the bay's face, and the face a sheet over the rib. */
export const lapSlot = (plan: FramePlan, board: Board, tab: Span): Loop =>
  polygon(sectionBetween(plan, board, { from: tab.from, to: slotEnd(plan, board, tab) }));

export const barredLaps = (plan: FramePlan): readonly BarredLap[] =>
  plan.design.joints === "half-lap"
    ? (["left", "right"] as const).flatMap((side) =>
        plan.boards.flatMap((board) => barredLap(plan, board, side) ?? []),
      )
    : [];

const barredLap = (plan: FramePlan, board: Board, side: "left" | "right"): BarredLap | null => {
  const [tab] = board.tabs[side];
  if (board.role !== "rib" || board.bay === null || tab === undefined) return null;
  const cheek = polygon(plan.cheeks[side]);
  const box = contourExtent(cheek);
  const from = slotEnd(plan, board, tab);
  // No cheek is longer than both its sides together.
  const to = from + extentWidth(box) + extentHeight(box);
  const way = polygon(sectionBetween(plan, board, { from, to }));
  const met = intersection([{ outline: cheek, holes: [] }], [{ outline: way, holes: [] }]);
  const area = met.map(({ outline }) => contourArea(outline)).reduce((sum, each) => sum + each, 0);
  const barred = area / slotWidth(plan);
  return barred > onEdge ? { rib: board.id, bay: board.bay, side, barred } : null;
};

const slotEnd = ({ bays, thickness, design }: FramePlan, board: Board, tab: Span): number => {
  const bay = bays.find(({ id }) => id === board.bay);
  invariant(bay !== undefined, "a rib carries a bay of its section");
  return tab.to + thickness / bay.tilt.x + design.beyond + thickness;
};

const slotWidth = ({ thickness, design }: FramePlan): number => thickness + design.clearance;

const sectionBetween = (
  { thickness, design }: FramePlan,
  board: Board,
  span: Span,
): ReturnType<typeof boardSection> =>
  boardSection(board, span, { thickness, more: design.clearance / 2 });

// The joints between boards and cheeks, and between ribs and rail bars: what is cut for them in the piece that receives, in
// the profile or the bay's own plane, at finished size.

import type { FrameDesign, FrameJoints } from "../../design/frame-design.ts";
import { type Contour, circle, type Loop, type Point } from "../../geometry/contour.ts";
import { extent } from "../../geometry/extent.ts";
import { mm } from "../../geometry/quantity.ts";
import { polygon, rectangle } from "../../geometry/shapes.ts";
import { type Board, boardSection, type Span } from "./board.ts";
import type { FrameBay } from "./frame-bay.ts";
import type { FrameJoint } from "./frame-part.ts";
import type { FramePlan } from "./frame-plan.ts";
import { dowelDiameter, SCREW } from "./frame-practice.ts";
import { lapSlot } from "./laps.ts";
import { railTabs, ribPlaces } from "./rib-boards.ts";

export interface Receiver {
  readonly joint: FrameJoint;
  readonly shape:
    | { readonly kind: "slot"; readonly contour: Loop }
    /** Open at the piece's edge: taken off its outline. */
    | { readonly kind: "open"; readonly contour: Loop }
    | { readonly kind: "hole"; readonly contour: Contour };
}

/** In the profile, for the cheek of one side. */
export const cheekReceivers = (
  plan: FramePlan,
  side: "left" | "right",
  into: string,
): readonly Receiver[] =>
  plan.boards.flatMap((board) =>
    board.tabs[side].map((tab, index) => {
      const isLapped = plan.design.joints === "half-lap" && board.role === "rib";
      const kind = isLapped ? "half-lap" : boardJoint(plan.design.joints);
      const feature = `slot.${board.id}.${index + 1}`;
      const joint = { kind, from: board.id, into, feature, clearance: clearanceOf(plan.design) };
      return { joint, shape: cheekShape(plan, board, { tab, kind }) };
    }),
  );

/** Half-laps are for ribs, which cross the cheeks; the other boards end there. */
const boardJoint = (joints: FrameJoints): FrameJoint["kind"] =>
  joints === "half-lap" ? "tab-and-slot" : joints;

const clearanceOf = ({ clearance }: FrameDesign): FrameJoint["clearance"] => clearance;

const cheekShape = (
  plan: FramePlan,
  board: Board,
  { tab, kind }: { readonly tab: Span; readonly kind: FrameJoint["kind"] },
): Receiver["shape"] => {
  const { design, thickness } = plan;
  const more = design.clearance / 2;
  switch (kind) {
    case "tab-and-slot":
      return { kind: "slot", contour: polygon(boardSection(board, tab, { thickness, more })) };
    case "half-lap":
      return { kind: "open", contour: lapSlot(plan, board, tab) };
    case "dowel":
    case "screws":
      return {
        kind: "hole",
        contour: circle(middleOf(board, tab, thickness), holeRadius(kind, thickness)),
      };
  }
};

const holeRadius = (kind: "dowel" | "screws", thickness: number): number =>
  (kind === "dowel" ? dowelDiameter(thickness) : SCREW.clearance) / 2;

const middleOf = (board: Board, tab: Span, thickness: number): Point => {
  const middle = (tab.from + tab.to) / 2;
  const corners = boardSection(board, { from: middle, to: middle }, { thickness });
  const [a, , b] = corners;
  return { x: mm((a!.x + b!.x) / 2), y: mm((a!.y + b!.y) / 2) };
};

/** In the bay's own plane, for the bar on one side. */
export const barReceivers = (
  plan: FramePlan,
  bay: FrameBay,
  bar: { readonly side: "left" | "right"; readonly id: string; readonly ribs: readonly string[] },
): readonly Receiver[] => {
  const { design, thickness } = plan;
  const tab = railTabs(bay, plan)[bar.side];
  const kind = boardJoint(design.joints);
  const places = ribPlaces(bay.length, { thickness, spacing: design.ribs.spacing });
  return places.map((place, index) => ({
    joint: {
      kind,
      from: bar.ribs[index]!,
      into: bar.id,
      feature: `slot.${bar.ribs[index]!}`,
      clearance: design.clearance,
    },
    shape: barShape({ tab, place, kind }, plan),
  }));
};

const barShape = (
  {
    tab,
    place,
    kind,
  }: { readonly tab: Span; readonly place: number; readonly kind: FrameJoint["kind"] },
  { design, thickness }: FramePlan,
): Receiver["shape"] => {
  const more = design.clearance / 2;
  const [low, high] = tab.from < tab.to ? [tab.from, tab.to] : [tab.to, tab.from];
  switch (kind) {
    case "tab-and-slot":
    case "half-lap":
      return {
        kind: "slot",
        contour: rectangle(extent(low - more, place - more, high + more, place + thickness + more)),
      };
    case "dowel":
    case "screws":
      return {
        kind: "hole",
        contour: circle(
          { x: mm((low + high) / 2), y: mm(place + thickness / 2) },
          holeRadius(kind, thickness),
        ),
      };
  }
};

// The pieces of one section: cheeks, boards between them and rail bars, with everything cut for their joints; then the
// openings. Takes the plan and the relief; gives pieces in the order of assembly, and the joints.

import { difference } from "../../geometry/boolean.ts";
import type { Contour, Loop } from "../../geometry/contour.ts";
import { circle, point } from "../../geometry/contour.ts";
import { extent } from "../../geometry/extent.ts";
import { invariant } from "../../geometry/invariant.ts";
import { mm } from "../../geometry/quantity.ts";
import { polygon, rectangle } from "../../geometry/shapes.ts";
import { cross, scaled } from "../../geometry/space/vector.ts";
import { mirroredContour } from "../../geometry/transform.ts";
import type { HandOperation } from "../sheet-part.ts";
import { asLoop } from "./as-loop.ts";
import { type Board, boardFrame, boardOutline } from "./board.ts";
import type { FrameBay } from "./frame-bay.ts";
import type { FrameHole } from "./frame-part.ts";
import type { FramePlan } from "./frame-plan.ts";
import { dowelDiameter, SCREW } from "./frame-practice.ts";
import { barReceivers, cheekReceivers, type Receiver } from "./joints.ts";
import type { Piece, Pieces } from "./piece.ts";
import { outOfProfile, type Profile } from "./profile.ts";
import { railHoleSize } from "./rail-holes.ts";
import { barReach } from "./rail-reach.ts";
import { type Relief, relievedPiece, relievedSlot } from "./relief.ts";

export interface SectionOptions {
  readonly profile: Profile;
  readonly section: number;
  readonly suffix: string;
  readonly relief: Relief;
}

export const sectionPieces = (plan: FramePlan, options: SectionOptions): Pieces => {
  const right = cheek(plan, "right", options);
  const left = cheek(plan, "left", options);
  const bars = plan.bays.flatMap((bay) =>
    (["left", "right"] as const).map((side) => bar(plan, bay, { ...options, side })),
  );
  const boards = plan.boards.map((board) => boardPiece(plan, board, options));
  return {
    pieces: [right.piece, ...boards, left.piece, ...bars.map(({ piece }) => piece)],
    joints: [right, left, ...bars].flatMap(({ received }) => received.map(({ joint }) => joint)),
  };
};

interface Received {
  readonly piece: Piece;
  readonly received: readonly Receiver[];
}

const cheek = (
  plan: FramePlan,
  side: "left" | "right",
  { profile, section, suffix, relief }: SectionOptions,
): Received => {
  const id = `cheek-${side}${suffix}`;
  const received = cheekReceivers(plan, side, id);
  const isRight = side === "right";
  const onFace = (contour: Contour): Contour =>
    isRight ? contour : mirroredContour(contour, mm(0));
  const across = isRight ? plan.across.to + plan.thickness : plan.across.from - plan.thickness;
  const x = scaled(profile.forward, isRight ? 1 : -1);
  return {
    piece: {
      id,
      role: "cheek",
      title: isRight ? "Right cheek" : "Left cheek",
      section,
      frame: {
        x,
        y: profile.up,
        z: cross(x, profile.up),
        origin: outOfProfile(profile, point(0, 0), across),
      },
      outline: asLoop(onFace(notched(polygon(plan.cheeks[side]), received, relief))),
      holes: holesOf(received, relief).map(({ feature, contour }) => ({
        feature,
        contour: onFace(contour),
      })),
      handOperations: [],
    },
    received,
  };
};

/** The outline less the slots that are open at its edge. They are, in a plan whose ribs come down to them. */
const notched = (outline: Loop, received: readonly Receiver[], relief: Relief): Contour => {
  const open = received.flatMap(({ shape }) =>
    shape.kind === "open" ? [relievedSlot(shape.contour, relief)] : [],
  );
  const left = difference([{ outline, holes: [] }], open);
  const [only] = left;
  invariant(
    only !== undefined && left.length === 1 && only.holes.length === 0,
    "a cheek stays in one piece, and its half-lap slots are open at its edge",
  );
  return only.outline;
};

const holesOf = (received: readonly Receiver[], relief: Relief): readonly FrameHole[] =>
  received.flatMap(({ joint: { feature }, shape }): readonly FrameHole[] => {
    if (shape.kind === "open") return [];
    const isSlot = shape.kind === "slot";
    return [{ feature, contour: isSlot ? relievedSlot(shape.contour, relief) : shape.contour }];
  });

const boardPiece = (
  plan: FramePlan,
  board: Board,
  { profile, section, relief }: SectionOptions,
): Piece => {
  const { joints } = plan.design;
  const hasTabs = joints === "tab-and-slot" || joints === "half-lap";
  const outlined = hasTabs ? board : { ...board, tabs: { left: [], right: [] } };
  return {
    id: board.id,
    role: board.role,
    title: board.title,
    section,
    frame: boardFrame(board, profile),
    outline: relievedPiece(boardOutline(outlined, plan.thickness), relief),
    holes: [],
    handOperations: hasTabs ? [] : edgeHoles(plan, board),
  };
};

/** Holes in the edges of a board without tabs, by hand, through the cheek's holes. */
const edgeHoles = (plan: FramePlan, board: Board): readonly HandOperation[] => {
  const isDowel = plan.design.joints === "dowel";
  const size = isDowel ? dowelDiameter(plan.thickness) : SCREW.pilot;
  const sign = board.faces === "left" ? 1 : -1;
  return (["left", "right"] as const).flatMap((side) =>
    board.tabs[side].map(
      ({ from, to }, index): HandOperation => ({
        feature: `edge hole ${side} ${index + 1}`,
        what: "drill",
        tool: `${size} mm, into the edge, through the hole of the cheek`,
        side: "front",
        depth: mm(SCREW.deep),
        at: point(sign * (side === "left" ? plan.across.from : plan.across.to), (from + to) / 2),
      }),
    ),
  );
};

const bar = (
  plan: FramePlan,
  bay: FrameBay,
  { side, section, suffix, relief }: SectionOptions & { readonly side: "left" | "right" },
): Received => {
  const id = `rail-${bay.id}-${side}${suffix}`;
  const ribs = plan.boards.filter((board) => board.bay === bay.id).map((board) => board.id);
  const received = barReceivers(plan, bay, { side, id, ribs });
  const reach = barReach(bay, plan);
  const [low, high] = side === "left" ? [reach.from, -bay.halfClear] : [bay.halfClear, reach.to];
  const size = railHoleSize(plan.design, bay.railHoles);
  const fasteners = bay.railHoles[side].map(
    (at, index): FrameHole => ({
      feature: `rail-hole.${index + 1}`,
      contour: circle(at, size / 2),
    }),
  );
  return {
    piece: {
      id,
      role: "rail-bar",
      title: `${side === "left" ? "Left" : "Right"} rail of ${bay.id}`,
      section,
      frame: bay.layout.frame,
      outline: rectangle(extent(low, 0, high, bay.length)),
      holes: [...fasteners, ...holesOf(received, relief)],
      handOperations: [],
    },
    received,
  };
};

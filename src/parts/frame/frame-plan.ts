// The plan of one section in the profile: how far apart its cheeks stand, where its ribs, ends, floor and strips are, and the
// cheeks' outlines. Everything here is a sum over bays and a sheet's thickness; shapes and joints follow from it.

import type { Point } from "../../geometry/contour.ts";
import { downToTenth, upToTenth } from "../../geometry/tenths.ts";
import type { Board, Span } from "./board.ts";
import { cheekCorners } from "./cheek-corners.ts";
import { convexMeet } from "./convex.ts";
import { endBoards } from "./end-boards.ts";
import { acrossBay, type FrameBay, faceHeight, inBay } from "./frame-bay.ts";
import type { KneeRoom } from "./frame-part.ts";
import { GAP, RIB_ARM } from "./frame-practice.ts";
import { behindKnees, kneesOf } from "./knees.ts";
import type { PlanOptions, PlanScene } from "./plan-options.ts";
import { leastReach } from "./rail-reach.ts";
import { ribBoards } from "./rib-boards.ts";
import type { SizedFrame } from "./sized-frame.ts";
import { stepEdge } from "./steps.ts";
import { type OpenBeside, topStrips, withoutStrips } from "./top-strips.ts";

export interface FramePlan {
  /** Ends the ids of its parts where there are several units or sections. */
  readonly suffix: string;
  readonly design: SizedFrame;
  readonly thickness: number;
  readonly bays: readonly FrameBay[];
  /** Inner faces of the cheeks, to the right of the console's origin. */
  readonly across: Span;
  readonly boards: readonly Board[];
  readonly cheeks: { readonly left: readonly Point[]; readonly right: readonly Point[] };
  /** The cheeks' ends in the profile. */
  readonly ends: Span;
  /** The room below the bays and above the floor board, between the end boards. */
  readonly below: { readonly along: Span; readonly up: Span };
  /** Lengths of the gaps that no strip closes. */
  readonly leftOpen: readonly number[];
  /** What stays open at the ends of strips. */
  readonly openBeside: readonly OpenBeside[];
  /** Null where there is none. */
  readonly kneeRoom: KneeRoom | null;
}

/** Inner faces of cheeks that all these bays find room between, at least as far apart as `kneeWidth`. */
export const acrossBays = (
  bays: readonly FrameBay[],
  { design, thickness, kneeWidth }: AcrossOptions,
): Span => widened(leastAcross(bays, design, thickness), design.width ?? kneeWidth);

export interface AcrossOptions {
  readonly design: SizedFrame;
  readonly thickness: number;
  readonly kneeWidth: number;
}

/**
 * As much wider to the left as to the right, so that the panels stay in the middle. Cheeks stand at whole tenths of a millimetre, so
 * that the boards between them are cut to lengths that can be measured.
 */
const widened = ({ from, to }: Span, width: number): Span => {
  const more = Math.max(0, width - (to - from)) / 2;
  return {
    from: downToTenth(from - more),
    to: upToTenth(to + more),
  };
};

/** As near to one another as the cheeks can stand. */
export const leastAcross = (
  bays: readonly FrameBay[],
  design: SizedFrame,
  thickness: number,
): Span => {
  const places = bays.flatMap((bay) => {
    const rail = leastReach(bay, design);
    const heights = [-thickness, 0, design.beyond];
    const rails = heights.flatMap((z) => [acrossBay(bay, -rail, z).x, acrossBay(bay, rail, z).x]);
    const room = [0, -bay.depth].flatMap((z) => [
      acrossBay(bay, -bay.halfClear, z).x - RIB_ARM,
      acrossBay(bay, bay.halfClear, z).x + RIB_ARM,
    ]);
    return [...rails, ...room];
  });
  return { from: Math.min(...places) - GAP, to: Math.max(...places) + GAP };
};

export const framePlan = (bays: readonly FrameBay[], options: PlanOptions): FramePlan => {
  const { design, thickness, across } = options;
  const hulls = bays.map((bay) => hullOf(bay, options));
  const corners = hulls.flat();
  const inner: Span = {
    from: Math.min(...corners.map(({ x }) => x)) - GAP,
    to: Math.max(...corners.map(({ x }) => x)) + GAP,
  };
  const scene: PlanScene = { ...options, bays, hulls, inner };
  const knees = options.knees === null ? null : kneesOf(scene, options.knees);
  const ends = endBoards(scene, knees);
  const ribs = bays.flatMap((bay) => ribBoards(bay, options));
  const strips = design.panels.includes("top")
    ? topStrips(scene, [...ends, ...ribs])
    : withoutStrips(bays);
  const reach: Span = {
    from: inner.from - thickness - design.beyond,
    to: inner.to + thickness + design.beyond,
  };
  const steps = strips.between.map((strip, index) =>
    strip === null ? null : stepEdge(strip, [bays[index]!, bays[index + 1]!], options),
  );
  return {
    suffix: options.suffix,
    design,
    thickness,
    bays,
    across,
    boards: [...ends, ...ribs, ...strips.boards],
    cheeks: {
      left: cheekCorners(scene, { ends: reach, across: across.from, knees, steps }),
      right: cheekCorners(scene, { ends: reach, across: across.to, knees, steps }),
    },
    ends: reach,
    below: {
      along: { from: knees === null ? inner.from : behindKnees(knees, thickness), to: inner.to },
      up: { from: design.toe + thickness, to: Math.min(...corners.map(({ y }) => y)) },
    },
    leftOpen: strips.open,
    openBeside: strips.beside,
    kneeRoom:
      knees === null ? null : { planned: knees.planned, deep: knees.deepest, high: knees.room },
  };
};

/** What a bay fills of the profile: rails, room and ribs, from its beginning to its end. */
const hullOf = (
  bay: FrameBay,
  { design, across }: Pick<PlanOptions, "design" | "across">,
): readonly Point[] => {
  const low = bay.lowest - design.ribs.web;
  const high = Math.max(faceHeight(bay, across.from), faceHeight(bay, across.to), 0);
  return [
    inBay(bay, 0, low),
    inBay(bay, bay.length, low),
    inBay(bay, bay.length, high),
    inBay(bay, 0, high),
  ];
};

/** Two bays of the section that want the same room. */
export const crossingBays = (
  bays: readonly FrameBay[],
  options: Pick<PlanOptions, "design" | "across">,
): readonly (readonly [FrameBay, FrameBay])[] =>
  bays.flatMap((bay, index) =>
    bays
      .slice(index + 1)
      .filter((other) => convexMeet(hullOf(bay, options), hullOf(other, options)))
      .map((other) => [bay, other] as const),
  );

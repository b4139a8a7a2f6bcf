// A strip that closes the top between two places: as long as bays and boards leave it room, trimmed from both ends.

import type { Point } from "../../geometry/contour.ts";
import type { Board } from "./board.ts";
import { boardSection } from "./board.ts";
import { convexMeet } from "./convex.ts";
import { GAP, SHORTEST_STRIP } from "./frame-practice.ts";
import { between, stepped } from "./profile.ts";

export type Strip =
  | {
      readonly kind: "strip";
      readonly run: Pick<Board, "at" | "along" | "length">;
      /** What stays open at its ends, where it gives way to the room of a bay and no board closes it; widths along the run. */
      readonly beside: readonly number[];
    }
  /** Too short for a strip. */
  | { readonly kind: "open"; readonly gap: number }
  /** Nothing to close. */
  | { readonly kind: "closed" };

export interface StripRoom {
  readonly thickness: number;
  /** Rooms of bays: a strip gives way to them, and they close nothing. */
  readonly rooms: readonly (readonly Point[])[];
  /** Sections of boards, which close what they stand in. */
  readonly boards: readonly (readonly Point[])[];
}

/** Trimmed in steps of this, and a gap of two of them is as good as closed: 1 mm a side. */
const STEP = 0.5;
const CLOSED = 4 * STEP;

/** Nothing is to be closed between the two. */
export const isClosed = (from: Point, to: Point): boolean =>
  Math.abs(to.x - from.x) + Math.abs(to.y - from.y) < CLOSED;

export const stripBetween = (from: Point, to: Point, room: StripRoom): Strip => {
  if (isClosed(from, to)) return { kind: "closed" };
  const { along, length } = between(from, to);
  const meets = (low: number, high: number, others: StripRoom["rooms"]): boolean => {
    const section = boardSection(
      { at: from, along, faces: "left" },
      { from: low, to: high },
      { thickness: room.thickness, more: GAP },
    );
    return others.some((other) => convexMeet(section, other));
  };
  const isFree = (low: number, high: number): boolean =>
    !meets(low, high, room.rooms) && !meets(low, high, room.boards);
  const openFrom = (low: number, high: number): number =>
    STEP * stepsBetween(low, high).filter((at) => !meets(at, at + STEP, room.boards)).length;
  let low = GAP;
  let high = length - GAP;
  while (low + STEP < high && !isFree(low, low + STEP)) low += STEP;
  while (low + STEP < high && !isFree(high - STEP, high)) high -= STEP;
  if (high - low < SHORTEST_STRIP || !isFree(low, high)) return { kind: "open", gap: length };
  const ends = [openFrom(0, low), openFrom(high, length)];
  return {
    kind: "strip",
    run: { at: stepped(from, along, low), along, length: high - low },
    beside: ends.filter((gap) => gap > CLOSED),
  };
};

const stepsBetween = (low: number, high: number): readonly number[] =>
  Array.from({ length: Math.floor((high - low) / STEP) }, (_, index) => low + index * STEP);

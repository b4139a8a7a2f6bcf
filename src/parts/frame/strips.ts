// A strip that closes the top between two places: as long as bays and boards leave it room, trimmed from both ends.

import type { Point } from "../../geometry/contour.ts";
import type { Board } from "./board.ts";
import { boardSection } from "./board.ts";
import { convexMeet } from "./convex.ts";
import { GAP, SHORTEST_STRIP } from "./frame-practice.ts";
import { between, stepped } from "./profile.ts";

export type Strip =
  | { readonly kind: "strip"; readonly run: Pick<Board, "at" | "along" | "length"> }
  /** Too short for a strip. */
  | { readonly kind: "open"; readonly gap: number }
  /** Nothing to close. */
  | { readonly kind: "closed" };

export interface StripRoom {
  readonly thickness: number;
  readonly inTheWay: readonly (readonly Point[])[];
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
  const isFree = (low: number, high: number): boolean => {
    const section = boardSection(
      { at: from, along, faces: "left" },
      { from: low, to: high },
      { thickness: room.thickness, more: GAP },
    );
    return !room.inTheWay.some((other) => convexMeet(section, other));
  };
  let low = GAP;
  let high = length - GAP;
  while (low + STEP < high && !isFree(low, low + STEP)) low += STEP;
  while (low + STEP < high && !isFree(high - STEP, high)) high -= STEP;
  if (high - low < SHORTEST_STRIP || !isFree(low, high)) return { kind: "open", gap: length };
  return { kind: "strip", run: { at: stepped(from, along, low), along, length: high - low } };
};

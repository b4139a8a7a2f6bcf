// Which bays of a console stand in one unit: a row of bays one behind another, in one profile, between one pair of cheeks.
// Takes the bays; gives units in the order in which their first bays are written. Bays abreast, facing or at an angle part.

import type { Point } from "../../geometry/contour.ts";
import type { BayLayout } from "../../layout/console/console-layout.ts";
import type { Span } from "./board.ts";
import { type FrameBay, frameBay, inBay } from "./frame-bay.ts";
import { isUpright, type Profile, profileOf } from "./profile.ts";

export interface FrameUnit {
  /** 1, 2 ... */
  readonly number: number;
  readonly profile: Profile;
  /** From back to front. */
  readonly bays: readonly FrameBay[];
}

/** The bays are those that a frame can carry, each in a profile of its own. */
export const frameUnits = (bays: readonly BayLayout[]): readonly FrameUnit[] => {
  const units: { readonly profile: Profile; readonly bays: FrameBay[] }[] = [];
  // A bay that runs straight up stands in the profile of those that it rises behind, whatever its cant, and has its own last.
  for (const layout of bays.toSorted(
    (a, b) => Number(isUpright(a.frame)) - Number(isUpright(b.frame)),
  )) {
    const joined = units.some((unit) => {
      const carried = frameBay(layout, unit.profile);
      if (carried.kind === "refused" || !isInRow(carried.bay, unit.bays)) return false;
      unit.bays.push(carried.bay);
      return true;
    });
    if (joined) continue;
    const profile = profileOf(layout.frame);
    const own = frameBay(layout, profile);
    if (own.kind === "carried") units.push({ profile, bays: [own.bay] });
  }
  const written = (row: readonly FrameBay[]): number =>
    Math.min(...row.map(({ id }) => bays.findIndex((each) => each.id === id)));
  const inOrder = units.toSorted((a, b) => written(a.bays) - written(b.bays));
  return inOrder.map((unit, index) => ({
    number: index + 1,
    profile: unit.profile,
    bays: unit.bays.toSorted((a, b) => placeInRow(a) - placeInRow(b) || (a.id < b.id ? -1 : 1)),
  }));
};

/** Behind or before one of them across the same stretch, and abreast of none. */
const isInRow = (bay: FrameBay, row: readonly FrameBay[]): boolean =>
  row.some((other) => !isBeside(bay, other)) && !row.some((other) => isAbreast(bay, other));

/** No rail of one lies over a rail of the other. */
const isBeside = (bay: FrameBay, other: FrameBay): boolean =>
  Math.abs(bay.centre - other.centre) >= reachAcross(bay) + reachAcross(other);

const reachAcross = ({ halfClear, tilt }: FrameBay): number => halfClear * tilt.x;

const isAbreast = (bay: FrameBay, other: FrameBay): boolean => {
  if (!isBeside(bay, other)) return false;
  const [a, b] = [forwardReach(bay), forwardReach(other)];
  return a.from < b.to && b.from < a.to;
};

/** Of its run and the room behind its panels. */
export const forwardReach = (bay: FrameBay): Span => {
  const places = [0, bay.lowest].flatMap((up): readonly Point[] => [
    inBay(bay, 0, up),
    inBay(bay, bay.length, up),
  ]);
  const forward = places.map(({ x }) => x);
  return { from: Math.min(...forward), to: Math.max(...forward) };
};

/** Forward and up: a desk's rising bay follows its level one. */
const placeInRow = (bay: FrameBay): number => {
  const { x, y } = inBay(bay, bay.length / 2, 0);
  return x + y;
};

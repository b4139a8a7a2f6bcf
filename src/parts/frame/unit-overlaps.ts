// Units of the frame that want the same room of the floor. Takes the units' plans; gives each such pair with the shortest way
// out, square to a side of the one or the other.

import { type Point, point } from "../../geometry/contour.ts";
import { convexMeet } from "./convex.ts";
import { cornersOnFloor, footprint } from "./footprint.ts";
import type { UnitPlan } from "./unit-plan.ts";

export interface UnitOverlap {
  readonly first: UnitPlan;
  readonly second: UnitPlan;
  /** How much of it both want, along each way on which the second could go; the shortest first. */
  readonly ways: readonly UnitWay[];
}

/** Of the second unit, on the console's floor: x forward, y to the left. A unit vector, and how far along it. */
export interface UnitWay {
  readonly toward: Point;
  readonly by: number;
}

export const unitOverlaps = (units: readonly UnitPlan[]): readonly UnitOverlap[] =>
  units.flatMap((first, index) =>
    units.slice(index + 1).flatMap((second) => {
      const ways = waysOut(first, second);
      return ways.length === 0 ? [] : [{ first, second, ways }];
    }),
  );

/** Empty where no section of the one meets a section of the other. */
const waysOut = (first: UnitPlan, second: UnitPlan): readonly UnitWay[] => {
  const still = floorOf(first);
  const moving = floorOf(second);
  if (!still.some((one) => moving.some((other) => convexMeet(one, other)))) return [];
  return [first, second]
    .flatMap(({ profile: { forward, right } }) => [forward, right])
    .flatMap(({ x, y }) => [point(x, y), point(-x, -y)])
    .map((toward) => ({ toward, by: reach(still, toward).to - reach(moving, toward).from }))
    .toSorted((a, b) => a.by - b.by);
};

export const floorOf = ({ sections, profile }: UnitPlan): readonly (readonly Point[])[] =>
  sections.map((section) => cornersOnFloor(footprint(section), profile));

const reach = (
  outlines: readonly (readonly Point[])[],
  toward: Point,
): { readonly from: number; readonly to: number } => {
  const along = outlines.flat().map(({ x, y }) => x * toward.x + y * toward.y);
  return { from: Math.min(...along), to: Math.max(...along) };
};

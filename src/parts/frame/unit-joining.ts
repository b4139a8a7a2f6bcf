// The last steps of a frame of several units: how each is stood beside those that stand already, and bolted to them where
// their cheeks are side by side. Takes the units' plans and their pairs of cheeks; gives nothing for one unit.

import { contourDistance } from "../../geometry/distance.ts";
import { decimal } from "../../geometry/number.ts";
import { polygon } from "../../geometry/shapes.ts";
import type { AssemblyStep } from "./frame-part.ts";
import type { CheekPair } from "./unit-bolts.ts";
import { floorOf } from "./unit-overlaps.ts";
import type { UnitPlan } from "./unit-plan.ts";

export const joiningSteps = (
  units: readonly UnitPlan[],
  pairs: readonly CheekPair[],
): readonly AssemblyStep[] =>
  units.flatMap((unit, index) => {
    const standing = units.slice(0, index);
    const joined = standing.flatMap((other) => {
      const between = pairs.filter((pair) => isBetween(pair, unit, other));
      return between.length === 0 ? [] : [joinedWords(unit, other, between)];
    });
    const words =
      joined.length > 0 || standing.length === 0 ? joined : [apartWords(unit, standing)];
    return words.map((each) => ({ unit: null, adds: [], enters: null, words: each }));
  });

const isBetween = ({ left, right }: CheekPair, one: UnitPlan, other: UnitPlan): boolean =>
  (left.unit === one && right.unit === other) || (left.unit === other && right.unit === one);

const joinedWords = (unit: UnitPlan, other: UnitPlan, pairs: readonly CheekPair[]): string => {
  const side = pairs[0]!.right.unit === unit ? "right" : "left";
  const count = pairs.reduce((sum, { bolts }) => sum + bolts.length, 0);
  const gap = decimal(pairs[0]!.gap, 1);
  const isTight = gap === decimal(0, 1);
  const stand = `Stand ${unit.name.words} to the ${side} of ${other.name.words}, ${isTight ? "cheek to cheek" : `${gap} mm from it`}`;
  if (count === 0)
    return `${stand}; between their boards there is no room for bolts. ${NO_TIPPING}`;
  const spacers = isTight ? "" : ` and spacers ${gap} mm long`;
  return `${stand}; bolt the two cheeks together with ${COUNTS[count] ?? count} M8${spacers}.`;
};

/** As a builder says them; more are written in figures. */
const COUNTS: Readonly<Record<number, string>> = { 1: "one", 2: "two", 4: "four" };

const NO_TIPPING = "Fix it to the floor or a wall where it could tip.";

const apartWords = (unit: UnitPlan, standing: readonly UnitPlan[]): string => {
  const [nearest] = standing
    .map((other) => ({ other, gap: gapBetween(unit, other) }))
    .toSorted((a, b) => a.gap - b.gap);
  const { other, gap } = nearest!;
  const far = decimal(gap, 1);
  const place = far === decimal(0, 1) ? "where it touches" : `${far} mm from`;
  return `Stand ${unit.name.words} as the plan shows it, ${place} ${other.name.words}; the two are not bolted together. ${NO_TIPPING}`;
};

const gapBetween = (one: UnitPlan, other: UnitPlan): number =>
  Math.min(
    ...floorOf(one).flatMap((a) =>
      floorOf(other).map((b) => contourDistance(polygon(a), polygon(b)).gap),
    ),
  );

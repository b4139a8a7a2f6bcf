// Units that stand side by side, and the bolts through their two cheeks: in the room that lies below the bays of both, clear
// of the boards round it. Takes the units' plans; gives each pair of cheeks, in the order of the units.

import { circle, type Point, point } from "../../geometry/contour.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { Span } from "./board.ts";
import type { FrameHole } from "./frame-part.ts";
import type { FramePlan } from "./frame-plan.ts";
import { BOLT, LONGEST_SPACER } from "./frame-practice.ts";
import { inProfile, isSameWay, outOfProfile } from "./profile.ts";
import type { UnitPlan } from "./unit-plan.ts";

export interface CheekPair {
  /** The unit whose right cheek it is, and its section; and the one to the right of it. */
  readonly left: UnitSection;
  readonly right: UnitSection;
  /** Between their good faces. */
  readonly gap: number;
  /** In the profile of the left one. Empty where there is no room for a bolt. */
  readonly bolts: readonly Point[];
}

export interface UnitSection {
  readonly unit: UnitPlan;
  readonly section: FramePlan;
}

export const cheekPairs = (units: readonly UnitPlan[]): readonly CheekPair[] =>
  units.flatMap((unit) =>
    units
      .filter((other) => other !== unit && isSameWay(unit.profile, other.profile))
      .flatMap((other) =>
        unit.sections.flatMap((section) =>
          other.sections.flatMap(
            (next) => pairOf({ unit, section }, { unit: other, section: next }) ?? [],
          ),
        ),
      ),
  );

const pairOf = (left: UnitSection, right: UnitSection): CheekPair | null => {
  const { thickness, across, ends } = left.section;
  const gap = right.section.across.from - across.to - 2 * thickness;
  const isNear = gap > -samePlace && gap < LONGEST_SPACER + samePlace;
  const shared = common(ends, right.section.ends);
  if (!isNear || shared.to <= shared.from) return null;
  return { left, right, gap: Math.max(0, gap), bolts: boltsIn(left.section, right.section) };
};

/** Two profiles that run the same way have one origin, and so one way of counting. */
const boltsIn = ({ below }: FramePlan, { below: other }: FramePlan): readonly Point[] => {
  const along = places(common(below.along, other.along));
  const up = places(common(below.up, other.up));
  return along.flatMap((x) => up.map((y) => point(x, y)));
};

const common = (one: Span, other: Span): Span => ({
  from: Math.max(one.from, other.from),
  to: Math.min(one.to, other.to),
});

/** Near both ends; one in the middle where two would stand too close; none where the boards leave no room. */
const places = ({ from, to }: Span): readonly number[] => {
  const [low, high] = [from + BOLT.inset, to - BOLT.inset];
  if (high < low) return [];
  return high - low < BOLT.apart ? [(low + high) / 2] : [low, high];
};

/** What is drilled in a cheek, as it lies on its good face. */
export const cheekBolts = (
  pairs: readonly CheekPair[],
  { section, unit }: UnitSection,
  side: "left" | "right",
): readonly FrameHole[] =>
  pairs
    .filter((pair) => (side === "right" ? pair.left : pair.right).section === section)
    .flatMap(({ bolts, left }) =>
      bolts.map((at) =>
        inProfile(unit.profile, outOfProfile(left.unit.profile, at, left.section.across.to)),
      ),
    )
    .map(({ x, y }, index) => ({
      feature: `bolt.${index + 1}`,
      // The left cheek's good face looks to the left: its x runs backward.
      contour: circle(point(side === "right" ? x : -x, y), BOLT.hole / 2),
    }));

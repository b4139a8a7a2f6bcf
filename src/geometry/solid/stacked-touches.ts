// Where the polygons of two layers come upon each other: which are one, which touch, and where their sides are cut so that
// what they share is shared corner to corner. null where sides cross: there the solid kernel is asked.

import { isSameStep, type StackedPolygon, type Step, sideOf } from "./stacked-polygon.ts";

export interface Touches {
  readonly below: readonly TouchedPolygon[];
  readonly above: readonly TouchedPolygon[];
}

export interface TouchedPolygon {
  readonly polygon: StackedPolygon;
  /** Place in the other layer of the same polygon, or -1. */
  readonly same: number;
  /** Touches a polygon of the other layer that is not the same. */
  readonly isTouched: boolean;
  /** For each side its corners, first and last included, in order. */
  readonly sides: readonly (readonly Step[])[];
}

export const touchesBetween = (
  below: readonly StackedPolygon[],
  above: readonly StackedPolygon[],
): Touches | null => {
  const lower = below.map(untouched);
  const upper = above.map(untouched);
  for (const [index, one] of lower.entries())
    for (const [place, other] of upper.entries()) {
      if (areApart(one.polygon, other.polygon)) continue;
      if (one.polygon.name === other.polygon.name) {
        one.same = place;
        other.same = index;
      } else if (!cutEachOther(one, other)) return null;
    }
  return { below: lower.map(finished), above: upper.map(finished) };
};

interface Working {
  readonly polygon: StackedPolygon;
  same: number;
  isTouched: boolean;
  readonly cuts: Map<number, Step[]>;
}

const untouched = (polygon: StackedPolygon): Working => ({
  polygon,
  same: -1,
  isTouched: false,
  cuts: new Map(),
});

const areApart = (a: StackedPolygon, b: StackedPolygon): boolean =>
  a.low.x > b.high.x || b.low.x > a.high.x || a.low.y > b.high.y || b.low.y > a.high.y;

/** false where they cross. */
const cutEachOther = (one: Working, other: Working): boolean => {
  const mine = one.polygon.corners;
  const theirs = other.polygon.corners;
  for (const [side, from] of mine.entries()) {
    const to = mine[(side + 1) % mine.length]!;
    if (isBeside(from, to, other.polygon)) continue;
    for (const [otherSide, otherFrom] of theirs.entries()) {
      const otherTo = theirs[(otherSide + 1) % theirs.length]!;
      const meeting = meetingOf({ from, to }, { from: otherFrom, to: otherTo });
      if (meeting === "apart") continue;
      if (meeting === "cross") return false;
      one.isTouched = true;
      other.isTouched = true;
      cut(
        one.cuts,
        side,
        [otherFrom, otherTo].filter((at) => isWithin(from, to, at)),
      );
      cut(
        other.cuts,
        otherSide,
        [from, to].filter((at) => isWithin(otherFrom, otherTo, at)),
      );
    }
  }
  return true;
};

const isBeside = (from: Step, to: Step, { low, high }: StackedPolygon): boolean =>
  Math.max(from.x, to.x) < low.x ||
  Math.min(from.x, to.x) > high.x ||
  Math.max(from.y, to.y) < low.y ||
  Math.min(from.y, to.y) > high.y;

interface Side {
  readonly from: Step;
  readonly to: Step;
}

const meetingOf = (a: Side, b: Side): "apart" | "touch" | "cross" => {
  if (
    Math.max(a.from.x, a.to.x) < Math.min(b.from.x, b.to.x) ||
    Math.max(b.from.x, b.to.x) < Math.min(a.from.x, a.to.x) ||
    Math.max(a.from.y, a.to.y) < Math.min(b.from.y, b.to.y) ||
    Math.max(b.from.y, b.to.y) < Math.min(a.from.y, a.to.y)
  )
    return "apart";
  const starts = Math.sign(sideOf(a.from, a.to, b.from)) * Math.sign(sideOf(a.from, a.to, b.to));
  const ends = Math.sign(sideOf(b.from, b.to, a.from)) * Math.sign(sideOf(b.from, b.to, a.to));
  if (starts > 0 || ends > 0) return "apart";
  return starts < 0 && ends < 0 ? "cross" : "touch";
};

/** On the side, between its ends. */
const isWithin = (from: Step, to: Step, at: Step): boolean =>
  sideOf(from, to, at) === 0 &&
  !isSameStep(from, at) &&
  !isSameStep(to, at) &&
  (at.x - from.x) * (at.x - to.x) <= 0 &&
  (at.y - from.y) * (at.y - to.y) <= 0;

const cut = (cuts: Map<number, Step[]>, side: number, at: readonly Step[]): void => {
  if (at.length === 0) return;
  const known = cuts.get(side) ?? [];
  const fresh = at.filter((one) => !known.some((other) => isSameStep(one, other)));
  cuts.set(side, [...known, ...fresh]);
};

const finished = ({ polygon, same, isTouched, cuts }: Working): TouchedPolygon => ({
  polygon,
  same,
  isTouched,
  sides: polygon.corners.map((from, side) => {
    const to = polygon.corners[(side + 1) % polygon.corners.length]!;
    const along = ({ x, y }: Step): number =>
      (x - from.x) * (to.x - from.x) + (y - from.y) * (to.y - from.y);
    const between = [...(cuts.get(side) ?? [])].sort((a, b) => along(a) - along(b));
    return [from, ...between, to];
  }),
});

// Where the polygons of two layers come upon each other: which are one, which touch or cross, and where their sides are
// cut so that what they share is shared corner to corner. null where cutting comes to no end: there the kernel is asked.

import {
  isSameStep,
  type StackedPolygon,
  type Step,
  sideBoxes,
  sideOf,
} from "./stacked-polygon.ts";

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
  let pairs = meetingPairs(lower, upper);
  for (let pass = 0; pass < mostPasses; pass += 1) {
    let hasCrossed = false;
    for (const [one, other] of pairs) hasCrossed = cutEachOther(one, other) || hasCrossed;
    if (!hasCrossed) return { below: lower, above: upper };
    pairs = pairs.filter(([one, other]) => one.isTouched && other.isTouched);
  }
  return null;
};

/** A crossing is put on the grid, which bends both sides by up to 0.7 µm; what they then come upon, the next pass cuts. */
const mostPasses = 8;

interface Working {
  readonly polygon: StackedPolygon;
  readonly boxes: Float64Array;
  same: number;
  isTouched: boolean;
  readonly sides: Step[][];
}

const untouched = (polygon: StackedPolygon): Working => {
  const { corners } = polygon;
  return {
    polygon,
    boxes: sideBoxes(polygon),
    same: -1,
    isTouched: false,
    sides: corners.map((from, side) => [from, corners[(side + 1) % corners.length]!]),
  };
};

type Pair = readonly [Working, Working];

/** Marks those that are one; gives the others that may come upon each other. */
const meetingPairs = (lower: readonly Working[], upper: readonly Working[]): readonly Pair[] => {
  const pairs: Pair[] = [];
  for (const [index, one] of lower.entries())
    for (const [place, other] of upper.entries()) {
      if (areApart(one.polygon, other.polygon)) continue;
      if (one.polygon.name === other.polygon.name) {
        one.same = place;
        other.same = index;
      } else pairs.push([one, other]);
    }
  return pairs;
};

const areApart = (a: StackedPolygon, b: StackedPolygon): boolean =>
  a.low.x > b.high.x || b.low.x > a.high.x || a.low.y > b.high.y || b.low.y > a.high.y;

/** true where sides crossed. */
const cutEachOther = (one: Working, other: Working): boolean => {
  let hasCrossed = false;
  for (const [side, mine] of one.sides.entries())
    for (const place of nearSides(one.boxes, side, other)) {
      const meeting = cutSides(mine, other.sides[place]!);
      if (meeting === "apart") continue;
      one.isTouched = true;
      other.isTouched = true;
      hasCrossed = hasCrossed || meeting === "cross";
    }
  return hasCrossed;
};

/** Sides of the other polygon whose boxes come as near as a bend reaches. */
const nearSides = (
  boxes: Float64Array,
  side: number,
  { boxes: others, polygon: { low, high } }: Working,
): readonly number[] => {
  const minX = boxes[4 * side]! - bend;
  const minY = boxes[4 * side + 1]! - bend;
  const maxX = boxes[4 * side + 2]! + bend;
  const maxY = boxes[4 * side + 3]! + bend;
  const near: number[] = [];
  if (maxX < low.x || minX > high.x || maxY < low.y || minY > high.y) return near;
  for (let at = 0; at < others.length; at += 4)
    if (
      others[at]! <= maxX &&
      others[at + 2]! >= minX &&
      others[at + 1]! <= maxY &&
      others[at + 3]! >= minY
    )
      near.push(at / 4);
  return near;
};

/** Steps that a side may be bent by, both together, in all passes. */
const bend = 2;

type Meeting = "apart" | "touch" | "cross";

/** Cuts both where their pieces meet. */
const cutSides = (mine: Step[], theirs: Step[]): Meeting => {
  let found: Meeting = "apart";
  for (let at = 0; at + 1 < mine.length; at += 1)
    for (let place = 0; place + 1 < theirs.length; place += 1) {
      const own = { from: mine[at]!, to: mine[at + 1]! };
      const other = { from: theirs[place]!, to: theirs[place + 1]! };
      const meeting = meetingOf(own, other);
      if (meeting === "apart") continue;
      if (found !== "cross") found = meeting;
      const places = meeting === "cross" ? [crossingOf(own, other)] : null;
      mine.splice(at + 1, 0, ...cutsIn(own, places ?? [other.from, other.to], places !== null));
      theirs.splice(place + 1, 0, ...cutsIn(other, places ?? [own.from, own.to], places !== null));
    }
  return found;
};

interface Side {
  readonly from: Step;
  readonly to: Step;
}

const meetingOf = (a: Side, b: Side): Meeting => {
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

/** On the grid. */
const crossingOf = (a: Side, b: Side): Step => {
  const before = sideOf(b.from, b.to, a.from);
  const share = before / (before - sideOf(b.from, b.to, a.to));
  return {
    x: Math.round(a.from.x + share * (a.to.x - a.from.x)),
    y: Math.round(a.from.y + share * (a.to.y - a.from.y)),
  };
};

/** Those of the places that are no ends of the side, in order along it; a crossing need not lie on it exactly. */
const cutsIn = (
  { from, to }: Side,
  places: readonly Step[],
  isCrossing: boolean,
): readonly Step[] => {
  const along = ({ x, y }: Step): number =>
    (x - from.x) * (to.x - from.x) + (y - from.y) * (to.y - from.y);
  return places
    .filter((at) => !isSameStep(from, at) && !isSameStep(to, at))
    .filter((at) => isCrossing || isBetween(from, to, at))
    .sort((a, b) => along(a) - along(b));
};

const isBetween = (from: Step, to: Step, at: Step): boolean =>
  sideOf(from, to, at) === 0 &&
  (at.x - from.x) * (at.x - to.x) <= 0 &&
  (at.y - from.y) * (at.y - to.y) <= 0;

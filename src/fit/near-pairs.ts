// Pairs of bodies whose boxes come near one another, of different panels or of a panel and the console. Groups first, then
// bodies within reach of the other group; each by a sweep along the axis on which they spread most, so that the work grows
// with the number of pairs and not with its square.

import { boxGap, joinedBox, type SpaceBox } from "../geometry/space/space-box.ts";
import type { BodyGroup } from "./body-groups.ts";
import type { ConsoleBody } from "./console-body.ts";

export type BodyPair = readonly [ConsoleBody, ConsoleBody];

export const nearPairs = (groups: readonly BodyGroup[], within: number): readonly BodyPair[] => {
  const pairs: BodyPair[] = [];
  if (groups.length === 0) return pairs;
  const axis = longestAxis(groups.map(({ box }) => box).reduce(joinedBox));
  eachNear(groups, { within, axis }, (first, second) => {
    if (first.panel !== null || second.panel !== null)
      pairs.push(...pairsBetween(first, second, within));
  });
  return pairs;
};

/** Pairs of one group's bodies with another's. */
export const pairsBetween = (
  first: BodyGroup,
  second: BodyGroup,
  within: number,
): readonly BodyPair[] => {
  if (boxGap(first.box, second.box) > within) return [];
  const ofFirst = first.bodies.filter(({ box }) => boxGap(box, second.box) <= within);
  const ofSecond = second.bodies.filter(({ box }) => boxGap(box, first.box) <= within);
  const axis = longestAxis(joinedBox(first.box, second.box));
  const pairs: BodyPair[] = [];
  const isFirst = new Set(ofFirst);
  eachNear([...ofFirst, ...ofSecond], { within, axis }, (a, b) => {
    if (isFirst.has(a) === isFirst.has(b)) return;
    pairs.push(a.id < b.id ? [a, b] : [b, a]);
  });
  return pairs;
};

type Axis = "x" | "y" | "z";

interface Boxed {
  readonly box: SpaceBox;
}

/** Calls for each two things whose boxes lie no farther apart than `within`. */
const eachNear = <Thing extends Boxed>(
  things: readonly Thing[],
  { within, axis }: { readonly within: number; readonly axis: Axis },
  met: (first: Thing, second: Thing) => void,
): void => {
  const sorted = things.toSorted((a, b) => lowOf(a.box, axis) - lowOf(b.box, axis));
  let open: Thing[] = [];
  for (const thing of sorted) {
    const low = lowOf(thing.box, axis) - within;
    open = open.filter(({ box }) => highOf(box, axis) >= low);
    for (const other of open) if (boxGap(other.box, thing.box) <= within) met(other, thing);
    open.push(thing);
  }
};

const longestAxis = (box: SpaceBox): Axis => {
  const [x, y, z] = [box.maxX - box.minX, box.maxY - box.minY, box.maxZ - box.minZ];
  if (x >= y && x >= z) return "x";
  return y >= z ? "y" : "z";
};

const lowOf = (box: SpaceBox, axis: Axis): number =>
  axis === "x" ? box.minX : axis === "y" ? box.minY : box.minZ;

const highOf = (box: SpaceBox, axis: Axis): number =>
  axis === "x" ? box.maxX : axis === "y" ? box.maxY : box.maxZ;

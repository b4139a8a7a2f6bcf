// Things sorted into clusters whose bounding boxes hang together, found by sweeping along x.

import { type Extent, extentGap } from "./extent.ts";
import { joinGroups, leaderOf, ownLeaders } from "./leaders.ts";
import { samePlace } from "./tolerance.ts";

/** Each cluster, and the clusters, in the order of the things given. */
export const clustered = <Thing>(
  things: readonly Thing[],
  boxOf: (thing: Thing) => Extent,
): readonly (readonly Thing[])[] => {
  const boxes = things.map(boxOf);
  const order = boxes.map((_, index) => index);
  order.sort((a, b) => boxes[a]!.minX - boxes[b]!.minX || a - b);
  const leaders = ownLeaders(boxes.length);
  for (const [position, one] of order.entries()) {
    const reach = boxes[one]!.maxX + samePlace;
    for (const other of order.slice(position + 1)) {
      if (boxes[other]!.minX > reach) break;
      if (extentGap(boxes[one]!, boxes[other]!) <= samePlace) joinGroups(leaders, one, other);
    }
  }
  const clusters = new Map<number, Thing[]>();
  for (const [index, thing] of things.entries()) {
    const leader = leaderOf(leaders, index);
    const cluster = clusters.get(leader);
    if (cluster === undefined) clusters.set(leader, [thing]);
    else cluster.push(thing);
  }
  return [...clusters.values()];
};

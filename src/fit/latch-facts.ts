// Latches of plugs whose thumb has no room: what stands there, and how far out from the plug the room is free. What gives way
// or is room itself (a cable's bend, another latch) bars none.

import { extent } from "../geometry/extent.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { rectangle } from "../geometry/shapes.ts";
import { prism, solidRegion } from "../geometry/solid/solid.ts";
import { pointOut } from "../geometry/space/frame.ts";
import { boxInFrame } from "../geometry/space/space-box.ts";
import { vector } from "../geometry/space/vector.ts";
import { shapeExtent } from "./body-groups.ts";
import type { ConsoleBody } from "./console-body.ts";
import type { LatchFact, PairFact } from "./fit-facts.ts";
import { hullRelation } from "./hull-relation.ts";

export const isLatch = ({ role }: ConsoleBody): boolean => role === "latch";

export const hasLatch = ({ a, b }: Pick<PairFact, "a" | "b">): boolean => isLatch(a) || isLatch(b);

/** A thumb pushes a cable aside, and comes to one latch after the other. */
export const barsThumb = ({ role }: ConsoleBody): boolean => role !== "cable" && role !== "latch";

/** `pairs`: of a latch and anything. `outside`: latches that stand out of the console's inside, asked again for a shorter room. */
export const latchFacts = (
  pairs: readonly PairFact[],
  bodies: readonly ConsoleBody[],
  isOutside: (latch: ConsoleBody) => boolean,
): readonly LatchFact[] => [
  ...pairs.flatMap(({ a, b, relation }): readonly LatchFact[] => {
    const [latch, other] = isLatch(a) ? [a, b] : [b, a];
    if (relation.kind !== "clash" || !barsThumb(other)) return [];
    return [latchFact(latch, other, freeBefore(latch, other))];
  }),
  ...bodies.flatMap((body): readonly LatchFact[] =>
    isLatch(body) && isOutside(body) ? [latchFact(body, null, freeWithin(body, isOutside))] : [],
  ),
];

const latchFact = (latch: ConsoleBody, other: ConsoleBody | null, has: Mm): LatchFact => {
  const { maxY, minZ, maxZ } = shapeExtent(latch.shape);
  return {
    latch,
    other,
    needs: mm(maxY),
    has,
    at: pointOut(latch.frame, vector(0, has, (minZ + maxZ) / 2)),
  };
};

/** Gaps count from here: a slab as thin as this on the plug's side. */
const THIN = 0.01;

const freeBefore = (latch: ConsoleBody, other: ConsoleBody): Mm => {
  const { maxY } = shapeExtent(latch.shape);
  const found = hullRelation(roomOf(latch, { from: -THIN, to: 0 }), other, maxY);
  if (found === null) return maxY;
  return found.kind === "apart" ? found.gap : mm(0);
};

/** Halved so often that a thumb's room of 25 mm comes out to a hundredth. */
const HALVINGS = 12;

const freeWithin = (latch: ConsoleBody, isOutside: (latch: ConsoleBody) => boolean): Mm => {
  let [free, barred]: [number, number] = [0, shapeExtent(latch.shape).maxY];
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (free + barred) / 2;
    if (isOutside(roomOf(latch, { from: 0, to: middle }))) barred = middle;
    else free = middle;
  }
  return mm(free);
};

/** As wide and as long as the room of a latch, over a stretch outward. */
const roomOf = (
  latch: ConsoleBody,
  stretch: { readonly from: number; readonly to: number },
): ConsoleBody => {
  const { minX, maxX, minZ, maxZ } = shapeExtent(latch.shape);
  const outline = rectangle(extent(minX, stretch.from, maxX, stretch.to));
  const solid = prism(minZ, maxZ, solidRegion({ outline, holes: [] }));
  return { ...latch, shape: { kind: "recipe", solid }, box: boxInFrame(solid, latch.frame) };
};

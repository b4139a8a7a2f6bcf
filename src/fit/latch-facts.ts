// Latches of plugs whose thumb has no room: what stands there, of its own panel too, and how far out from the plug the room is
// free. What gives way or is room itself (a cable's bend, another latch) bars none.

import { extent } from "../geometry/extent.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { rectangle } from "../geometry/shapes.ts";
import { prism, solidRegion } from "../geometry/solid/solid.ts";
import { pointOut } from "../geometry/space/frame.ts";
import { boxGap, boxInFrame } from "../geometry/space/space-box.ts";
import { vector } from "../geometry/space/vector.ts";
import { shapeExtent } from "./body-groups.ts";
import type { ConsoleBody } from "./console-body.ts";
import type { LatchFact, PairFact } from "./fit-facts.ts";

export const isLatch = ({ role }: ConsoleBody): boolean => role === "latch";

export const hasLatch = ({ a, b }: Pick<PairFact, "a" | "b">): boolean => isLatch(a) || isLatch(b);

/** A thumb pushes a cable aside, and comes to one latch after the other. */
export const barsThumb = ({ role }: ConsoleBody): boolean => role !== "cable" && role !== "latch";

export interface LatchScene {
  /** Of a latch and what is not of its own panel. */
  readonly pairs: readonly PairFact[];
  readonly bodies: readonly ConsoleBody[];
  readonly clashes: (latch: ConsoleBody, other: ConsoleBody) => boolean;
  /** Whether a latch stands out of the console's inside. */
  readonly isOutside: (latch: ConsoleBody) => boolean;
}

export const latchFacts = (scene: LatchScene): readonly LatchFact[] => {
  const { pairs, bodies, clashes, isOutside } = scene;
  const beside = (latch: ConsoleBody, other: ConsoleBody): LatchFact =>
    latchFact(
      latch,
      other,
      freeUntil(latch, (room) => clashes(room, other)),
    );
  return [
    ...pairs.flatMap(({ a, b, relation }): readonly LatchFact[] => {
      const [latch, other] = isLatch(a) ? [a, b] : [b, a];
      return relation.kind === "clash" && barsThumb(other) ? [beside(latch, other)] : [];
    }),
    ...bodies
      .filter(isLatch)
      .flatMap((latch): readonly LatchFact[] => [
        ...bodies
          .filter((other) => isOwnNeighbour(latch, other) && clashes(latch, other))
          .map((other) => beside(latch, other)),
        ...(isOutside(latch) ? [latchFact(latch, null, freeUntil(latch, isOutside))] : []),
      ]),
  ];
};

/** What else the panel carries: pairs are asked between panels alone. */
const isOwnNeighbour = (latch: ConsoleBody, other: ConsoleBody): boolean =>
  other.panel !== null &&
  other.panel === latch.panel &&
  other.thing !== latch.thing &&
  barsThumb(other) &&
  boxGap(latch.box, other.box) <= 0;

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

/** Halved so often that a thumb's room of 25 mm comes out to a hundredth. */
const HALVINGS = 12;

/** How far out the room is free, to the last half that is. */
const freeUntil = (latch: ConsoleBody, isBarred: (room: ConsoleBody) => boolean): Mm => {
  let [free, barred]: [number, number] = [0, shapeExtent(latch.shape).maxY];
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (free + barred) / 2;
    if (isBarred(roomOf(latch, middle))) barred = middle;
    else free = middle;
  }
  return mm(free);
};

/** As wide and as long as the room of a latch, and so far outward. */
const roomOf = (latch: ConsoleBody, out: number): ConsoleBody => {
  const { minX, maxX, minZ, maxZ } = shapeExtent(latch.shape);
  const outline = rectangle(extent(minX, 0, maxX, out));
  const solid = prism(minZ, maxZ, solidRegion({ outline, holes: [] }));
  return { ...latch, shape: { kind: "recipe", solid }, box: boxInFrame(solid, latch.frame) };
};

// One step of a drag: a panel at a new place, held against what is near it by convex pieces alone. Kernel-free, and coarse
// on one side only: what it calls free is free, what it says meets may only be hollow there.

import { type Frame, frameWithin } from "../geometry/space/frame.ts";
import { boxOut } from "../geometry/space/space-box.ts";
import { type BodyGroup, bodyGroup, shapeExtent } from "./body-groups.ts";
import { isLyingOn } from "./by-design.ts";
import type { ConsoleBody } from "./console-body.ts";
import { searchLength } from "./fit-tolerance.ts";
import { frameSeenFrom, type HullRelation, hullRelation } from "./hull-relation.ts";
import { barsThumb, hasLatch } from "./latch-facts.ts";
import { pairsBetween } from "./near-pairs.ts";
import { byIds } from "./pair-order.ts";

export interface DragMove {
  readonly panel: string;
  /** The panel's frame as its bodies stand, and where it goes. */
  readonly from: Frame;
  readonly to: Frame;
}

export interface DragFact {
  readonly a: ConsoleBody;
  readonly b: ConsoleBody;
  readonly relation: HullRelation;
}

/** Clashes, touches and gaps of the panel's bodies at the new place with bodies near it, by id. `groups`: of the console as it stands. */
export const dragStep = (
  groups: readonly BodyGroup[],
  move: DragMove,
  within: number = searchLength,
): readonly DragFact[] => {
  const own = groups.find(({ panel }) => panel === move.panel);
  if (own === undefined) return [];
  const moved = bodyGroup(
    move.panel,
    own.bodies.map((body) => movedBody(body, move)),
  );
  return groups
    .filter((group) => group !== own)
    .flatMap((group) => pairsBetween(moved, group, within))
    .flatMap(([a, b]): readonly DragFact[] => {
      const relation = hullRelation(a, b, within);
      if (relation === null || (relation.kind !== "meet" && isLyingOn(a, b))) return [];
      if (hasLatch({ a, b }) && !isBarred(a, b, relation)) return [];
      return [{ a, b, relation }];
    })
    .sort(byIds);
};

/** Room for a thumb: what is only near it is nothing. */
const isBarred = (a: ConsoleBody, b: ConsoleBody, { kind }: HullRelation): boolean =>
  kind === "meet" && (barsThumb(a) || barsThumb(b));

const movedBody = (body: ConsoleBody, { from, to }: DragMove): ConsoleBody => {
  const frame = frameWithin(to, frameSeenFrom(from, body.frame));
  return { ...body, frame, box: boxOut(frame, shapeExtent(body.shape)) };
};

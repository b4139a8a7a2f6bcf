// One step of a drag: a panel moved along its bay, held against what is near it there by convex pieces alone. Kernel-free, and
// coarse on one side only: what it calls free is free, what it says meets may lie in a bow that a hull bridges, or in the hollow of
// a shape that is turned or cut. Nothing of the panel is moved but what comes near something.

import { movedFrame } from "../geometry/space/frame.ts";
import { boxGap, boxRound, type SpaceBox } from "../geometry/space/space-box.ts";
import { plus, scaled, type Vector, vector } from "../geometry/space/vector.ts";
import { isBorne, isLyingOn } from "./by-design.ts";
import type { ConsoleBody } from "./console-body.ts";
import { beyondNoise, searchLength } from "./fit-tolerance.ts";
import { type PieceRelation, pieceRelation } from "./hull-relation.ts";
import { barsThumb, hasLatch } from "./latch-facts.ts";
import { byIds } from "./pair-order.ts";
import { boxAlong, type RailBody, type RailGroup, type RailScene } from "./rail-scene.ts";

export interface DragMove {
  readonly panel: string;
  /** How far along the bay, from where it stands. */
  readonly by: number;
}

export interface DragFact {
  readonly a: ConsoleBody;
  readonly b: ConsoleBody;
  readonly relation: PieceRelation;
  /** What each takes of the bay, the panel at its new place. */
  readonly boxes: { readonly a: SpaceBox; readonly b: SpaceBox };
}

/** How far apart things of this panel, or of the console itself, are still told of; null: they are not asked at all. */
export type Searched = (panel: string | null) => number | null;

/** Clashes, touches and gaps of the panel's bodies at the new place with bodies near it, by id. */
export const dragStep = (
  { rail, groups }: RailScene,
  move: DragMove,
  searched: Searched = () => searchLength,
): readonly DragFact[] => {
  const own = groups.find(({ panel }) => panel === move.panel);
  if (own === undefined) return [];
  const along = scaled(rail.y, move.by);
  const known = new Map<RailBody, RailBody>();
  const moved = (standing: RailBody): RailBody => {
    const made = known.get(standing) ?? movedAlong(standing, { by: move.by, along });
    known.set(standing, made);
    return made;
  };
  const facts: DragFact[] = [];
  for (const group of groups) {
    const within = group === own ? null : searched(group.panel);
    if (within === null) continue;
    const met = (body: RailBody, other: RailBody): void => {
      const fact = factOf(body, other, within);
      if (fact !== null) facts.push(fact);
    };
    eachNear({ own, by: move.by, moved }, group, { within, met });
  }
  return facts.sort(byIds);
};

interface Moving {
  readonly own: RailGroup;
  readonly by: number;
  /** A body of its own at the new place. */
  readonly moved: (standing: RailBody) => RailBody;
}

/**
 * Calls for each body of the panel at its new place, and each of the group's, whose boxes lie no farther apart than `within`:
 * along the bay, where what stands in it is square, and in the console, where its frame is.
 */
const eachNear = (
  { own, by, moved }: Moving,
  group: RailGroup,
  of: { readonly within: number; readonly met: (moved: RailBody, other: RailBody) => void },
): void => {
  const within = of.within + beyondNoise;
  if (boxGap(boxAlong(own.box, by), group.box) > within) return;
  const others = group.bodies();
  for (const standing of own.bodies()) {
    const box = boxAlong(standing.box, by);
    if (boxGap(box, group.box) > within) continue;
    for (const other of others) {
      // They come in the order in which they begin: no later one is nearer.
      if (other.box.minY - box.maxY > within) break;
      if (boxGap(box, other.box) > within) continue;
      const body = moved(standing);
      if (boxGap(body.body.box, other.body.box) <= within) of.met(body, other);
    }
  }
};

const factOf = (moved: RailBody, other: RailBody, within: number): DragFact | null => {
  const [{ body: a, box: boxA }, { body: b, box: boxB }] =
    moved.body.id < other.body.id ? [moved, other] : [other, moved];
  const relation = pieceRelation(a, b, within);
  if (relation === null || (relation.kind !== "meet" && isLyingOn(a, b))) return null;
  if (relation.kind === "touching" && isBorne(a, b)) return null;
  if (hasLatch({ a, b }) && !isBarred(a, b, relation)) return null;
  return { a, b, relation, boxes: { a: boxA, b: boxB } };
};

/** Room for a thumb: what is only near it is nothing. */
const isBarred = (a: ConsoleBody, b: ConsoleBody, { kind }: PieceRelation): boolean =>
  kind === "meet" && (barsThumb(a) || barsThumb(b));

const movedAlong = (
  { body, box }: RailBody,
  { by, along }: { readonly by: number; readonly along: Vector },
): RailBody => {
  const { minX, minY, minZ, maxX, maxY, maxZ } = body.box;
  const low = plus(vector(minX, minY, minZ), along);
  const high = plus(vector(maxX, maxY, maxZ), along);
  const moved = { ...body, frame: movedFrame(body.frame, along), box: boxRound([low, high]) };
  return { body: moved, box: boxAlong(box, by) };
};

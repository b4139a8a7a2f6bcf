// Several things that are each to go another way, as one change of the text: lined up, spaced, set in a row. What leans on one
// that has moved already needs only the rest of its way.

import type { Source } from "../design/source.ts";
import { inWords } from "../diagnostics/nearest.ts";
import { samePlace } from "../geometry/tolerance.ts";
import { type MovableThing, movableThings } from "./movable-things.ts";
import { groupsAmong, withRuled } from "./move-edits.ts";
import { type MoveAxis, neighbourOn } from "./moved-with.ts";
import type { PanelLayout } from "./panel-layout.ts";
import {
  leadsOf,
  type Move,
  type MoveOutcome,
  type StatedShift,
  statedMoves,
} from "./place-moves.ts";

/** Right and up, mm. */
export type Shift = Pick<Move, "x" | "y">;

/** `shifts` by entry of the design: components, markings, windows, screws and dowels. */
export const separateMoves = (
  shifts: ReadonlyMap<string, Shift>,
  layout: PanelLayout,
  from: Source,
): MoveOutcome => {
  const [group] = groupsAmong([...shifts.keys()], layout);
  if (group !== undefined) {
    const { marking, why, members } = group;
    return {
      kind: "refused",
      why: `${marking.id} ${why}; take ${inWords(members, "and")} instead`,
    };
  }
  const shiftOf = (entry: string): Shift => shifts.get(entry) ?? STILL;
  const scene = { layout, from, shiftOf };
  return withRuled([...shifts.keys()], scene, (entries) => {
    const things = movableThings(layout);
    const stated = (["across", "along"] as const).flatMap((axis) => {
      const wanted = new Map(entries.map((entry) => [entry, shiftOf(entry)[WAYS[axis]]]));
      return statedShifts(wanted, axis, things);
    });
    return statedMoves(stated, scene);
  });
};

const STILL: Shift = { x: 0, y: 0 };
const WAYS = { across: "x", along: "y" } as const;

const statedShifts = (
  wanted: ReadonlyMap<string, number>,
  axis: MoveAxis,
  things: readonly MovableThing[],
): readonly StatedShift[] => {
  const following = new Map(
    [...wanted.keys()].map((entry) => [entry, followersOf(entry, axis, things)]),
  );
  const count = (entry: string): number => following.get(entry)?.size ?? 0;
  // Whoever leads another leads all that follows that one too.
  const leadersFirst = [...wanted.keys()].toSorted((a, b) => count(b) - count(a));
  const gone = new Map<MovableThing, number>();
  const stated: StatedShift[] = [];
  for (const entry of leadersFirst) {
    const whole = wanted.get(entry) ?? 0;
    for (const thing of leadsOf(entry, things)) {
      const shift = whole - (gone.get(thing) ?? 0);
      if (Math.abs(shift) < samePlace) continue;
      stated.push({ thing, axis, shift });
      // The end of a line leads nothing, and its other end has a place of its own.
      for (const other of following.get(entry) ?? [])
        gone.set(other, (gone.get(other) ?? 0) + shift);
    }
  }
  return stated;
};

/** What takes its place on an axis from an entry, over however many neighbours; not the entry itself. */
const followersOf = (
  entry: string,
  axis: MoveAxis,
  things: readonly MovableThing[],
): ReadonlySet<MovableThing> => {
  const names = new Set([
    entry,
    ...things.filter((one) => one.entry === entry).map(({ id }) => id),
  ]);
  const found = new Set<MovableThing>();
  for (let isSettled = false; !isSettled; ) {
    isSettled = true;
    for (const thing of things) {
      const neighbour = neighbourOn(thing.place[axis]);
      if (found.has(thing) || neighbour === null || !names.has(neighbour)) continue;
      found.add(thing);
      names.add(thing.entry).add(thing.id);
      isSettled = false;
    }
  }
  return found;
};

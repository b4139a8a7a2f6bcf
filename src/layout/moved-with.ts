// What goes along where an entry of the design is moved on one axis: its own members, and whatever takes its place on
// that axis from one that moves. Takes whatever stands by a place (components, markings), gives instance ids.

import type { AxisPlace } from "../design/panel-design.ts";
import type { MovableThing } from "./movable-things.ts";

export type MoveAxis = "across" | "along";

export const movedWith = (
  started: readonly string[],
  axis: MoveAxis,
  things: readonly Pick<MovableThing, "id" | "entry" | "place">[],
): ReadonlySet<string> => {
  const entries = new Set(started);
  const ids = new Set<string>();
  for (let settled = false; !settled; ) {
    settled = true;
    for (const thing of things) {
      if (ids.has(thing.id)) continue;
      const neighbour = neighbourOn(thing.place[axis]);
      const leans = neighbour !== null && (entries.has(neighbour) || ids.has(neighbour));
      if (!leans && !entries.has(thing.entry)) continue;
      entries.add(thing.entry);
      ids.add(thing.id);
      settled = false;
    }
  }
  return ids;
};

/** The entry or member that a statement leans on. */
export const neighbourOn = (place: AxisPlace): string | null =>
  place.kind === "beside" || place.kind === "in-line" ? place.neighbour : null;

// What goes along where an entry of the design is moved on one axis: its own members, and whatever takes its place on
// that axis from one that moves. Takes the placed components, gives instance ids.

import type { AxisPlace } from "../design/panel-design.ts";
import type { PlacedComponent } from "./panel-layout.ts";

export type MoveAxis = "across" | "along";

export const movedWith = (
  started: readonly string[],
  axis: MoveAxis,
  components: readonly PlacedComponent[],
): ReadonlySet<string> => {
  const entries = new Set(started);
  const ids = new Set<string>();
  for (let settled = false; !settled; ) {
    settled = true;
    for (const component of components) {
      if (ids.has(component.id)) continue;
      const neighbour = neighbourOn(component.place[axis]);
      const leans = neighbour !== null && (entries.has(neighbour) || ids.has(neighbour));
      if (!leans && !entries.has(component.entry)) continue;
      entries.add(component.entry);
      ids.add(component.id);
      settled = false;
    }
  }
  return ids;
};

/** The entry or member that a statement leans on. */
export const neighbourOn = (place: AxisPlace): string | null =>
  place.kind === "beside" || place.kind === "in-line" ? place.neighbour : null;

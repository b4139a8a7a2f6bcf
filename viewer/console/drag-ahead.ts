// Makes ready what the first step of a drag would else wait for: the convex pieces of every body, what a panel's bodies take
// of its bay, then one step of each panel where it stands, a few milliseconds at a time. Between two of them the worker hears
// whatever it is asked.

import { shapePieces } from "../../src/fit/convex/recipe-pieces.ts";
import { dragReading, railOf, type StandingConsole } from "./drag-reading.ts";

/** Until `isWanted` says no: the design has been opened anew. */
export const readyDrags = (standing: StandingConsole, isWanted: () => boolean): void => {
  const steps = stepsOf(standing);
  const go = (): void => {
    if (!isWanted()) return;
    const until = performance.now() + SLICE;
    while (performance.now() < until) if (steps.next().done === true) return;
    setTimeout(go);
  };
  setTimeout(go);
};

/** Milliseconds: half of a step's 8, so that a hand that takes hold meanwhile feels none of it. */
const SLICE = 4;

function* stepsOf(standing: StandingConsole): Generator<void> {
  for (const { bodies } of standing.groups)
    for (const { shape } of bodies) {
      shapePieces(shape);
      yield;
    }
  const { panels, bays } = standing.layout;
  for (const { name, place } of panels) {
    if (place.kind !== "bay") continue;
    const bay = bays.find(({ id }) => id === place.bay);
    if (bay === undefined) continue;
    const own = railOf(standing, bay).groups.find(({ panel }) => panel === name);
    own?.bodies();
    yield;
    dragReading(standing, { panel: name, module: place.module });
    yield;
  }
}

// Names on their way to where they belong: each draws nearer by a share of what is left, so that the eye can follow it. What is
// on its way may lie over others for that moment. Pure: where names are shown and where they are to go in, shown out.

import type { Point } from "./spot-lines.ts";

/** From what each names to where it is shown, in pixels, by its key. */
export type Shown = ReadonlyMap<string, Point>;

export const NONE_SHOWN: Shown = new Map();

export interface Glided {
  readonly shown: Shown;
  /** Whether one is still on its way. */
  readonly isGliding: boolean;
}

/** In which two thirds of a way are gone, ms: one of 100 pixels is over in a third of a second, as a motion of the camera is. */
const PACE = 60;
/** What is left of a way that nobody sees any more, in pixels. */
const THERE = 0.5;
/** After a rest the clock has run on, and the first step is that of one frame of a slow screen, ms. */
const LONGEST_STEP = 50;

/** `elapsed`: ms since they were last drawn; null: they go at once. */
export const glided = (before: Shown, goal: Shown, elapsed: number | null): Glided => {
  const share = elapsed === null ? 0 : Math.exp(-Math.min(elapsed, LONGEST_STEP) / PACE);
  let isGliding = false;
  const shown = new Map<string, Point>();
  for (const [key, to] of goal) {
    const from = before.get(key) ?? to;
    const left = { x: (from.x - to.x) * share, y: (from.y - to.y) * share };
    const isThere = Math.hypot(left.x, left.y) < THERE;
    isGliding ||= !isThere;
    shown.set(key, isThere ? to : { x: to.x + left.x, y: to.y + left.y });
  }
  return { shown, isGliding };
};

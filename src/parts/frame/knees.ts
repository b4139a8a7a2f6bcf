// The knee space before a front desk: where its boards stand, and how high the bays above let it be.

import { GAP, SHORTEST_STRIP } from "./frame-practice.ts";
import type { PlanScene } from "./plan-options.ts";

export interface Knees {
  /** Face of the board before the knees, and underside of the one above them. */
  readonly back: number;
  readonly over: number;
  /** The cheeks' edges before the knees and above them. */
  readonly depth: number;
  readonly height: number;
  /** The most that the bays leave it: its height, and its depth before the boards behind it. */
  readonly room: number;
  readonly deepest: number;
}

export const kneesOf = ({ design, thickness, inner, hulls }: PlanScene): Knees => {
  const { beyond } = design;
  const [deep, height] = design.knees;
  const depth = inner.from - thickness - beyond + deep;
  const back = depth + beyond;
  const above = hulls.flat().filter(({ x }) => x < back + thickness + GAP);
  const lowest = Math.min(...above.map(({ y }) => y));
  return {
    back,
    over: height + beyond,
    depth,
    height,
    room: lowest - GAP - thickness - beyond,
    // Behind it a floor board with room for a tab and its webs.
    deepest: inner.to - inner.from - 2 * GAP - SHORTEST_STRIP,
  };
};

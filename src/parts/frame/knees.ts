// The knee space before a front desk: where its boards stand, and how high the bays above let it be. It is as deep as its text
// says from where the bays begin, which is where the fit looks for knees from: cheeks may stand before the middle of an operator,
// so that they are cut out so far, and the boards stand behind their edges.

import { inBay } from "./frame-bay.ts";
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

export const kneesOf = ({ design, thickness, inner, hulls, bays }: PlanScene): Knees => {
  const { beyond } = design;
  const [deep, height] = design.knees;
  const begin = Math.min(
    ...bays.flatMap((bay) => [inBay(bay, 0, 0).x, inBay(bay, bay.length, 0).x]),
  );
  const depth = begin + deep;
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
    deepest: inner.to - begin - beyond - thickness - 2 * GAP - SHORTEST_STRIP,
  };
};

// The knee space before a front desk: where its boards stand, and how high the bays above let it be. It is as deep as is asked
// from where the bays begin, which is where the fit looks for knees from: cheeks may stand before the middle of an operator,
// so that they are cut out so far, and the boards stand behind their edges. Where no depth is written, feet have more room
// below than knees have above, as far as the desk leaves it.

import { downToTenth } from "../../geometry/tenths.ts";
import { FOOT_ROOM, KNEE_BOX } from "../../standards/reach.ts";
import { inBay } from "./frame-bay.ts";
import type { KneeRoom } from "./frame-part.ts";
import { GAP, SHORTEST_STRIP, USUAL_KNEE_HEIGHT } from "./frame-practice.ts";
import type { KneesAsked } from "./knees-asked.ts";
import type { PlanScene } from "./plan-options.ts";

/** Before knees, or before feet. */
export interface KneeStep {
  /** Face of the board before them, and underside of the one above them. */
  readonly back: number;
  readonly over: number;
  /** The cheeks' edges before them and above them. */
  readonly depth: number;
  readonly height: number;
}

export interface Knees extends KneeStep {
  /** null where feet have no more room than knees. */
  readonly foot: KneeStep | null;
  /** From where the bays begin. The most that they leave: its height, and its depth before the boards behind it. */
  readonly planned: KneeRoom["planned"];
  readonly room: number;
  readonly deepest: number;
}

export const kneesOf = (scene: PlanScene, asked: KneesAsked): Knees => {
  const { design, thickness, inner, hulls, bays } = scene;
  const { beyond } = design;
  const begin = Math.min(
    ...bays.flatMap((bay) => [inBay(bay, 0, 0).x, inBay(bay, bay.length, 0).x]),
  );
  const deep = asked.kind === "written" ? asked.depth : KNEE_BOX.depthAtKnee;
  const depth = begin + deep;
  const back = depth + beyond;
  const above = hulls.flat().filter(({ x }) => x < back + thickness + GAP);
  const room = Math.min(...above.map(({ y }) => y)) - GAP - thickness - beyond;
  const height = heightOf(asked, room);
  // Behind it a floor board with room for a tab and its webs.
  const deepest = inner.to - begin - beyond - thickness - 2 * GAP - SHORTEST_STRIP;
  const knee: KneeStep = { back, over: height + beyond, depth, height };
  const foot = asked.kind === "written" ? null : footOf(scene, { begin, deep, deepest, knee });
  return {
    ...knee,
    foot,
    planned: { depth: deep, foot: foot === null ? deep : foot.depth - begin, height },
    room,
    deepest,
  };
};

/** The hindmost board's rear: what lies behind the knee space begins there. */
export const behindKnees = (knees: Knees, thickness: number): number =>
  (knees.foot ?? knees).back + thickness;

const heightOf = (asked: KneesAsked, room: number): number =>
  asked.kind === "written"
    ? asked.height
    : Math.max(USUAL_KNEE_HEIGHT, Math.min(asked.height, downToTenth(room)));

interface FootScene {
  readonly begin: number;
  readonly deep: number;
  readonly deepest: number;
  readonly knee: KneeStep;
}

/** High enough for the board behind the feet, below the one behind the knees and before bays that reach as low as that. */
const footOf = (
  { design: { beyond, toe }, thickness, hulls }: PlanScene,
  { begin, deep, deepest, knee }: FootScene,
): KneeStep | null => {
  const height = Math.max(FOOT_ROOM.height, toe + SHORTEST_STRIP + GAP - beyond);
  const over = height + beyond;
  if (knee.over - over - thickness - 2 * GAP < SHORTEST_STRIP) return null;
  const low = hulls
    .filter((hull) => hull.some(({ y }) => y < over + thickness + GAP))
    .map((hull) => Math.min(...hull.map(({ x }) => x)) - GAP - thickness - beyond - begin);
  const most = Math.min(KNEE_BOX.depthAtFoot, deepest, ...low);
  const depth = begin + downToTenth(most);
  // The board over the feet runs from the knees to behind the feet.
  return depth - begin - deep + thickness < SHORTEST_STRIP
    ? null
    : { back: depth + beyond, over, depth, height };
};

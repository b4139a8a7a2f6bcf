// Whether the holes of a bay's rail bars are too wide. Takes the bay and what the plan hangs on; gives the width at which they meet
// one another or the bar's inner edge, or leave the ribs' tabs no room, and which of the three it is; null where they have wood.

import { samePlace } from "../../geometry/tolerance.ts";
import type { FrameBay } from "./frame-bay.ts";
import { RAIL_TAB, TAB } from "./frame-practice.ts";
import type { PlanOptions } from "./plan-options.ts";
import { type RailHole, railHoleSize } from "./rail-holes.ts";
import { barReach } from "./rail-reach.ts";

export interface RailHoleLimit {
  readonly kind: "one-another" | "inner-edge" | "rib-slots";
  readonly most: number;
  /** From the bay's middle to its innermost hole. */
  readonly inner: number;
  /** The holes that meet it first. */
  readonly names: readonly string[];
}

/**
 * Holes as wide as a limit leave no wood. Beside the ribs' slots they do: cheeks are set as far out as the holes ask, and a hole
 * that is just as wide as they allow has its webs.
 */
const isMet = (hole: number, { kind, most }: RailHoleLimit): boolean =>
  kind === "rib-slots" ? hole > most + samePlace : hole >= most - samePlace;

/** Of limits that are equally narrow the first: no other width of the bar helps holes that meet. */
export const railHoleLimit = (
  bay: FrameBay,
  options: Pick<PlanOptions, "design" | "thickness" | "across">,
): RailHoleLimit | null => {
  const { halfClear, railHoles } = bay;
  if (railHoles.reach === null) return null;
  const { inner, outer } = railHoles.reach;
  const { nearest, innermost, outermost } = railHoles;
  const namesOf = (hole: RailHole | null): readonly string[] => (hole === null ? [] : [hole.name]);
  const bar = barReach(bay, options);
  const beyond = Math.min(-bar.from, bar.to) - outer;
  const limits: readonly RailHoleLimit[] = [
    {
      kind: "one-another",
      most: nearest?.apart ?? Number.POSITIVE_INFINITY,
      inner,
      names: nearest?.names ?? [],
    },
    { kind: "inner-edge", most: 2 * (inner - halfClear), inner, names: namesOf(innermost) },
    {
      kind: "rib-slots",
      most: 2 * (beyond - 2 * RAIL_TAB.web - TAB.shortest),
      inner,
      names: namesOf(outermost),
    },
  ];
  const hole = railHoleSize(options.design, railHoles);
  return limits
    .filter((limit) => isMet(hole, limit))
    .reduce<RailHoleLimit | null>(
      (least, limit) => (least === null || limit.most < least.most ? limit : least),
      null,
    );
};

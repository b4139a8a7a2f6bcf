// What each pair of points is worth against the others: the map is found anew without it, and then its own point is looked
// up. A pair that has a say in its own map pulls the map towards itself and hides most of what is wrong with it.

import { fitHomography, inverted, mapped } from "./homography.ts";
import { distanceOf, type PlanePoint, type PointPair } from "./homography-pair.ts";

export type PairWithout =
  | {
      readonly kind: "put";
      /** From its own point in `to` to where the others put it. */
      readonly apart: number;
      /** Where in `from` the others put its point of `to`; null: beyond their horizon. */
      readonly spot: PlanePoint | null;
      /** How far the others lie off among themselves, as `pairError`; null where four are left, which always fit. */
      readonly rest: number | null;
    }
  /** Without it the others say no map: nothing tells how well it is set. */
  | { readonly kind: "untold" };

/** In the order of the pairs. With four pairs each is untold. */
export const withoutEach = (pairs: readonly PointPair[]): readonly PairWithout[] =>
  pairs.map((pair, index) => {
    const others = pairs.filter((_, each) => each !== index);
    const fit = fitHomography(others);
    if (fit.kind === "degenerate") return { kind: "untold" };
    const put = mapped(fit.map, pair.from);
    if (put === null) return { kind: "untold" };
    const spot = mapped(inverted(fit.map), pair.to);
    const rest = pairError(fit.rms, others.length);
    return { kind: "put", apart: distanceOf(put, pair.to), spot, rest };
  });

/**
 * How far pairs are off, by what is left of them in their own map: N pairs give 2N equations and the map takes 8 of them, so
 * that what is left is too small by sqrt((N - 4) / N) (Hartley and Zisserman, Multiple View Geometry, 2nd edition, result
 * 5.1). null where nothing is left to tell.
 */
export const pairError = (rms: number, count: number): number | null =>
  count > 4 ? rms * Math.sqrt(count / (count - 4)) : null;

// The shortest way, along the axis of the console that a bay runs along most, by which it stands free of another. Takes a trial of a move; gives the move, in
// tenths of a millimetre, or null where none within reach works.

import { tenths, tenthsIn } from "../../geometry/tenths.ts";
import type { BayLayout } from "../../layout/console/console-layout.ts";
import type { BayMove } from "./moved-bay.ts";

export interface PartingSearch {
  readonly bay: Pick<BayLayout, "frame">;
  /** As far as is looked. */
  readonly farthest: number;
  readonly works: (move: BayMove) => boolean;
}

export const partingMove = ({ bay, farthest, works }: PartingSearch): BayMove | null => {
  const axis = runOf(bay);
  const moves = ([1, -1] as const).flatMap((side): readonly BayMove[] => {
    const at = (count: number): BayMove => ({ axis, by: tenths(side * count) });
    let high = tenthsIn(farthest);
    if (!works(at(high))) return [];
    let low = 0;
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2);
      if (works(at(middle))) high = middle;
      else low = middle;
    }
    return [at(high)];
  });
  return moves.toSorted((a, b) => Math.abs(a.by) - Math.abs(b.by))[0] ?? null;
};

/** The axis that the bay runs along most: across its row it would leave that, and over another bay it would hide it. */
const runOf = ({ frame: { y: along } }: Pick<BayLayout, "frame">): BayMove["axis"] => {
  const [x, y, z] = [Math.abs(along.x), Math.abs(along.y), Math.abs(along.z)];
  return x >= y && x >= z ? 0 : y >= z ? 1 : 2;
};

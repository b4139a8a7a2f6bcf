// What the tolerances of several sizes in a row come to: at the worst, and as a root sum square. Takes each size's plus or
// minus, gives both sums and who contributes how much.

import { type Mm, mm } from "../../geometry/quantity.ts";

export interface ToleranceShare {
  readonly what: string;
  readonly plusMinus: Mm;
  /** The general tolerance of its size, or what its mount is cut under where that table gives none. */
  readonly by: "general" | "undersize";
}

export interface ToleranceSum {
  readonly worstCase: Mm;
  /** Where each is off by chance, none by the same cause, and each stays within its own: seldom more than this. */
  readonly rootSumSquare: Mm;
  /** Those of one name together, the largest first. */
  readonly shares: readonly ToleranceShare[];
}

export const toleranceSum = (sizes: readonly ToleranceShare[]): ToleranceSum => {
  const shares = new Map<string, ToleranceShare>();
  let [worst, squares] = [0, 0];
  for (const { what, plusMinus, by } of sizes) {
    worst += plusMinus;
    squares += plusMinus * plusMinus;
    const before = shares.get(what)?.plusMinus ?? 0;
    shares.set(what, { what, plusMinus: mm(before + plusMinus), by });
  }
  return {
    worstCase: mm(worst),
    rootSumSquare: mm(Math.sqrt(squares)),
    shares: [...shares.values()].toSorted((a, b) => b.plusMinus - a.plusMinus),
  };
};

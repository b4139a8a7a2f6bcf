// How far the thickness of acrylic sheet may stray from its nominal: ISO 7823-1 (cast) and ISO 7823-2 (extruded).
// "3 mm" cast may be 2.3 to 3.7; every fit that depends on thickness wants a measured sheet.

import { type Mm, mm } from "../geometry/quantity.ts";

/** A deviation to each side: `fixed + share * nominal`, from a nominal thickness up. */
export interface ThicknessRule {
  readonly from: Mm;
  readonly fixed: Mm;
  readonly share: number;
}

/** ISO 7823-1: ±(0.4 + 0.1 t); several makers' sheets agree. */
export const CAST_ACRYLIC: readonly ThicknessRule[] = [{ from: mm(0), fixed: mm(0.4), share: 0.1 }];

/** ISO 7823-2: ±10 % under 3 mm, ±5 % from 3 mm up; several makers' sheets agree. */
export const EXTRUDED_ACRYLIC: readonly ThicknessRule[] = [
  { from: mm(0), fixed: mm(0), share: 0.1 },
  { from: mm(3), fixed: mm(0), share: 0.05 },
];

/** Deviation to each side for a nominal thickness. */
export function thicknessDeviation(nominal: Mm, rules: readonly ThicknessRule[]): Mm {
  const rule = rules.findLast((candidate) => candidate.from <= nominal);
  return rule === undefined ? mm(0) : mm(rule.fixed + rule.share * nominal);
}

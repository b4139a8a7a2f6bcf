// 19-inch panels and 3U subrack panels: IEC 60297-3-100 (with EIA/ECA-310) and IEC 60297-3-101.
// Takes counts of units or of HP, gives sizes and hole rows measured from the panel's lower edge.

import { invariant } from "../geometry/invariant.ts";
import { type Mm, mm } from "../geometry/quantity.ts";

/** IEC 60297-3-100 / EIA/ECA-310; seen, the nominal opening from memory. */
export const RACK = {
  width: mm(482.6),
  columnsApart: mm(465.1),
  unit: mm(44.45),
  /** A panel is this much lower than its units. */
  less: mm(0.79),
  /** From one hole to the next, round and round: two long steps and one short. */
  steps: [mm(15.875), mm(15.875), mm(12.7)],
  /** Least opening between the rails. */
  opening: mm(450),
  source: "IEC 60297-3-100, EIA/ECA-310",
} as const;

/** IEC 60297-3-101; agreeing secondary copies seen. */
export const SUBRACK = {
  height: mm(128.5),
  rowsApart: mm(122.5),
  rowFromEdge: mm(3),
  pitch: mm(5.08),
  firstFromLeft: mm(7.5),
  hole: mm(3.2),
  source: "IEC 60297-3-101",
} as const;

/** 44.45 n - 0.79. */
export function rackPanelHeight(units: number): Mm {
  return mm(RACK.unit * units - RACK.less);
}

/**
 * Heights of the screw holes over the panel's lower edge. One and two units use the outermost holes of the rail, taller
 * panels the third from each end: common practice, on the standard's grid.
 */
export function rackHoleRows(units: number): readonly Mm[] {
  invariant(Number.isInteger(units) && units > 0, "a rack panel has whole units");
  const fromUnitEdge = units < 3 ? FIRST_HOLE : FIRST_HOLE + RACK.steps[0] + RACK.steps[1];
  const fromPanelEdge = fromUnitEdge - RACK.less / 2;
  return [mm(fromPanelEdge), mm(rackPanelHeight(units) - fromPanelEdge)];
}

// The short step straddles the border between two units.
const FIRST_HOLE = RACK.steps[2] / 2;

/** Heights of the holes of a rail that is so many units long, over its lower end: three in each unit. */
export function rackUprightHoles(units: number): readonly Mm[] {
  invariant(Number.isInteger(units) && units >= 0, "a rack's rail has whole units");
  const [first, second] = [FIRST_HOLE + RACK.steps[0], FIRST_HOLE + RACK.steps[0] + RACK.steps[1]];
  return Array.from({ length: units }, (_, unit) =>
    [FIRST_HOLE, first, second].map((hole) => mm(unit * RACK.unit + hole)),
  ).flat();
}

/** A subrack panel of n HP is narrower than n pitches, by half a millimetre at most (sources differ by a tenth or two). */
export function subrackPanelWidths(pitches: number): { readonly least: Mm; readonly under: Mm } {
  return { least: mm(SUBRACK.pitch * pitches - 0.5), under: mm(SUBRACK.pitch * pitches) };
}

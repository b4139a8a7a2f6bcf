// Threads that switches, pots and encoders are held by: major diameters, and the holes that take them in metal.
// Major diameters of inch threads are arithmetic (1/4 in is 6.35); holes are makers' figures and from memory.

import { type Mm, mm } from "../geometry/quantity.ts";

export interface Bushing {
  readonly thread: string;
  /** Major diameter of the thread. */
  readonly diameter: Mm;
  /** Least and most that makers ask for in metal. */
  readonly hole: { readonly least: Mm; readonly most: Mm };
  readonly source: string;
}

const MAKERS = "makers' datasheets agree; the upper ends from memory, unverified";

const bushing = (thread: string, diameter: number, hole: readonly [number, number]): Bushing => ({
  thread,
  diameter: mm(diameter),
  hole: { least: mm(hole[0]), most: mm(hole[1]) },
  source: MAKERS,
});

export const BUSHINGS: readonly Bushing[] = [
  bushing("1/4-40", 6.35, [6.4, 6.5]),
  bushing("15/32-32", 11.9, [12.0, 12.2]),
  bushing("3/8-32", 9.525, [9.6, 10]),
  bushing("M7x0.75", 7, [7.2, 7.2]),
  bushing("M9x0.75", 9, [9.2, 9.5]),
];

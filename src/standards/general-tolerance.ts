// ISO 2768-1:1989, table 1: permissible deviations of linear sizes without a tolerance of their own.
// Takes a size and a class, gives the deviation to each side. Steps read "over, up to and including".

import { type Mm, mm } from "../geometry/quantity.ts";

/** f fine, m medium, c coarse. */
export type ToleranceClass = "f" | "m" | "c";

/** Plus or minus this; null below 0.5 mm and above 1000 mm, where this table gives nothing. */
export function generalTolerance(size: Mm, toleranceClass: ToleranceClass): Mm | null {
  if (size < LEAST_SIZE) return null;
  const step = STEPS.find((candidate) => size <= candidate.upTo);
  return step === undefined ? null : step[toleranceClass];
}

const LEAST_SIZE = 0.5;

type Step = Readonly<Record<ToleranceClass, Mm>> & { readonly upTo: number };

const step = (upTo: number, [f, m, c]: readonly [number, number, number]): Step => ({
  upTo,
  f: mm(f),
  m: mm(m),
  c: mm(c),
});

const STEPS: readonly Step[] = [
  step(3, [0.05, 0.1, 0.2]),
  step(6, [0.05, 0.1, 0.3]),
  step(30, [0.1, 0.2, 0.5]),
  step(120, [0.15, 0.3, 0.8]),
  step(400, [0.2, 0.5, 1.2]),
  step(1000, [0.3, 0.8, 2]),
];

// Round numbers as a builder writes them: half a millimetre, or a thirty-second of an inch where the value is in inches.

import type { Span } from "../diagnostics/finding.ts";
import { decimal } from "../geometry/number.ts";
import { samePlace } from "../geometry/tolerance.ts";
import { MM_PER_INCH } from "../standards/inch.ts";
import type { PanelFacts } from "./rule.ts";
import { isInInches } from "./words.ts";

export interface RoundUnit {
  readonly name: "mm" | "in";
  readonly mm: number;
  /** In the unit itself. */
  readonly step: number;
}

export const roundUnit = (facts: Pick<PanelFacts, "texts">, span: Span): RoundUnit =>
  isInInches(facts, span)
    ? { name: "in", mm: MM_PER_INCH, step: 1 / 32 }
    : { name: "mm", mm: 1, step: 0.5 };

/** The next round number that is no smaller, as text, in the unit of what is written at the span. */
export const roundedUp = (
  facts: Pick<PanelFacts, "texts">,
  span: Span,
  millimetres: number,
): string => {
  const { name, mm, step } = roundUnit(facts, span);
  return `${decimal(Math.ceil(millimetres / mm / step - samePlace) * step, 5)} ${name}`;
};

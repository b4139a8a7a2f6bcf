// How a finding names things and writes numbers, so that every rule says them alike.

import type { Measure, Span } from "../diagnostics/finding.ts";
import { decimal } from "../geometry/number.ts";
import { MM_PER_INCH } from "../standards/inch.ts";
import type { PanelFacts } from "./rule.ts";

/** `3.25 mm`: two decimals are finer than any cutter. */
export const millimetres = (value: number): string => `${decimal(value, 2)} mm`;

export const measureMm = (value: number): Measure => ({
  value: Math.round(value * 1e6) / 1e6,
  unit: "mm",
});

export const measureOf = (value: number, unit: Measure["unit"]): Measure => ({ value, unit });

/** The value at the span is written in inches. */
export const isInInches = (facts: Pick<PanelFacts, "texts">, span: Span | undefined): boolean =>
  span !== undefined &&
  /(?:\d\s*in|")\s*$/.test(facts.texts?.get(span.file)?.slice(span.start, span.end) ?? "");

/** Lengths in the unit of the number that was written at the span; in mm where nothing is known of it. */
export const lengthWords = (
  facts: Pick<PanelFacts, "texts">,
  near: Span | undefined,
): ((value: number) => string) =>
  isInInches(facts, near) ? (value) => `${decimal(value / MM_PER_INCH, 4)} in` : millimetres;

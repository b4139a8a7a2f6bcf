// How a finding names things and writes numbers, so that every rule says them alike.

import { isInchText } from "../design/length-text.ts";
import type { Measure, Span } from "../diagnostics/finding.ts";
import { decimal, decimalBeside } from "../geometry/number.ts";
import { samePlace } from "../geometry/tolerance.ts";
import { MM_PER_INCH } from "../standards/inch.ts";
import type { PanelFacts } from "./rule.ts";

/** A length as text; beside the one that it is compared with, by as many decimals as tell the two apart. */
export type LengthWords = (value: number, beside?: number) => string;

/** `3.25 mm`: two decimals are finer than any cutter, and enough where nothing beside it wants more. */
export const millimetres: LengthWords = (value, beside) => `${figure(value, beside, 2)} mm`;

const figure = (value: number, beside: number | undefined, places: number): string =>
  beside === undefined ? decimal(value, places) : decimalBeside(value, beside, places);

/** The most that a tool may be, never more than it is: down to the micrometre. */
export const atMost = (value: number): string =>
  `${decimal(Math.floor(value * 1000 + samePlace) / 1000, 3)} mm`;

/** The least that something may be, never less than it is: up to the micrometre. */
export const atLeast = (value: number): string =>
  `${decimal(Math.ceil(value * 1000 - samePlace) / 1000, 3)} mm`;

export const measureMm = (value: number): Measure => ({
  value: Math.round(value * 1e6) / 1e6,
  unit: "mm",
});

export const measureOf = (value: number, unit: Measure["unit"]): Measure => ({ value, unit });

/** The same in the unit of the number that was written at the span; of an inch down to a ten-thousandth. */
export const atMostWords = (
  facts: Pick<PanelFacts, "texts">,
  near: Span | undefined,
): ((value: number) => string) => (isInInches(facts, near) ? inchesAtMost : atMost);

const inchesAtMost = (value: number): string =>
  `${decimal(Math.floor((value + samePlace) * (10_000 / MM_PER_INCH)) / 10_000, 4)} in`;

/** The value at the span is written in inches. */
export const isInInches = (facts: Pick<PanelFacts, "texts">, span: Span | undefined): boolean =>
  span !== undefined &&
  isInchText(facts.texts?.get(span.file)?.slice(span.start, span.end).trim() ?? "");

/** Lengths in the unit of the number that was written at the span; in mm where nothing is known of it. */
export const lengthWords = (
  facts: Pick<PanelFacts, "texts">,
  near: Span | undefined,
): LengthWords => (isInInches(facts, near) ? inches : millimetres);

const inches: LengthWords = (value, beside) =>
  `${figure(value / MM_PER_INCH, beside === undefined ? beside : beside / MM_PER_INCH, 4)} in`;

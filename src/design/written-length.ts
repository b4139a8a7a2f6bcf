// A length out of its text, for whoever takes one: the fields of a design, an argument of a command, a field of the page. It stays
// an exact fraction until it is rounded, once, to a nanometre, so that 5 3/4 in and 146.05 mm are the same number.

import { numberText, type Rational, roundedTo } from "./number-text.ts";
import type { Length } from "./written.ts";

export interface LengthUnit {
  readonly unit: Length["unit"];
  /** Millimetres in it, as numerator and denominator. */
  readonly mm: readonly [bigint, bigint];
}

/** Without a prototype: asked for `constructor` it has none. The empty one is that of a plain number. */
const UNITS: Readonly<Partial<Record<string, LengthUnit>>> = Object.assign(Object.create(null), {
  "": { unit: "mm", mm: [1n, 1n] },
  mm: { unit: "mm", mm: [1n, 1n] },
  cm: { unit: "cm", mm: [10n, 1n] },
  m: { unit: "m", mm: [1000n, 1n] },
  // The inch is 25.4 mm exactly (ISO 80000-3:2019, Annex; international yard and pound agreement of 1959).
  in: { unit: "in", mm: [127n, 5n] },
  '"': { unit: "in", mm: [127n, 5n] },
});

export const lengthUnit = (unit: string): LengthUnit | undefined => UNITS[unit];

/** Splits the unit off a number; a text that is no number with a unit stays whole. */
export const lengthParts = (text: string): { readonly figures: string; readonly unit: string } => {
  const split =
    text.length > LONGEST_WRITTEN ? null : /^(.*?[\d.,])\s*([a-zA-Z"'µμ%]+)$/s.exec(text);
  const [, figures = text, unit = ""] = split ?? [];
  return numberText(figures).kind === "number" || Object.hasOwn(UNITS, unit)
    ? { figures, unit }
    : { figures: text, unit: "" };
};

/** A longer text is no length; taking it apart would only cost time. */
const LONGEST_WRITTEN = 60;

/** To a nanometre: the one rounding of the program. */
export const inMillimetres = (value: Rational, { mm }: Pick<LengthUnit, "mm">): number =>
  roundedTo(
    { ...value, numerator: value.numerator * mm[0], denominator: value.denominator * mm[1] },
    NANOMETRES,
  );

/** Whole units of 1 nm in a millimetre. */
const NANOMETRES = 1_000_000n;

export interface WrittenLength {
  readonly mm: number;
  /** As it was written; empty where none was. */
  readonly unit: string;
  readonly isFraction: boolean;
}

/** `plain`: the unit of a number without one. null: it is no length. */
export const writtenLength = (text: string, plain: "mm" | "in" = "mm"): WrittenLength | null => {
  const { figures, unit } = lengthParts(text.trim());
  const known = lengthUnit(unit === "" ? plain : unit);
  const read = numberText(figures);
  if (known === undefined || read.kind !== "number") return null;
  return { mm: inMillimetres(read.value, known), unit, isFraction: read.value.fraction };
};

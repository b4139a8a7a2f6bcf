// Where a value was written. Every record read from a design carries the span of itself and of each of its keys' values,
// so that a finding can point at the number that it speaks of and an edit can replace it.

import type { Span } from "../diagnostics/finding.ts";
import type { Mm } from "../geometry/quantity.ts";

export interface Written {
  readonly span: Span;
  /** The span of each key's value, by key as written in the text. */
  readonly keys: Readonly<Record<string, Span>>;
}

/** The span of a key's value, or of the whole record where the key was left to its default. */
export const spanOf = (written: Written, key: string): Span => written.keys[key] ?? written.span;

/** A length as written: the number in mm, rounded once to 1 nm, and the unit that the user thinks in. */
export interface Length {
  readonly kind: "length";
  readonly mm: Mm;
  readonly unit: "mm" | "cm" | "m" | "in";
}

/** A count of a mount's pitch; the mount says how long one is. */
export interface Pitches {
  readonly kind: "pitches";
  readonly count: number;
  readonly unit: "modules" | "U" | "HP";
}

export type Size = Length | Pitches;

/** An ISO date (year-month-day), kept as text. */
export type IsoDate = string & { readonly __date?: never };

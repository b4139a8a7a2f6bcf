// Branded numbers: a length, an angle and an area can't be taken for one another.
// Inside a formula plain numbers are fine; what leaves a function carries its brand.

declare const unit: unique symbol;

type Quantity<Unit extends string> = number & { readonly [unit]: Unit };

/** A length in millimetres. */
export type Mm = Quantity<"mm">;
/** An area in square millimetres. */
export type SquareMm = Quantity<"mm²">;
/** An angle in degrees, counter-clockwise unless a name says "clock". */
export type Degrees = Quantity<"deg">;
/** An angle in radians, counter-clockwise. */
export type Radians = Quantity<"rad">;

export const mm = (value: number): Mm => value as Mm;
export const squareMm = (value: number): SquareMm => value as SquareMm;
export const degrees = (value: number): Degrees => value as Degrees;
export const radians = (value: number): Radians => value as Radians;

// The one grammar of numbers in designs: 12, 12.5, -0.5, 3/8, 5 3/4, 5-3/4. Exact: the value is a fraction of
// two whole numbers until its unit is known. What only looks like a number is told by name.

/** numerator / denominator, the denominator above zero. */
export interface Rational {
  readonly numerator: bigint;
  readonly denominator: bigint;
  /** Written as a fraction: it needs a unit. */
  readonly fraction: boolean;
}

export type NumberText =
  | { readonly kind: "number"; readonly value: Rational }
  | { readonly kind: "refused"; readonly why: NumberFault };

export type NumberFault =
  | { readonly kind: "comma"; readonly meant: string }
  /** Thousands stand apart: 1 000, 1,000.5, 1'000. */
  | { readonly kind: "grouped"; readonly meant: string }
  | { readonly kind: "exponent"; readonly meant: string | null }
  | { readonly kind: "not-finite" }
  | { readonly kind: "zero-denominator" }
  | { readonly kind: "too-long" }
  | { readonly kind: "none" };

/** Takes a number without its unit, trimmed. */
export const numberText = (text: string): NumberText => {
  if (text.length > LONGEST_NUMBER) {
    return refused(/^[\s\d.,+/-]*$/.test(text) ? { kind: "too-long" } : { kind: "none" });
  }
  return decimalText(text) ?? fractionText(text) ?? refused(faultOf(text));
};

/** A number with more figures is a slip, and its arithmetic would take time. */
export const LONGEST_NUMBER = 40;

const refused = (why: NumberFault): NumberText => ({ kind: "refused", why });

const decimalText = (text: string): NumberText | null => {
  const match = /^([+-]?)(\d+)(?:\.(\d+))?$/.exec(text) ?? /^([+-]?)()\.(\d+)$/.exec(text);
  if (match === null) {
    return null;
  }
  const [, sign, whole = "", decimals = ""] = match;
  const value = BigInt(`${whole}${decimals}`);
  return {
    kind: "number",
    value: {
      numerator: sign === "-" ? -value : value,
      denominator: 10n ** BigInt(decimals.length),
      fraction: false,
    },
  };
};

const fractionText = (text: string): NumberText | null => {
  const match = /^([+-]?)(?:(\d+)(?: +|-))?(\d+) ?\/ ?(\d+)$/.exec(text);
  if (match === null) {
    return null;
  }
  const [, sign, whole = "0", over = "0", under = "0"] = match;
  const denominator = BigInt(under);
  if (denominator === 0n) {
    return refused({ kind: "zero-denominator" });
  }
  const value = BigInt(whole) * denominator + BigInt(over);
  return {
    kind: "number",
    value: { numerator: sign === "-" ? -value : value, denominator, fraction: true },
  };
};

const faultOf = (text: string): NumberFault => {
  const comma = /^([+-]?\d+),(\d+)$/.exec(text);
  if (comma !== null) {
    return { kind: "comma", meant: `${comma[1]}.${comma[2]}` };
  }
  const plain = ungrouped(text);
  if (plain !== null) {
    return { kind: "grouped", meant: plain };
  }
  if (/^[+-]?(?:\d+\.?\d*|\.\d+)[eE][+-]?\d+$/.test(text)) {
    return { kind: "exponent", meant: writtenOut(text) };
  }
  return /^[+-]?\.?(?:inf|infinity|nan)$/i.test(text) ? { kind: "not-finite" } : { kind: "none" };
};

/** One comma or point alone parts a fraction, as every other number here is written. null where nothing parts thousands. */
const ungrouped = (text: string): string | null => {
  const match = /^([+-]?\d{1,3})([ ,.'_])(\d{3}(?:\2\d{3})*)(?:([.,])(\d+))?$/.exec(text);
  if (match === null) return null;
  const [, first = "", apart = "", groups = "", mark = "", decimals = ""] = match;
  const isFraction = ",.".includes(apart) && groups.length === 3 && mark === "";
  if (isFraction || mark === apart) return null;
  const whole = `${first}${groups.replaceAll(apart, "")}`;
  return mark === "" ? whole : `${whole}.${decimals}`;
};

/** The plain form of a number with a small exponent, figure for figure; null where nobody would write it out. */
const writtenOut = (text: string): string | null => {
  const [, sign = "", whole = "", decimals = "", power = ""] =
    /^([+-]?)(\d*)\.?(\d*)[eE]([+-]?\d+)$/.exec(text) ?? [];
  const shift = Number(power);
  if (Math.abs(shift) > LONGEST_NUMBER) return null;
  const figures = `${"0".repeat(Math.max(0, -shift))}${whole}${decimals}${"0".repeat(Math.max(0, shift))}`;
  const point = Math.max(0, -shift) + whole.length + shift;
  const before = figures.slice(0, point).replace(/^0+/, "") || "0";
  const behind = figures.slice(point).replace(/0+$/, "");
  const plain = `${sign === "-" ? "-" : ""}${before}${behind === "" ? "" : `.${behind}`}`;
  return plain.length > LONGEST_NUMBER ? null : plain;
};

/** The nearest double to numerator / denominator, by way of whole units of `1 / scale`, rounded half away from zero. */
export const roundedTo = (value: Rational, scale: bigint): number => {
  const isNegative = value.numerator < 0n;
  const over = (isNegative ? -value.numerator : value.numerator) * scale * 2n + value.denominator;
  const units = Number(over / (value.denominator * 2n));
  return units === 0 ? 0 : (isNegative ? -units : units) / Number(scale);
};

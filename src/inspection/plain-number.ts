// Numbers as the cut files have them, read straight from the text: an optional sign, digits, a point. A panel's files hold
// a quarter of a million, and a string for each would be most of the reader's work. The value is Number's own: up to
// fifteen digits are a whole number that is exact, and so is the power of ten that it is divided by, once.

const ZERO = 48;
const NINE = 57;
const POINT = 46;
const MINUS = 45;
const PLUS = 43;

const MOST_DIGITS = 15;
const POWERS: readonly number[] = Array.from({ length: MOST_DIGITS + 1 }, (_, power) =>
  Number(`1e${power}`),
);

/** The number that stands in `text` from `start` to `end` and is all that stands there; NaN for what is none. */
export const numberBetween = (text: string, start: number, end: number): number => {
  const first = text.charCodeAt(start);
  let at = first === MINUS || first === PLUS ? start + 1 : start;
  let digits = 0;
  let size = 0;
  let decimals = -1;
  for (; at < end; at += 1) {
    const code = text.charCodeAt(at);
    if (code === POINT && decimals < 0) decimals = digits;
    else if (code >= ZERO && code <= NINE) {
      size = size * 10 + (code - ZERO);
      digits += 1;
    } else return otherwise(text, start, end);
  }
  if (digits === 0 || digits > MOST_DIGITS) return otherwise(text, start, end);
  const value = decimals < 0 ? size : size / POWERS[digits - decimals]!;
  return first === MINUS ? -value : value;
};

const otherwise = (text: string, start: number, end: number): number => {
  const written = text.slice(start, end).trim();
  return written === "" ? Number.NaN : Number(written);
};

/** All numbers between two places, whatever stands between them; no exponents. */
export const numbersBetween = (text: string, start: number, end: number): readonly number[] => {
  const numbers: number[] = [];
  let at = start;
  while (at < end) {
    const last = numberEnd(text, at, end);
    if (last === at) at += 1;
    else {
      numbers.push(numberBetween(text, at, last));
      at = last;
    }
  }
  return numbers;
};

/** Where the number that begins here ends; here where none begins. */
const numberEnd = (text: string, start: number, end: number): number => {
  const first = text.charCodeAt(start);
  const unsigned = first === MINUS || first === PLUS ? start + 1 : start;
  const whole = digitsEnd(text, unsigned, end);
  if (whole >= end || text.charCodeAt(whole) !== POINT) return whole === unsigned ? start : whole;
  const decimals = digitsEnd(text, whole + 1, end);
  return whole === unsigned && decimals === whole + 1 ? start : decimals;
};

const digitsEnd = (text: string, start: number, end: number): number => {
  let at = start;
  while (at < end && isDigit(text.charCodeAt(at))) at += 1;
  return at;
};

const isDigit = (code: number): boolean => code >= ZERO && code <= NINE;

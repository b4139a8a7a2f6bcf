// The letter or digit that a key stands for in the help of the page: on a keyboard of another script, the Latin letter of its
// place; on one that writes digits with Shift alone, the digit of its place.

export type Key = Pick<KeyboardEvent, "key" | "code" | "shiftKey">;

/** Small; names of keys (Escape, Home) as they are. */
export function latinKey({ key, code, shiftKey }: Key): string {
  if (key.length !== 1) return key;
  const letter = /^Key([A-Z])$/.exec(code)?.[1];
  if (!isLatin(key) && letter !== undefined) return letter.toLowerCase();
  const digit = /^Digit([0-9])$/.exec(code)?.[1];
  return digit === undefined || shiftKey || isInHelp(key) ? key.toLowerCase() : digit;
}

/** Letters with marks are Latin too: they have their own places, and are no letters of the help. */
const isLatin = (key: string): boolean => /^(?:\p{ASCII}|\p{Script=Latin})$/u.test(key);

/** What a key of the row of digits writes, and what stands in the help by itself: minus on AZERTY, plus on a Czech keyboard. */
const isInHelp = (key: string): boolean => /^[0-9+\-=/]$/.test(key);

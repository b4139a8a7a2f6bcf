// The comma that was left out between two keys within braces: `{ part: led-5 at: centre }`. A parser tells of it where it gives up, in words
// of its own. Takes a text that could not be parsed and where, gives what is to be written; null where it is something else.

export interface MissingComma {
  /** The end of the value before, and of what stands in the comma's place (a semicolon, or nothing). */
  readonly from: number;
  readonly to: number;
  readonly key: string;
}

export const missingComma = (text: string, at: number): MissingComma | null =>
  behindValue(text, at) ?? behindBracket(text, at);

/** A value that is longer, with the key behind it, is looked at no further: going back over it would take time. */
const LONGEST_LOOKED_AT = 300;

/** From a value on one line up to the colon of the next key. */
const VALUE_THEN_KEY =
  /^("[^"\n]*"|'[^'\n]*'|[^,;:{}[\]\s"'](?:[^,;:{}[\]\n]*[^,;:{}[\]\s])?)(?: *;)? +([a-z][a-z0-9-]*):(?=\s)/;

const behindValue = (text: string, at: number): MissingComma | null => {
  const [whole, value = "", key = ""] =
    VALUE_THEN_KEY.exec(text.slice(at, at + LONGEST_LOOKED_AT)) ?? [];
  if (whole === undefined) return null;
  const from = at + value.length;
  return { from, to: semicolonEnd(text, from), key };
};

const semicolonEnd = (text: string, from: number): number =>
  / *;/y.test(text.slice(from, from + 2)) ? text.indexOf(";", from) + 1 : from;

/** At a key that stands right behind what closes a value. */
const behindBracket = (text: string, at: number): MissingComma | null => {
  const [, key = ""] = /^([a-z][a-z0-9-]*):\s/.exec(text.slice(at, at + LONGEST_KEY)) ?? [];
  const before = text.slice(0, at).trimEnd();
  return key !== "" && /[}\]"']$/.test(before) && !text.slice(before.length, at).includes("\n")
    ? { from: before.length, to: before.length, key }
    : null;
};

/** No key of a design is longer. */
const LONGEST_KEY = 80;

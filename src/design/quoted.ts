// How a text is written so that this program, and every other reader of YAML, takes it for exactly that text.
// Plain where nobody could take it for something else, in quotation marks otherwise.

/** Gives a YAML scalar on one line, good in block and flow. */
export const quoted = (text: string): string =>
  isPlain(text) ? text : `"${[...text].map(escaped).join("")}"`;

const isPlain = (text: string): boolean =>
  PLAIN.test(text) && !text.endsWith(" ") && !text.includes("  ") && !isTakenForSomething(text);

/** Letters first; no character that means anything to YAML in any position. */
const PLAIN = /^\p{L}[\p{L}\p{N} ./()+°-]*$/u;

/** Words, numbers and dates of YAML 1.1 and 1.2, in any capitals. */
const isTakenForSomething = (text: string): boolean =>
  /^(?:y|n|yes|no|on|off|true|false|null|nan|inf|infinity)$/i.test(text);

const escaped = (character: string): string => {
  const short = ESCAPES[character];
  if (short !== undefined) {
    return short;
  }
  return NEEDS_ESCAPE.test(character)
    ? [...Array(character.length).keys()].map((index) => unitEscape(character, index)).join("")
    : character;
};

const ESCAPES: Readonly<Record<string, string>> = {
  '"': '\\"',
  "\\": "\\\\",
  "\n": "\\n",
  "\r": "\\r",
  "\t": "\\t",
};

/** What the reader refuses when it stands in the open. */
const NEEDS_ESCAPE =
  /[\p{Cc}\p{Cs}\u200b\u200e\u200f\u2028\u2029\u202a-\u202e\u2060\u2066-\u2069\ufeff\ufffe\uffff]/u;

const unitEscape = (character: string, index: number): string =>
  `\\u${character.charCodeAt(index).toString(16).padStart(4, "0")}`;

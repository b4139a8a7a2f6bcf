// Words from a design made safe for one line of a file: takes any text, gives text without control characters,
// line breaks, direction overrides, lone surrogates or noncharacters, each shown as U+FFFD so that its loss is seen.
// A long text is cut and says how much is missing: a cut file is no place for a page of prose.

const LONGEST = 400;

// \p{Cc}: NUL, line breaks, tabs. \p{Cs} with the u flag: lone surrogates only. The rest: line and paragraph separators,
// marks and overrides of writing direction (Unicode Standard Annex 9, table 4), and noncharacters that XML 1.0 bars.
const UNSAFE =
  /[\p{Cc}\p{Cs}\u2028\u2029\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ufffe\uffff]/gu;

export const plainText = (text: string, longest: number = LONGEST): string => {
  const characters = Array.from(text.replaceAll(UNSAFE, "\ufffd"));
  if (characters.length <= longest) return characters.join("");
  const missing = characters.length - longest;
  return `${characters.slice(0, longest).join("")}… (${missing} more characters)`;
};

/** The same for files whose readers know ASCII only: everything else as `\U+XXXX`, as R12's readers write it. */
export const asciiText = (text: string, longest: number = LONGEST): string =>
  Array.from(plainText(text, longest), asciiCharacter).join("");

const asciiCharacter = (character: string): string => {
  const code = character.codePointAt(0) ?? 0;
  if (code < 0x7f) return character;
  return `\\U+${code.toString(16).toUpperCase().padStart(4, "0")}`;
};

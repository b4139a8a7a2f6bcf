// A legend's text as the characters to set: accents composed with their letters, one code point each.
// What has no place of its own on a face (controls, joiners, loose accents, half surrogates) is never settable.

/** One line's characters in order. Every one that `characterOf` refuses is still in the list, to be reported. */
export const charactersOf = (line: string): readonly string[] =>
  PLAIN.test(line) ? line.split("") : [...composed(line)];

/** The one settable character that the text is, composed; null for anything else. */
export const characterOf = (text: string): string | null => {
  const [character, ...rest] = composed(text);
  if (character === undefined || rest.length > 0 || UNSETTABLE.test(character)) return null;
  return character;
};

const PLAIN = /^[ -~]*$/;

/** Controls, formats, surrogates, private use, unassigned; and combining marks, which need a font's mark placing. */
const UNSETTABLE = /[\p{C}\p{M}]/u;

/**
 * Only a letter with marks after it is composed. Composing everything would turn the ohm sign into a Greek letter,
 * and the user's character is set as it was written.
 */
const composed = (text: string): string =>
  text.replace(/\P{M}\p{M}+/gu, (cluster) => cluster.normalize("NFC"));

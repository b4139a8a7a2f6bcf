// Text that may be shown on a terminal: control characters of a hostile file are written out, not obeyed.

/** Control, direction-changing and line-breaking characters become `\uXXXX`; everything else stays. */
export const printable = (text: string): string =>
  text.replace(
    UNSAFE,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );

// C0, DEL and C1 controls; bidirectional controls (Unicode Technical Report 36, section 2); line separators.
const UNSAFE = /[\p{Cc}\u2028\u2029\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/gu;

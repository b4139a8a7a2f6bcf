// From an offset in a text to the line and column that an editor shows.
// Both count from 1. A column counts characters (an emoji is one), and a byte order mark is none of them.

export interface Position {
  readonly line: number;
  readonly column: number;
}

/** Offsets past the end count as the end. Lines end with LF or CR LF. */
export const lineAndColumn = (text: string, offset: number): Position => {
  const end = Math.max(0, Math.min(offset, text.length));
  let line = 1;
  let lineStart = text.startsWith(BYTE_ORDER_MARK) ? Math.min(1, end) : 0;
  for (
    let feed = text.indexOf("\n");
    feed !== -1 && feed < end;
    feed = text.indexOf("\n", feed + 1)
  ) {
    line += 1;
    lineStart = feed + 1;
  }
  return { line, column: charactersBetween(text, lineStart, end) + 1 };
};

/** The text of a line (from 1), without its line end or byte order mark. */
export const lineText = (text: string, line: number): string => {
  let start = text.startsWith(BYTE_ORDER_MARK) ? 1 : 0;
  for (let passed = 1; passed < line; passed += 1) {
    const feed = text.indexOf("\n", start);
    if (feed === -1) {
      return "";
    }
    start = feed + 1;
  }
  const end = text.indexOf("\n", start);
  return text.slice(start, end === -1 ? text.length : end).replace(/\r$/, "");
};

export const BYTE_ORDER_MARK = "\uFEFF";

const charactersBetween = (text: string, start: number, end: number): number => {
  let count = 0;
  for (let index = start; index < end; index += 1) {
    const unit = text.charCodeAt(index);
    const isSecondHalf = unit >= 0xdc00 && unit <= 0xdfff && index > start;
    count += isSecondHalf ? 0 : 1;
  }
  return count;
};

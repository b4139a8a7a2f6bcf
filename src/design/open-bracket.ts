// The bracket that a text opens and never closes: a parser tells of it where it gives up, often many lines below. Takes a text that
// could not be parsed, gives the offset of the outermost such bracket, or null.

interface Opened {
  readonly at: number;
  readonly closing: string;
}

export const openBracket = (text: string): number | null => {
  const open: Opened[] = [];
  for (let at = 0; at < text.length; at = nextFrom(text, at)) {
    const closing = CLOSING[text.charAt(at)];
    if (closing !== undefined && beginsValue(text, at)) open.push({ at, closing });
    else if (open.length > 0 && "]}".includes(text.charAt(at))) {
      // The wrong one of the two: which is meant can't be told.
      if (open.pop()?.closing !== text.charAt(at)) return null;
    }
  }
  return open[0]?.at ?? null;
};

/** Over notes and over texts in quotation marks at once. */
const nextFrom = (text: string, at: number): number => {
  const letter = text.charAt(at);
  if (letter === "#" && isBlank(text.charAt(at - 1))) return lineEnd(text, at);
  const isQuote = letter === '"' || letter === "'";
  return isQuote && beginsValue(text, at) ? quoteEnd(text, at) : at + 1;
};

const CLOSING: Readonly<Record<string, string>> = { "[": "]", "{": "}" };

const isBlank = (letter: string): boolean => letter === "" || /\s/.test(letter);

/** Behind a colon or a dash with its space, a comma, another bracket, or first in its line; elsewhere it is a letter of a text. */
const beginsValue = (text: string, at: number): boolean => {
  let before = at - 1;
  while (before >= 0 && (text[before] === " " || text[before] === "\t")) before -= 1;
  const letter = text.charAt(before);
  return "[{,\n".includes(letter) || (":-".includes(letter) && before < at - 1);
};

const lineEnd = (text: string, at: number): number => {
  const end = text.indexOf("\n", at);
  return end < 0 ? text.length : end;
};

const quoteEnd = (text: string, at: number): number => {
  const mark = text.charAt(at);
  let end = at + 1;
  while (end < text.length && text[end] !== mark) end += mark === '"' && text[end] === "\\" ? 2 : 1;
  return end + 1;
};

// What is looked at before a text is parsed: its size, its nesting, its keys, and what designs do without.
// Each look is one pass over the characters, so that a hostile file is refused in milliseconds.

import { type Finding, finding } from "../diagnostics/finding.ts";
import { TEXT_CODES } from "./codes-of-text.ts";
import { type Source, spanIn } from "./source.ts";

/** Reasons not to parse the text at all; empty where it may be parsed. */
export const capFindings = (source: Source): readonly Finding[] => {
  if (source.text.length > MOST_CHARACTERS) {
    return [tooLarge(source)];
  }
  return [
    hiddenCharacter(source),
    tooDeep(source),
    tooManyKeys(source),
    directive(source),
    secondDocument(source),
  ].filter((found) => found !== null);
};

/** Ten times the largest panel that was tried (120 components, 240 markings). */
export const MOST_CHARACTERS = 131_072;
/** The deepest value of a design lies at nine. */
const MOST_LEVELS = 32;
/** The largest panel that was tried has 3,000. */
const MOST_MARKS = 15_000;

const tooLarge = (source: Source): Finding =>
  finding(TEXT_CODES.tooLarge, {
    message: `the file has ${source.text.length} characters; a design has at most ${MOST_CHARACTERS}`,
    span: spanIn(source, 0, 0),
    measured: { value: source.text.length, unit: "count" },
    limit: { value: MOST_CHARACTERS, unit: "count" },
  });

/** Controls except tab, LF and CR LF; lone surrogates; direction marks, line separators, a later byte order mark. */
const HIDDEN =
  /[^\P{Cc}\t\n\r]|\r(?!\n)|\p{Cs}|[\u200b\u200e\u200f\u2028\u2029\u202a-\u202e\u2060\u2066-\u2069\ufeff\ufffe\uffff]/gu;

const hiddenCharacter = (source: Source): Finding | null => {
  const places = [...source.text.matchAll(HIDDEN)].filter(
    (match) => !(match.index === 0 && match[0] === "\uFEFF"),
  );
  const first = places[0];
  if (first === undefined) {
    return null;
  }
  const code = first[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, "0");
  const name = first[0] === "\r" ? "a line end of old kind (a lone carriage return)" : `U+${code}`;
  return finding(TEXT_CODES.hiddenCharacter, {
    message: `the text holds a character that cannot be seen, ${name}; delete it`,
    span: spanIn(source, first.index, first.index + 1),
    suppressed: places.length - 1,
  });
};

const tooDeep = (source: Source): Finding | null => {
  const at = bracketsTooDeep(source.text) ?? indentationTooDeep(source.text);
  return at === null
    ? null
    : finding(TEXT_CODES.tooDeep, {
        message: `brackets or indentation are nested more than ${MOST_LEVELS} deep`,
        span: spanIn(source, at, at + 1),
        limit: { value: MOST_LEVELS, unit: "count" },
      });
};

/** Brackets within quotation marks and comments count too: a text that has 32 open ones is no design. */
const bracketsTooDeep = (text: string): number | null => {
  let open = 0;
  for (let index = 0; index < text.length; index += 1) {
    const character = text[index];
    if (character === "[" || character === "{") {
      open += 1;
    } else if (character === "]" || character === "}") {
      open = Math.max(0, open - 1);
    } else if (character === "\n" && /[^\s#[{,-]/.test(text[index + 1] ?? " ")) {
      // A line that begins at the left edge with a key: whatever was open is closed or lost.
      open = 0;
    }
    if (open > MOST_LEVELS) {
      return index;
    }
  }
  return null;
};

/** Levels of the block structure: steps of indentation, and dashes or question marks on one line. */
const indentationTooDeep = (text: string): number | null => {
  const indents: number[] = [];
  for (const { index, 0: lead } of text.matchAll(/^(?:[ \t]*[-?:](?=[ \t\n\r]))*[ \t]*/gm)) {
    const marks = lead.match(/[-?:]/g)?.length ?? 0;
    while ((indents.at(-1) ?? -1) >= lead.length) {
      indents.pop();
    }
    if (indents.length + marks > MOST_LEVELS) {
      return index;
    }
    indents.push(lead.length);
  }
  return null;
};

/** Whatever costs the parser a step of its own. */
const MARKS = /[[\]{}"'&*!|>%@`\n]|[:?-](?=[\s,[\]{}"']|$)/g;

const tooManyKeys = (source: Source): Finding | null => {
  let count = 0;
  for (const match of source.text.matchAll(MARKS)) {
    count += 1;
    if (count > MOST_MARKS) {
      return finding(TEXT_CODES.tooManyKeys, {
        message: `the file has more than ${MOST_MARKS} keys, brackets, quotation marks and lines`,
        span: spanIn(source, match.index, match.index + 1),
        limit: { value: MOST_MARKS, unit: "count" },
      });
    }
  }
  return null;
};

const directive = (source: Source): Finding | null => {
  const match = /^\uFEFF?(?:[ \t]*(?:#[^\n]*)?\r?\n)*(%[^\r\n]*)/.exec(source.text);
  if (match === null) {
    return null;
  }
  const line = match[1] ?? "";
  const start = match[0].length - line.length;
  return finding(TEXT_CODES.directive, {
    message: "a line that begins with % is not used in designs; take it out",
    span: spanIn(source, start, start + line.length),
  });
};

/** A `---` may open the file; any further one, or anything behind a `...`, is a second document. */
const secondDocument = (source: Source): Finding | null => {
  const opening = /^\uFEFF?(?:(?:[ \t]*#|%)[^\n]*\n|[ \t\r]*\n)*---(?=[ \t\r\n]|$)/.exec(
    source.text,
  );
  const from = opening?.[0].length ?? 0;
  const mark = /^(?:---|\.\.\.)(?=[ \t\r\n]|$)/gm;
  mark.lastIndex = from;
  const match = mark.exec(source.text);
  if (match === null) {
    return null;
  }
  const rest = source.text.slice(match.index + 3).replaceAll(/^\s*#.*$/gm, "");
  if (match[0] === "..." && rest.trim() === "") {
    return null;
  }
  return finding(TEXT_CODES.secondDocument, {
    message: `a second document begins at this line of ${match[0]}; put it into a file of its own`,
    span: spanIn(source, match.index, match.index + 3),
  });
};

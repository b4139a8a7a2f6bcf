// The parser's errors in the words of this program.
// Only the first few are told: what follows a slip of the bracket is mostly its echo.

import { type Finding, finding } from "../diagnostics/finding.ts";
import { TEXT_CODES } from "./codes-of-text.ts";
import { type MissingComma, missingComma } from "./missing-comma.ts";
import { openBracket } from "./open-bracket.ts";
import { replacement, type Source, spanIn } from "./source.ts";

interface ParseError {
  readonly code: string;
  readonly pos: readonly [number, number];
}

/** `null` stands for a parser that gave up. Tags and aliases are refused elsewhere. */
export const syntaxFindings = (
  source: Source,
  errors: readonly ParseError[] | null,
): readonly Finding[] => {
  if (errors === null) {
    return [syntaxFinding(source, { code: "IMPOSSIBLE", pos: [0, 0] }, 0)];
  }
  const wrong = errors.filter(({ code }) => !REFUSED_ELSEWHERE.has(code));
  const commas = missingCommas(source, wrong);
  if (commas.length > 0) return commas;
  const bracket = wrong.length === 0 ? null : openBracket(source.text);
  // What is told behind a bracket that was never closed is its echo.
  const cause = wrong.some(({ pos }) => bracket !== null && pos[0] >= bracket) ? bracket : null;
  const causes: readonly ParseError[] =
    cause === null
      ? wrong
      : [
          ...wrong.filter(({ pos }) => pos[0] < cause),
          { code: OPEN_BRACKET, pos: [cause, cause + 1] },
        ];
  const told = causes.slice(0, MOST_TOLD);
  return told.map((error, index) =>
    syntaxFinding(source, error, index === 0 ? Math.max(0, wrong.length - told.length) : 0),
  );
};

/** Each once, the first few; what else a parser says of such a text is their echo. */
const missingCommas = (source: Source, errors: readonly ParseError[]): readonly Finding[] => {
  const found = new Map<number, MissingComma>();
  for (const { code, pos } of errors) {
    const one = OF_COMMAS.has(code) ? missingComma(source.text, pos[0]) : null;
    if (one !== null) found.set(one.from, one);
  }
  return [...found.values()]
    .toSorted((a, b) => a.from - b.from)
    .slice(0, MOST_TOLD)
    .map(({ from, to, key }) => {
      const span = spanIn(source, from, to);
      return finding(TEXT_CODES.syntax, {
        message: `a comma is missing before \`${key}:\``,
        span: spanIn(source, from, source.text.indexOf(":", to) + 1),
        remedies: [{ title: `write , ${key}:`, edits: [replacement(source, span, ",")] }],
      });
    });
};

const OF_COMMAS = new Set(["BLOCK_IN_FLOW", "UNEXPECTED_TOKEN"]);

/** Of no parser: this program finds it. */
const OPEN_BRACKET = "OPEN_BRACKET";

const MOST_TOLD = 3;
const REFUSED_ELSEWHERE = new Set(["TAG_RESOLVE_FAILED", "BAD_ALIAS"]);

const syntaxFinding = (source: Source, error: ParseError, suppressed: number): Finding => {
  const tab = error.code === "TAB_AS_INDENT";
  const [start, end] = error.pos;
  return finding(tab ? TEXT_CODES.tab : TEXT_CODES.syntax, {
    message: WORDS[error.code] ?? OTHERWISE,
    span: spanIn(source, start, Math.max(start, Math.min(end, source.text.length))),
    suppressed,
  });
};

const OTHERWISE = "this can't be taken apart into keys and values";

const WORDS: Readonly<Record<string, string>> = {
  [OPEN_BRACKET]: "the bracket that is opened here is not closed",
  TAB_AS_INDENT: "the line is indented with a tab; use spaces",
  BAD_INDENT: "the indentation does not fit the lines around it, or a bracket above is not closed",
  MISSING_CHAR: "a closing bracket or quotation mark, a comma or a space is missing here",
  BAD_DQ_ESCAPE:
    "the backslash begins no known escape; within \"...\" write \\\\ for a backslash, or use '...'",
  BAD_SCALAR_START: "a text can't begin with this character; put it in quotation marks",
  BLOCK_AS_IMPLICIT_KEY:
    "a second colon on the line; put a text that holds `: ` in quotation marks",
  BLOCK_IN_FLOW: "a line of the block form stands within brackets",
  KEY_OVER_1024_CHARS: "the key is longer than 1024 characters",
  MULTILINE_IMPLICIT_KEY: "a colon is missing: the line can't be joined to the one above",
  UNEXPECTED_TOKEN: "something stands here that does not belong here",
  BAD_PROP_ORDER: "an anchor or a tag stands in a wrong place; designs use neither",
  MULTIPLE_ANCHORS: "two anchors stand before one value; designs use none",
  MULTIPLE_TAGS: "two tags stand before one value; designs use none",
  IMPOSSIBLE: "the text is too tangled to be read; look for brackets that are not closed",
};

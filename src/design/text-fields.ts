// Fields for words: texts, names, choices, dates, colours, paths of files.

import { finding } from "../diagnostics/finding.ts";
import { inWords, nearestNames } from "../diagnostics/nearest.ts";
import { printable } from "../diagnostics/printable.ts";
import { TEXT_CODES } from "./codes-of-text.ts";
import { VALUE_CODES } from "./codes-of-values.ts";
import { type Field, mapped, type Reading, read, refined, unread } from "./field.ts";
import { quoted } from "./quoted.ts";
import { scalarField } from "./scalar-field.ts";
import { quotedFrom, replacement, type Source, shortened, spanIn } from "./source.ts";
import { about, type ScalarNode } from "./text-node.ts";
import type { IsoDate } from "./written.ts";

/** Text on one line, as it will be engraved or printed. */
export const text = (what: string, most = 200): Field<string> =>
  scalarField({
    what,
    schema: { type: ["string", "number", "boolean"], description: what },
    parse: (node, source) => wholeText(node, source, { most, lines: false }),
  });

/** What tells two issues of a panel apart, in characters that every file format can repeat. */
export const revisionMark = (what: string): Field<string> =>
  refined(text(what, 12), (value, node) =>
    REVISION.test(value)
      ? read(value, node)
      : unread(
          node,
          finding(VALUE_CODES.notARevision, {
            message: `${about(node)}${shortened(value)} is not ${what}; write letters a to z, figures, points and hyphens, like B or 2026-10-02`,
            span: node.span,
          }),
        ),
  );

const REVISION = /^[A-Za-z0-9](?:[A-Za-z0-9._ -]*[A-Za-z0-9._-])?$/;

/** Text that may run over several lines. */
export const longText = (what: string): Field<string> =>
  scalarField({
    what,
    schema: { type: ["string", "number", "boolean"], description: what },
    parse: (node, source) => wholeText(node, source, { most: 4000, lines: true }),
  });

/** A name of the user's or the catalogue's: small letters, figures and hyphens, a letter first. */
export const name = (what: string): Field<string> =>
  patterned({ what, pattern: NAME, code: VALUE_CODES.notAName, hint: nameHint });

/** A name that may point at the member of a pattern: `warn.3`. */
export const reference = (what: string): Field<string> =>
  patterned({ what, pattern: REFERENCE, code: VALUE_CODES.notAName, hint: nameHint });

/** A name to look up in a table of parts or stock; may begin with a figure. */
export const NAME = /^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/;
const REFERENCE = /^[a-z][a-z0-9]*(?:-[a-z0-9]+)*(?:\.[1-9][0-9]{0,3})?$/;
/** Longer names make file names that some systems refuse. */
export const LONGEST_NAME = 64;

/** A colour for a cutter's software. */
export const colour = (what: string): Field<string> =>
  mapped(
    patterned({
      what,
      pattern: /^#[0-9a-fA-F]{6}$/,
      code: VALUE_CODES.notAColour,
      hint: () => 'write it like "#ff0000", in quotation marks',
    }),
    (value) => value.toLowerCase(),
  );

export const date = (what: string): Field<IsoDate> =>
  scalarField({
    what,
    schema: { type: "string", pattern: "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", description: what },
    parse: (node) =>
      isDate(node.text)
        ? read<IsoDate>(node.text, node)
        : unread(
            node,
            finding(VALUE_CODES.notADate, {
              message: `${about(node)}${shortened(node.text)} is not a date; write it like 2026-10-02`,
              span: node.span,
            }),
          ),
  });

/** One of several words. */
export const oneOf = <const Word extends string>(
  what: string,
  words: readonly Word[],
): Field<Word> =>
  scalarField({
    what,
    schema: { enum: words, description: what },
    parse: (node, source) => {
      const word = words.find((candidate) => candidate === node.text);
      return word === undefined ? unknownWord(node, source, words) : read(word, node);
    },
  });

export const yesNo = (what: string): Field<boolean> => {
  const field = mapped(
    oneOf(what, ["yes", "no", "true", "false"]),
    (word) => word === "yes" || word === "true",
  );
  return { ...field, schema: { enum: ["yes", "no", true, false], description: what } };
};

const unknownWord = (
  node: ScalarNode,
  source: Source,
  words: readonly string[],
): Reading<never> => {
  const nearest = nearestNames(node.text, words);
  const several =
    words.length > 3 ? `the nearest are ${inWords(nearest, "and")}` : `it can be ${inWords(words)}`;
  return unread(
    node,
    finding(VALUE_CODES.unknownWord, {
      message: `${about(node)}${shortened(node.text)} is not known here; ${several}`,
      span: node.span,
      remedies: nearest
        .slice(0, 1)
        .map((word) => ({ title: `write ${word}`, edits: [replacement(source, node.span, word)] })),
    }),
  );
};

const wholeText = (
  node: ScalarNode,
  source: Source,
  { most, lines }: { readonly most: number; readonly lines: boolean },
): Reading<string> => {
  const refuse = (code: Parameters<typeof finding>[0], said: string): Reading<never> =>
    unread(node, finding(code, { message: `${about(node)}${said}`, span: node.span }));
  if (node.eaten !== null) {
    return cutOff(node, source, node.eaten.end);
  }
  const value = node.style === "block" ? node.text.trimEnd() : node.text;
  if (value.trim() === "") {
    return refuse(VALUE_CODES.emptyText, "is an empty text");
  }
  if (value.length > most) {
    return refuse(
      VALUE_CODES.textTooLong,
      `has ${value.length} characters; at most ${most} find room`,
    );
  }
  const shown = lines ? value.replaceAll(/\n/g, "") : value;
  if (!lines && /[\n\r]/.test(value)) {
    return refuse(
      VALUE_CODES.textOfLines,
      "runs over more than one line; write each line by itself",
    );
  }
  return printable(shown) === shown
    ? read(value, node)
    : refuse(
        TEXT_CODES.hiddenCharacter,
        `holds a character that cannot be seen: ${printable(shown).slice(0, 60)}`,
      );
};

const cutOff = (node: ScalarNode, source: Source, end: number): Reading<never> => {
  const span = spanIn(source, node.span.start, end);
  const whole = source.text.slice(span.start, span.end);
  const hash = whole.indexOf("#", node.span.end - node.span.start);
  const spaced = `${whole.slice(0, hash + 1)} ${whole.slice(hash + 1)}`;
  return unread(
    node,
    finding(TEXT_CODES.commentInText, {
      message: `${about(node)}the # cuts ${quotedFrom(source, span)} off behind ${shortened(node.text)}; write ${quoted(whole)}`,
      span,
      remedies: [
        { title: `write ${quoted(whole)}`, edits: [replacement(source, span, quoted(whole))] },
        {
          title: "keep it as a comment, with a space behind the #",
          edits: [replacement(source, span, spaced)],
        },
      ],
    }),
  );
};

interface Pattern {
  readonly what: string;
  readonly pattern: RegExp;
  readonly code: Parameters<typeof finding>[0];
  readonly hint: (text: string) => string;
}

const patterned = ({ what, pattern, code, hint }: Pattern): Field<string> =>
  scalarField({
    what,
    schema: { type: "string", pattern: pattern.source, description: what },
    parse: (node) =>
      node.text.length <= LONGEST_NAME && pattern.test(node.text)
        ? read(node.text, node)
        : unread(
            node,
            finding(code, {
              message: `${about(node)}${shortened(node.text)} is not ${what}; ${hint(node.text)}`,
              span: node.span,
            }),
          ),
  });

/** A name near to what was written, so that the message can show one that works. */
export const nameHint = (written: string): string => {
  const near = written
    .slice(0, LONGEST_NAME)
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^[^a-z]+|-+$/g, "");
  const rule = `at most ${LONGEST_NAME} small letters, figures and hyphens, a letter first`;
  return near === "" || near === written ? rule : `${rule}, like \`${near}\``;
};

const isDate = (written: string): boolean => {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(written);
  if (parts === null) {
    return false;
  }
  const [year, month, day] = parts.slice(1).map(Number) as [number, number, number];
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
  return year > 0 && day >= 1 && day <= days;
};

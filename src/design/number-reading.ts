// What all fields of numbers share: the words for what is wrong with a number, its bounds, and the refusal itself.

import { type CodeEntry, finding, type Remedy } from "../diagnostics/finding.ts";
import { decimal } from "../geometry/number.ts";
import { TEXT_CODES } from "./codes-of-text.ts";
import { VALUE_CODES } from "./codes-of-values.ts";
import { type Reading, read, unread } from "./field.ts";
import type { JsonSchema } from "./json-schema.ts";
import { lookAlike } from "./look-alikes.ts";
import { LONGEST_NUMBER, type NumberFault, numberText, type Rational } from "./number-text.ts";
import { replacement, type Source, shortened } from "./source.ts";
import { about, type ScalarNode } from "./text-node.ts";

/**
 * Bounds of what makes sense. `least` and `most` may be reached, `above` not. `taken`: the most that a floor above takes; it
 * judges what lies between that and `most`, and what lies beyond both is told the smaller.
 */
export interface Bounds {
  readonly taken?: number;
  readonly least?: number;
  readonly most?: number;
  readonly above?: number;
}

export interface NumberParts<Value> {
  /** The figures without their unit. */
  readonly figures: string;
  readonly code: CodeEntry;
  /** "a length". */
  readonly expected: string;
  /** Of what can be read: "12.5 mm or 3/8 in". */
  readonly like: string;
  readonly build: (value: Rational) => Reading<Value>;
}

export const numberReading = <Value>(
  node: ScalarNode,
  source: Source,
  parts: NumberParts<Value>,
): Reading<Value> => {
  const parsed = numberText(parts.figures);
  if (parsed.kind === "number") {
    return parts.build(parsed.value);
  }
  const other = lookAlike(node, source);
  return other === null
    ? numberRefused(node, source, { why: parsed.why, parts })
    : unread(node, other);
};

export interface Refusal {
  readonly said: string;
  readonly remedies?: readonly Remedy[];
}

export const refused = (
  node: ScalarNode,
  code: CodeEntry,
  { said, remedies = [] }: Refusal,
): Reading<never> =>
  unread(node, finding(code, { message: `${about(node)}${said}`, span: node.span, remedies }));

/** The value, or a finding where it lies outside its bounds. `unit` is written behind the numbers. */
export const bounded = (
  node: ScalarNode,
  value: number,
  { bounds, unit }: { readonly bounds: Bounds; readonly unit: string },
): Reading<number> => {
  const { least, most, above, taken = most } = bounds;
  const written = (limit: number): string => `${decimal(limit, 6)}${unit}`;
  const said =
    above !== undefined && value <= above
      ? `must be more than ${written(above)}`
      : least !== undefined && value < least
        ? `must be at least ${written(least)}`
        : most !== undefined && value > most
          ? `must be at most ${written(taken ?? most)}`
          : null;
  return said === null
    ? read(value, node)
    : refused(node, VALUE_CODES.outOfRange, { said: `${shortened(node.text)} ${said}` });
};

export const schemaBounds = ({ least, most, above }: Bounds): JsonSchema => {
  const minimum = least ?? above;
  return {
    ...(minimum === undefined ? {} : { minimum }),
    ...(most === undefined ? {} : { maximum: most }),
  };
};

/** What is no value here with its figures written out either is told that: writing them would not help. */
const exponentRefused = <Value>(
  node: ScalarNode,
  {
    meant,
    instead,
    parts,
  }: {
    readonly meant: string | null;
    readonly instead: (figures: string) => Remedy;
    readonly parts: NumberParts<Value>;
  },
): Reading<Value> => {
  const is = `${shortened(node.text)} is written with an exponent`;
  const plain = meant === null ? null : numberText(meant);
  if (meant === null || plain?.kind !== "number")
    return refused(node, VALUE_CODES.exponent, {
      said: `${is}; write its figures out, like ${parts.like}`,
    });
  const reading = parts.build(plain.value);
  if (reading.kind !== "read") return reading;
  const remedy = instead(meant);
  return refused(node, VALUE_CODES.exponent, {
    said: `${is}; ${remedy.title}`,
    remedies: [remedy],
  });
};

const numberRefused = <Value>(
  node: ScalarNode,
  source: Source,
  { why, parts }: { readonly why: NumberFault; readonly parts: NumberParts<Value> },
): Reading<Value> => {
  const is = shortened(node.text);
  const instead = (figures: string): Remedy => {
    const meant = node.text.replace(parts.figures, figures);
    return { title: `write ${meant}`, edits: [replacement(source, node.span, meant)] };
  };
  switch (why.kind) {
    case "grouped": {
      const remedy = instead(why.meant);
      const said = `the thousands of ${is} are parted; ${remedy.title}`;
      return refused(node, parts.code, { said, remedies: [remedy] });
    }
    case "comma": {
      const remedy = instead(why.meant);
      const said = `${is} has a decimal comma; ${remedy.title}`;
      return refused(node, TEXT_CODES.commaInNumber, { said, remedies: [remedy] });
    }
    case "exponent":
      return exponentRefused(node, { meant: why.meant, instead, parts });
    case "not-finite":
      return refused(node, VALUE_CODES.notFinite, {
        said: `${is} is not a number that can be made; write it like ${parts.like}`,
      });
    case "zero-denominator":
      return refused(node, VALUE_CODES.notFinite, {
        said: `${is} divides by zero; write it like ${parts.like}`,
      });
    case "too-long":
      return refused(node, VALUE_CODES.outOfRange, {
        said: `${is} has ${parts.figures.length} characters, and a number has ${LONGEST_NUMBER} at most; write it like ${parts.like}`,
      });
    case "none":
      return refused(node, parts.code, {
        said: `${is} is not ${parts.expected}; write it like ${parts.like}`,
      });
  }
};

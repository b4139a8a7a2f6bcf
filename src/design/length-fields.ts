// Fields for lengths, of whatever bounds and in whatever place.

import type { CodeEntry } from "../diagnostics/finding.ts";
import { decimal } from "../geometry/number.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { VALUE_CODES } from "./codes-of-values.ts";
import { type Field, mapped, type Reading, unread } from "./field.ts";
import { lookAlike } from "./look-alikes.ts";
import { type Bounds, bounded, numberReading, refused, schemaBounds } from "./number-reading.ts";
import type { Rational } from "./number-text.ts";
import { inKnownUnit } from "./other-units.ts";
import { scalarField } from "./scalar-field.ts";
import { replacement, type Source, shortened } from "./source.ts";
import type { ScalarNode } from "./text-node.ts";
import type { Length } from "./written.ts";
import { inMillimetres, type LengthUnit, lengthParts, lengthUnit } from "./written-length.ts";

/** A length with the unit that it was written in; of any sign where no bounds are given. */
export const length = (what: string, bounds: Bounds = {}): Field<Length> =>
  scalarField({
    what,
    schema: {
      anyOf: [
        { type: "number", ...schemaBounds(bounds) },
        { type: "string", pattern: LENGTH_PATTERN },
      ],
      description: `${what}. Millimetres, or with a unit: 12.5 mm, 1.2 cm, 3/8 in, 5 3/4 in.`,
    },
    parse: (node, source) => lengthReading(node, source, { bounds, code: VALUE_CODES.notALength }),
  });

/** A length as plain millimetres. */
export const millimetres = (what: string, bounds: Bounds = {}): Field<Mm> =>
  mapped(length(what, bounds), (value) => value.mm);

/** Millimetres above zero. */
export const someMillimetres = (what: string): Field<Mm> => millimetres(what, { above: 0 });

/** Millimetres from zero up. */
export const noOrSomeMillimetres = (what: string): Field<Mm> => millimetres(what, { least: 0 });

export const LENGTH_PATTERN =
  '^[+-]?([0-9]*\\.?[0-9]+ ?(mm|cm|m|in|")?|([0-9]+[ -])?[0-9]+/[0-9]+ ?(mm|cm|m|in|"))$';

export interface LengthRules {
  readonly bounds: Bounds;
  /** What to say where it is no length at all. */
  readonly code: CodeEntry;
}

export const lengthReading = (
  node: ScalarNode,
  source: Source,
  { bounds, code }: LengthRules,
): Reading<Length> => {
  const { figures, unit } = lengthParts(node.text.trim());
  const known = lengthUnit(unit);
  if (known === undefined) {
    return unknownUnit(node, source, unit);
  }
  return numberReading(node, source, {
    figures,
    code,
    expected: EXPECTED[code.code] ?? "a length",
    like: "12.5 mm or 3/8 in",
    build: (value) =>
      value.fraction && unit === ""
        ? fractionAlone(node, source, value)
        : builtLength(node, value, { bounds, known }),
  });
};

const EXPECTED: Readonly<Record<string, string>> = {
  [VALUE_CODES.notASize.code]: "a length or a count like 11 modules",
  [VALUE_CODES.notAPlace.code]: "a length or a word like centre",
};

/** Nothing in a console is longer than 100 m; larger numbers are slips of the decimal point. */
const LONGEST = 100_000;

const builtLength = (
  node: ScalarNode,
  value: Rational,
  { bounds, known }: { readonly bounds: Bounds; readonly known: LengthUnit },
): Reading<Length> => {
  const within = bounded(node, inMillimetres(value, known), {
    bounds: { least: -LONGEST, most: LONGEST, ...bounds },
    unit: " mm",
  });
  return within.kind === "read"
    ? { ...within, value: { kind: "length", mm: mm(within.value), unit: known.unit } }
    : within;
};

const unknownUnit = (node: ScalarNode, source: Source, unit: string): Reading<never> => {
  const other = lookAlike(node, source);
  if (other !== null) {
    return unread(node, other);
  }
  const meant = inKnownUnit(lengthParts(node.text.trim()).figures, unit);
  const said = `the unit ${shortened(unit)} is not known here; lengths take mm, cm, m, in or "`;
  if (meant === null) return refused(node, VALUE_CODES.unknownUnit, { said });
  const title = `write ${meant}`;
  return refused(node, VALUE_CODES.unknownUnit, {
    said: `${said}: ${title}`,
    remedies: [{ title, edits: [replacement(source, node.span, meant)] }],
  });
};

const fractionAlone = (node: ScalarNode, source: Source, value: Rational): Reading<never> => {
  const metric = `${decimal(inMillimetres(value, { mm: [1n, 1n] }), 6)} mm`;
  const inches = `${node.text.trim()} in`;
  return refused(node, VALUE_CODES.fractionWithoutUnit, {
    said: `${shortened(node.text)} has no unit; write ${metric} or ${inches}`,
    remedies: [metric, inches].map((meant) => ({
      title: `write ${meant}`,
      edits: [replacement(source, node.span, meant)],
    })),
  });
};

// Fields for angles, bare numbers and counts.

import { inWords } from "../diagnostics/nearest.ts";
import { decimal } from "../geometry/number.ts";
import { type Degrees, degrees } from "../geometry/quantity.ts";
import { VALUE_CODES } from "./codes-of-values.ts";
import type { Field, Reading } from "./field.ts";
import { type Bounds, bounded, numberReading, refused, schemaBounds } from "./number-reading.ts";
import { numberText, roundedTo } from "./number-text.ts";
import { scalarField } from "./scalar-field.ts";
import { replacement, type Source, shortened } from "./source.ts";
import type { ScalarNode } from "./text-node.ts";
import { wholeNumbersNear } from "./whole-number.ts";

/** Degrees: `15`, `15 deg`, `15°`. */
export const angle = (what: string, bounds: Bounds = {}): Field<Degrees> =>
  scalarField({
    what,
    schema: {
      anyOf: [
        { type: "number", ...schemaBounds({ ...TURN, ...bounds }) },
        { type: "string", pattern: "^[+-]?[0-9]*\\.?[0-9]+ ?(deg|°)?$" },
      ],
      description: `${what}. Degrees: 15, 15 deg or 15°.`,
    },
    parse: (node, source) => angleReading(node, source, bounds),
  });

/** A bare number with a point as decimal mark and no unit. */
export const number = (what: string, bounds: Bounds = {}): Field<number> =>
  scalarField({
    what,
    schema: { type: "number", ...schemaBounds(bounds), description: what },
    parse: (node, source) =>
      numberReading(node, source, {
        figures: node.text.trim(),
        code: VALUE_CODES.notANumber,
        expected: "a number",
        like: "12.5, without a unit",
        build: (value) =>
          bounded(node, roundedTo(value, DECIMALS), {
            bounds: { least: -LARGEST, most: LARGEST, ...bounds },
            unit: "",
          }),
      }),
  });

/** A whole number. */
export const count = (what: string, { least = 0, most = 9999 }: Bounds = {}): Field<number> =>
  scalarField({
    what,
    schema: { type: "integer", minimum: least, maximum: most, description: what },
    parse: (node, source) =>
      /^-?\d{1,9}$/.test(node.text)
        ? bounded(node, Number(node.text), { bounds: { least, most }, unit: "" })
        : notWhole(node, source, { least, most }),
  });

const notWhole = (
  node: ScalarNode,
  source: Source,
  bounds: { readonly least: number; readonly most: number },
): Reading<number> => {
  const meant = wholeNumbersNear(node.text.trim(), bounds).map((value) => decimal(value, 0));
  const { least, most } = bounds;
  const like =
    meant.length === 0 ? `like ${decimal(Math.min(Math.max(4, least), most), 0)}` : inWords(meant);
  return refused(node, VALUE_CODES.notACount, {
    said: `${shortened(node.text)} is not a whole number; write ${meant.length === 0 ? "it " : ""}${like}`,
    remedies: meant.map((value) => ({
      title: `write ${value}`,
      edits: [replacement(source, node.span, value)],
    })),
  });
};

/** Bare numbers and angles keep nine decimals. */
const DECIMALS = 1_000_000_000n;
const LARGEST = 1e9;

const angleReading = (node: ScalarNode, source: Source, bounds: Bounds): Reading<Degrees> => {
  const text = node.text.trim();
  const split =
    text.length > LONGEST_WRITTEN ? null : /^(.*?[\d.,])\s*(°|[a-zA-Z"']+)$/s.exec(text);
  const [, figures = text, unit = ""] = split ?? [];
  const known = unit === "deg" || unit === "°" || unit === "";
  if (!known && numberText(figures).kind === "number") {
    const said = `the unit ${shortened(unit)} is not known here; angles take deg or °`;
    if (!/^degrees?$/i.test(unit)) return refused(node, VALUE_CODES.unknownUnit, { said });
    const title = `write ${figures} deg`;
    return refused(node, VALUE_CODES.unknownUnit, {
      said: `${said}: ${title}`,
      remedies: [{ title, edits: [replacement(source, node.span, `${figures} deg`)] }],
    });
  }
  const reading = numberReading(node, source, {
    figures: known ? figures : text,
    code: VALUE_CODES.notAnAngle,
    expected: "an angle",
    like: "15 deg",
    build: (value) =>
      bounded(node, roundedTo(value, DECIMALS), {
        bounds: { ...TURN, ...bounds },
        unit: "°",
      }),
  });
  return reading.kind === "read" ? { ...reading, value: degrees(reading.value) } : reading;
};

/** A full turn to each side. */
const TURN: Bounds = { least: -360, most: 360 };
/** A longer text is no angle; taking it apart would only cost time. */
const LONGEST_WRITTEN = 60;

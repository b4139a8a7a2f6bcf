// Fields for sizes that may be counted in the mount's own pitch: `11 modules`, `3 U`, `42 HP`.

import { inWords } from "../diagnostics/nearest.ts";
import { decimal } from "../geometry/number.ts";
import { VALUE_CODES } from "./codes-of-values.ts";
import type { Field, Reading } from "./field.ts";
import { LENGTH_PATTERN, lengthReading } from "./length-fields.ts";
import { bounded, refused } from "./number-reading.ts";
import { scalarField } from "./scalar-field.ts";
import { replacement, type Source, shortened } from "./source.ts";
import type { ScalarNode } from "./text-node.ts";
import { wholeNumbersNear } from "./whole-number.ts";
import type { Pitches, Size } from "./written.ts";

/** A length above zero, or a count of pitches. `taken`: see Bounds. */
export const size = (what: string, taken?: number): Field<Size> =>
  scalarField<Size>({
    what,
    schema: {
      anyOf: [
        { type: "number", minimum: 0 },
        { type: "string", pattern: LENGTH_PATTERN },
        { type: "string", pattern: PITCHES_PATTERN },
      ],
      description: `${what}. A length, or a count: 11 modules, 3 U, 42 HP.`,
    },
    parse: (node, source) =>
      pitchesReading(node, source) ??
      lengthReading(node, source, {
        bounds: { above: 0, ...(taken === undefined ? {} : { taken }) },
        code: VALUE_CODES.notASize,
      }),
  });

/** The longest panel: no sheet is sold longer (4 m is the usual most, from memory, unverified); a longer one is a slip. */
export const LONGEST_PANEL = 10_000;

/** A count of pitches and nothing else. */
export const pitches = (what: string): Field<Pitches> =>
  scalarField({
    what,
    schema: { type: "string", pattern: PITCHES_PATTERN, description: what },
    parse: (node, source) =>
      pitchesReading(node, source) ??
      refused(node, VALUE_CODES.notASize, {
        said: `${shortened(node.text)} is not a count; write it like 11 modules, 3 U or 42 HP`,
      }),
  });

const PITCHES_PATTERN = "^[0-9]+ ?(modules?|U|HP)$";

/** null where the text does not end with a pitch's word. */
const pitchesReading = (node: ScalarNode, source: Source): Reading<Pitches> | null => {
  const [, figures = "", word = ""] = /^(\S+?)\s*(modules?|U|HP)$/.exec(node.text.trim()) ?? [];
  const unit = UNITS[word];
  if (unit === undefined) {
    return null;
  }
  if (!/^\d{1,6}$/.test(figures)) {
    const meant = wholeNumbersNear(figures, { least: 1, most: MOST_PITCHES }).map(
      (count) => `${decimal(count, 0)} ${unit}`,
    );
    return refused(node, VALUE_CODES.notACount, {
      said: `${shortened(node.text)} is not a whole number of ${unit} from 1 to ${decimal(MOST_PITCHES, 0)}; write ${meant.length === 0 ? `it like ${LIKE[unit]}` : inWords(meant)}`,
      remedies: meant.map((text) => ({
        title: `write ${text}`,
        edits: [replacement(source, node.span, text)],
      })),
    });
  }
  const within = bounded(node, Number(figures), {
    bounds: { least: 1, most: MOST_PITCHES },
    unit: ` ${unit}`,
  });
  return within.kind === "read"
    ? { ...within, value: { kind: "pitches", count: within.value, unit } }
    : within;
};

const UNITS: Readonly<Record<string, Pitches["unit"]>> = {
  module: "modules",
  modules: "modules",
  U: "U",
  HP: "HP",
};

const LIKE: Readonly<Record<Pitches["unit"], string>> = {
  modules: "11 modules",
  U: "3 U",
  HP: "42 HP",
};

/** Ten metres of console rail; more is a slip. */
const MOST_PITCHES = 1000;

// A size under `measured` that no part of its kind can have: on the wrong side of nothing, or of a piece that goes round it.

import { fieldAt } from "../../catalogue/field-path.ts";
import { limitOfFigures } from "../../catalogue/limit-of-figures.ts";
import type { Part } from "../../catalogue/part.ts";
import { spanOf } from "../../design/written.ts";
import {
  type CodeEntry,
  type Finding,
  finding,
  type LimitSource,
} from "../../diagnostics/finding.ts";
import type { PlacedComponent } from "../../layout/panel-layout.ts";
import { isUnder } from "../limits.ts";
import { onePerEntry } from "../one-finding.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { type LengthWords, lengthWords, measureMm } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/measured-impossible",
  severity: "fault",
  title: "a measured size that the part can't have",
  why: "Measured sizes go over the record's own, and everything is cut by them. A bush is thinner than the nut on it and thicker than the shaft in it, a length is more than nothing, and what lies behind the panel (negative) does not lie in front of it. Measure again, or mend the slip.",
  example:
    "components:\n  a: { part: pot-16, at: centre, measured: { hold.diameter: 11 mm, dated: 2026-01-31 } }",
};

export const measuredImpossible: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    onePerEntry(facts.layout.components, (component) => {
      const [first, ...others] = slipsOf(component, facts);
      return first === undefined ? null : said(component, first, { facts, others: others.length });
    }),
};

interface Slip {
  readonly path: string;
  readonly measured: number;
  readonly limit: number;
  readonly must: (words: LengthWords) => string;
  readonly source: LimitSource;
}

const slipsOf = ({ part, common }: PlacedComponent, facts: PanelFacts): readonly Slip[] => {
  const record = facts.catalogue.parts.get(part.id) ?? part;
  const paths = Object.keys(common.measured?.values ?? {});
  return [
    ...paths.flatMap((path) => wrongSide(part, record, path)),
    ...aboveNothing(part),
    ...bushSlips(part, facts),
  ];
};

/** Heights and places count from the seat, so that a sign turned round is another place. */
const wrongSide = (part: Part, record: Part, path: string): readonly Slip[] => {
  const [measured, typical] = [fieldAt(part, path), fieldAt(record, path)];
  if (typeof measured !== "number" || typeof typical !== "number") return [];
  if (measured * typical > 0 || typical === 0) return [];
  const must: Slip["must"] = (words) =>
    `${typical > 0 ? "more" : "less"} than nothing, as the record's ${words(typical)}`;
  return [{ path, measured, limit: 0, must, source: recordOf(record) }];
};

/** What a catalogue file measured has gone into the record itself. Asked once a part: a panel has many of each. */
const aboveNothing = (part: Part): readonly Slip[] => {
  const known = ABOVE_NOTHING.get(part);
  if (known !== undefined) return known;
  const slips = slipsBelowNothing(part);
  ABOVE_NOTHING.set(part, slips);
  return slips;
};

const ABOVE_NOTHING = new WeakMap<Part, readonly Slip[]>();

const slipsBelowNothing = (part: Part): readonly Slip[] =>
  LENGTHS.flatMap((path) => {
    const measured = fieldAt(part, path);
    return typeof measured !== "number" || measured > 0
      ? []
      : [{ path, measured, limit: 0, must: () => "more than nothing", source: recordOf(part) }];
  });

const LENGTHS = [
  "hold.length",
  "hold.diameter",
  "shaft.length",
  "shaft.diameter",
  "lever.length",
  "lever.tip",
];

const bushSlips = (part: Part, { catalogue }: PanelFacts): readonly Slip[] => {
  const { hold, shaft } = part;
  if (hold.kind !== "bush") return [];
  const path = "hold.diameter";
  const source = recordOf(part);
  const nut = catalogue.hardware.get(hold.nut);
  const flats = nut?.kind === "nut" ? nut.acrossFlats : null;
  return [
    ...(flats !== null && !isUnder(hold.diameter, flats)
      ? [
          {
            path,
            measured: hold.diameter,
            limit: flats,
            must: (words: LengthWords) =>
              `thinner than its nut, ${words(flats, hold.diameter)} across the flats`,
            source,
          },
        ]
      : []),
    ...(shaft !== null && !isUnder(shaft.diameter, hold.diameter)
      ? [
          {
            path: "shaft.diameter",
            measured: shaft.diameter,
            limit: hold.diameter,
            must: (words: LengthWords) =>
              `thinner than its bush of ${words(hold.diameter, shaft.diameter)}`,
            source,
          },
        ]
      : []),
  ];
};

const recordOf = ({ figures }: Part): LimitSource => limitOfFigures(figures);

const said = (
  component: PlacedComponent,
  slip: Slip,
  on: { readonly facts: PanelFacts; readonly others: number },
): Finding => {
  const { path, measured, limit, must, source } = slip;
  const written = component.common.measured?.written;
  const span = written === undefined ? spanOf(component.written, "part") : spanOf(written, path);
  const words = lengthWords(on.facts, span);
  return finding(entry, {
    message: `${component.id}: ${path} of ${component.part.id} is ${words(measured, limit)} as measured, and must be ${must(words)}. Measure it again.`,
    span,
    subjects: [component.id],
    measured: measureMm(measured),
    limit: measureMm(limit),
    source,
    suppressed: on.others,
  });
};

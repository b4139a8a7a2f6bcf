// An opening larger than the panel can carry, wherever it is put.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding, type Remedy } from "../../diagnostics/finding.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { decimal } from "../../geometry/number.ts";
import type { CutOut, PanelLayout } from "../../layout/panel-layout.ts";
import { isOver } from "../limits.ts";
import { onePerOwner } from "../one-finding.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { panelOpenings } from "./panel-openings.ts";

const entry: CodeEntry = {
  code: "checks/instrument-fit",
  severity: "fault",
  title: "an opening larger than the panel can carry",
  why: "The opening is as large as the panel itself, or leaves no web beside it, wherever it is put: a 57.15 mm instrument can't be made in a panel of six modules, which is 57.15 mm high. Take a larger panel or a smaller instrument.",
  example:
    "mount: console-rail\nheight: 6 modules\ncomponents:\n  gauge: { part: gauge-57, at: { x: centre, y: centre } }",
};

/** Under this web a sheet can't be cut at all: 1 mm is fragile, common practice. */
const LEAST_WEB = 1;

export const instrumentFit: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    onePerOwner(panelOpenings(facts.layout), ({ cutOut }) => {
      const [excess, other] = excessesOf(cutOut, facts.layout);
      return excess === undefined ? null : tooLarge(cutOut, [excess, other ?? null], facts);
    }),
};

interface Excess {
  readonly key: "height" | "width";
  readonly size: number;
  readonly most: number;
}

/** null where the opening can be carried somewhere in the panel. */
export const excessOf = (cutOut: CutOut, layout: PanelLayout): Excess | null =>
  excessesOf(cutOut, layout)[0] ?? null;

/** The height first. */
const excessesOf = (cutOut: CutOut, layout: PanelLayout): readonly Excess[] => {
  const box = contourExtent(cutOut.contour);
  const room = contourExtent(layout.outline);
  const high = { size: extentHeight(box), most: extentHeight(room) - 2 * LEAST_WEB };
  const wide = { size: extentWidth(box), most: extentWidth(room) - 2 * LEAST_WEB };
  return [
    ...(isOver(high.size, high.most) ? [{ key: "height" as const, ...high }] : []),
    ...(isOver(wide.size, wide.most) ? [{ key: "width" as const, ...wide }] : []),
  ];
};

/** One that is too high and too wide says both: a larger panel has to be both. */
const tooLarge = (
  cutOut: CutOut,
  [excess, other]: readonly [Excess, Excess | null],
  facts: PanelFacts,
): Finding => {
  const { key, size, most } = excess;
  const both = other === null ? [excess] : [excess, other];
  const sizes = both.map((one) => ({ key: one.key, works: sizeThatWorks(one, facts.layout) }));
  const works = sizes.flatMap((one) => (one.works === null ? [] : [{ ...one, works: one.works }]));
  const isEnough = works.length === both.length;
  const advice = isEnough
    ? ` ${works.map((one) => `${one.key}: ${one.works}`).join(" with ")} would do.`
    : " No panel of this mount carries it: take a smaller one.";
  return finding(entry, {
    message: `${cutOut.owner} needs an opening ${both.map(needed).join(" and ")} in ${cutOut.layer}; with a web of ${millimetres(LEAST_WEB)} on both sides this panel takes ${both.map(taken).join(" and ")}.${advice}`,
    span: cutOut.span,
    related: [{ what: key, span: spanOf(facts.layout.design.written, key) }],
    subjects: [cutOut.owner],
    measured: measureMm(size),
    limit: measureMm(most),
    source: {
      kind: "practice",
      name: `the panel's finished outline less ${millimetres(LEAST_WEB)} on both sides: a narrower web is none`,
    },
    remedies: isEnough ? [sizeRemedy(works, facts)] : [],
  });
};

const needed = ({ key, size, most }: Excess): string =>
  `${millimetres(size, most)} ${key === "height" ? "high" : "wide"}`;

const taken = ({ size, most }: Excess): string =>
  `${millimetres(most, size)}, ${millimetres(size - most, 0)} too little`;

/** The least size of the mount's own pitch that carries the opening; null where the mount fixes the size. */
const sizeThatWorks = ({ key, size }: Excess, { mount, design }: PanelLayout): string | null => {
  if (design.written.keys[key] === undefined) return null;
  const nominal = size + 2 * LEAST_WEB + 2 * mount.undersize;
  const { unit, pitch, less } = mount.height;
  if (unit === "mm" || mount.counts !== key) return `${decimal(Math.ceil(nominal), 0)} mm`;
  return `${decimal(Math.ceil((nominal + less) / pitch), 0)} ${unit}`;
};

const sizeRemedy = (
  sizes: readonly { readonly key: Excess["key"]; readonly works: string }[],
  facts: PanelFacts,
): Remedy => ({
  title: sizes.map(({ key, works }) => `${key}: ${works}`).join(", "),
  edits: sizes.map(({ key, works }) => facts.edit(spanOf(facts.layout.design.written, key), works)),
});

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
      const excess = excessOf(cutOut, facts.layout);
      return excess === null ? null : tooLarge(cutOut, excess, facts);
    }),
};

interface Excess {
  readonly key: "height" | "width";
  readonly size: number;
  readonly most: number;
}

/** null where the opening can be carried somewhere in the panel. */
export const excessOf = (cutOut: CutOut, layout: PanelLayout): Excess | null => {
  const box = contourExtent(cutOut.contour);
  const room = contourExtent(layout.outline);
  const high = { size: extentHeight(box), most: extentHeight(room) - 2 * LEAST_WEB };
  if (isOver(high.size, high.most)) return { key: "height", ...high };
  const wide = { size: extentWidth(box), most: extentWidth(room) - 2 * LEAST_WEB };
  return isOver(wide.size, wide.most) ? { key: "width", ...wide } : null;
};

const tooLarge = (cutOut: CutOut, excess: Excess, facts: PanelFacts): Finding => {
  const { key, size, most } = excess;
  const works = sizeThatWorks(excess, facts.layout);
  const advice = works === null ? "" : ` ${key}: ${works} would do.`;
  return finding(entry, {
    message: `${cutOut.owner} needs an opening ${millimetres(size, most)} ${key === "height" ? "high" : "wide"} in ${cutOut.layer}; this panel takes ${millimetres(most, size)} with a web of ${millimetres(LEAST_WEB)} on both sides, ${millimetres(size - most, 0)} too little.${advice}`,
    span: cutOut.span,
    related: [{ what: key, span: spanOf(facts.layout.design.written, key) }],
    subjects: [cutOut.owner],
    measured: measureMm(size),
    limit: measureMm(most),
    source: { kind: "geometry", name: "the panel's finished outline" },
    remedies: works === null ? [] : sizeRemedy(key, works, facts),
  });
};

/** The least size of the mount's own pitch that carries the opening; null where the mount fixes the size. */
const sizeThatWorks = ({ key, size }: Excess, { mount, design }: PanelLayout): string | null => {
  if (design.written.keys[key] === undefined) return null;
  const nominal = size + 2 * LEAST_WEB + 2 * mount.undersize;
  const { unit, pitch, less } = mount.height;
  if (unit === "mm" || mount.counts !== key) return `${decimal(Math.ceil(nominal), 0)} mm`;
  return `${decimal(Math.ceil((nominal + less) / pitch), 0)} ${unit}`;
};

const sizeRemedy = (key: Excess["key"], works: string, facts: PanelFacts): readonly Remedy[] => [
  {
    title: `${key}: ${works}`,
    edits: [facts.edit(spanOf(facts.layout.design.written, key), works)],
  },
];

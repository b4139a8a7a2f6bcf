// Legends filled with a paint that hardly stands out from the sheet: white on bare aluminium is not read from where one sits.

import { type CodeEntry, type Finding, finding, type Remedy } from "../../diagnostics/finding.ts";
import { decimalBeside } from "../../geometry/number.ts";
import { finishNames, finishOf } from "../../layout/context.ts";
import { type FillContrast, fillContrast } from "../../layout/fill-contrast.ts";
import type { LayerLayout } from "../../layout/panel-layout.ts";
import { looksOf } from "../../standards/colour-words.ts";
import { contrastRatio, LEAST_CONTRAST } from "../../standards/contrast.ts";
import { isUnder } from "../limits.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureOf } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/legend-faint",
  severity: "query",
  title: "legends whose paint hardly stands out from the sheet",
  why: "Engraving is filled with paint so that it is read; a paint as light as the sheet, or as dark, leaves letters that are seen aslant or not at all. The ratio is that of the luminances of the two colours as their names usually look; hold a painted sample beside the sheet before you overrule it.",
  example: "stack: [{ layer: face, sheet: aluminium-2, finish: paint-filled }]",
};

export const legendFaint: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const { layers, markings } = facts.layout;
    const lettered = layers.filter(({ id }) => markings.some(({ layer }) => layer === id));
    return lettered.flatMap((layer) => {
      const contrast = fillContrast(layer.finish, layer.stock);
      return contrast === null || isRead(contrast) ? [] : [faintIn(layer, contrast, facts)];
    });
  },
};

const isRead = ({ ratio }: Pick<FillContrast, "ratio">): boolean => !isUnder(ratio, LEAST_CONTRAST);

const faintIn = (
  layer: LayerLayout,
  { fill, sheet, ratio }: FillContrast,
  facts: PanelFacts,
): Finding => {
  const span = layer.design.written.keys["finish"] ?? layer.design.written.span;
  const finish = readFinish(layer, facts);
  const edit: readonly Remedy[] =
    finish === null
      ? []
      : [{ title: `finish: ${finish.id}`, edits: [facts.edit(span, finish.id)] }];
  const advice =
    finish === null
      ? paintAdvice(sheet)
      : ` Filled with ${finish.contrast.fill.name} it is ${words(finish.contrast.ratio)} to 1: finish: ${finish.id}.`;
  return finding(entry, {
    message: `Legends filled with ${fill.name} stand out from ${sheet.name} by ${words(ratio)} to 1 in ${layer.id}; ${words(LEAST_CONTRAST)} to 1 is wanted, ${words(LEAST_CONTRAST - ratio)} more.${advice}`,
    span,
    subjects: [layer.id],
    measured: measureOf(ratio, "ratio"),
    limit: measureOf(LEAST_CONTRAST, "ratio"),
    source: { kind: "standard", name: "WCAG 2.2, 1.4.3 (contrast of words)" },
    remedies: edit,
  });
};

const words = (value: number): string => decimalBeside(value, LEAST_CONTRAST, 1);

interface ReadFinish {
  readonly id: string;
  readonly contrast: FillContrast;
}

/** Of the finishes that there are, the one that stands out most; of equals the builder's own. */
const readFinish = ({ stock }: LayerLayout, facts: PanelFacts): ReadFinish | null => {
  const [best = null] = [...new Set(finishNames(facts))]
    .flatMap((id): readonly ReadFinish[] => {
      const contrast = fillContrast(finishOf(facts, id), stock);
      return contrast === null || !isRead(contrast) ? [] : [{ id, contrast }];
    })
    .toSorted((a, b) => b.contrast.ratio - a.contrast.ratio);
  return best;
};

/** No finish of that colour is written yet. Empty where neither paint is read on the sheet. */
const paintAdvice = ({ looks }: FillContrast["sheet"]): string => {
  const paint = (["black", "white"] as const)
    .map((name) => ({ name, ratio: contrastRatio(looksOf(name), looks) }))
    .find(isRead);
  return paint === undefined
    ? ""
    : ` Filled with ${paint.name} it is ${words(paint.ratio)} to 1: a finish of coats: [${paint.name}], order: engrave-fill.`;
};

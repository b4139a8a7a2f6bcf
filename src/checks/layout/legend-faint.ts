// Legends filled with a paint that hardly stands out from the sheet, or cut through a paint to a sheet as light: white on bare
// aluminium is not read from where one sits, nor aluminium in white.

import { type CodeEntry, type Finding, finding, type Remedy } from "../../diagnostics/finding.ts";
import { decimalBeside } from "../../geometry/number.ts";
import { finishNames, finishOf } from "../../layout/context.ts";
import { type LegendContrast, legendContrast } from "../../layout/legend-contrast.ts";
import type { LayerLayout } from "../../layout/panel-layout.ts";
import { looksOf } from "../../standards/colour-words.ts";
import { contrastRatio, LEAST_CONTRAST } from "../../standards/contrast.ts";
import { isUnder } from "../limits.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureOf } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/legend-faint",
  severity: "query",
  title: "legends that hardly stand out from the face",
  why: "Engraving is filled with paint, or cut through it, so that it is read; a paint as light as the sheet, or as dark, leaves letters that are seen aslant or not at all. The ratio is that of the luminances of the two colours as their names usually look; hold a painted sample beside the sheet before you overrule it.",
  example: "stack: [{ layer: face, sheet: aluminium-2, finish: paint-filled }]",
};

export const legendFaint: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const { layers, markings } = facts.layout;
    const lettered = layers.filter(({ id }) => markings.some(({ layer }) => layer === id));
    return lettered.flatMap((layer) => {
      const contrast = legendContrast(layer.finish, layer.stock);
      return contrast === null || isRead(contrast) ? [] : [faintIn(layer, contrast, facts)];
    });
  },
};

const isRead = ({ ratio }: Pick<LegendContrast, "ratio">): boolean =>
  !isUnder(ratio, LEAST_CONTRAST);

const faintIn = (layer: LayerLayout, contrast: LegendContrast, facts: PanelFacts): Finding => {
  const { ratio } = contrast;
  const span = layer.design.written.keys["finish"] ?? layer.design.written.span;
  const finish = readFinish(layer, contrast.kind, facts);
  const edit: readonly Remedy[] =
    finish === null
      ? []
      : [{ title: `finish: ${finish.id}`, edits: [facts.edit(span, finish.id)] }];
  const advice =
    finish === null
      ? paintAdvice(contrast)
      : ` ${madeWith(finish.contrast)} it is ${words(finish.contrast.ratio)} to 1: finish: ${finish.id}.`;
  return finding(entry, {
    message: `${legendsOf(contrast)} by ${words(ratio)} to 1 in ${layer.id}; ${words(LEAST_CONTRAST)} to 1 is wanted, ${words(LEAST_CONTRAST - ratio)} more.${advice}`,
    span,
    subjects: [layer.id],
    measured: measureOf(ratio, "ratio"),
    limit: measureOf(LEAST_CONTRAST, "ratio"),
    source: { kind: "standard", name: "WCAG 2.2, 1.4.3 (contrast of words)" },
    remedies: edit,
  });
};

const legendsOf = ({ kind, letters, ground }: LegendContrast): string =>
  kind === "filled"
    ? `Legends filled with ${letters.name} stand out from ${ground.name}`
    : `Legends cut through ${ground.name} paint show ${letters.name} and stand out from it`;

const madeWith = ({
  kind,
  letters,
  ground,
}: Pick<LegendContrast, "kind" | "letters" | "ground">): string =>
  kind === "filled"
    ? `Filled with ${letters.name}`
    : `In ${ground.name} paint, showing ${letters.name},`;

const words = (value: number): string => decimalBeside(value, LEAST_CONTRAST, 1);

interface ReadFinish {
  readonly id: string;
  readonly contrast: LegendContrast;
}

/** Of the finishes that there are and are worked alike, the one that stands out most; of equals the builder's own. */
const readFinish = (
  { stock, finish }: LayerLayout,
  kind: LegendContrast["kind"],
  facts: PanelFacts,
): ReadFinish | null => {
  const [best = null] = [...new Set(finishNames(facts))]
    .flatMap((id): readonly ReadFinish[] => {
      const other = finishOf(facts, id);
      const contrast = legendContrast(other, stock);
      const isAlike = contrast?.kind === kind && other?.order === finish?.order;
      return contrast !== null && isAlike && isRead(contrast) ? [{ id, contrast }] : [];
    })
    .toSorted((a, b) => b.contrast.ratio - a.contrast.ratio);
  return best;
};

/** No finish of that colour is written yet. Empty where neither paint is read. */
const paintAdvice = ({ kind, letters, ground }: LegendContrast): string => {
  const sheet = kind === "filled" ? ground : letters;
  const paint = (["black", "white"] as const)
    .map((name) => ({ name, ratio: contrastRatio(looksOf(name), sheet.looks) }))
    .find(isRead);
  if (paint === undefined) return "";
  const [how, order] =
    kind === "filled"
      ? [`Filled with ${paint.name}`, "engrave-fill"]
      : [`Cut through ${paint.name}`, "cut-paint-engrave"];
  return ` ${how} it is ${words(paint.ratio)} to 1: a finish of coats: [${paint.name}], order: ${order}.`;
};

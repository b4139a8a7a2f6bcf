// Legends filled with a paint that hardly stands out from the sheet: white on bare aluminium is not read from where one sits.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { decimalBeside } from "../../geometry/number.ts";
import { fillContrast } from "../../layout/fill-contrast.ts";
import { looksOf } from "../../standards/colour-words.ts";
import { contrastRatio, LEAST_CONTRAST } from "../../standards/contrast.ts";
import { isUnder } from "../limits.ts";
import type { Rule } from "../rule.ts";
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
  judge: ({ layout }) => {
    const lettered = layout.layers.filter(({ id }) =>
      layout.markings.some(({ layer }) => layer === id),
    );
    return lettered.flatMap((layer) => {
      const contrast = fillContrast(layer.finish, layer.stock);
      if (contrast === null || !isUnder(contrast.ratio, LEAST_CONTRAST)) return [];
      const { fill, sheet, ratio } = contrast;
      const better = (["black", "white"] as const)
        .map((name) => ({ name, ratio: contrastRatio(looksOf(name), sheet.looks) }))
        .reduce((best, one) => (one.ratio > best.ratio ? one : best));
      const words = (value: number): string => decimalBeside(value, LEAST_CONTRAST, 1);
      return [
        finding(entry, {
          message: `Legends filled with ${fill.name} stand out from ${sheet.name} by ${words(ratio)} to 1 in ${layer.id}; ${words(LEAST_CONTRAST)} to 1 is wanted, ${words(LEAST_CONTRAST - ratio)} more. Filled with ${better.name} it is ${words(better.ratio)} to 1: coats: [${better.name}].`,
          span: layer.design.written.keys["finish"] ?? layer.design.written.span,
          subjects: [layer.id],
          measured: measureOf(Math.round(ratio * 100) / 100, "ratio"),
          limit: measureOf(LEAST_CONTRAST, "ratio"),
          source: { kind: "standard", name: "WCAG 2.2, 1.4.3 (contrast of words)" },
        }),
      ];
    });
  },
};

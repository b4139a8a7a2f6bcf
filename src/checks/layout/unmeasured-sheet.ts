// Sheets whose thickness nobody has measured, where nuts, protrusion or depth hang on it.

import { limitOfFigures } from "../../catalogue/limit-of-figures.ts";
import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { LayerLayout, PlacedComponent } from "../../layout/panel-layout.ts";
import { isOver } from "../limits.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { millimetres } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/unmeasured-sheet",
  severity: "query",
  title: "a sheet whose thickness nobody has measured",
  why: "Sheet is sold by a nominal thickness and made to a wide range: cast acrylic of 3 mm may be 2.3 to 3.7. Nuts, protrusion and depth hang on it. Measure the sheet that will be cut and write it into the workshop with its date.",
  example: "stack:\n  - { layer: face, sheet: black-acrylic-3 }",
};

/** One finding a stock: layers of one sheet wait for the same reading. */
export const unmeasuredSheet: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const { layers, components } = facts.layout;
    const byStock = new Map<string, LayerLayout[]>();
    for (const layer of layers) {
      const { stock } = layer;
      if (stock === null || !isDoubtful(layer, components)) continue;
      byStock.set(stock.id, [...(byStock.get(stock.id) ?? []), layer]);
    }
    return [...byStock].flatMap(([stock, of]) => sheetFinding(stock, of, facts));
  },
};

/** Thickness matters where something is clamped through the sheet or has to reach past it. */
const isDoubtful = (layer: LayerLayout, components: readonly PlacedComponent[]): boolean =>
  layer.kind === "sheet" &&
  !layer.thickness.known &&
  isOver(layer.thickness.high, layer.thickness.low) &&
  components.some(({ clamped }) => layer.index <= clamped.last);

const sheetFinding = (
  stock: string,
  layers: readonly LayerLayout[],
  { catalogue }: PanelFacts,
): readonly Finding[] => {
  const [first, ...others] = layers;
  if (first === undefined) return [];
  const { low, nominal, high } = first.thickness;
  const record = first.material === null ? undefined : catalogue.materials.get(first.material);
  return [
    finding(entry, {
      message: `${layers.map(({ id }) => id).join(" and ")}: ${stock} is ${millimetres(nominal)} by name and may be ${millimetres(low)} to ${millimetres(high)}. Measure the sheet and write measured: and dated: under stock, ${stock}.`,
      span: spanOf(first.design.written, "sheet"),
      related: others.map((layer) => ({ what: layer.id, span: layer.design.written.span })),
      subjects: layers.map(({ id }) => id),
      source:
        record === undefined
          ? { kind: "practice", name: "the material's usual range" }
          : limitOfFigures(record.figures),
      suppressed: others.length,
    }),
  ];
};

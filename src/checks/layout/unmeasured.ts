// Figures that decide a fit and that nobody has measured: the sheet stays on hold until they are, or a person says so.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { LayerLayout, PlacedComponent } from "../../layout/panel-layout.ts";
import type { Rule } from "../rule.ts";
import { measureMm, measureOf, millimetres } from "../words.ts";

const partEntry: CodeEntry = {
  code: "checks/unmeasured-part",
  severity: "query",
  title: "a part whose fit nobody has measured",
  why: "The record's figures are typical ones. Bought parts differ from maker to maker by more than a fit allows. Measure the part on the bench and write it down with its date; until then the sheet is on HOLD. The measuring list in the pack says what to measure, with what, and where it goes.",
  example: "components:\n  a: { part: toggle-12, at: { left: 40 mm, top: 30 mm } }",
};

const sheetEntry: CodeEntry = {
  code: "checks/unmeasured-sheet",
  severity: "query",
  title: "a sheet whose thickness nobody has measured",
  why: "Sheet is sold by a nominal thickness and made to a wide range: cast acrylic of 3 mm may be 2.3 to 3.7. Nuts, protrusion and depth hang on it. Measure the sheet that will be cut and write it into the workshop with its date.",
  example: "stack:\n  - { layer: face, sheet: black-acrylic-3 }",
};

/** One finding a part: every component of that kind waits for the same measurement. */
export const unmeasuredParts: Rule = {
  entry: partEntry,
  judge: ({ layout }) => {
    const byPart = new Map<string, PlacedComponent[]>();
    for (const component of layout.components)
      if (unmeasuredFigures(component).length > 0)
        byPart.set(component.part.id, [...(byPart.get(component.part.id) ?? []), component]);
    return [...byPart.values()].flatMap((components) => partFinding(components));
  },
};

/** Paths of the part's fit-deciding figures that are neither measured by the design nor given by a standard. */
export const unmeasuredFigures = (component: PlacedComponent): readonly string[] => {
  const { figures } = component.part;
  const measured = component.common.measured?.values ?? {};
  return figures.measureFirst.filter((path) => {
    const kind = figures.exceptions[path]?.kind ?? figures.kind;
    return measured[path] === undefined && (kind === "memory" || kind === "practice");
  });
};

const partFinding = (components: readonly PlacedComponent[]): readonly Finding[] => {
  const first = components[0];
  if (first === undefined) return [];
  const figures = unmeasuredFigures(first);
  return [
    finding(partEntry, {
      message: `${first.part.id} (${components.map(({ id }) => id).join(", ")}): ${figures.join(", ")} not measured. Measure yours and write measured: { ${figures[0] ?? ""}: ..., dated: ... }.`,
      span: spanOf(first.written, "part"),
      subjects: components.map(({ id }) => id),
      measured: measureOf(figures.length, "count"),
      limit: measureOf(0, "count"),
      source: { kind: "datasheet", name: first.part.figures.source },
    }),
  ];
};

export const unmeasuredSheets: Rule = {
  entry: sheetEntry,
  judge: ({ layout }) => {
    const seen = new Set<string>();
    return layout.layers.flatMap((layer) => {
      const { stock } = layer;
      if (layer.kind !== "sheet" || stock === null || layer.thickness.known) return [];
      if (seen.has(stock.id) || !matters(layer, layout.components)) return [];
      seen.add(stock.id);
      return [sheetFinding(layer, stock.id)];
    });
  },
};

/** Thickness matters where something is clamped through the sheet or has to reach past it. */
const matters = (layer: LayerLayout, components: readonly PlacedComponent[]): boolean =>
  components.some(({ clamped }) => layer.index <= clamped.last) &&
  layer.thickness.high > layer.thickness.low;

const sheetFinding = (layer: LayerLayout, stock: string): Finding =>
  finding(sheetEntry, {
    message: `${layer.id}: ${stock} is ${millimetres(layer.thickness.nominal)} by name and may be ${millimetres(layer.thickness.low)} to ${millimetres(layer.thickness.high)}. Measure the sheet and write measured: and dated: into the workshop.`,
    span: spanOf(layer.design.written, "sheet"),
    subjects: [layer.id],
    measured: measureMm(layer.thickness.high - layer.thickness.low),
    limit: measureMm(0.1),
    source: {
      kind: "standard",
      name: layer.material === "acrylic-cast" ? "ISO 7823-1" : "the material's usual range",
    },
  });

// Parts whose fit hangs on figures that nobody has measured: their sheets are on hold until somebody does, or says so.

import { fieldAt } from "../../catalogue/field-path.ts";
import { limitOfFigures } from "../../catalogue/limit-of-figures.ts";
import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import type { PlacedComponent } from "../../layout/panel-layout.ts";
import type { Rule } from "../rule.ts";
import { millimetres } from "../words.ts";
import { unmeasuredFigures } from "./unmeasured.ts";

const entry: CodeEntry = {
  code: "checks/unmeasured-part",
  severity: "query",
  title: "a part whose fit nobody has measured",
  why: "The record's figures are typical ones. Bought parts differ from maker to maker by more than a fit allows. Measure the part on the bench and write it down with its date; until then the sheet is on HOLD. The measuring list in the pack says what to measure, with what, and where it goes.",
  example: "components:\n  a: { part: toggle-6, at: { left: 40 mm, top: 30 mm } }",
};

/** One finding a part: every component of that kind waits for the same measurement. */
export const unmeasuredPart: Rule = {
  entry,
  move: null,
  judge: ({ layout }) => {
    const byPart = new Map<string, PlacedComponent[]>();
    for (const component of layout.components)
      if (unmeasuredFigures(component).length > 0)
        byPart.set(component.part.id, [...(byPart.get(component.part.id) ?? []), component]);
    return [...byPart.values()].flatMap(partFinding);
  },
};

const partFinding = (components: readonly PlacedComponent[]): readonly Finding[] => {
  const first = components[0];
  if (first === undefined) return [];
  const figures = unmeasuredFigures(first);
  const entries = [...new Set(components.map(({ entry: name }) => name))];
  const typical = figures.map((path) => `${path}${figureWords(first, path)}`).join(", ");
  return [
    finding(entry, {
      message: `${first.part.id} (${entries.join(", ")}): ${typical} ${figures.length === 1 ? "is a typical figure, not yours" : "are typical figures, not yours"}. Measure one and write measured: { ${figures[0] ?? ""}: ..., dated: ... }.`,
      span: spanOf(first.written, "part"),
      subjects: components.map(({ id }) => id),
      source: limitOfFigures(first.part.figures),
      suppressed: components.length - 1,
    }),
  ];
};

const figureWords = (component: PlacedComponent, path: string): string => {
  const value = fieldAt(component.part, path);
  return typeof value === "number" && decimal(value, 2) !== "0" ? ` ${millimetres(value)}` : "";
};

// Readings of a caliper over a record's figures: numbers that take numbers' places, and a source that says so.
// Paths may be spelled as in the text or as in the data, and name items by index, role or name: they mean the same.

import type { MeasuredDesign } from "../design/panel-design.ts";
import { pathOf, withNumber } from "./field-path.ts";
import type { Figures } from "./part.ts";

/** Paths that lead to no number are left alone. */
export const withReadings = <Item extends object>(record: Item, measured: MeasuredDesign): Item =>
  Object.entries(measured.values).reduce((so, [path, value]) => {
    const next = withNumber(so, path, value);
    // Only a number took a number's place: it is a record of its kind as before.
    return next === null ? so : (next as Item);
  }, record);

export function measuredFigures(
  record: { readonly figures: Figures },
  measured: MeasuredDesign,
): Figures {
  const { figures } = record;
  const source = measured.dated === null ? "measured" : `measured ${measured.dated}`;
  const paths = Object.keys(measured.values).map((path) => pathOf(record, path));
  return {
    ...figures,
    exceptions: {
      ...figures.exceptions,
      ...Object.fromEntries(paths.map((path) => [path, { source, kind: "measured" as const }])),
    },
    measureFirst: figures.measureFirst.filter((path) => !paths.includes(pathOf(record, path))),
  };
}

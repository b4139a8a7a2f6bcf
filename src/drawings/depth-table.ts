// Depth of every component as a table: what it grips, thread left for its nut, how far it stands proud, how deep it goes,
// each from thinnest to thickest sheet. Members of a row with the same depth share a line.

import { decimal } from "../geometry/number.ts";
import type { PanelLayout, PlacedComponent, Range } from "../layout/panel-layout.ts";
import { PLACES } from "./measure-line.ts";
import type { Column } from "./text-blocks.ts";

export interface DepthRow {
  readonly ids: readonly string[];
  readonly cells: readonly string[];
}

export const depthColumns: readonly Column[] = [
  { title: "component", share: 0.2, align: "start" },
  { title: "part", share: 0.2, align: "start" },
  { title: "grips", share: 0.14, align: "end" },
  { title: "thread left", share: 0.13, align: "end" },
  { title: "nut", share: 0.05, align: "end" },
  { title: "proud of the front", share: 0.14, align: "end" },
  { title: "depth from the front", share: 0.14, align: "end" },
];

export const depthRows = (layout: PanelLayout): readonly DepthRow[] => {
  const rows = new Map<string, { ids: string[]; entry: string; cells: readonly string[] }>();
  for (const component of layout.components) {
    const cells = cellsOf(component);
    const key = [component.entry, ...cells].join("\u0000");
    const found = rows.get(key);
    if (found === undefined) rows.set(key, { ids: [component.id], entry: component.entry, cells });
    else found.ids.push(component.id);
  }
  return [...rows.values()].map(({ ids, entry, cells }) => {
    const [first = ""] = ids;
    const name = ids.length === 1 ? first : `${entry} (${ids.length})`;
    return { ids, cells: [name, ...cells] };
  });
};

const cellsOf = ({ part, depth }: PlacedComponent): readonly string[] => [
  part.id,
  ends(depth.gripped),
  depth.threadLeft === null ? "" : ends(depth.threadLeft),
  depth.nutThickness === null ? "" : decimal(depth.nutThickness, PLACES),
  depth.protrusion === null ? "" : ends(depth.protrusion),
  ends(depth.total),
];

const ends = ({ low, high }: Range): string =>
  low === high ? decimal(low, PLACES) : `${decimal(low, PLACES)} to ${decimal(high, PLACES)}`;

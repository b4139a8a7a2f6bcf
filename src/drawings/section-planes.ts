// Where a panel is cut for its section: columns of components that stand together, at most four, each with its letter.
// The front drawing marks the same planes that the section drawing shows.

import { type Mm, mm } from "../geometry/quantity.ts";
import type { PanelLayout, PlacedComponent } from "../layout/panel-layout.ts";

export interface SectionPlane {
  /** `A` for section A-A. */
  readonly name: string;
  readonly x: Mm;
  /** From top to bottom. */
  readonly components: readonly PlacedComponent[];
}

const NAMES = ["A", "B", "C", "D"];

/** Centres closer than this are one column: a third of the usual pitch of 19 mm between toggles. */
const COLUMN_GAP = 6;

export const sectionPlanes = (layout: PanelLayout): readonly SectionPlane[] => {
  const sorted = layout.components.toSorted((a, b) => a.at.x - b.at.x || b.at.y - a.at.y);
  return columnsOf(sorted).map((components, index) => ({
    name: NAMES[index] ?? "",
    x: commonest(components),
    components: components.toSorted((a, b) => b.at.y - a.at.y || a.at.x - b.at.x),
  }));
};

/** Split at every gap that makes a column, widest first, until there are as many sections as letters. */
const columnsOf = (sorted: readonly PlacedComponent[]): readonly (readonly PlacedComponent[])[] => {
  const gaps = sorted
    .slice(1)
    .map((component, index) => ({ before: index + 1, gap: component.at.x - sorted[index]!.at.x }))
    .filter(({ gap }) => gap >= COLUMN_GAP)
    .toSorted((a, b) => b.gap - a.gap || a.before - b.before)
    .slice(0, NAMES.length - 1);
  const starts = [0, ...gaps.map(({ before }) => before).toSorted((a, b) => a - b)];
  return starts
    .map((start, index) => sorted.slice(start, starts[index + 1] ?? sorted.length))
    .filter((column) => column.length > 0);
};

/** The x that most of them stand on; the leftmost of equals. */
const commonest = (components: readonly PlacedComponent[]): Mm => {
  const counts = new Map<number, number>();
  for (const { at } of components) counts.set(at.x, (counts.get(at.x) ?? 0) + 1);
  const most = Math.max(...counts.values());
  return mm([...counts].find(([, count]) => count === most)?.[0] ?? 0);
};

// Where a panel is cut for its section: columns of components that stand together, at most four, each with its letter.
// The front drawing marks the same planes that the section drawing shows.

import { type Extent, extent, joinedExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
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

export const sectionPlanes = (layout: PanelLayout): readonly SectionPlane[] => {
  const sorted = layout.components.toSorted((a, b) => a.at.x - b.at.x || b.at.y - a.at.y);
  return atMostNamed(columnsOf(sorted)).map((components, index) => ({
    name: NAMES[index] ?? "",
    x: commonest(components),
    components: components.toSorted((a, b) => b.at.y - a.at.y || a.at.x - b.at.x),
  }));
};

type Column = readonly PlacedComponent[];

/** From the left: a component joins the column before it unless it would hide, or be hidden by, another part. */
const columnsOf = (sorted: Column): readonly Column[] => {
  const columns: PlacedComponent[][] = [];
  for (const component of sorted) {
    const last = columns.at(-1);
    const isClear = last?.every((other) => !isHiding(component, other)) ?? false;
    if (last !== undefined && isClear) last.push(component);
    else columns.push([component]);
  }
  return columns;
};

/** Equal parts at one height look alike from the side: nothing is lost. */
const isHiding = (a: PlacedComponent, b: PlacedComponent): boolean => {
  if (a.part.id === b.part.id && a.at.y === b.at.y) return false;
  const one = sideReach(a);
  const other = sideReach(b);
  return one.minY < other.maxY && other.minY < one.maxY;
};

const sideReach = ({ bodies, at }: PlacedComponent): Extent =>
  bodies
    .map(({ footprint }) => contourExtent(footprint))
    .reduce(joinedExtent, extent(at.x, at.y, at.x, at.y));

/** Where there are more columns than letters, neighbours that lie nearest to each other share a view. */
const atMostNamed = (columns: readonly Column[]): readonly Column[] => {
  const kept = [...columns];
  while (kept.length > NAMES.length) {
    const steps = kept.slice(1).map((column, index) => commonest(column) - commonest(kept[index]!));
    const nearest = steps.indexOf(Math.min(...steps));
    kept.splice(nearest, 2, [...kept[nearest]!, ...kept[nearest + 1]!]);
  }
  return kept;
};

/** The x that most of them stand on; the leftmost of equals. */
const commonest = (components: readonly PlacedComponent[]): Mm => {
  const counts = new Map<number, number>();
  for (const { at } of components) counts.set(at.x, (counts.get(at.x) ?? 0) + 1);
  const most = Math.max(...counts.values());
  return mm([...counts].find(([, count]) => count === most)?.[0] ?? 0);
};

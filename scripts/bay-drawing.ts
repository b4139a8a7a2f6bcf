// The panels of a console as they stand on its bays: one column a bay, module 0 at the bottom, on one table.
// Takes the console's design and each panel's layout and picture; gives one drawing. Empty modules stay table.

import type { ConsoleDesign } from "../src/design/console-design.ts";
import type { Drawing, DrawingItem } from "../src/drawings/drawing.ts";
import { filledBox } from "../src/drawings/items.ts";
import { type Extent, grownExtent, joinedExtent } from "../src/geometry/extent.ts";
import { mm } from "../src/geometry/quantity.ts";
import {
  type Placement,
  placedContour,
  placedPath,
  placedRegion,
  placement,
} from "../src/geometry/transform.ts";
import type { PanelLayout } from "../src/layout/panel-layout.ts";

export interface PicturedPanel {
  readonly name: string;
  readonly layout: PanelLayout;
  readonly picture: Drawing;
}

const BETWEEN_BAYS = 24;
const TABLE = 9;

export const bayDrawing = (
  console: ConsoleDesign,
  panels: readonly PicturedPanel[],
): Drawing | null => {
  const placed = Object.keys(console.bays).flatMap((bay, column) =>
    panelsOfBay(console, bay, panels).map(({ panel, start }) => ({
      panel,
      start,
      at: placement(column * (widest(panels) + BETWEEN_BAYS), start),
    })),
  );
  const extents = placed.map(({ panel, at }) => movedExtent(panel.layout.nominal, at));
  const [first, ...others] = extents;
  if (first === undefined) return null;
  const box = grownExtent(others.reduce(joinedExtent, first), TABLE);
  // From the top down: each panel hides the shadow of the one above it.
  const items = placed
    .toSorted((a, b) => b.start - a.start)
    .flatMap(({ panel, at }) => panel.picture.items.filter(isPanel).map((item) => moved(item, at)));
  return { title: console.title, box, items: [filledBox(box, "backdrop"), ...items] };
};

interface OnBay {
  readonly panel: PicturedPanel;
  /** From the bay's beginning to the panel's lower edge, in mm. */
  readonly start: number;
}

/** In the console's order: `after` names a panel that stands before it in the text. */
const panelsOfBay = (
  console: ConsoleDesign,
  bay: string,
  panels: readonly PicturedPanel[],
): readonly OnBay[] => {
  const ends = new Map<string, number>();
  return console.panels.flatMap((use) => {
    const panel = panels.find(({ name }) => name === use.as);
    if (use.bay !== bay || panel === undefined) return [];
    const { nominal, mount } = panel.layout;
    const start =
      use.after === null ? (use.module ?? 0) * mount.height.pitch : (ends.get(use.after) ?? 0);
    ends.set(use.as, start + nominal.maxY - nominal.minY);
    return [{ panel, start }];
  });
};

const widest = (panels: readonly PicturedPanel[]): number =>
  Math.max(...panels.map(({ layout }) => layout.nominal.maxX));

/** The table under a single picture is not the bay's. */
const isPanel = (item: DrawingItem): boolean => item.kind !== "fill" || item.ink !== "backdrop";

const movedExtent = (box: Extent, at: Placement): Extent => ({
  minX: mm(box.minX + at.x),
  minY: mm(box.minY + at.y),
  maxX: mm(box.maxX + at.x),
  maxY: mm(box.maxY + at.y),
});

const moved = (item: DrawingItem, at: Placement): DrawingItem => {
  switch (item.kind) {
    case "fill":
      return { ...item, regions: item.regions.map((region) => placedRegion(region, at)) };
    case "outline":
      return { ...item, contours: item.contours.map((contour) => placedContour(contour, at)) };
    case "stroke":
      return { ...item, paths: item.paths.map((path) => placedPath(path, at)) };
  }
};

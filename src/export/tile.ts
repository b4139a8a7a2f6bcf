// A drawing in true size over as many pages as it needs: which window of it lies on which page.
// Takes the drawing's box and the paper, gives pages in reading order. Neighbours share an overlap that carries
// the same registration marks; the paper is turned where that saves pages.

import { type Point, point } from "../geometry/contour.ts";
import {
  type Extent,
  extent,
  extentCentre,
  extentHeight,
  extentWidth,
} from "../geometry/extent.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { PAPERS, type PaperName } from "./paper.ts";

export interface Tiling {
  /** Size of every page as it lies before the reader. */
  readonly pageWidth: Mm;
  readonly pageHeight: Mm;
  readonly columns: number;
  readonly rows: number;
  readonly tiles: readonly Tile[];
}

export interface Tile {
  /** From 1, left to right and top to bottom. */
  readonly column: number;
  readonly row: number;
  /** What of the drawing is seen, in its own coordinates. */
  readonly window: Extent;
  /** Where the window lies on the page. */
  readonly onPage: Extent;
  /** From drawing to page coordinates. */
  readonly shift: { readonly x: Mm; readonly y: Mm };
  /** Places in the drawing that this page shares with a neighbour. */
  readonly registration: readonly Point[];
}

/** Room for the two bars (left, bottom), the caption (top) and the crop marks; office printers leave up to 6 mm white. */
export const PAGE_MARGINS = { left: 17, right: 11, top: 20, bottom: 17 } as const;

/** Width of the strip that two neighbouring pages both show. */
export const OVERLAP = 10;

export const tiling = (box: Extent, paper: PaperName): Tiling => {
  const { width, height } = PAPERS[paper];
  const upright = tiledOn(box, width, height);
  const turned = tiledOn(box, height, width);
  return turned.tiles.length < upright.tiles.length ? turned : upright;
};

const tiledOn = (box: Extent, pageWidth: Mm, pageHeight: Mm): Tiling => {
  const width = pageWidth - PAGE_MARGINS.left - PAGE_MARGINS.right;
  const height = pageHeight - PAGE_MARGINS.top - PAGE_MARGINS.bottom;
  const across = windowStarts(extentWidth(box), extentCentre(box).x, width);
  const up = windowStarts(extentHeight(box), extentCentre(box).y, height).toReversed();
  const onPage = extent(
    PAGE_MARGINS.left,
    PAGE_MARGINS.bottom,
    PAGE_MARGINS.left + width,
    PAGE_MARGINS.bottom + height,
  );
  const shared = { columns: across.length, rows: up.length };
  const tiles = up.flatMap((bottom, row) =>
    across.map((left, column): Tile => {
      const window = extent(left, bottom, left + width, bottom + height);
      const shift = { x: mm(onPage.minX - left), y: mm(onPage.minY - bottom) };
      const registration = registrationOf(window, { ...shared, column, row });
      return { column: column + 1, row: row + 1, window, onPage, shift, registration };
    }),
  );
  return { pageWidth, pageHeight, ...shared, tiles };
};

/** Lower ends of the windows that cover a length; what they cover too much is shared between both ends. */
const windowStarts = (length: number, centre: number, window: number): readonly number[] => {
  const step = window - OVERLAP;
  const count = length <= window ? 1 : Math.ceil((length - OVERLAP) / step);
  const covered = count * step + OVERLAP;
  return Array.from({ length: count }, (_, index) => centre - covered / 2 + index * step);
};

interface TilePlace {
  readonly columns: number;
  readonly rows: number;
  readonly column: number;
  readonly row: number;
}

/** Two marks in the middle of every shared strip, a quarter of the window from its ends. */
const registrationOf = (window: Extent, place: TilePlace): readonly Point[] => {
  const quarter = { x: extentWidth(window) / 4, y: extentHeight(window) / 4 };
  const besides = [window.minY + quarter.y, window.maxY - quarter.y];
  const alongs = [window.minX + quarter.x, window.maxX - quarter.x];
  const half = OVERLAP / 2;
  const strips: Point[] = [];
  if (place.column > 0) strips.push(...besides.map((y) => point(window.minX + half, y)));
  if (place.column < place.columns - 1)
    strips.push(...besides.map((y) => point(window.maxX - half, y)));
  if (place.row > 0) strips.push(...alongs.map((x) => point(x, window.maxY - half)));
  if (place.row < place.rows - 1) strips.push(...alongs.map((x) => point(x, window.minY + half)));
  return strips;
};

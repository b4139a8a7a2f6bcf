// A drawing made lighter for a page: loops as chords within three hundredths of a millimetre, places on a hundredth.
// Letters carry some hundred exact arcs each, which a cutter wants and a screen can't show: files shrink to a quarter.

import type { Drawing, DrawingItem } from "../src/drawings/drawing.ts";
import { type Contour, loop, type Region, vertex } from "../src/geometry/contour.ts";
import { flattened } from "../src/geometry/flatten.ts";
import { mm } from "../src/geometry/quantity.ts";

const CHORD = 0.03;
const GRID = 100;

export const screenDrawing = (drawing: Drawing): Drawing => ({
  ...drawing,
  box: grownToGrid(drawing.box),
  items: drawing.items.map(lighter),
});

const lighter = (item: DrawingItem): DrawingItem => {
  switch (item.kind) {
    case "fill":
      return { ...item, regions: item.regions.flatMap(chordRegion) };
    case "outline":
      return {
        ...item,
        contours: item.contours.flatMap((each) => (isStraight(each) ? chords(each) : [each])),
      };
    case "stroke":
      return item;
  }
};

/** Hulls of round things have corners by the hundred; a true arc is one word. */
const isStraight = (contour: Contour): boolean =>
  contour.kind === "loop" && contour.vertices.every(({ bulge }) => bulge === 0);

/** Nothing is left of what is smaller than the grid. */
const chordRegion = ({ outline, holes }: Region): readonly Region[] => {
  const [seen] = chords(outline);
  return seen === undefined ? [] : [{ outline: seen, holes: holes.flatMap(chords) }];
};

const chords = (contour: Contour): readonly Contour[] => {
  if (contour.kind === "circle") return [contour];
  const [first] = contour.vertices;
  if (first === undefined) return [];
  // On a grid that starts at the first corner, so that equal letters stay equal wherever they stand.
  const corners = flattened(contour, CHORD).map(({ x, y }) => ({
    x: onGrid(x - first.x),
    y: onGrid(y - first.y),
  }));
  const kept = thinned(corners);
  if (kept.length < 3) return [];
  return [loop(kept.map(({ x, y }) => vertex(onGrid(first.x) + x, onGrid(first.y) + y)))];
};

const onGrid = (length: number): number => Math.round(length * GRID) / GRID;

interface Corner {
  readonly x: number;
  readonly y: number;
}

/** Without the corners that an edge from the last kept one to the next passes closely enough. */
const thinned = (corners: readonly Corner[]): readonly Corner[] => {
  const kept: Corner[] = [];
  corners.forEach((corner, index) => {
    const last = kept.at(-1);
    const next = corners[index + 1] ?? corners[0];
    if (last === undefined || next === undefined || awayFrom(corner, last, next) > CHORD)
      kept.push(corner);
  });
  return kept;
};

const awayFrom = (corner: Corner, from: Corner, to: Corner): number => {
  const along = { x: to.x - from.x, y: to.y - from.y };
  const out = { x: corner.x - from.x, y: corner.y - from.y };
  const length = Math.sqrt(along.x * along.x + along.y * along.y);
  if (length === 0) return Math.sqrt(out.x * out.x + out.y * out.y);
  const share = (out.x * along.x + out.y * along.y) / length;
  if (share < 0 || share > length) return Number.POSITIVE_INFINITY;
  return Math.abs(along.x * out.y - along.y * out.x) / length;
};

/** On the grid itself, so that places from its corner stay short numbers. */
const grownToGrid = (box: Drawing["box"]): Drawing["box"] => ({
  minX: mm(Math.floor(box.minX * GRID) / GRID),
  minY: mm(Math.floor(box.minY * GRID) / GRID),
  maxX: mm(Math.ceil(box.maxX * GRID) / GRID),
  maxY: mm(Math.ceil(box.maxY * GRID) / GRID),
});

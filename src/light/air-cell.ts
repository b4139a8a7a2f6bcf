// The free rooms of each slice of the stack, and which of them light can pass between: a lamp in a closed chamber is held
// against the few openings of that chamber, not against every hole of the panel. It may find too many ways, never too few.

import { boxedEdgesOf } from "../geometry/boxed-edges.ts";
import { containsContour, containsPoint } from "../geometry/containment.ts";
import type { Contour, Point, Region } from "../geometry/contour.ts";
import { contoursOverlap } from "../geometry/distance.ts";
import { edgesOf } from "../geometry/edges.ts";
import { type Extent, extentsOverlap } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { samePlace } from "../geometry/tolerance.ts";
import type { LightScene } from "./light-scene.ts";
import { hasPaintedEdges, hasPaintedFront, isSeeThrough, sheetRegion } from "./sheet-light.ts";

export interface Slice {
  /** Layer or printed part. */
  readonly owner: string;
  readonly low: number;
  readonly high: number;
  readonly cells: readonly Cell[];
}

export interface Cell {
  /** null: all that lies outside. */
  readonly within: Contour | null;
  /** Of what it lies within: every room is held against every room of the next slice. */
  readonly box: Extent | null;
  /** What stands in it. */
  readonly islands: readonly Contour[];
}

export interface Passed {
  readonly slice: Slice;
  readonly cell: Cell;
}

/** From the front back. */
export const slicesOf = (scene: LightScene): readonly Slice[] => {
  const sheets = scene.layout.layers.flatMap((layer): readonly Slice[] => {
    if (layer.kind !== "sheet") return [];
    const { id: owner, front, rear } = layer;
    const region = sheetRegion(layer);
    if (!isSeeThrough(layer))
      return [{ owner, low: rear, high: front, cells: cellsBeside([region]) }];
    const film = { owner, low: front, high: front, cells: cellsBeside([region]) };
    const body = {
      owner,
      low: rear,
      high: front,
      cells: hasPaintedEdges(layer) ? cellsOfSheet(region) : cellsOfSheet({ ...region, holes: [] }),
    };
    return hasPaintedFront(layer) ? [film, body] : [body];
  });
  const printed = spacersOf(scene).flatMap(({ id }) => printedSlices(id, scene));
  return closed([...sheets, ...printed].toSorted((a, b) => b.high - a.high || b.low - a.low));
};

/** The printed parts that make the light's chambers. */
const spacersOf = ({ printedParts, slabs }: LightScene): LightScene["printedParts"] =>
  printedParts.filter(({ role, id }) => role === "spacer" && slabs.has(id));

/** Pieces of a split part share their heights: their regions are taken together. */
export const printedSlices = (
  owner: string,
  scene: Pick<LightScene, "slabs">,
): readonly Slice[] => {
  const slabs = scene.slabs.get(owner) ?? [];
  const heights = [...new Set(slabs.flatMap(({ from, to }) => [from, to]))].sort((a, b) => b - a);
  return heights.slice(1).map((low, index) => {
    const high = heights[index]!;
    const here = slabs.filter(({ from, to }) => from <= low && to >= high);
    return { owner, low, high, cells: cellsBeside(here.flatMap(({ regions }) => regions)) };
  });
};

const outside = (islands: readonly Contour[]): Cell => ({ within: null, box: null, islands });

const inside = (within: Contour, islands: readonly Contour[]): Cell => ({
  within,
  box: contourExtent(within),
  islands,
});

const OPEN: Cell = outside([]);

/** A gap between two slices is open all round. */
const closed = (slices: readonly Slice[]): readonly Slice[] =>
  slices.flatMap((slice, index) => {
    const before = slices[index - 1];
    if (before === undefined || before.low - slice.high <= samePlace) return [slice];
    return [{ owner: slice.owner, low: slice.high, high: before.low, cells: [OPEN] }, slice];
  });

const cellsBeside = (regions: readonly Region[]): readonly Cell[] => {
  const holes = regions.flatMap((region) => region.holes);
  const outlines = regions.map(({ outline }) => outline);
  const loose = outlines.filter((outline) => !holes.some((hole) => isInside(outline, hole)));
  return [
    outside(loose),
    ...holes.map((within) =>
      inside(
        within,
        outlines.filter((outline) => isInside(outline, within)),
      ),
    ),
  ];
};

/** Light runs in the sheet itself and in its holes; from one to the other only where the holes' walls are bare. */
const cellsOfSheet = ({ outline, holes }: Region): readonly Cell[] => [
  outside([outline]),
  inside(outline, holes),
  ...holes.map((within) => inside(within, [])),
];

const isInside = (inner: Contour, outer: Contour): boolean =>
  extentsOverlap(contourExtent(inner), contourExtent(outer)) && containsContour(outer, inner);

/** The room of a slice that a place lies in. */
export const cellAt = ({ cells }: Slice, at: Point): Cell =>
  cells.find(
    ({ within, islands }) =>
      within !== null &&
      containsPoint(within, at) &&
      !islands.some((island) => containsPoint(island, at)),
  ) ??
  cells.find(({ within }) => within === null) ??
  OPEN;

/** Every room that light from a cell may come to on a straight way forward (or back), the cell's own slice first. */
export const reachedFrom = (
  start: Passed,
  slices: readonly Slice[],
  way: "forward" | "back",
): readonly Passed[] => {
  const from = slices.indexOf(start.slice);
  const ahead = way === "forward" ? slices.slice(0, from).toReversed() : slices.slice(from + 1);
  const reached: Passed[] = [start];
  let front: readonly Passed[] = [start];
  for (const slice of ahead) {
    const onward = front.map(({ cell }) => joinedTo(cell, slice));
    front = slice.cells
      .filter((cell) => onward.some((cells) => cells.has(cell)))
      .map((cell) => ({ slice, cell }));
    reached.push(...front);
  }
  return reached;
};

/** The rooms of a slice that light can pass to from a room beside it: many ways lead through the same room. */
const joinedTo = (cell: Cell, slice: Slice): ReadonlySet<Cell> => {
  const bySlice = JOINED.get(cell) ?? new WeakMap<Slice, ReadonlySet<Cell>>();
  JOINED.set(cell, bySlice);
  const known = bySlice.get(slice);
  if (known !== undefined) return known;
  const joined = new Set(slice.cells.filter((next) => areJoined(cell, next)));
  bySlice.set(slice, joined);
  return joined;
};

const JOINED = new WeakMap<Cell, WeakMap<Slice, ReadonlySet<Cell>>>();

const areJoined = (a: Cell, b: Cell): boolean => {
  const { within: one } = a;
  const { within: other, box } = b;
  if (one === null) return other === null || isOpenTo(a, other);
  if (other === null || box === null) return isOpenTo(b, one);
  return (
    a.box !== null &&
    extentsOverlap(a.box, box) &&
    mayOverlap(one, other, box) &&
    !a.islands.some((island) => isInside(other, island)) &&
    !b.islands.some((island) => isInside(one, island))
  );
};

/** What lies outside comes to a room that no island closes. */
const isOpenTo = ({ islands }: Cell, within: Contour): boolean =>
  !islands.some((island) => isInside(within, island));

/** Of two whose boxes overlap. Where no edge of the one comes near the other, one place decides. */
const mayOverlap = (one: Contour, other: Contour, box: Extent): boolean => {
  const isApart = boxedEdgesOf(one).every((edge) => !extentsOverlap(edge.box, box));
  return isApart ? containsPoint(one, edgesOf(other)[0]!.from) : contoursOverlap(one, other);
};

// Where a dragged thing comes to rest: on the line of another one, at equal gaps, in the middle, else on the grid. Takes the
// shift that the hand asks for, gives the one that is drawn, with the guides that say why and their numbers, in mm.

import { type Extent, extentCentre, movedExtent } from "../../src/geometry/extent.ts";

export interface Still {
  readonly id: string;
  readonly at: { readonly x: number; readonly y: number };
  readonly box: Extent;
}

export interface SnapScene {
  readonly moving: Omit<Still, "id">;
  readonly still: readonly Still[];
  readonly panel: Extent;
  readonly grid: number;
  /** The number that is to be round, on each axis, before the shift: it grows to the right and up. */
  readonly stated: Shift;
  /** How near is near enough, mm on the panel: a few pixels on the screen. */
  readonly reach: number;
}

export type GuideAxis = "x" | "y";

export type Guide =
  | {
      /** A line that is shared: across it stands at `value`, and runs from one thing to the other. */
      readonly kind: "line";
      readonly axis: GuideAxis;
      readonly value: number;
      readonly from: number;
      readonly to: number;
      readonly by: string;
    }
  | {
      /** One of two equal gaps, from `from` to `to` along the axis, at `beside` on the other one. */
      readonly kind: "gap";
      readonly axis: GuideAxis;
      readonly from: number;
      readonly to: number;
      readonly beside: number;
    };

export interface Snapped {
  readonly x: number;
  readonly y: number;
  readonly guides: readonly Guide[];
}

export interface Shift {
  readonly x: number;
  readonly y: number;
}

export function snapped(wanted: Shift, scene: SnapScene): Snapped {
  const x = axisSnap("x", wanted, scene);
  const y = axisSnap("y", { x: x.shift, y: wanted.y }, scene);
  return { x: x.shift, y: y.shift, guides: [...x.guides, ...y.guides] };
}

interface Candidate {
  readonly shift: number;
  readonly guides: (shift: Shift) => readonly Guide[];
}

function axisSnap(
  axis: GuideAxis,
  wanted: Shift,
  scene: SnapScene,
): { readonly shift: number; readonly guides: readonly Guide[] } {
  const asked = wanted[axis];
  const near = (all: readonly Candidate[]): readonly Candidate[] =>
    all.filter(({ shift }) => Math.abs(shift - asked) <= scene.reach);
  const centres = near([...centreLines(axis, scene), ...middleOfPanel(axis, scene)]);
  const gaps = near(equalGaps(axis, wanted, scene));
  const edges = near(edgeLines(axis, scene));
  // A centre line is what is meant where an edge lies beside it: parts of a kind are lined up by their axes.
  const choice = [...centres, ...gaps, ...(centres.length > 0 ? [] : edges)];
  const [first] = choice;
  if (first === undefined) return { shift: onGrid(axis, asked, scene), guides: [] };
  const best = choice.reduce(
    (nearest, one) =>
      Math.abs(one.shift - asked) < Math.abs(nearest.shift - asked) - ALIKE ? one : nearest,
    first,
  );
  const shift = axis === "x" ? { ...wanted, x: best.shift } : { ...wanted, y: best.shift };
  const shown = choice.filter((one) => Math.abs(one.shift - best.shift) < ALIKE);
  return { shift: best.shift, guides: shown.flatMap(({ guides }) => guides(shift)).slice(0, MOST) };
}

/** Two candidates nearer than this are one: finer than the text's last digit. */
const ALIKE = 1e-4;
/** More guides than this on an axis hide the panel. */
const MOST = 4;

function onGrid(axis: GuideAxis, asked: number, { stated, grid }: SnapScene): number {
  const number = stated[axis];
  return Math.round((number + asked) / grid) * grid - number;
}

function centreLines(axis: GuideAxis, { moving, still }: SnapScene): readonly Candidate[] {
  return still.map((other) => ({
    shift: other.at[axis] - moving.at[axis],
    guides: (shift) => [lineTo(axis, other.at[axis], { moving, shift, other })],
  }));
}

function edgeLines(axis: GuideAxis, { moving, still }: SnapScene): readonly Candidate[] {
  const own = sides(axis, moving.box);
  return still.flatMap((other) => {
    const its = sides(axis, other.box);
    return (["low", "high"] as const).map((side) => ({
      shift: its[side] - own[side],
      guides: (shift: Shift) => [lineTo(axis, its[side], { moving, shift, other })],
    }));
  });
}

function middleOfPanel(axis: GuideAxis, { moving, panel }: SnapScene): readonly Candidate[] {
  const middle = extentCentre(panel)[axis];
  const [from, to] = axis === "x" ? [panel.minY, panel.maxY] : [panel.minX, panel.maxX];
  const guide: Guide = { kind: "line", axis, value: middle, from, to, by: "the middle" };
  return [{ shift: middle - moving.at[axis], guides: () => [guide] }];
}

interface LineFacts {
  readonly moving: Omit<Still, "id">;
  readonly shift: Shift;
  readonly other: Still;
}

function lineTo(axis: GuideAxis, value: number, { moving, shift, other }: LineFacts): Guide {
  const cross = axis === "x" ? "y" : "x";
  const ends = [moving.at[cross] + shift[cross], other.at[cross]];
  return {
    kind: "line",
    axis,
    value,
    from: Math.min(...ends),
    to: Math.max(...ends),
    by: other.id,
  };
}

/** Between two neighbours, or going on with the gap that two neighbours leave; edge to edge, among those in its way. */
function equalGaps(axis: GuideAxis, wanted: Shift, scene: SnapScene): readonly Candidate[] {
  const { moving, still } = scene;
  const box = movedExtent(moving.box, wanted.x, wanted.y);
  const cross = axis === "x" ? "y" : "x";
  const own = sides(axis, box);
  const lane = sides(cross, box);
  const inLane = still.filter((other) => {
    const its = sides(cross, other.box);
    return its.low < lane.high && lane.low < its.high;
  });
  const middle = (own.low + own.high) / 2;
  const before = nearest(axis, inLane, (its) => (its.low + its.high) / 2 < middle, -1);
  const after = nearest(axis, inLane, (its) => (its.low + its.high) / 2 > middle, 1);
  const home = sides(axis, moving.box);
  const size = own.high - own.low;
  const beside = (lane.low + lane.high) / 2;
  const found: Candidate[] = [];
  const offer = (low: number, gaps: readonly (readonly [number, number])[]): void => {
    const guides = gaps.map(([from, to]): Guide => ({ kind: "gap", axis, from, to, beside }));
    found.push({ shift: low - home.low, guides: () => guides });
  };
  const [left, left2] = before;
  const [right, right2] = after;
  if (left !== undefined && right !== undefined) {
    const gap = (right.low - left.high - size) / 2;
    if (gap >= 0) {
      const low = left.high + gap;
      offer(low, [
        [left.high, low],
        [low + size, right.low],
      ]);
    }
  }
  if (left !== undefined && left2 !== undefined && left.low >= left2.high) {
    const gap = left.low - left2.high;
    offer(left.high + gap, [
      [left2.high, left.low],
      [left.high, left.high + gap],
    ]);
  }
  if (right !== undefined && right2 !== undefined && right2.low >= right.high) {
    const gap = right2.low - right.high;
    offer(right.low - gap - size, [
      [right.low - gap, right.low],
      [right.high, right2.low],
    ]);
  }
  return found;
}

interface Sides {
  readonly low: number;
  readonly high: number;
}

const sides = (axis: GuideAxis, box: Extent): Sides =>
  axis === "x" ? { low: box.minX, high: box.maxX } : { low: box.minY, high: box.maxY };

/** The two nearest on one side, nearest first. */
function nearest(
  axis: GuideAxis,
  things: readonly Still[],
  isOnSide: (its: Sides) => boolean,
  toward: 1 | -1,
): readonly Sides[] {
  return things
    .map(({ box }) => sides(axis, box))
    .filter(isOnSide)
    .toSorted((a, b) => toward * (a.low + a.high - b.low - b.high))
    .slice(0, 2);
}

// The whole-numbered place nearest to the origin that no barred rectangle covers. Near the origin every place is counted, in windows
// of bounded size; farther off only rows and columns right behind a rectangle's edge are looked at, since from any other clear place
// one step nearer is clear too. So neither time nor memory grows with the field: counting all of 3 m by 3 m in steps of 0.5 mm took 6 s.

import type { Shift } from "../../src/layout/separate-moves.ts";

/** Whole numbers, all inclusive. */
export interface Cells {
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

/** null: all of the field is barred, or it is empty. Of two places as near, the one to the right, then the lower. */
export function nearestClear(field: Cells, barred: readonly Cells[]): Shift | null {
  for (const reach of REACHES) {
    const around = { minX: -reach, maxX: reach, minY: -reach, maxY: reach };
    const window = common(field, around);
    const found = isEmpty(window) ? null : nearestCounted(window, barred);
    const isNear = found !== null && squared(found) <= reach * reach;
    if (isNear || holds(around, field)) return found;
  }
  return nearestByEdges(field, barred);
}

/**
 * Each way from the origin; the larger window takes 4 MB. For 120 lamps among 130 counting takes 1.3 s of the processor and sorting
 * edges 7.8 s, which is left for places far off.
 */
const REACHES: readonly number[] = [64, 512];

const holds = (outer: Cells, inner: Cells): boolean =>
  outer.minX <= inner.minX &&
  inner.maxX <= outer.maxX &&
  outer.minY <= inner.minY &&
  inner.maxY <= outer.maxY;

function nearestCounted(window: Cells, barred: readonly Cells[]): Shift | null {
  const { minX, minY, maxX, maxY } = window;
  const wide = maxX - minX + 2;
  // Differences along both axes, one column and one row more than there are places; their running sums are the counts.
  const counts = new Int32Array(wide * (maxY - minY + 2));
  for (const bar of barred) {
    const [left, right] = [Math.max(minX, bar.minX), Math.min(maxX, bar.maxX)];
    const [bottom, top] = [Math.max(minY, bar.minY), Math.min(maxY, bar.maxY)];
    if (left > right || bottom > top) continue;
    const [low, high] = [(bottom - minY) * wide - minX, (top + 1 - minY) * wide - minX];
    counts[low + left]! += 1;
    counts[low + right + 1]! -= 1;
    counts[high + left]! -= 1;
    counts[high + right + 1]! += 1;
  }
  let best: Shift | null = null;
  for (let y = minY; y <= maxY; y += 1) {
    const row = (y - minY) * wide - minX;
    let along = 0;
    for (let x = minX; x <= maxX; x += 1) {
      along += counts[row + x]!;
      counts[row + x] = along + (y > minY ? counts[row + x - wide]! : 0);
      if (counts[row + x] === 0 && isNearer({ x, y }, best)) best = { x, y };
    }
  }
  return best;
}

export function nearestByEdges(field: Cells, barred: readonly Cells[]): Shift | null {
  let best: Shift | null = null;
  for (const right of [true, false])
    for (const up of [true, false]) {
      const turned = (cells: Cells): Cells => turnedTo(cells, right, up);
      const quarter = firstQuarter(turned(field));
      if (isEmpty(quarter)) continue;
      const bars = barred.map((each) => common(turned(each), quarter)).filter(isFilled);
      best = nearestInQuarter(quarter, bars, {
        best,
        offer: ({ x, y }) => ({ x: right ? x : 0 - x, y: up ? y : 0 - y }),
      });
    }
  return best;
}

const turnedTo = ({ minX, maxX, minY, maxY }: Cells, right: boolean, up: boolean): Cells => ({
  ...(right ? { minX, maxX } : { minX: -maxX, maxX: -minX }),
  ...(up ? { minY, maxY } : { minY: -maxY, maxY: -minY }),
});

/** Above and to the right of the origin, with what lies on the axes. */
const firstQuarter = ({ minX, maxX, minY, maxY }: Cells): Cells => ({
  ...{ minX: Math.max(0, minX), maxX },
  ...{ minY: Math.max(0, minY), maxY },
});

const common = (a: Cells, b: Cells): Cells => ({
  minX: Math.max(a.minX, b.minX),
  maxX: Math.min(a.maxX, b.maxX),
  minY: Math.max(a.minY, b.minY),
  maxY: Math.min(a.maxY, b.maxY),
});

const isEmpty = ({ minX, maxX, minY, maxY }: Cells): boolean => minX > maxX || minY > maxY;
const isFilled = (cells: Cells): boolean => !isEmpty(cells);

const isNearer = (one: Shift, than: Shift | null): boolean => {
  if (than === null) return true;
  const [far, most] = [squared(one), squared(than)];
  return far < most || (far === most && comesFirst(one, than));
};

const squared = ({ x, y }: Shift): number => x * x + y * y;

const comesFirst = (one: Shift, than: Shift): boolean =>
  one.x > than.x || (one.x === than.x && one.y < than.y);

interface Sought {
  readonly best: Shift | null;
  /** A place of the quarter as the whole field has it. */
  readonly offer: (place: Shift) => Shift;
}

/** Row by row away from the axis; rows farther off than the best place are left out. */
function nearestInQuarter(
  quarter: Cells,
  bars: readonly Cells[],
  { best: known, offer }: Sought,
): Shift | null {
  const firstClearOn = rowSweep(quarter, bars);
  let best = known;
  for (const y of [quarter.minY, ...bars.map(({ maxY }) => maxY + 1).toSorted(rising)]) {
    if (y > quarter.maxY || (best !== null && y * y > squared(best))) break;
    const x = firstClearOn(y);
    if (x === null) continue;
    const place = offer({ x, y });
    if (isNearer(place, best)) best = place;
  }
  return best;
}

const rising = (a: number, b: number): number => a - b;

/** The first clear column of a row, null for none; of rows that are asked for in their order. */
function rowSweep(quarter: Cells, bars: readonly Cells[]): (row: number) => number | null {
  const starts = columnStarts(quarter, bars);
  const columnAt = new Map(starts.map((start, index) => [start, index]));
  const cover = columnCover(starts.length - 1);
  const change = ({ minX, maxX }: Cells, by: 1 | -1): void =>
    cover.change(columnAt.get(minX) ?? 0, columnAt.get(maxX + 1) ?? 0, by);
  const coming = bars.toSorted((a, b) => a.minY - b.minY);
  const going = bars.toSorted((a, b) => a.maxY - b.maxY);
  let [came, gone] = [0, 0];
  return (row) => {
    for (; came < coming.length && coming[came]!.minY <= row; came += 1) change(coming[came]!, 1);
    for (; gone < going.length && going[gone]!.maxY < row; gone += 1) change(going[gone]!, -1);
    const column = cover.firstClear();
    return column === null ? null : (starts[column] ?? null);
  };
}

/** Between two of them every column is covered by the same bars; the last one is right behind the quarter. */
const columnStarts = ({ minX, maxX }: Cells, bars: readonly Cells[]): readonly number[] =>
  [...new Set([minX, maxX + 1, ...bars.flatMap((bar) => [bar.minX, bar.maxX + 1])])].toSorted(
    (a, b) => a - b,
  );

interface Cover {
  /** From one column up to another one that is left out. */
  readonly change: (from: number, to: number, by: 1 | -1) => void;
  readonly firstClear: () => number | null;
}

/** How many bars cover each column, as a tree of halves, so that a change and an answer take as many steps as there are levels. */
function columnCover(columns: number): Cover {
  let leaves = 1;
  while (leaves < columns) leaves *= 2;
  // Of a node the bars that cover all of it and not all of the node above; and the fewest over any of its columns, of those and below.
  const whole = new Int32Array(2 * leaves);
  const fewest = new Int32Array(2 * leaves);
  const add = (node: number, by: number): void => {
    whole[node]! += by;
    fewest[node]! += by;
  };
  const renewAbove = (leaf: number): void => {
    for (let node = leaf >> 1; node > 0; node >>= 1)
      fewest[node] = whole[node]! + Math.min(fewest[2 * node]!, fewest[2 * node + 1]!);
  };
  const change = (from: number, to: number, by: number): void => {
    let [low, high] = [from + leaves, to + leaves];
    for (; low < high; low >>= 1, high >>= 1) {
      if (low % 2 === 1) add(low++, by);
      if (high % 2 === 1) add(--high, by);
    }
    renewAbove(from + leaves);
    renewAbove(to - 1 + leaves);
  };
  // What fills the tree up behind the last column is never clear.
  if (columns < leaves) change(columns, leaves, 1);
  const firstClear = (): number | null => {
    if (fewest[1] !== 0) return null;
    let node = 1;
    while (node < leaves) node = fewest[2 * node] === 0 ? 2 * node : 2 * node + 1;
    return node - leaves;
  };
  return { change, firstClear };
}

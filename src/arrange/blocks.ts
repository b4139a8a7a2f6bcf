// A group of units set in rows: a block with a size, that the panel is built up from.

import { arithmeticNoise } from "../geometry/tolerance.ts";
import { alongRow, handDrop, type Spacing } from "./spacing.ts";
import { type Unit, unitReach } from "./unit.ts";

/** Members of a row with their distance from the row's first axis. */
export interface Row {
  readonly units: readonly Unit[];
  readonly offsets: readonly number[];
}

/** Rows from the top down; each with its axis below the first one's. */
export interface Block {
  readonly group: string;
  readonly rows: readonly Row[];
  readonly drops: readonly number[];
}

/** How far a row reaches from its first axis to both sides. */
export const rowReach = (row: Row): { readonly left: number; readonly right: number } => {
  const reaches = row.units.map((unit, index) => {
    const box = unitReach(unit);
    const at = row.offsets[index] ?? 0;
    return { left: -(at + box.minX), right: at + box.maxX };
  });
  return {
    left: Math.max(...reaches.map(({ left }) => left)),
    right: Math.max(...reaches.map(({ right }) => right)),
  };
};

const rowWidth = (row: Row): number => {
  const { left, right } = rowReach(row);
  return left + right;
};

/**
 * The units in rows no wider than `width`, on the least height. Tried in the list's order and with the tallest first;
 * the list's order wins a tie.
 */
export const blockOf = (
  units: readonly Unit[],
  options: { readonly width: number; readonly spacing: Spacing },
): Block => {
  const tallestFirst = units.toSorted((a, b) => height(b) - height(a));
  const [listed, sorted] = [units, tallestFirst].map((order) => brokenInRows(order, options));
  if (listed === undefined || sorted === undefined) return { group: "", rows: [], drops: [] };
  return blockHeight(sorted).height < blockHeight(listed).height ? sorted : listed;
};

const height = (unit: Unit): number => {
  const box = unitReach(unit);
  return box.maxY - box.minY;
};

interface Broken {
  readonly rows: readonly Row[];
  /** Sum of the rows' heights: what a break costs. */
  readonly cost: number;
  /** Sum of the squares of the rows' counts: of rows as low, those of like length look better. */
  readonly unevenness: number;
}

const isBetter = (a: Omit<Broken, "rows">, b: Broken | undefined): boolean =>
  b === undefined ||
  a.cost < b.cost - arithmeticNoise ||
  (a.cost < b.cost + arithmeticNoise && a.unevenness < b.unevenness);

/** Where to break the sequence so that the rows are lowest in all: the best way to break each beginning, one after the other. */
const brokenInRows = (
  units: readonly Unit[],
  options: { readonly width: number; readonly spacing: Spacing },
): Block => {
  const best: (Broken | undefined)[] = [{ rows: [], cost: 0, unevenness: 0 }];
  units.forEach((_, start) => {
    const before = best[start];
    if (before === undefined) return;
    for (const row of rowsFrom(units, start, options)) {
      const end = start + row.units.length;
      const cost = before.cost + rowHeight(row) + options.spacing.solid;
      const unevenness = before.unevenness + row.units.length * row.units.length;
      if (isBetter({ cost, unevenness }, best[end]))
        best[end] = { rows: [...before.rows, row], cost, unevenness };
    }
  });
  const rows = best[units.length]?.rows ?? [];
  return { group: units[0]?.group ?? "", rows, drops: rowDrops(rows, options) };
};

/** Every row that begins at `start`: one unit, two units, as many as the width takes. */
const rowsFrom = (
  units: readonly Unit[],
  start: number,
  options: { readonly width: number; readonly spacing: Spacing },
): readonly Row[] => {
  const first = units[start];
  if (first === undefined) return [];
  const rows: Row[] = [{ units: [first], offsets: [0] }];
  for (const unit of units.slice(start + 1)) {
    const longer = appended(rows.at(-1) ?? { units: [], offsets: [] }, unit, options.spacing);
    if (rowWidth(longer) > options.width) break;
    rows.push(longer);
  }
  return rows;
};

const rowHeight = (row: Row): number => {
  const boxes = row.units.map(unitReach);
  return Math.max(...boxes.map(({ maxY }) => maxY)) - Math.min(...boxes.map(({ minY }) => minY));
};

/** The row with one more unit at its right; the distance is a round half millimetre. */
const appended = (row: Row, unit: Unit, spacing: Spacing): Row => {
  const previous = row.units.at(-1);
  const at = row.offsets.at(-1) ?? 0;
  const distance = previous === undefined ? 0 : roundedUp(alongRow(previous, unit, spacing));
  return evened({ units: [...row.units, unit], offsets: [...row.offsets, at + distance] });
};

/** Members of a run stand at one pitch, the widest that any two of them need: so that they can be written as a row. */
const evened = (row: Row): Row => {
  const distances = row.offsets.map((offset, index) => offset - (row.offsets[index - 1] ?? offset));
  for (const { first, count } of runsOf(row.units)) {
    const pitch = Math.max(...distances.slice(first + 1, first + count));
    for (let index = first + 1; count >= LEAST_RUN && index < first + count; index += 1)
      distances[index] = pitch;
  }
  const offsets: number[] = [];
  for (const distance of distances) offsets.push((offsets.at(-1) ?? 0) + distance);
  return { units: row.units, offsets };
};

/** Fewer are written one by one. */
export const LEAST_RUN = 3;

/** Neighbours of one line of the list, by where they begin in the row. */
export const runsOf = (
  units: readonly Unit[],
): readonly { readonly first: number; readonly count: number }[] => {
  const runs: { first: number; count: number }[] = [];
  units.forEach((unit, index) => {
    const last = runs.at(-1);
    if (last !== undefined && units[last.first]?.line === unit.line) last.count += 1;
    else runs.push({ first: index, count: 1 });
  });
  return runs;
};

/** Up to the next half millimetre: distances that a person would write. */
export const roundedUp = (value: number): number => Math.ceil(value * 2 - arithmeticNoise) / 2;

const rowDrops = (
  rows: readonly Row[],
  options: { readonly spacing: Spacing },
): readonly number[] => {
  const drops: number[] = [0];
  rows.slice(1).forEach((row, index) => {
    const above = rows[index];
    const before = drops.at(-1) ?? 0;
    if (above !== undefined) drops.push(before + roundedUp(rowDrop(above, row, options.spacing)));
  });
  return drops;
};

/** From the axis of one row to that of the next: nothing touches, and a hand passes. Rows are centred on each other. */
const rowDrop = (above: Row, below: Row, spacing: Spacing): number => {
  const foot = Math.min(...above.units.map((unit) => unitReach(unit).minY));
  const head = Math.max(...below.units.map((unit) => unitReach(unit).maxY));
  const shift = centreShift(above, below);
  const hands = above.units.flatMap((upper, i) =>
    below.units.map((lower, j) =>
      handDrop(upper, lower, (below.offsets[j] ?? 0) + shift - (above.offsets[i] ?? 0)),
    ),
  );
  return Math.max(head - foot + spacing.solid, ...hands);
};

const centreShift = (above: Row, below: Row): number => {
  const a = rowReach(above);
  const b = rowReach(below);
  return (a.right - a.left) / 2 - (b.right - b.left) / 2;
};

/** Height of a block from its highest to its lowest point, and the distance from its top to its first axis. */
export const blockHeight = (
  block: Block,
): { readonly height: number; readonly firstAxis: number } => {
  const first = block.rows[0];
  const last = block.rows.at(-1);
  if (first === undefined || last === undefined) return { height: 0, firstAxis: 0 };
  const firstAxis = Math.max(...first.units.map((unit) => unitReach(unit).maxY));
  const foot = Math.min(...last.units.map((unit) => unitReach(unit).minY));
  return { height: firstAxis + (block.drops.at(-1) ?? 0) - foot, firstAxis };
};

export const blockWidth = (block: Block): number => Math.max(...block.rows.map(rowWidth));

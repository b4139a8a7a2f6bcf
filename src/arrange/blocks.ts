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

export const rowWidth = (row: Row): number => {
  const { left, right } = rowReach(row);
  return left + right;
};

/** Fills rows one after the other up to `width`, then spreads the units evenly over as many rows as that took. */
export const blockOf = (
  units: readonly Unit[],
  options: { readonly width: number; readonly spacing: Spacing },
): Block => {
  const filled = rowsOf(units, options, units.length);
  const even = Math.ceil(units.length / filled.length);
  const rows = rowsOf(units, options, even);
  const chosen = rows.length === filled.length ? rows : filled;
  return { group: units[0]?.group ?? "", rows: chosen, drops: rowDrops(chosen, options) };
};

const rowsOf = (
  units: readonly Unit[],
  options: { readonly width: number; readonly spacing: Spacing },
  most: number,
): readonly Row[] => {
  const rows: Row[] = [];
  for (const unit of units) {
    const last = rows.at(-1);
    const longer = last === undefined ? null : appended(last, unit, options.spacing);
    if (longer !== null && longer.units.length <= most && rowWidth(longer) <= options.width)
      rows[rows.length - 1] = longer;
    else rows.push({ units: [unit], offsets: [0] });
  }
  return rows;
};

/** The row with one more unit at its right; the distance is a round half millimetre. */
export const appended = (row: Row, unit: Unit, spacing: Spacing): Row => {
  const previous = row.units.at(-1);
  const at = row.offsets.at(-1) ?? 0;
  const distance = previous === undefined ? 0 : roundedUp(alongRow(previous, unit, spacing));
  return { units: [...row.units, unit], offsets: [...row.offsets, at + distance] };
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
export const rowDrop = (above: Row, below: Row, spacing: Spacing): number => {
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

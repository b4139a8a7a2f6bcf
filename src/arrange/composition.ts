// Blocks stood on each other, two beside each other where they fit: every unit gets a place from the panel's top edge.

import { separation } from "../standards/separation.ts";
import { type Block, blockHeight, blockWidth, type Row, roundedUp, rowReach } from "./blocks.ts";
import { handDrop, type Spacing } from "./spacing.ts";
import type { Unit } from "./unit.ts";

export interface PlacedRow {
  readonly group: string;
  readonly row: Row;
  /** Distance of its first axis from the left edge, and of its axis from the top edge. */
  readonly left: number;
  readonly top: number;
}

export interface Composition {
  readonly rows: readonly PlacedRow[];
  /** From the panel's top edge to the foot of the lowest block, margins included. */
  readonly height: number;
}

export interface Room {
  readonly panelWidth: number;
  /** Kept free at each side, at the top and at the foot. */
  readonly side: number;
  readonly end: number;
  /** Between two blocks, borders included. */
  readonly between: number;
  readonly spacing: Spacing;
}

/** Shelves from the top down: a shelf takes further blocks as long as they fit beside each other. */
export const composed = (blocks: readonly Block[], room: Room): Composition => {
  const shelves = shelvesOf(blocks, room);
  const rows: PlacedRow[] = [];
  let top = room.end;
  for (const shelf of shelves) {
    const height = Math.max(...shelf.map((block) => blockHeight(block).height));
    const down = roundedUp(handDeficit(rows, placedShelf(shelf, room, { top, height })));
    rows.push(...placedShelf(shelf, room, { top: top + down, height }));
    top += down + height + room.between;
  }
  return { rows, height: top - room.between + room.end };
};

/** How much too near a new shelf would stand to what is above it, for a hand. */
const handDeficit = (above: readonly PlacedRow[], below: readonly PlacedRow[]): number => {
  const lacks = unitsAt(above).flatMap((upper) =>
    unitsAt(below).map(
      (lower) => handDrop(upper.unit, lower.unit, lower.x - upper.x) - (lower.top - upper.top),
    ),
  );
  return Math.max(0, ...lacks);
};

const unitsAt = (
  rows: readonly PlacedRow[],
): readonly { readonly unit: Unit; readonly x: number; readonly top: number }[] =>
  rows.flatMap(({ row, left, top }) =>
    row.units.map((unit, index) => ({ unit, x: left + (row.offsets[index] ?? 0), top })),
  );

const shelvesOf = (blocks: readonly Block[], room: Room): readonly (readonly Block[])[] => {
  const width = room.panelWidth - 2 * room.side;
  const shelves: Block[][] = [];
  for (const block of blocks) {
    const last = shelves.at(-1);
    const beside = last === undefined ? null : [...last, block];
    if (beside !== null && shelfWidth(beside, room) <= width) shelves[shelves.length - 1] = beside;
    else shelves.push([block]);
  }
  return shelves;
};

const shelfWidth = (shelf: readonly Block[], room: Room): number =>
  shelf.reduce((sum, block) => sum + blockWidth(block), 0) +
  gapsOf(shelf, room).reduce((sum, gap) => sum + gap, 0);

/** Between each block of a shelf and the next. */
const gapsOf = (shelf: readonly Block[], room: Room): readonly number[] =>
  shelf.slice(1).map((block, index) => gapBetween(shelf[index] ?? block, block, room));

/** Borders apart, and a hand between any two things whatever rows they stand in. */
const gapBetween = (left: Block, right: Block, room: Room): number => {
  const gaps = slacksOf(left).flatMap((one) =>
    slacksOf(right).map((other) => {
      const rule = separation(one.unit.hand, other.unit.hand);
      return rule === null ? 0 : rule.least - one.toRight - other.toLeft;
    }),
  );
  return Math.max(room.between, ...gaps);
};

/** From what a hand takes hold of to both sides of the block. */
const slacksOf = (
  block: Block,
): readonly { readonly unit: Unit; readonly toLeft: number; readonly toRight: number }[] => {
  const width = blockWidth(block);
  return unitsAt(placedBlock(block, { left: 0, width, top: 0 })).flatMap(({ unit, x }) =>
    unit.grasp === null
      ? []
      : [{ unit, toLeft: x + unit.grasp.minX, toRight: width - x - unit.grasp.maxX }],
  );
};

/** Blocks of a shelf share the free width evenly; rows of a block are centred on each other. */
const placedShelf = (
  shelf: readonly Block[],
  room: Room,
  at: { readonly top: number; readonly height: number },
): readonly PlacedRow[] => {
  const free = room.panelWidth - 2 * room.side - shelfWidth(shelf, room);
  const share = free / (shelf.length + 1);
  const gaps = gapsOf(shelf, room);
  let left = room.side + share;
  return shelf.flatMap((block, index) => {
    const width = blockWidth(block);
    const placed = placedBlock(block, { left, width, top: at.top });
    left += width + (gaps[index] ?? 0) + share;
    return placed;
  });
};

const placedBlock = (
  block: Block,
  at: { readonly left: number; readonly width: number; readonly top: number },
): readonly PlacedRow[] => {
  const { firstAxis } = blockHeight(block);
  const axis = roundedUp(at.top + firstAxis);
  return block.rows.map((row, index) => {
    const reach = rowReach(row);
    const centred = at.left + (at.width - reach.left - reach.right) / 2 + reach.left;
    return {
      group: block.group,
      row,
      left: roundedUp(centred),
      top: axis + (block.drops[index] ?? 0),
    };
  });
};

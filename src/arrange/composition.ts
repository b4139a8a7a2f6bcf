// Blocks stood on each other, two beside each other where they fit: every unit gets a place from the panel's top edge.

import { type Block, blockHeight, blockWidth, type Row, roundedUp, rowReach } from "./blocks.ts";
import type { Spacing } from "./spacing.ts";

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
    rows.push(...placedShelf(shelf, room, { top, height }));
    top += height + room.between;
  }
  return { rows, height: top - room.between + room.end };
};

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
  shelf.reduce((sum, block) => sum + blockWidth(block), 0) + (shelf.length - 1) * room.between;

/** Blocks of a shelf share the free width evenly; rows of a block are centred on each other. */
const placedShelf = (
  shelf: readonly Block[],
  room: Room,
  at: { readonly top: number; readonly height: number },
): readonly PlacedRow[] => {
  const free = room.panelWidth - 2 * room.side - shelfWidth(shelf, room);
  const gap = free / (shelf.length + 1);
  let left = room.side + gap;
  return shelf.flatMap((block) => {
    const width = blockWidth(block);
    const placed = placedBlock(block, { left, width, top: at.top });
    left += width + room.between + gap;
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

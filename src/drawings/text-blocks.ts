// Blocks of text on a sheet: a heading with wrapped lines, and a table whose columns are as wide as they are told.
// Each gives the box that it fills, so that the next thing can be set below it.

import { point } from "../geometry/contour.ts";
import { type Extent, extent } from "../geometry/extent.ts";
import { rectangle } from "../geometry/shapes.ts";
import type { Face } from "../lettering/face.ts";
import type { DrawingItem, Ink } from "./drawing.ts";
import { HAIR, outlined, segment, stroked, THIN } from "./items.ts";
import { shortened, words, wrapped } from "./words.ts";

export interface Block {
  readonly items: readonly DrawingItem[];
  readonly box: Extent;
}

/** Where a block hangs. */
export interface Hang {
  readonly left: number;
  readonly top: number;
  readonly width: number;
}

const TEXT_HEIGHT = 1.8;
const LINE_PITCH = 3.1;
const HEADING_HEIGHT = 2.2;
const PADDING = 1.6;
const INDENT = 3;

/** Every entry begins on a line of its own; its further lines are set in. */
export const noteBlock = (
  face: Face | null,
  says: { readonly heading: string; readonly entries: readonly string[]; readonly ink: Ink },
  hang: Hang,
): Block => {
  const room = { capHeight: TEXT_HEIGHT, width: hang.width - 2 * PADDING - INDENT };
  const lines = says.entries.flatMap((entry) =>
    wrapped(face, entry, room).map((text, index) => ({ text, indent: index === 0 ? 0 : INDENT })),
  );
  const left = hang.left + PADDING;
  const headY = hang.top - PADDING - HEADING_HEIGHT;
  const heading = words(face, says.heading, point(left, headY), {
    capHeight: HEADING_HEIGHT,
    align: "start",
    ink: says.ink,
  });
  const items = lines.flatMap(
    ({ text, indent }, index) =>
      words(face, text, point(left + indent, headY - LINE_PITCH * (index + 1)), {
        capHeight: TEXT_HEIGHT,
        align: "start",
        ink: "line",
      }).items,
  );
  const bottom = headY - LINE_PITCH * lines.length - PADDING;
  const box = extent(hang.left, bottom, hang.left + hang.width, hang.top);
  const frame = outlined([rectangle(box)], { ink: says.ink, width: THIN });
  return { items: [frame, ...heading.items, ...items], box };
};

export interface Column {
  readonly title: string;
  /** Share of the table's width. */
  readonly share: number;
  readonly align: "start" | "end";
}

const ROW_PITCH = 3.4;

/** A value too wide for its column ends in dots. */
export const tableBlock = (
  face: Face | null,
  table: { readonly columns: readonly Column[]; readonly rows: readonly (readonly string[])[] },
  hang: Hang,
): Block => {
  const titles = table.columns.map(({ title }) => title);
  const all = [titles, ...table.rows];
  const items = all.flatMap((row, index) =>
    rowItems(face, row, {
      columns: table.columns,
      hang,
      baseline: hang.top - ROW_PITCH * (index + 1) + (ROW_PITCH - TEXT_HEIGHT) / 2,
      ink: index === 0 ? "dimension" : "line",
    }),
  );
  const bottom = hang.top - ROW_PITCH * all.length;
  const right = hang.left + hang.width;
  const rules = all.map((_, index) => {
    const y = hang.top - ROW_PITCH * (index + 1);
    return segment(hang.left, y, right, y);
  });
  return {
    items: [stroked(rules, { ink: "faint", width: HAIR }), ...items],
    box: extent(hang.left, bottom, right, hang.top),
  };
};

const rowItems = (
  face: Face | null,
  row: readonly string[],
  at: {
    readonly columns: readonly Column[];
    readonly hang: Hang;
    readonly baseline: number;
    readonly ink: Ink;
  },
): readonly DrawingItem[] => {
  let left = at.hang.left;
  return at.columns.flatMap(({ share, align }, index) => {
    const width = share * at.hang.width;
    const x = align === "start" ? left + 0.5 : left + width - 1.2;
    left += width;
    const text = shortened(face, row[index] ?? "", { capHeight: TEXT_HEIGHT, width: width - 1.7 });
    return words(face, text, point(x, at.baseline), { capHeight: TEXT_HEIGHT, align, ink: at.ink })
      .items;
  });
};

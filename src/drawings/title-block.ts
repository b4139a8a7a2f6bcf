// The title block at the foot of a sheet: what it shows, of which revision and day, held how, in which scale, in which
// layers. The day is the design's own; where it has none the block says so.

import { point } from "../geometry/contour.ts";
import { extent, extentHeight, extentWidth } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { decimal } from "../geometry/number.ts";
import { rectangle } from "../geometry/shapes.ts";
import type { PanelLayout } from "../layout/panel-layout.ts";
import type { Face } from "../lettering/face.ts";
import type { DrawingItem } from "./drawing.ts";
import { MEDIUM, outlined, segment, stroked, THIN } from "./items.ts";
import { layerWords } from "./layer-words.ts";
import { PLACES } from "./measure-line.ts";
import type { Block, Hang } from "./text-blocks.ts";
import { shortened, words, wrapped } from "./words.ts";

const LABEL_HEIGHT = 1.3;
const VALUE_HEIGHT = 2.2;
const TITLE_HEIGHT = 3.6;
const TITLE_ROW = 9;
const CELL_ROW = 7;
const LINE_PITCH = 3.4;
const PADDING = 1.6;

export interface SheetName {
  /** "Front", "Section". */
  readonly view: string;
  readonly scale: string;
}

/** What a title block says, whatever is drawn. */
export interface TitleWords {
  readonly title: string;
  readonly view: string;
  readonly cells: readonly TitleCell[];
  /** Under the cells, a line each. */
  readonly list: { readonly label: string; readonly lines: readonly string[] };
}

export interface TitleCell {
  readonly label: string;
  readonly text: string;
  /** Of the block's width. */
  readonly share: number;
}

export const titleBlock = (
  face: Face | null,
  layout: PanelLayout,
  options: { readonly sheet: SheetName; readonly hang: Hang },
): Block => {
  const { sheet, hang } = options;
  const lines = layout.layers.map((layer, index) => `${index + 1}  ${layerWords(layer)}`);
  return titleBlockOf(
    face,
    {
      title: layout.design.title,
      view: sheet.view,
      cells: cellsOf(layout, sheet),
      list: { label: "STACK, FRONT TO BACK", lines },
    },
    hang,
  );
};

export const titleBlockOf = (face: Face | null, says: TitleWords, hang: Hang): Block => {
  const lines = says.list.lines.flatMap((line) =>
    wrapped(face, line, { capHeight: VALUE_HEIGHT * 0.85, width: hang.width - 2 * PADDING }),
  );
  const listRow = LABEL_HEIGHT + 2 * PADDING + LINE_PITCH * lines.length;
  const rows = [TITLE_ROW, CELL_ROW, listRow];
  const box = extent(
    hang.left,
    hang.top - rows.reduce((sum, height) => sum + height, 0),
    hang.left + hang.width,
    hang.top,
  );
  const cellsTop = hang.top - TITLE_ROW;
  const listTop = cellsTop - CELL_ROW;
  const rules = [cellsTop, listTop].map((y) => segment(box.minX, y, box.maxX, y));
  return {
    items: [
      outlined([rectangle(box)], { ink: "line", width: MEDIUM }),
      stroked(rules, { ink: "line", width: THIN }),
      ...titleRow(face, says, hang),
      ...cellRow(face, says.cells, { ...hang, top: cellsTop }),
      ...label(face, says.list.label, hang.left, listTop),
      ...lines.flatMap(
        (text, index) =>
          words(
            face,
            text,
            point(
              hang.left + PADDING,
              listTop - LABEL_HEIGHT - PADDING - LINE_PITCH * (index + 1) + 0.6,
            ),
            { capHeight: VALUE_HEIGHT * 0.85, align: "start", ink: "line" },
          ).items,
      ),
    ],
    box,
  };
};

const titleRow = (
  face: Face | null,
  { title, view }: Pick<TitleWords, "title" | "view">,
  hang: Hang,
): readonly DrawingItem[] => {
  const seen = words(face, view, point(hang.left + hang.width - PADDING, hang.top - 6.3), {
    capHeight: TITLE_HEIGHT * 0.8,
    align: "end",
    ink: "line",
  });
  const width = hang.width - extentWidth(seen.box) - 4 * PADDING;
  const short = shortened(face, title, { capHeight: TITLE_HEIGHT, width });
  const said = words(face, short, point(hang.left + PADDING, hang.top - 6.3), {
    capHeight: TITLE_HEIGHT,
    align: "start",
    ink: "line",
  });
  return [...said.items, ...seen.items];
};

const cellsOf = (layout: PanelLayout, sheet: SheetName): readonly TitleCell[] => {
  const { design, mount, outline } = layout;
  const size = contourExtent(outline);
  const width = decimal(extentWidth(size), PLACES);
  const height = decimal(extentHeight(size), PLACES);
  return [
    { label: "PANEL", text: design.name, share: 0.2 },
    { label: "REVISION", text: design.revision, share: 0.1 },
    { label: "DATED", text: design.dated ?? "no date", share: 0.14 },
    { label: "MOUNT", text: mount.id, share: 0.2 },
    { label: "SIZE AS CUT, mm", text: `${width} x ${height}`, share: 0.2 },
    { label: "SCALE", text: sheet.scale, share: 0.16 },
  ];
};

const cellRow = (
  face: Face | null,
  cells: readonly TitleCell[],
  hang: Hang,
): readonly DrawingItem[] => {
  let left = hang.left;
  return cells.flatMap((cell, index) => {
    const start = left;
    const width = cell.share * hang.width;
    left += width;
    const text = shortened(face, cell.text, {
      capHeight: VALUE_HEIGHT,
      width: width - 2 * PADDING,
    });
    const said = words(face, text, point(start + PADDING, hang.top - 5.7), {
      capHeight: VALUE_HEIGHT,
      align: "start",
      ink: "line",
    });
    const rule = segment(start, hang.top, start, hang.top - CELL_ROW);
    return [
      ...(index === 0 ? [] : [stroked([rule], { ink: "line", width: THIN })]),
      ...label(face, cell.label, start, hang.top),
      ...said.items,
    ];
  });
};

const label = (
  face: Face | null,
  text: string,
  left: number,
  top: number,
): readonly DrawingItem[] =>
  words(face, text, point(left + PADDING, top - LABEL_HEIGHT - 0.9), {
    capHeight: LABEL_HEIGHT,
    align: "start",
    ink: "dimension",
  }).items;

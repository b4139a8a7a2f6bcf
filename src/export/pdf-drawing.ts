// Drawings as a PDF in true size: each on as many pages as it needs, every page with marks, bars and caption.
// Takes drawings, the paper and a face for the captions; gives the file's bytes.

import type { Drawing } from "../drawings/drawing.ts";
import type { Face } from "../lettering/face.ts";
import { type PageCaption, pageMarks } from "./page-marks.ts";
import type { PaperName } from "./paper.ts";
import { type PdfPage, pdfPages } from "./pdf.ts";
import { tiling } from "./tile.ts";

export interface PaperOptions {
  readonly paper: PaperName;
  readonly face: Face;
}

export const PRINT_NOTE = "Print at 100 %, never fit to page; measure both bars.";

export const pdfDrawing = (
  drawings: readonly Drawing[],
  options: PaperOptions & { readonly title: string },
): Uint8Array =>
  pdfPages(
    drawings.flatMap((drawing) =>
      tiledPages(drawing, {
        ...options,
        caption: { heading: drawing.title, side: "", note: PRINT_NOTE },
      }),
    ),
    options,
  );

export const tiledPages = (
  drawing: Drawing,
  options: PaperOptions & { readonly caption: PageCaption },
): readonly PdfPage[] => {
  const tiled = tiling(drawing.box, options.paper);
  return tiled.tiles.map((tile) => ({
    width: tiled.pageWidth,
    height: tiled.pageHeight,
    sheets: [
      { items: drawing.items, shift: tile.shift, clip: tile.onPage },
      { items: pageMarks(tile, tiled, options), shift: { x: 0, y: 0 }, clip: null },
    ],
  }));
};

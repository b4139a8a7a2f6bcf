// The paper template of a sheet part: true size on A4 or Letter, seen from the front or from behind (mirrored once and marked
// BACK), followed by the table of every opening and of everything that a hand does. Takes a part and a face, gives bytes.
// Sizes are cut sizes without kerf: what a drill or file must reach before paint.

import { decimal } from "../geometry/number.ts";
import type { SheetPart } from "../parts/sheet-part.ts";
import { type PdfPage, pdfPages } from "./pdf.ts";
import { type PaperOptions, PRINT_NOTE, tiledPages } from "./pdf-drawing.ts";
import { type PaperTable, tablePages } from "./table-pages.ts";
import { templateDrawing } from "./template-drawing.ts";
import { type TemplatePoints, type TemplateSide, templatePoints } from "./template-points.ts";

export interface TemplateOptions extends PaperOptions {
  readonly side: TemplateSide;
  /** The design's own date; null where it has none. */
  readonly dated: string | null;
}

export const templatePdf = (part: SheetPart, options: TemplateOptions): Uint8Array =>
  pdfPages(templatePages(part, options), { title: headingOf(part, options) });

const templatePages = (part: SheetPart, options: TemplateOptions): readonly PdfPage[] => {
  const points = templatePoints(part, options.side);
  const heading = headingOf(part, options);
  const name = `${options.side}  ${part.id}  revision ${part.revision}`;
  const drawing = templateDrawing(points, { face: options.face, title: heading, name });
  const mirror = options.side === "BACK" ? "Seen from BEHIND, mirrored once. " : "";
  const caption = { heading, side: options.side, note: `${mirror}${PRINT_NOTE}` };
  return [
    ...tiledPages(drawing, { ...options, caption }),
    ...tablePages(templateTable(part, points, { heading, side: options.side }), options),
  ];
};

const headingOf = (part: SheetPart, { dated }: TemplateOptions): string =>
  `${part.id}, revision ${part.revision}${dated === null ? "" : `, ${dated}`}`;

const PLACES = 2;

const templateTable = (
  part: SheetPart,
  points: TemplatePoints,
  { heading, side }: { readonly heading: string; readonly side: TemplateSide },
): PaperTable => ({
  heading: `${heading}, ${side}: openings and hand operations`,
  columns: [
    { title: "No.", share: 0.06 },
    { title: "What", share: 0.28 },
    { title: "x mm", share: 0.1 },
    { title: "y mm", share: 0.1 },
    { title: "Size mm", share: 0.16 },
    { title: "By hand", share: 0.3 },
  ],
  rows: points.points.map((point) => [
    String(point.number),
    point.feature,
    decimal(point.at.x, PLACES),
    decimal(point.at.y, PLACES),
    point.size,
    point.work.join("; "),
  ]),
  notes: [
    ...points.placeless,
    `x and y from the lower left corner of the outline, seen from the ${side}. Sizes before paint.`,
    `Stock ${part.stock.id}, ${decimal(part.thickness, PLACES)} mm thick.`,
    "Measure both bars of 100 mm on every page before you drill: a print of another size is not a template.",
  ],
});

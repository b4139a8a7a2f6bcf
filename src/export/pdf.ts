// A PDF of vector pages in true size. Takes pages with placed drawing items in millimetres, gives the file's bytes:
// the same on every run (no dates, no ids), viewers told not to scale it in print, no fonts because all text is outlines.
// ISO 32000-1:2008 (PDF 1.7); line ends are butt so that a bar of 100 mm is 100 mm long.

import type { DrawingItem } from "../drawings/drawing.ts";
import type { Extent } from "../geometry/extent.ts";
import { extentHeight, extentWidth } from "../geometry/extent.ts";
import { decimal } from "../geometry/number.ts";
import type { Mm } from "../geometry/quantity.ts";
import { itemOperators, type PageShift, pdfNumber } from "./pdf-content.ts";
import { plainText } from "./plain-text.ts";

export interface PdfPage {
  readonly width: Mm;
  readonly height: Mm;
  readonly sheets: readonly PdfSheet[];
}

/** Items laid on a page, the first lowest. */
export interface PdfSheet {
  readonly items: readonly DrawingItem[];
  /** Where the items' origin lies on the page. */
  readonly shift: PageShift;
  /** In page coordinates; null shows everything. */
  readonly clip: Extent | null;
}

/** Points a millimetre: 72 points are 25.4 mm. */
const POINTS = 72 / 25.4;
const POINT_PLACES = 6;
const SCALE_PLACES = 10;

/** Objects in front of the pages: catalogue, tree of pages, information. */
const FIXED_OBJECTS = 3;

export const pdfPages = (
  pages: readonly PdfPage[],
  options: { readonly title: string },
): Uint8Array => {
  const kids = pages.map((_, index) => `${pageObject(index)} 0 R`).join(" ");
  const objects = [
    "<< /Type /Catalog /Pages 2 0 R /ViewerPreferences << /PrintScaling /None /DisplayDocTitle true >> >>",
    `<< /Type /Pages /Count ${pages.length} /Kids [${kids}] >>`,
    `<< /Title ${textString(options.title)} /Producer ${textString("Consolewright")} >>`,
    ...pages.flatMap((page, index) => [pageDictionary(page, index), stream(pageContent(page))]),
  ];
  return asciiBytes(withCrossReferences(objects));
};

const pageObject = (index: number): number => FIXED_OBJECTS + 1 + 2 * index;

const pageDictionary = (page: PdfPage, index: number): string => {
  const box = `[0 0 ${decimal(page.width * POINTS, POINT_PLACES)} ${decimal(page.height * POINTS, POINT_PLACES)}]`;
  return `<< /Type /Page /Parent 2 0 R /MediaBox ${box} /Resources << >> /Contents ${pageObject(index) + 1} 0 R >>`;
};

const pageContent = (page: PdfPage): string => {
  const scale = decimal(POINTS, SCALE_PLACES);
  return `${scale} 0 0 ${scale} 0 0 cm\n0 J 1 j\n${page.sheets.map(sheetOperators).join("")}`;
};

const sheetOperators = (sheet: PdfSheet): string => {
  const items = sheet.items.map((item) => itemOperators(item, sheet.shift)).join("");
  return `q\n${sheet.clip === null ? "" : clipOperators(sheet.clip)}${items}Q\n`;
};

const clipOperators = (box: Extent): string => {
  const size = `${pdfNumber(extentWidth(box))} ${pdfNumber(extentHeight(box))}`;
  return `${pdfNumber(box.minX)} ${pdfNumber(box.minY)} ${size} re W n\n`;
};

const stream = (content: string): string =>
  `<< /Length ${content.length} >>\nstream\n${content}endstream`;

/** UTF-16 as hexadecimal digits: no character of a title can end the string. */
const textString = (text: string): string => {
  const safe = plainText(text);
  const units = Array.from({ length: safe.length }, (_, index) => safe.charCodeAt(index));
  return `<FEFF${units.map((unit) => unit.toString(16).toUpperCase().padStart(4, "0")).join("")}>`;
};

const withCrossReferences = (objects: readonly string[]): string => {
  let text = "%PDF-1.7\n";
  const offsets: number[] = [];
  for (const [index, content] of objects.entries()) {
    offsets.push(text.length);
    text += `${index + 1} 0 obj\n${content}\nendobj\n`;
  }
  const start = text.length;
  // Every entry of the table is 20 bytes long, its line end included (ISO 32000-1, 7.5.4).
  const entries = offsets.map((offset) => `${String(offset).padStart(10, "0")} 00000 n \n`);
  const table = `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${entries.join("")}`;
  return `${text}${table}trailer\n<< /Size ${objects.length + 1} /Root 1 0 R /Info 3 0 R >>\nstartxref\n${start}\n%%EOF\n`;
};

/** Everything above is ASCII, so that a character is a byte and offsets count both. */
const asciiBytes = (text: string): Uint8Array =>
  Uint8Array.from({ length: text.length }, (_, index) => text.charCodeAt(index));

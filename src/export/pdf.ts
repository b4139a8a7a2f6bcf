// A PDF of vector pages in true size. Takes pages with placed drawing items in millimetres, gives the file's bytes:
// the same on every run (no dates, no ids), viewers told not to scale it in print, no fonts because all text is outlines.
// ISO 32000-1:2008 (PDF 1.7); line ends are butt so that a bar of 100 mm is 100 mm long.

import type { DrawingItem } from "../drawings/drawing.ts";
import type { Extent } from "../geometry/extent.ts";
import { extentHeight, extentWidth } from "../geometry/extent.ts";
import { decimal } from "../geometry/number.ts";
import type { Mm } from "../geometry/quantity.ts";
import { type ContentPart, itemParts, type PageShift, pdfNumber } from "./pdf-content.ts";
import { type PdfObject, pdfFile } from "./pdf-file.ts";
import { type Forms, formEntries, formsOf, shapeOperators } from "./pdf-forms.ts";
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

/** Objects in front of the pages: catalogue, tree of pages, information, resources. */
const FIXED_OBJECTS = 4;

export const pdfPages = (
  pages: readonly PdfPage[],
  options: { readonly title: string },
): Uint8Array => {
  const contents = pages.map((page) => page.sheets.flatMap(sheetParts));
  const forms = formsOf(contents.flat());
  const kids = pages.map((_, index) => `${pageObject(index)} 0 R`).join(" ");
  const firstForm = pageObject(pages.length);
  const names = Array.from(
    forms.values(),
    ({ name }, index) => `/${name} ${firstForm + index} 0 R`,
  );
  const objects: readonly PdfObject[] = [
    "<< /Type /Catalog /Pages 2 0 R /ViewerPreferences << /PrintScaling /None /DisplayDocTitle true >> >>",
    `<< /Type /Pages /Count ${pages.length} /Kids [${kids}] >>`,
    `<< /Title ${textString(options.title)} /Producer ${textString("Consolewright")} >>`,
    `<< /XObject << ${names.join(" ")} >> >>`,
    ...pages.flatMap((page, index) => [
      pageDictionary(page, index),
      { entries: "", stream: pageContent(contents[index] ?? [], forms) },
    ]),
    ...Array.from(forms.values(), (form) => ({
      entries: formEntries(form),
      stream: form.operators,
    })),
  ];
  return pdfFile(objects);
};

const pageObject = (index: number): number => FIXED_OBJECTS + 1 + 2 * index;

const pageDictionary = (page: PdfPage, index: number): string => {
  const box = `[0 0 ${decimal(page.width * POINTS, POINT_PLACES)} ${decimal(page.height * POINTS, POINT_PLACES)}]`;
  return `<< /Type /Page /Parent 2 0 R /MediaBox ${box} /Resources 4 0 R /Contents ${pageObject(index) + 1} 0 R >>`;
};

const sheetParts = (sheet: PdfSheet): readonly ContentPart[] => [
  { kind: "operators", text: `q\n${sheet.clip === null ? "" : clipOperators(sheet.clip)}` },
  ...sheet.items.flatMap((item) => itemParts(item, sheet.shift)),
  { kind: "operators", text: "Q\n" },
];

const pageContent = (parts: readonly ContentPart[], forms: Forms): string => {
  const scale = decimal(POINTS, SCALE_PLACES);
  const operators = parts.map((part) =>
    part.kind === "operators" ? part.text : shapeOperators(part, forms),
  );
  return `${scale} 0 0 ${scale} 0 0 cm\n0 J 1 j\n${operators.join("")}`;
};

const clipOperators = (box: Extent): string => {
  const size = `${pdfNumber(extentWidth(box))} ${pdfNumber(extentHeight(box))}`;
  return `${pdfNumber(box.minX)} ${pdfNumber(box.minY)} ${size} re W n\n`;
};

/** UTF-16 as hexadecimal digits: no character of a title can end the string. */
const textString = (text: string): string => {
  const safe = plainText(text);
  const units = Array.from({ length: safe.length }, (_, index) => safe.charCodeAt(index));
  return `<FEFF${units.map((unit) => unit.toString(16).toUpperCase().padStart(4, "0")).join("")}>`;
};

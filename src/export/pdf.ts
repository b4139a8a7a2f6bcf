// A PDF of vector pages in true size. Takes pages with placed drawing items in millimetres, gives the file's bytes:
// the same on every run (no dates, no ids), viewers told not to scale it in print, no fonts because all text is outlines.
// ISO 32000-1:2008 (PDF 1.7); line ends are butt so that a bar of 100 mm is 100 mm long.

import type { DrawingItem } from "../drawings/drawing.ts";
import type { Extent } from "../geometry/extent.ts";
import { extentHeight, extentWidth } from "../geometry/extent.ts";
import { decimal } from "../geometry/number.ts";
import type { Mm } from "../geometry/quantity.ts";
import { type ContentPart, itemParts, pdfNumber, type WrittenShape } from "./pdf-content.ts";
import { type PdfObject, pdfFile } from "./pdf-file.ts";
import {
  type Form,
  formEntries,
  partOperators,
  placedForm,
  type ShapeForms,
  type SheetForms,
  shapeForms,
  sheetForms,
} from "./pdf-forms.ts";
import { plainText } from "./plain-text.ts";
import { copyKeeper } from "./shifted-copy.ts";

export interface PdfPage {
  readonly width: Mm;
  readonly height: Mm;
  readonly sheets: readonly PdfSheet[];
}

/** Items laid on a page, the first lowest. The same list on several pages is written into the file once. */
export interface PdfSheet {
  readonly items: readonly DrawingItem[];
  /** Where the items' origin lies on the page. */
  readonly shift: { readonly x: number; readonly y: number };
  /** In page coordinates; null shows everything. */
  readonly clip: Extent | null;
}

/** Points a millimetre: 72 points are 25.4 mm. */
const POINTS = 72 / 25.4;
const POINT_PLACES = 6;
const SCALE_PLACES = 10;

/** Objects in front of the pages: catalogue, tree of pages, information, resources. */
const FIXED_OBJECTS = 4;
const RESOURCES = "4 0 R";

export const pdfPages = (
  pages: readonly PdfPage[],
  options: { readonly title: string },
): Uint8Array => {
  const laid = pages.flatMap(({ sheets }) => sheets.map(({ items }) => items));
  const contents = contentsOf(laid);
  const shapes = shapeForms([...contents.values()].flat());
  const sheets = sheetForms(laid, contents, shapes);
  const forms = [...shapes.values(), ...sheets.values()];
  const kids = pages.map((_, index) => `${pageObject(index)} 0 R`).join(" ");
  const firstForm = pageObject(pages.length);
  const names = forms.map(({ name }, index) => `/${name} ${firstForm + index} 0 R`);
  const objects: readonly PdfObject[] = [
    "<< /Type /Catalog /Pages 2 0 R /ViewerPreferences << /PrintScaling /None /DisplayDocTitle true >> >>",
    `<< /Type /Pages /Count ${pages.length} /Kids [${kids}] >>`,
    `<< /Title ${textString(options.title)} /Producer ${textString("Consolewright")} >>`,
    `<< /XObject << ${names.join(" ")} >> >>`,
    ...pages.flatMap((page, index) => [
      pageDictionary(page, index),
      { entries: "", stream: pageContent(page, { contents, shapes, sheets }) },
    ]),
    ...Array.from(shapes.values(), (form) => formObject(form, "")),
    ...Array.from(sheets.values(), (form) => formObject(form, `/Resources ${RESOURCES} `)),
  ];
  return pdfFile(objects);
};

const pageObject = (index: number): number => FIXED_OBJECTS + 1 + 2 * index;

const pageDictionary = (page: PdfPage, index: number): string => {
  const box = `[0 0 ${decimal(page.width * POINTS, POINT_PLACES)} ${decimal(page.height * POINTS, POINT_PLACES)}]`;
  return `<< /Type /Page /Parent 2 0 R /MediaBox ${box} /Resources ${RESOURCES} /Contents ${pageObject(index) + 1} 0 R >>`;
};

const formObject = (form: Form, resources: string): PdfObject => ({
  entries: formEntries(form, resources),
  stream: form.operators,
});

type Contents = ReadonlyMap<readonly DrawingItem[], readonly ContentPart[]>;

/** The parts of every list of items, each worked out once however many pages it lies on. */
const contentsOf = (laid: readonly (readonly DrawingItem[])[]): Contents => {
  const written = copyKeeper<WrittenShape>();
  const contents = new Map<readonly DrawingItem[], readonly ContentPart[]>();
  for (const items of laid) {
    if (contents.has(items)) continue;
    contents.set(
      items,
      items.flatMap((item) => itemParts(item, written)),
    );
  }
  return contents;
};

interface Written {
  readonly contents: Contents;
  readonly shapes: ShapeForms;
  readonly sheets: SheetForms;
}

const pageContent = (page: PdfPage, written: Written): string => {
  const scale = decimal(POINTS, SCALE_PLACES);
  const sheets = page.sheets.map((sheet) => sheetOperators(sheet, written));
  return `${scale} 0 0 ${scale} 0 0 cm\n0 J 1 j\n${sheets.join("")}`;
};

const sheetOperators = (sheet: PdfSheet, { contents, shapes, sheets }: Written): string => {
  const { items, shift, clip } = sheet;
  const form = sheets.get(items);
  const drawn =
    form === undefined ? partOperators(contents.get(items) ?? [], shapes) : placedForm(form);
  const seen = clip === null ? "" : clipOperators(clip);
  const moved =
    shift.x === 0 && shift.y === 0
      ? ""
      : `1 0 0 1 ${pdfNumber(shift.x)} ${pdfNumber(shift.y)} cm\n`;
  return `q\n${seen}${moved}${drawn}Q\n`;
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

// What a PDF holds once and places by name (form XObjects, ISO 32000-1, 8.10): shapes that come again, and sheets of items that
// lie on several pages. Takes the parts, gives the forms and the operators that place them.

import type { DrawingItem } from "../drawings/drawing.ts";
import { type Extent, extent, joinedExtent } from "../geometry/extent.ts";
import { type ContentPart, partBox, pdfNumber, type ShapePart } from "./pdf-content.ts";
import { repeatedShapes } from "./repeated-shapes.ts";

export interface Form {
  readonly name: string;
  readonly operators: string;
  readonly box: Extent;
}

/** By the shape's operators. */
export type ShapeForms = ReadonlyMap<string, Form>;

/** By the identity of a sheet's items. */
export type SheetForms = ReadonlyMap<readonly DrawingItem[], Form>;

export const shapeForms = (parts: readonly ContentPart[]): ShapeForms => {
  const shapes = parts.filter((part) => part.kind === "shape").map(({ shape }) => shape);
  const boxes = new Map(shapes.map(({ operators, box }) => [operators, box]));
  const forms = new Map<string, Form>();
  for (const [operators, name] of repeatedShapes(
    shapes.map((shape) => shape.operators),
    "F",
  )) {
    const box = boxes.get(operators);
    if (box !== undefined) forms.set(operators, { name, operators, box });
  }
  return forms;
};

/** A form for each list of items that is laid more than once; `contents`: the parts of every list. */
export const sheetForms = (
  laid: readonly (readonly DrawingItem[])[],
  contents: ReadonlyMap<readonly DrawingItem[], readonly ContentPart[]>,
  shapes: ShapeForms,
): SheetForms => {
  const met = new Set<readonly DrawingItem[]>();
  const forms = new Map<readonly DrawingItem[], Form>();
  for (const items of laid) {
    const parts = contents.get(items) ?? [];
    if (met.has(items) && !forms.has(items) && parts.length > 0) {
      const name = `S${forms.size + 1}`;
      forms.set(items, { name, operators: partOperators(parts, shapes), box: boxOf(parts) });
    }
    met.add(items);
  }
  return forms;
};

export const partOperators = (parts: readonly ContentPart[], shapes: ShapeForms): string =>
  parts
    .map((part) => (part.kind === "operators" ? part.text : shapeOperators(part, shapes)))
    .join("");

export const placedForm = ({ name }: Form): string => `/${name} Do\n`;

/** Entries of the form's dictionary. A sheet places shapes by the names that the pages have for them. */
export const formEntries = ({ box }: Form, resources: string): string => {
  const corners = [box.minX, box.minY, box.maxX, box.maxY];
  return `/Type /XObject /Subtype /Form /BBox [${corners.map(pdfNumber).join(" ")}] ${resources}`;
};

/** Colour and pen are those in force where the shape is placed. */
const shapeOperators = ({ shape, at }: ShapePart, shapes: ShapeForms): string => {
  const form = shapes.get(shape.operators);
  const drawn = form === undefined ? shape.operators : placedForm(form);
  return `q 1 0 0 1 ${pdfNumber(at.x)} ${pdfNumber(at.y)} cm\n${drawn}Q\n`;
};

const boxOf = (parts: readonly ContentPart[]): Extent => {
  const boxes = parts.map(partBox).filter((box) => box !== null);
  return boxes.length === 0 ? extent(0, 0, 0, 0) : boxes.reduce(joinedExtent);
};

// Shapes that a PDF places by name (form XObjects, ISO 32000-1, 8.10). Takes the parts of all pages, gives the forms
// and the operators that place them.

import type { Extent } from "../geometry/extent.ts";
import { type ContentPart, pdfNumber } from "./pdf-content.ts";
import { repeatedShapes } from "./repeated-shapes.ts";

export interface Form {
  readonly name: string;
  readonly operators: string;
  readonly box: Extent;
}

/** By the shape's operators. */
export type Forms = ReadonlyMap<string, Form>;

type ShapePart = Extract<ContentPart, { readonly kind: "shape" }>;

export const formsOf = (parts: readonly ContentPart[]): Forms => {
  const shapes = parts.filter((part) => part.kind === "shape");
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

/** Colour and pen are those in force where the shape is placed. */
export const shapeOperators = ({ operators, at }: ShapePart, forms: Forms): string => {
  const form = forms.get(operators);
  const drawn = form === undefined ? operators : `/${form.name} Do\n`;
  return `q 1 0 0 1 ${pdfNumber(at.x)} ${pdfNumber(at.y)} cm\n${drawn}Q\n`;
};

/** Entries of the form's dictionary. */
export const formEntries = ({ box }: Form): string => {
  const corners = [box.minX, box.minY, box.maxX, box.maxY];
  return `/Type /XObject /Subtype /Form /BBox [${corners.map(pdfNumber).join(" ")}] `;
};

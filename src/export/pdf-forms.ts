// Shapes that a PDF shows more than once, letters above all, are written once and placed wherever they stand (form XObjects,
// ISO 32000-1, 8.10): a page of words is a tenth as long. Takes the parts of all pages, gives the shapes with their names.

import type { Extent } from "../geometry/extent.ts";
import { type ContentPart, pdfNumber } from "./pdf-content.ts";

export interface Form {
  readonly name: string;
  readonly box: Extent;
}

/** By the shape's operators, in the order of first use. */
export type Forms = ReadonlyMap<string, Form>;

type ShapePart = Extract<ContentPart, { readonly kind: "shape" }>;

/** Below this a shape is shorter than the words that would place it. */
const SHORTEST = 100;

export const repeatedShapes = (parts: readonly ContentPart[]): Forms => {
  const seen = new Set<string>();
  const forms = new Map<string, Form>();
  for (const part of parts) {
    if (part.kind === "operators" || part.operators.length < SHORTEST) continue;
    const { operators, box } = part;
    if (seen.has(operators) && !forms.has(operators))
      forms.set(operators, { name: `F${forms.size + 1}`, box });
    seen.add(operators);
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

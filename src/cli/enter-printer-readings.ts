// A printer's readings become its profile in the workshop file, and the opaque wall its stock's, by edits of the text. What
// was not read stays as it is.

import { setKey } from "../design/edit.ts";
import { source } from "../design/source.ts";
import type { PrinterDesign, SizeAllowance } from "../design/workshop-design.ts";
import { applyEdits } from "../diagnostics/text-edit.ts";
import { decimal } from "../geometry/number.ts";
import type { PrinterReadings } from "../parts/printed/printer-test-piece-readings.ts";

export interface EnteredPrinter {
  readonly printer: PrinterDesign;
  /** null where the workshop has no stock of that name: then its opaque wall has no place to go. */
  readonly stock: string | null;
  readonly readings: PrinterReadings;
}

type Entering =
  | { readonly kind: "entered"; readonly text: string }
  | { readonly kind: "refused"; readonly why: string };

export const enterPrinterReadings = (
  file: string,
  text: string,
  entered: EnteredPrinter,
): Entering => {
  let now = text;
  for (const { path, key, value } of keysOf(entered)) {
    const made = setKey(source(file, now), path, { key, value });
    if (made.kind === "refused") return { kind: "refused", why: `${key}: ${made.why}` };
    const edited = applyEdits(now, [made.edit]);
    if (edited.kind === "refused") return edited;
    now = edited.text;
  }
  return { kind: "entered", text: now };
};

const PLACES = 6;

const keysOf = ({
  printer,
  stock,
  readings,
}: EnteredPrinter): readonly {
  readonly path: readonly string[];
  readonly key: string;
  readonly value: string;
}[] => {
  const path = ["machines", printer.id];
  const { holes, pegs, firstLayer, clearances, opaqueLines } = readings;
  return [
    ...(holes.length === 0 ? [] : [{ path, key: "holes", value: table(holes) }]),
    ...(pegs.length === 0 ? [] : [{ path, key: "pegs", value: table(pegs) }]),
    ...(firstLayer === null
      ? []
      : [{ path, key: "first-layer", value: `${decimal(firstLayer, PLACES)} mm` }]),
    ...(clearances === null
      ? []
      : [
          {
            path,
            key: "clearances",
            value: `{ press: ${clearances.press}, snug: ${clearances.snug}, sliding: ${clearances.sliding}, loose: ${clearances.loose} }`,
          },
        ]),
    ...(opaqueLines === null || stock === null
      ? []
      : [
          {
            path: ["stock", stock],
            key: "opaque-from",
            value: `${decimal(opaqueLines * printer.line, PLACES)} mm`,
          },
        ]),
  ];
};

const table = (rows: readonly SizeAllowance[]): string =>
  `[${rows.map(({ to, add }) => `{ to: ${decimal(to, PLACES)}, add: ${decimal(add, PLACES)} }`).join(", ")}]`;

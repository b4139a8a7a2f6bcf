// Stock and finishes: what parts are made of, nominal and as measured.

import { finding } from "../diagnostics/finding.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import { type Field, mapped, read, refined, unread } from "./field.ts";
import { list, optional, record, required, usual } from "./fields.ts";
import { noOrSomeMillimetres, someMillimetres } from "./length-fields.ts";
import { date, oneOf, text } from "./text-fields.ts";
import { about, type TextNode } from "./text-node.ts";
import { NOTHING } from "./usual-values.ts";
import type { FinishDesign, Material, StockDesign } from "./workshop-design.ts";
import { spanOf, type Written } from "./written.ts";

export const MATERIALS = [
  "acrylic-cast",
  "acrylic-extruded",
  "laminate",
  "polycarbonate",
  "aluminium",
  "plywood",
  "mdf",
  "card",
  "film",
  "abs",
  "pvc",
  "pla",
  "petg",
] as const satisfies readonly Material[];

/** Printed to whatever depth a part has: they come without a nominal thickness. */
const PRINTED: readonly Material[] = ["abs", "pla", "petg"];

export type NamelessStock = Omit<StockDesign, "id">;
export type NamelessFinish = Omit<FinishDesign, "id">;

export const STOCK: Field<NamelessStock> = refined(
  record("a stock", {
    material: required(oneOf("a material", MATERIALS), "What it is"),
    colour: usual(text("a colour", 60), {
      value: "natural",
      about: "opal, clear, black ...; as the material comes where it is not said",
    }),
    light: optional(
      oneOf("what light does in it", ["opaque", "translucent", "clear"]),
      "What light does in it; told by its colour where it is not said",
    ),
    nominal: optional(someMillimetres("a thickness"), "Thickness as it is sold"),
    measured: optional(someMillimetres("a thickness"), "Thickness as measured"),
    dated: optional(date("a date"), "When it was measured"),
    cap: optional(
      someMillimetres("a thickness"),
      "Two-colour laminate: the cap that engraving goes through",
    ),
    "opaque-from": optional(
      someMillimetres("a thickness"),
      "Printed stock: the wall from which it is opaque",
    ),
  }),
  (values, node) => {
    const { material, colour, measured, dated, cap, written } = values;
    const isPrinted = PRINTED.includes(material);
    if (values.nominal === null && !isPrinted) {
      return unread(
        node,
        finding(MEANING_CODES.missingKey, {
          message: `${about(node)}\`nominal\` is missing (thickness as it is sold)`,
          span: node.span,
        }),
      );
    }
    return read(
      {
        material,
        colour,
        light: values.light ?? lightOf(colour),
        nominal: values.nominal ?? NOTHING,
        measured,
        dated,
        cap,
        opaqueFrom: values["opaque-from"],
        written,
      },
      node,
      undated(node, { measured, dated, written }),
    );
  },
);

export const FINISH: Field<NamelessFinish> = mapped(
  record("a finish", {
    coats: required(
      list("a list of colours", text("a colour", 60), { least: 1, most: 12 }),
      "Coats in their order",
    ),
    thickness: optional(noOrSomeMillimetres("a thickness"), "All coats together, a side"),
    dated: optional(date("a date"), "When it was measured"),
    order: required(
      oneOf("an order of work", ["cut-paint-engrave", "paint-then-cut", "engrave-fill"]),
      "What is done first",
    ),
  }),
  (values) => values,
);

/** Opal and frosted sheet scatters, clear sheet shows; everything else stops light until somebody says otherwise. */
const lightOf = (colour: string): StockDesign["light"] => {
  const words = colour.toLowerCase().split(/[^a-z]+/);
  if (words.includes("clear")) {
    return "clear";
  }
  return words.some((word) => word === "opal" || word === "frosted" || word === "translucent")
    ? "translucent"
    : "opaque";
};

/** A measured value without its date: worth a note. */
export const undated = (
  node: TextNode,
  {
    measured,
    dated,
    written,
  }: { readonly measured: unknown; readonly dated: string | null; readonly written: Written },
): readonly ReturnType<typeof finding>[] =>
  measured === null || dated !== null
    ? []
    : [
        finding(MEANING_CODES.undated, {
          message: `${about(node)}is measured and has no date; add dated: and the day`,
          span: spanOf(written, "measured"),
        }),
      ];

// The stock that a trim, a lamp box or an angled box names, in the workshop or the catalogue, or a finding with the nearest.

import type { StockDesign } from "../../design/workshop-design.ts";
import { spanOf, type Written } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { nearestNames } from "../../diagnostics/nearest.ts";
import type { PanelLayout } from "../../layout/panel-layout.ts";
import { type PrintedContext, printStock } from "./printed-context.ts";
import { TRIM_STOCK } from "./trim-codes.ts";

export type FoundStock =
  | { readonly kind: "found"; readonly stock: StockDesign }
  | { readonly kind: "missing"; readonly finding: Finding };

interface Asked {
  readonly key: string;
  readonly written: Written;
  readonly owner: string;
}

export const fittedStock = (id: string, asked: Asked, context: PrintedContext): FoundStock => {
  const own = context.workshop?.stock ?? {};
  const stock = (Object.hasOwn(own, id) ? own[id] : undefined) ?? context.catalogue.stock.get(id);
  if (stock !== undefined) return { kind: "found", stock };
  const names = [...Object.keys(own), ...context.catalogue.stock.keys()];
  const nearest = nearestNames(id, names, 3);
  const hint = nearest.length === 0 ? "" : ` Nearest: ${nearest.join(", ")}.`;
  return {
    kind: "missing",
    finding: finding(TRIM_STOCK, {
      message: `${asked.owner}: there is no stock called "${id}".${hint}`,
      span: spanOf(asked.written, asked.key),
      subjects: [asked.owner],
    }),
  };
};

/** The print that is named, else the spacer's. */
export const fittedPrint = (
  id: string | null,
  asked: Asked,
  of: { readonly layout: PanelLayout; readonly context: PrintedContext },
): FoundStock => {
  if (id !== null) return fittedStock(id, asked, of.context);
  const stock = printStock(of.layout, of.context);
  return stock === null ? fittedStock("black-petg", asked, of.context) : { kind: "found", stock };
};

// What printed parts are derived from beside the layout, and what each file of a kind gives.

import type { Catalogue } from "../../catalogue/record.ts";
import type { PrinterDesign, StockDesign, WorkshopDesign } from "../../design/workshop-design.ts";
import type { PanelLayout } from "../../layout/panel-layout.ts";
import type { Lettering } from "../../lettering/lettering.ts";
import type { PrintedParts } from "./printed-part.ts";

export interface PrintedContext {
  readonly workshop: WorkshopDesign | null;
  readonly catalogue: Catalogue;
  readonly lettering: Lettering;
}

export type PrintedMaker = (layout: PanelLayout, context: PrintedContext) => PrintedParts;

/** The printer for a kind of part: named in `use` for it, as the default, or the only one that the workshop has. */
export const printerFor = (
  use: string,
  { workshop, catalogue }: PrintedContext,
): PrinterDesign | null => {
  const machines = workshop?.machines ?? {};
  const named = workshop?.use[use] ?? workshop?.use["default"];
  const machine =
    named === undefined ? undefined : (machines[named] ?? catalogue.machines.get(named));
  if (machine?.kind === "printer") return machine;
  const printers = Object.values(machines).filter((one) => one.kind === "printer");
  return printers.length === 1 ? (printers[0] ?? null) : null;
};

/** What parts without a stock of their own are printed from: a spacer's, else the workshop's first, else plain black. */
export const printStock = (
  layout: PanelLayout,
  { workshop, catalogue }: PrintedContext,
): StockDesign | null => {
  const spacer = layout.layers.find(({ kind }) => kind === "spacer")?.stock;
  const own = Object.values(workshop?.stock ?? {}).find(isPrinted);
  return spacer ?? own ?? [...catalogue.stock.values()].find(isPrinted) ?? null;
};

export const isPrinted = ({ material }: StockDesign): boolean =>
  material === "abs" || material === "pla" || material === "petg";

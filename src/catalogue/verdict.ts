// Whether a machine may work a stock: can, cannot, or try it, with the reason. A blue diode beam passes through clear
// acrylic, so what light does in the stock counts as well as what it is made of.

import type { MachineDesign, StockDesign } from "../design/workshop-design.ts";
import type { Catalogue, MaterialRecord } from "./record.ts";

/** null where the catalogue says nothing about the two. */
export function machineVerdict(
  stock: StockDesign,
  machine: MachineDesign["kind"],
  catalogue: Catalogue,
): MaterialRecord["byMachine"][string] | null {
  const verdicts = catalogue.materials.get(stock.material)?.byMachine;
  return verdicts?.[`${machine}/${stock.light}`] ?? verdicts?.[machine] ?? null;
}

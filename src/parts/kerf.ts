// The kerf that a machine takes from a sheet: measured on it where there is a reading, else a typical width that says so.

import type {
  KerfReading,
  MachineDesign,
  Material,
  StockDesign,
} from "../design/workshop-design.ts";
import { mm } from "../geometry/quantity.ts";
import type { KerfSetting } from "./sheet-part.ts";

/** Typical full kerf widths of a CO2 laser by thickness: common practice, no single source; measure yours. */
const TYPICAL_KERF: Readonly<
  Partial<Record<Material, readonly (readonly [thickness: number, kerf: number])[]>>
> = {
  "acrylic-cast": [
    [1.6, 0.18],
    [3.2, 0.23],
    [6.4, 0.28],
  ],
  "acrylic-extruded": [
    [1.6, 0.18],
    [3.2, 0.23],
    [6.4, 0.28],
  ],
  laminate: [
    [1.6, 0.18],
    [3.2, 0.23],
  ],
  plywood: [[3.2, 0.2]],
  mdf: [[3.2, 0.18]],
  card: [[1.5, 0.15]],
};

/** Width assumed where nothing is known about a material: the middle of the figures above. A rule asks about it. */
export const ASSUMED_KERF = 0.2;

/** null where nobody has told what a laser takes from the material: then a file holds the assumed width. */
export const typicalKerf = (stock: StockDesign): number | null => {
  const rows = TYPICAL_KERF[stock.material] ?? [];
  const nearest = rows.toSorted(
    (a, b) => Math.abs(a[0] - stock.nominal) - Math.abs(b[0] - stock.nominal),
  )[0];
  return nearest?.[1] ?? null;
};

/** How far a typical width may be from the true one: the spread of the figures above. */
export const KERF_UNCERTAINTY = 0.1;

export const kerfReading = (machine: MachineDesign, stock: StockDesign): KerfReading | null => {
  switch (machine.kind) {
    case "co2-laser":
    case "diode-laser":
      return machine.measured.find((reading) => reading.stock === stock.id) ?? null;
    case "router":
    case "drill-bench":
    case "printer":
      return null;
  }
};

/** Routers and drills are compensated where their tool paths are made; a laser where its record says. */
export const kerfSetting = (machine: MachineDesign, stock: StockDesign): KerfSetting => {
  const isLaser = machine.kind === "co2-laser" || machine.kind === "diode-laser";
  if (!isLaser || machine.kerf === "left-to-cutter") return { kind: "left-to-cutter" };
  const reading = kerfReading(machine, stock);
  if (reading === null) {
    const kerf = mm(typicalKerf(stock) ?? ASSUMED_KERF);
    return { kind: "in-file", kerf, x: kerf, y: kerf, measured: false };
  }
  const [x, y] = reading.kerf;
  return { kind: "in-file", kerf: mm((x + y) / 2), x, y, measured: true };
};

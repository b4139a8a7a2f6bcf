// The workshop: the machines and stock that make the parts, and what was measured on them.

import type { Mm } from "../geometry/quantity.ts";
import type { HouseRules } from "./house-rules.ts";
import type { IsoDate, Written } from "./written.ts";

export interface WorkshopDesign {
  readonly kind: "workshop";
  readonly written: Written;
  readonly file: string;
  readonly name: string;
  readonly stock: Readonly<Record<string, StockDesign>>;
  readonly finishes: Readonly<Record<string, FinishDesign>>;
  readonly machines: Readonly<Record<string, MachineDesign>>;
  /** Which machine makes a layer, by layer id ("face", "backing"), part ("frame") or "default". */
  readonly use: Readonly<Record<string, string>>;
  readonly houseRules: HouseRules;
  readonly processColours: Readonly<Record<string, string>>;
  readonly paper: "A4" | "Letter";
  /** What makes the inside of a printed light box white: a second material, a loose liner, or paint. */
  readonly inside: "white-body" | "liner" | "paint";
}

export type Material =
  | "acrylic-cast"
  | "acrylic-extruded"
  | "laminate"
  | "polycarbonate"
  | "aluminium"
  | "plywood"
  | "mdf"
  | "card"
  | "film"
  | "abs"
  | "pvc"
  | "pla"
  | "petg";

export interface StockDesign {
  readonly id: string;
  readonly material: Material;
  readonly colour: string;
  /** What light does in it. */
  readonly light: "opaque" | "translucent" | "clear";
  readonly nominal: Mm;
  readonly measured: Mm | null;
  readonly dated: IsoDate | null;
  /** Two-colour laminate: the cap's thickness that engraving must go through. */
  readonly cap: Mm | null;
  /** Printed stock: the wall from which it is opaque. */
  readonly opaqueFrom: Mm | null;
  readonly written: Written;
}

/** Paint or another finish on a sheet. */
export interface FinishDesign {
  readonly id: string;
  readonly coats: readonly string[];
  /** Total thickness a side, on faces and in holes; null where nobody has measured or stated it. */
  readonly thickness: Mm | null;
  readonly dated: IsoDate | null;
  /** The route: `cut-paint-engrave`, `paint-then-cut`, `engrave-fill` or `none`. */
  readonly order: "cut-paint-engrave" | "paint-then-cut" | "engrave-fill";
  readonly written: Written;
}

export type MachineDesign = LaserDesign | RouterDesign | DrillDesign | PrinterDesign;

export interface LaserDesign {
  readonly kind: "co2-laser" | "diode-laser";
  readonly id: string;
  readonly bed: readonly [Mm, Mm];
  readonly spot: Mm;
  /** Who compensates: this program writes the kerf into the file, or the cutter does it. */
  readonly kerf: "in-file" | "left-to-cutter";
  readonly measured: readonly KerfReading[];
  readonly written: Written;
}

export interface KerfReading {
  readonly stock: string;
  /** Full kerf width measured across x and across y. */
  readonly kerf: readonly [Mm, Mm];
  /** Added to a hole's diameter beside kerf, from the go / no-go row. */
  readonly holeAllowance: Mm;
  readonly dated: IsoDate | null;
  readonly written: Written;
}

export interface RouterDesign {
  readonly kind: "router";
  readonly id: string;
  readonly bed: readonly [Mm, Mm];
  readonly tools: readonly { readonly diameter: Mm }[];
  readonly written: Written;
}

export interface DrillDesign {
  readonly kind: "drill-bench";
  readonly id: string;
  readonly bed: readonly [Mm, Mm];
  readonly drills: readonly Mm[];
  readonly written: Written;
}

export interface PrinterDesign {
  readonly kind: "printer";
  readonly id: string;
  readonly bed: readonly [Mm, Mm, Mm];
  readonly line: Mm;
  readonly layer: Mm;
  readonly holes: readonly SizeAllowance[];
  readonly pegs: readonly SizeAllowance[];
  /** How far the first layer spreads beyond its outline; null where nobody has measured it. */
  readonly firstLayer: Mm | null;
  /** Clearance a side by class of fit; null where nobody has measured it. */
  readonly clearances: ClearanceClasses | null;
  readonly written: Written;
}

/** Added to a diameter, for diameters up to a size; negative where it makes them smaller. */
export interface SizeAllowance {
  readonly to: Mm;
  readonly add: Mm;
}

/** A side. */
export interface ClearanceClasses {
  readonly press: Mm;
  readonly snug: Mm;
  readonly sliding: Mm;
  readonly loose: Mm;
}

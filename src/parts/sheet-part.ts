// A sheet part is what one layer becomes at the bench: cut sizes, in set-ups, each on the dowel datum.
// Cut size = finished size + paint on both sides; kerf is not in here, it is applied once, by the exporter.

import type { MachineDesign, StockDesign } from "../design/workshop-design.ts";
import type { Contour, Path, Point, Region } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import type { Mm } from "../geometry/quantity.ts";

export interface SheetPart {
  readonly kind: "sheet-part";
  /** `winch-face`. */
  readonly id: string;
  readonly panel: string;
  readonly layer: string;
  readonly title: string;
  readonly revision: string;
  readonly stock: StockDesign;
  readonly thickness: Mm;
  readonly setUps: readonly SetUp[];
  /** Every operation a hand does with a tool, for template and job card. */
  readonly handOperations: readonly HandOperation[];
}

/** What an operation does; the order of this list is the order at the machine. */
export type Process = "engrave" | "score" | "cut-inner" | "cut-outer" | "witness" | "drill";

export interface SetUp {
  /** `1-engrave-and-cut`, `2-engrave`. */
  readonly id: string;
  readonly machine: MachineDesign;
  /** Which face of the part looks at the tool. */
  readonly faceUp: "front" | "rear";
  /** Words for the sheet: coating, mask, what must be done before. */
  readonly instructions: readonly string[];
  /** In panel coordinates, seen from the FRONT; the exporter mirrors once where the rear is up. */
  readonly operations: readonly Operation[];
  /** Everything that lies on the sheet, waste included. */
  readonly sheet: Extent;
  readonly kerf: KerfSetting;
}

export type KerfSetting =
  | {
      readonly kind: "in-file";
      readonly kerf: Mm;
      readonly x: Mm;
      readonly y: Mm;
      readonly measured: boolean;
    }
  | { readonly kind: "left-to-cutter" };

export type Operation =
  | {
      readonly kind: "cut";
      readonly process: "cut-inner" | "cut-outer" | "drill";
      readonly feature: string;
      readonly centre: Point;
      /** At cut size: what the opening or the piece must measure when it leaves the machine. */
      readonly contour: Contour;
    }
  | {
      readonly kind: "fill";
      readonly process: "engrave";
      readonly feature: string;
      readonly regions: readonly Region[];
    }
  | {
      readonly kind: "stroke";
      readonly process: "engrave" | "score" | "witness";
      readonly feature: string;
      readonly paths: readonly Path[];
      /** Width as cut. */
      readonly width: Mm;
    };

export interface HandOperation {
  readonly feature: string;
  readonly what:
    | "drill"
    | "ream"
    | "tap"
    | "countersink"
    | "deburr"
    | "tab-hole"
    | "glue"
    | "paint"
    | "fill";
  readonly tool: string;
  readonly side: "front" | "rear";
  readonly depth: Mm | null;
  readonly at: Point | null;
}

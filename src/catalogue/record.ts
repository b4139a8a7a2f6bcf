// Everything the catalogue holds, and how it is looked up.

import type {
  FinishDesign,
  MachineDesign,
  Material,
  StockDesign,
} from "../design/workshop-design.ts";
import type { Mm } from "../geometry/quantity.ts";
import type { Board } from "./board.ts";
import type { Hardware } from "./hardware.ts";
import type { Insert } from "./insert.ts";
import type { Mount } from "./mount.ts";
import type { Figures, Part } from "./part.ts";
import type { LedBoard, Strip } from "./strip.ts";

/** The kinds of machine that a workshop may have. */
export const MACHINE_KINDS: readonly MachineDesign["kind"][] = [
  "co2-laser",
  "diode-laser",
  "router",
  "drill-bench",
  "printer",
];

/** What a material is and what may be done with it. */
export interface MaterialRecord {
  readonly kind: "material";
  readonly id: Material;
  readonly title: string;
  /** Bounds of a nominal thickness: `nominal + plus`, `nominal - minus`, each `fixed + share * nominal`. */
  readonly tolerance: readonly ThicknessTolerance[];
  /** Added to a bush's diameter for its hole in this material. */
  readonly bushFit: Mm;
  /** By kind of machine; `diode-laser/clear` holds for clear stock only and goes before `diode-laser`: see verdict.ts. */
  readonly byMachine: Readonly<
    Record<string, { readonly verdict: "can" | "cannot" | "try"; readonly why: string }>
  >;
  readonly figures: Figures;
}

export interface ThicknessTolerance {
  /** Holds from this nominal thickness up. */
  readonly from: Mm;
  readonly plus: { readonly fixed: Mm; readonly share: number };
  readonly minus: { readonly fixed: Mm; readonly share: number };
}

export type CatalogueRecord =
  | Part
  | Hardware
  | Board
  | Strip
  | LedBoard
  | Insert
  | Mount
  | MaterialRecord;

/** The built-in library with the project's own records over it; every map is in id order. */
export interface Catalogue {
  readonly parts: ReadonlyMap<string, Part>;
  readonly hardware: ReadonlyMap<string, Hardware>;
  readonly boards: ReadonlyMap<string, Board>;
  readonly strips: ReadonlyMap<string, Strip>;
  readonly ledBoards: ReadonlyMap<string, LedBoard>;
  readonly inserts: ReadonlyMap<string, Insert>;
  readonly mounts: ReadonlyMap<string, Mount>;
  readonly materials: ReadonlyMap<string, MaterialRecord>;
  readonly stock: ReadonlyMap<string, StockDesign>;
  readonly finishes: ReadonlyMap<string, FinishDesign>;
  readonly machines: ReadonlyMap<string, MachineDesign>;
}

/** Every record by its name; stock, finishes and machines belong to a workshop and are none. */
export const recordsById = (catalogue: Catalogue): ReadonlyMap<string, CatalogueRecord> =>
  new Map<string, CatalogueRecord>([
    ...catalogue.parts,
    ...catalogue.hardware,
    ...catalogue.boards,
    ...catalogue.strips,
    ...catalogue.ledBoards,
    ...catalogue.inserts,
    ...catalogue.mounts,
    ...catalogue.materials,
  ]);

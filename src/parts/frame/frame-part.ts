// A part of the frame: one piece of sheet, drawn in its own plane, and where it stands in the console. Cut-outs, tabs and
// slots are at finished size; cut sizes, set-ups and kerf follow as for any sheet part.

import type { StockDesign } from "../../design/workshop-design.ts";
import type { Contour, Region } from "../../geometry/contour.ts";
import type { Mm } from "../../geometry/quantity.ts";
import type { Frame } from "../../geometry/space/frame.ts";
import type { Vector } from "../../geometry/space/vector.ts";
import type { EnvelopeLayout } from "../../layout/console/console-layout.ts";
import type { SheetPart } from "../sheet-part.ts";

export type FramePartRole =
  | "cheek"
  | "rib"
  | "rail-bar"
  | "floor"
  | "top"
  | "front"
  | "back"
  | "hatch"
  | "strip";

export interface FramePart {
  readonly kind: "frame-part";
  /** `cheek-left`: unique in the frame. */
  readonly id: string;
  /** 1, 2 ...: the number on the drawings, in the order of assembly. */
  readonly number: number;
  readonly role: FramePartRole;
  readonly title: string;
  /** Which row of bays it stands round, and which section of that: what passes the doorway in one piece. */
  readonly unit: number;
  readonly section: number;
  readonly stock: StockDesign;
  /** As measured; nominal where nobody has measured. */
  readonly thickness: Mm;
  /** In its own plane: x right, y up, seen on its good face; z = 0 that face, the board behind it (z negative). */
  readonly region: Region;
  /** Which way the grain of its good face runs in its own plane; null where the sheet has none. */
  readonly grain: "x" | "y" | null;
  readonly frame: Frame;
  /** What each cut-out is for: `rail-hole.3`, `slot.rib-aft-2.1`, `vent`. In the order of `region.holes`. */
  readonly holes: readonly FrameHole[];
  readonly sheetPart: SheetPart;
}

export interface FrameHole {
  readonly feature: string;
  readonly contour: Contour;
}

/** One joint between two parts, for the order of assembly and for the check that every slot is filled. */
export interface FrameJoint {
  readonly kind: "tab-and-slot" | "half-lap" | "dowel" | "screws";
  /** The part with the tab, and the one with the slot. */
  readonly from: string;
  readonly into: string;
  readonly feature: string;
  /** Slot less tab, in all: in thickness and in length. */
  readonly clearance: Mm;
}

export interface ConsoleFrame {
  readonly parts: readonly FramePart[];
  readonly joints: readonly FrameJoint[];
  /** In the order of their numbers. */
  readonly units: readonly FramedUnit[];
  /** In the order in which they go together. */
  readonly assembly: readonly AssemblyStep[];
}

/** One row of bays between its cheeks. */
export interface FramedUnit {
  readonly number: number;
  /** From back to front. */
  readonly bays: readonly string[];
  /** What its cheeks enclose. */
  readonly inside: EnvelopeLayout;
  /** null where nobody's knees go below it. */
  readonly knees: KneeRoom | null;
}

/** What a knee space is planned to be from where the bays begin, and what depth and height it would find. */
export interface KneeRoom {
  /** `foot`: its depth there. */
  readonly planned: { readonly depth: number; readonly foot: number; readonly height: number };
  readonly deep: number;
  readonly high: number;
}

export interface AssemblyStep {
  /** The unit that is put together; null where units are. */
  readonly unit: number | null;
  /** Ids of parts. */
  readonly adds: readonly string[];
  /** The direction in which each of them moves into place, a unit vector of the console; null for the first. */
  readonly enters: Vector | null;
  readonly words: string;
}

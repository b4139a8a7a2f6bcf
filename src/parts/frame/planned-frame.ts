// The plan of a console's frame, before a board of it is made: facts for whoever judges whether it can be cut. Takes the layout
// and the workshop's stock and machine. Where no plan is possible at all it says why.

import type { Catalogue } from "../../catalogue/record.ts";
import type { FrameDesign } from "../../design/frame-design.ts";
import type { MachineDesign, StockDesign, WorkshopDesign } from "../../design/workshop-design.ts";
import { spanOf } from "../../design/written.ts";
import type { Finding } from "../../diagnostics/finding.ts";
import type { ConsoleLayout } from "../../layout/console/console-layout.ts";
import {
  type LayoutContext,
  machineFor,
  stockNames,
  stockOf,
  unknownName,
} from "../../layout/context.ts";
import type { Lettering } from "../../lettering/lettering.ts";
import type { CarryingFault } from "./bay-faults.ts";
import { type CarriedUnit, carriedBays } from "./carried-bays.ts";
import { SHEET_UNKNOWN } from "./codes.ts";
import type { FramePlan } from "./frame-plan.ts";
import { type Relief, reliefFor } from "./relief.ts";
import { type SizedFrame, sizedFrame } from "./sized-frame.ts";
import { narrowestSlot } from "./slot-sides.ts";
import { unitName } from "./unit-names.ts";
import { type UnitPlan, unitPlan } from "./unit-plan.ts";

export interface FrameContext {
  readonly design: FrameDesign;
  readonly workshop: WorkshopDesign | null;
  readonly catalogue: Catalogue;
  readonly lettering: Lettering;
}

/** What it is cut from, and on which machine. */
export interface FrameSheet {
  readonly design: SizedFrame;
  readonly stock: StockDesign;
  /** As measured; nominal where nobody has measured. */
  readonly thickness: number;
  /** null: a cutting service. */
  readonly machine: MachineDesign | null;
}

export interface ConsolePlan {
  readonly sheet: FrameSheet;
  readonly units: readonly UnitPlan[];
  readonly relief: Relief;
}

/** Of all units, one after another. */
export const allSections = ({ units }: Pick<ConsolePlan, "units">): readonly FramePlan[] =>
  units.flatMap(({ sections }) => sections);

export type PlannedFrame =
  /** Nobody knows its sheet. */
  | { readonly kind: "no-sheet"; readonly finding: Finding }
  | {
      readonly kind: "not-carried";
      readonly sheet: FrameSheet;
      readonly faults: readonly CarryingFault[];
    }
  | { readonly kind: "planned"; readonly plan: ConsolePlan };

export const plannedFrame = (layout: ConsoleLayout, context: FrameContext): PlannedFrame => {
  const { design } = context;
  const named: LayoutContext = context;
  const stock = stockOf(named, design.sheet);
  if (stock === null) {
    const span = spanOf(design.written, "sheet");
    const known = stockNames(named);
    const unknown = unknownName(SHEET_UNKNOWN, design.sheet, { span, known });
    return { kind: "no-sheet", finding: unknown };
  }
  const thickness = stock.measured ?? stock.nominal;
  const machine = machineFor(named, "frame");
  const sized = sizedFrame(design, { thickness, machine, bays: layout.bays });
  const sheet: FrameSheet = { design: sized, stock, thickness, machine };
  const carried = carriedBays(layout, sized, thickness);
  return carried.kind === "refused"
    ? { kind: "not-carried", sheet, faults: carried.faults }
    : { kind: "planned", plan: planOf(carried.units, sheet) };
};

const planOf = (units: readonly CarriedUnit[], sheet: FrameSheet): ConsolePlan => {
  const planned = units.map((unit) => unitPlan(unit, unitName(unit, units.length), sheet));
  const relief =
    sheet.machine === null
      ? SHARP
      : reliefFor(sheet.machine, narrowestSlot(allSections({ units: planned })));
  return { sheet, units: planned, relief };
};

const SHARP: Relief = { radius: 0, tooThick: null };

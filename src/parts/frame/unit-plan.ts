// The plan of one unit of the frame: its sections in its own profile, and where they are parted. Takes the unit's bays, what
// knees it has room for, and the sheet.

import type { MachineDesign } from "../../design/workshop-design.ts";
import type { CarriedUnit } from "./carried-bays.ts";
import { acrossBays, type FramePlan, leastAcross } from "./frame-plan.ts";
import type { Profile } from "./profile.ts";
import { type Parting, parted } from "./sections.ts";
import type { SizedFrame } from "./sized-frame.ts";
import type { UnitName } from "./unit-names.ts";

export interface UnitPlan {
  readonly name: UnitName;
  readonly profile: Profile;
  /** As near to one another as the cheeks can stand. */
  readonly leastWidth: number;
  readonly sections: readonly FramePlan[];
  readonly partings: readonly Parting[];
}

export interface UnitSheet {
  readonly design: SizedFrame;
  readonly thickness: number;
  readonly machine: MachineDesign | null;
}

export const unitPlan = (
  { bays, profile, knees }: CarriedUnit,
  name: UnitName,
  sheet: UnitSheet,
): UnitPlan => {
  const { design, thickness, machine } = sheet;
  const least = leastAcross(bays, design, thickness);
  const { plans, partings } = parted(bays, {
    design,
    thickness,
    machine,
    across: acrossBays(bays, { design, thickness, kneeWidth: knees?.width ?? 0 }),
    suffix: name.suffix,
    knees: knees?.asked ?? null,
  });
  return { name, profile, leastWidth: least.to - least.from, sections: plans, partings };
};

// The bays that the frame carries, in units of one row each, or why it can't. Takes the layout; judges each bay alone, and
// each pair of a row for the room that they want.

import { samePlace } from "../../geometry/tolerance.ts";
import type { BayLayout, ConsoleLayout } from "../../layout/console/console-layout.ts";
import type { BayFault, CarryingFault } from "./bay-faults.ts";
import { type FrameBay, frameBay, inBay } from "./frame-bay.ts";
import { acrossBays, crossingBays, leastAcross } from "./frame-plan.ts";
import { endWeb, GAP } from "./frame-practice.ts";
import { type FrameUnit, frameUnits } from "./frame-units.ts";
import { type KneesOfUnit, kneeUnits } from "./knee-units.ts";
import { type KneesAsked, kneesAsked } from "./knees-asked.ts";
import { profileOf } from "./profile.ts";
import { ribPlaces } from "./rib-boards.ts";
import type { SizedFrame } from "./sized-frame.ts";

export interface CarriedUnit extends FrameUnit {
  /** null where there is no knee space below it. */
  readonly knees: (KneesOfUnit & { readonly asked: KneesAsked }) | null;
}

export type CarriedBays =
  | { readonly kind: "carried"; readonly units: readonly CarriedUnit[] }
  | { readonly kind: "refused"; readonly faults: readonly CarryingFault[] };

export const carriedBays = (
  layout: ConsoleLayout,
  design: SizedFrame,
  thickness: number,
): CarriedBays => {
  if (layout.bays.length === 0) return refused(hasUnreadBays(layout) ? [] : [{ kind: "no-bay" }]);
  const units = frameUnits(layout.bays);
  const faults = layout.bays.flatMap((bay) =>
    faultsOf(bay, units, { design, thickness }).map(
      (fault): CarryingFault => ({ kind: "bay", bay, fault }),
    ),
  );
  if (faults.length > 0) return refused(faults.filter((fault) => !isFollower(fault, layout)));
  const carried = withKnees(units, layout, { design, thickness });
  const crossing = carried.flatMap((unit) => crossings(unit, design, thickness));
  return crossing.length > 0 ? refused(crossing) : { kind: "carried", units: carried };
};

/** What its panels would have said of its width: why they can't is said of them. */
const isFollower = (found: CarryingFault, { design }: ConsoleLayout): boolean =>
  found.kind === "bay" &&
  found.fault.kind === "no-width" &&
  design.panels.some(({ bay }) => bay === found.bay.id);

interface Sheet {
  readonly design: SizedFrame;
  readonly thickness: number;
}

const withKnees = (
  units: readonly FrameUnit[],
  { operator }: ConsoleLayout,
  { design, thickness }: Sheet,
): readonly CarriedUnit[] => {
  const before =
    design.type === "front-desk"
      ? kneeUnits(
          units.map((unit) => ({ unit, least: leastAcross(unit.bays, design, thickness) })),
          operator,
        )
      : [];
  const asked = kneesAsked(design, operator);
  return units.map((unit, index) => {
    const knees = before[index] ?? null;
    return { ...unit, knees: knees === null ? null : { ...knees, asked } };
  });
};

const hasUnreadBays = ({ design }: ConsoleLayout): boolean =>
  design.unreadBays.length > 0 || design.unread.includes("bays");

const refused = (faults: readonly CarryingFault[]): CarriedBays => ({ kind: "refused", faults });

/** As it stands in its unit; one that none takes says why in the profile in which it runs. */
const faultsOf = (
  layout: BayLayout,
  units: readonly FrameUnit[],
  { design, thickness }: Sheet,
): readonly BayFault[] => {
  const bay = units.flatMap(({ bays }) => bays).find(({ id }) => id === layout.id);
  if (bay !== undefined) return bayFaults(bay, design, thickness);
  const own = frameBay(layout, profileOf(layout.frame));
  return own.kind === "refused" ? [own.fault] : [];
};

const bayFaults = (bay: FrameBay, design: SizedFrame, thickness: number): readonly BayFault[] => [
  ...tooLow(bay, design, thickness),
  ...tooShort(bay, design, thickness),
];

const tooLow = (bay: FrameBay, design: SizedFrame, thickness: number): readonly BayFault[] => {
  const low = bay.lowest - design.ribs.web;
  const reaches = Math.min(inBay(bay, 0, low).y, inBay(bay, bay.length, low).y);
  const least = design.toe + thickness + GAP;
  if (reaches >= least - samePlace) return [];
  // Of a bay that lies askew a millimetre less of depth lifts its ribs by less than one; of an upright bay, by nothing.
  const lift = bay.tilt.x * bay.up.y;
  const depth = lift > 0 ? Math.max(0, Math.floor(bay.depth - (least - reaches) / lift)) : 0;
  return [{ kind: "too-low", reaches, least, depth }];
};

const tooShort = (bay: FrameBay, design: SizedFrame, thickness: number): readonly BayFault[] => {
  const { spacing } = design.ribs;
  if (ribPlaces(bay.length, { thickness, spacing }).length > 0) return [];
  return [{ kind: "too-short", least: 3 * thickness + 2 * endWeb(thickness) }];
};

const crossings = (
  { bays, knees }: CarriedUnit,
  design: SizedFrame,
  thickness: number,
): readonly CarryingFault[] => {
  const across = acrossBays(bays, { design, thickness, kneeWidth: knees?.width ?? 0 });
  return crossingBays(bays, { design, across }).map(([bay, other]) => ({
    kind: "crossing",
    bay: bay.layout,
    other: other.layout,
  }));
};

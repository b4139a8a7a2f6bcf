// The bays that the frame carries, in units of one row each, or why it can't. Takes the layout; judges each bay alone, and
// each pair of a row for the room that they want.

import type { FrameDesign } from "../../design/frame-design.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding, type Measure } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { BayLayout, ConsoleLayout } from "../../layout/console/console-layout.ts";
import { BAY_NOT_CARRIED, BAYS_CROSS } from "./codes.ts";
import { type BayFault, type FrameBay, frameBay, inBay } from "./frame-bay.ts";
import { acrossBays, crossingBays, leastAcross } from "./frame-plan.ts";
import { endWeb, GAP } from "./frame-practice.ts";
import { type FrameUnit, frameUnits } from "./frame-units.ts";
import { type KneesOfUnit, kneeUnits } from "./knee-units.ts";
import { profileOf } from "./profile.ts";
import { ribPlaces } from "./rib-boards.ts";

export interface CarriedUnit extends FrameUnit {
  /** null where there is no knee space below it. */
  readonly knees: KneesOfUnit | null;
}

export type CarriedBays =
  | { readonly kind: "carried"; readonly units: readonly CarriedUnit[] }
  | { readonly kind: "refused"; readonly findings: readonly Finding[] };

export const carriedBays = (
  layout: ConsoleLayout,
  design: FrameDesign,
  thickness: number,
): CarriedBays => {
  if (layout.bays.length === 0) return refused(hasUnreadBays(layout) ? [] : [noBay(design)]);
  const units = frameUnits(layout.bays);
  const findings = layout.bays.flatMap((bay) =>
    faultsOf(bay, units, { design, thickness }).map(({ why, measured, limit }) =>
      finding(BAY_NOT_CARRIED, {
        message: `${bay.id}: ${why}.`,
        measured,
        limit,
        source: { kind: "geometry", name: "cheeks, ribs and floor board" },
        span: bay.design.written.span,
        subjects: [bay.id],
      }),
    ),
  );
  if (findings.length > 0) return refused(findings);
  const carried = withKnees(units, layout, { design, thickness });
  const crossing = carried.flatMap((unit) => crossings(unit, design, thickness));
  return crossing.length > 0 ? refused(crossing) : { kind: "carried", units: carried };
};

const noBay = (design: FrameDesign): Finding =>
  finding(BAY_NOT_CARRIED, {
    message: "The console has no bay; the frame is made round its bays.",
    span: design.written.span,
  });

interface Sheet {
  readonly design: FrameDesign;
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
  return units.map((unit, index) => ({ ...unit, knees: before[index] ?? null }));
};

const hasUnreadBays = ({ design }: ConsoleLayout): boolean =>
  design.unreadBays.length > 0 || design.unread.includes("bays");

const refused = (findings: readonly Finding[]): CarriedBays => ({ kind: "refused", findings });

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

const bayFaults = (bay: FrameBay, design: FrameDesign, thickness: number): readonly BayFault[] => [
  ...tooLow(bay, design, thickness),
  ...tooShort(bay, design, thickness),
];

const tooLow = (bay: FrameBay, design: FrameDesign, thickness: number): readonly BayFault[] => {
  const low = bay.lowest - design.ribs.web;
  const lowest = Math.min(inBay(bay, 0, low).y, inBay(bay, bay.length, low).y);
  const least = design.toe + thickness + GAP;
  if (lowest >= least - samePlace) return [];
  // Of a bay that lies askew a millimetre less of depth lifts its ribs by less than one; of an upright bay, by nothing.
  const lift = bay.tilt.x * bay.up.y;
  const depth = lift > 0 ? Math.floor(bay.depth - (least - lowest) / lift) : 0;
  return [
    {
      why: `its ribs reach down to ${decimal(lowest, 2)} mm and may reach to ${decimal(least, 2)} mm, ${decimal(GAP, 1)} mm over the floor board: ${decimal(least - lowest, 2)} mm too low; ${depth > 0 ? `depth: ${depth} mm would do` : "raise it by that"}`,
      measured: inMm(lowest),
      limit: inMm(least),
    },
  ];
};

const tooShort = (bay: FrameBay, design: FrameDesign, thickness: number): readonly BayFault[] => {
  const { spacing } = design.ribs;
  if (ribPlaces(bay.length, { thickness, spacing }).length > 0) return [];
  const least = 3 * thickness + 2 * endWeb(thickness);
  return [
    {
      why: `it is ${decimal(bay.length, 2)} mm long and two ribs with their webs take ${decimal(least, 2)} mm`,
      measured: inMm(bay.length),
      limit: inMm(least),
    },
  ];
};

const inMm = (value: number): Measure => ({ value: Number(decimal(value, 6)), unit: "mm" });

const crossings = (
  { bays, knees }: CarriedUnit,
  design: FrameDesign,
  thickness: number,
): readonly Finding[] => {
  const across = acrossBays(bays, { design, thickness, kneeWidth: knees?.width ?? 0 });
  return crossingBays(bays, { design, across }).map(([bay, other]) =>
    finding(BAYS_CROSS, {
      message: `${bay.id} and ${other.id}: their ribs, ${decimal(design.ribs.web, 2)} mm below the room of the panels, want the same place. Move one of them along, or give it less depth.`,
      span: spanOf(other.layout.design.written, "at"),
      related: [{ what: bay.id, span: spanOf(bay.layout.design.written, "at") }],
      subjects: [bay.id, other.id],
    }),
  );
};

// The bays that the frame carries, in a row from back to front, or why it can't. Takes the layout; judges each bay alone, and
// each pair for the room that they want.

import type { FrameDesign } from "../../design/frame-design.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding, type Measure } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { ConsoleLayout } from "../../layout/console/console-layout.ts";
import { BAY_NOT_CARRIED, BAYS_CROSS } from "./codes.ts";
import { type BayFault, type FrameBay, frameBay, inBay } from "./frame-bay.ts";
import { acrossBays, crossingBays } from "./frame-plan.ts";
import { endWeb, GAP } from "./frame-practice.ts";
import { type Profile, profileOf } from "./profile.ts";
import { ribPlaces } from "./rib-boards.ts";

export type CarriedBays =
  | { readonly kind: "carried"; readonly profile: Profile; readonly bays: readonly FrameBay[] }
  | {
      readonly kind: "refused";
      readonly profile: Profile | null;
      readonly findings: readonly Finding[];
    };

export const carriedBays = (
  layout: ConsoleLayout,
  design: FrameDesign,
  thickness: number,
): CarriedBays => {
  const first = layout.bays[0];
  if (first === undefined && hasUnreadBays(layout)) return refused(null, []);
  if (first === undefined)
    return refused(null, [
      finding(BAY_NOT_CARRIED, {
        message: "The console has no bay; the frame is made round its bays.",
        span: design.written.span,
      }),
    ]);
  const profile = profileOf(first.frame);
  const findings: Finding[] = [];
  const bays = layout.bays.flatMap((bay) => {
    const carried = frameBay(bay, profile);
    const faults =
      carried.kind === "refused" ? [carried.fault] : bayFaults(carried.bay, design, thickness);
    findings.push(
      ...faults.map(({ why, measured, limit }) =>
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
    return carried.kind === "carried" ? [carried.bay] : [];
  });
  if (findings.length > 0) return refused(profile, findings);
  const row = bays.toSorted((a, b) => placeInRow(a) - placeInRow(b) || (a.id < b.id ? -1 : 1));
  const crossing = crossings(row, design, thickness);
  return crossing.length > 0 ? refused(profile, crossing) : { kind: "carried", profile, bays: row };
};

const hasUnreadBays = ({ design }: ConsoleLayout): boolean =>
  design.unreadBays.length > 0 || design.unread.includes("bays");

const refused = (profile: Profile | null, findings: readonly Finding[]): CarriedBays => ({
  kind: "refused",
  profile,
  findings,
});

/** Forward and up: a desk's rising bay follows its level one. */
const placeInRow = (bay: FrameBay): number => {
  const { x, y } = inBay(bay, bay.length / 2, 0);
  return x + y;
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

/** No rail of one lies over a rail of the other. */
const isBeside = (bay: FrameBay, other: FrameBay): boolean =>
  Math.abs(bay.centre - other.centre) >= reachAcross(bay) + reachAcross(other);

const reachAcross = ({ halfClear, tilt }: FrameBay): number => halfClear * tilt.x;

const crossings = (
  bays: readonly FrameBay[],
  design: FrameDesign,
  thickness: number,
): readonly Finding[] => {
  const across = acrossBays(bays, design, thickness);
  return crossingBays(bays, { design, across }).map(([bay, other]) =>
    finding(BAYS_CROSS, {
      message: isBeside(bay, other)
        ? `${bay.id} and ${other.id} stand side by side: the two cheeks of a frame carry one row of bays, one behind another. Write a console of its own for each row, or leave the frame out.`
        : `${bay.id} and ${other.id}: their ribs, ${decimal(design.ribs.web, 2)} mm below the room of the panels, want the same place. Move one of them along, or give it less depth.`,
      span: spanOf(other.layout.design.written, "at"),
      related: [{ what: bay.id, span: spanOf(bay.layout.design.written, "at") }],
      subjects: [bay.id, other.id],
    }),
  );
};

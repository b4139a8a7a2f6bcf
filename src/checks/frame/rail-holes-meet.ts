// Holes of the rail bars that run into one another, their bar's edge or the ribs' slots.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import type { FrameBay } from "../../parts/frame/frame-bay.ts";
import type { FramePlan } from "../../parts/frame/frame-plan.ts";
import { RAIL_LIP } from "../../parts/frame/frame-practice.ts";
import { allSections } from "../../parts/frame/planned-frame.ts";
import { railHoleLimit } from "../../parts/frame/rail-hole-limit.ts";
import { railHoleSize } from "../../parts/frame/rail-holes.ts";
import { measureMm, millimetres } from "../words.ts";
import { frameRemedy } from "./frame-remedy.ts";
import type { FrameRule, PlanFacts } from "./frame-rule.ts";
import { worstOf } from "./worst-of.ts";

const entry: CodeEntry = {
  code: "checks/frame-rail-hole",
  severity: "fault",
  title: "holes of the rails that run together",
  why: "Rail bars carry holes on the mount's pitch, beside their inner edge. Holes as wide as the pitch are a slit, and the panel's screws hold in nothing.",
  example: "frame: { type: side-console, sheet: birch-ply-12, rails: { hole: 12 mm } }",
};

export const railHolesMeet: FrameRule<PlanFacts> = {
  entry,
  judge: ({ plan, texts }) =>
    worstOf(
      allSections(plan).flatMap((section) =>
        section.bays.flatMap((bay) => meeting(bay, section, texts)),
      ),
    ),
};

/** They leave no wood between them. */
export const holesMeet = (section: FramePlan, bay: FrameBay): boolean => {
  const most = railHoleLimit(bay, section);
  return most !== null && railHoleSize(section.design, bay.railHoles) >= most;
};

const meeting = (
  bay: FrameBay,
  section: FramePlan,
  texts: PlanFacts["texts"],
): readonly Finding[] => {
  const { design } = section;
  const { railHoles } = bay;
  const hole = railHoleSize(design, railHoles);
  const most = railHoleLimit(bay, section);
  if (most === null || hole < most) return [];
  const said = {
    span: spanOf(design.written, "rails"),
    subjects: [bay.id],
    measured: measureMm(hole),
    limit: measureMm(most),
    source: { kind: "geometry", name: "holes for the panels' fasteners in a bar" },
  } as const;
  if (most <= 0) {
    const clear = 2 * ((railHoles.reach?.inner ?? 0) - hole / 2 - RAIL_LIP);
    return [
      finding(entry, {
        ...said,
        message: `The rails of ${bay.id} are to be ${millimetres(2 * bay.halfClear)} apart, and the holes for their panels ${millimetres(2 * (railHoles.reach?.inner ?? 0))}: they stand in no wood. clear-width: ${millimetres(Math.floor(clear * TENTHS) / TENTHS)} does, or none written.`,
      }),
    ];
  }
  const does = `${decimal(railHoles.size < most ? railHoles.size : most / 2, 1)} mm`;
  return [
    finding(entry, {
      ...said,
      message: `The rails of ${bay.id}: holes of ${decimal(hole, 3)} mm run into one another, the bar's edge or the ribs' slots; less than ${decimal(most, 3)} mm leaves wood between them. hole: ${does} does.`,
      remedies: [frameRemedy({ texts }, design, { group: "rails", key: "hole", value: does })],
    }),
  ];
};

const TENTHS = 10;

// Holes of the rail bars that run into one another, their bar's edge or the ribs' slots.

import { RAIL_HOLE } from "../../design/frame-fields.ts";
import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import type { FrameBay } from "../../parts/frame/frame-bay.ts";
import type { FramePlan } from "../../parts/frame/frame-plan.ts";
import { allSections } from "../../parts/frame/planned-frame.ts";
import { railHoleLimit } from "../../parts/frame/rail-hole-limit.ts";
import { measureMm } from "../words.ts";
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
        section.bays
          .filter((bay) => holesMeet(section, bay))
          .map((bay) => meeting(bay, section, texts)),
      ),
    ),
};

export const holesMeet = (section: FramePlan, bay: FrameBay): boolean =>
  section.design.rails.hole >= railHoleLimit(bay, section);

const meeting = (bay: FrameBay, section: FramePlan, texts: PlanFacts["texts"]): Finding => {
  const { design } = section;
  const { hole } = design.rails;
  const most = railHoleLimit(bay, section);
  const does = `${decimal(RAIL_HOLE < most ? RAIL_HOLE : most / 2, 1)} mm`;
  return finding(entry, {
    message: `The rails of ${bay.id}: holes of ${decimal(hole, 3)} mm run into one another, the bar's edge or the ribs' slots; less than ${decimal(most, 3)} mm leaves wood between them. hole: ${does} does.`,
    span: spanOf(design.written, "rails"),
    subjects: [bay.id],
    measured: measureMm(hole),
    limit: measureMm(most),
    source: { kind: "geometry", name: "holes on the mount's pitch in a bar" },
    remedies:
      most > 0
        ? [frameRemedy({ texts }, design, { group: "rails", key: "hole", value: does })]
        : [],
  });
};

// Ribs of one bay whose slots meet in the cheeks.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import type { FrameBay } from "../../parts/frame/frame-bay.ts";
import type { FramePlan } from "../../parts/frame/frame-plan.ts";
import { allSections } from "../../parts/frame/planned-frame.ts";
import { ribPlaces } from "../../parts/frame/rib-boards.ts";
import { measureMm, millimetres } from "../words.ts";
import { frameRemedy } from "./frame-remedy.ts";
import type { FrameRule, PlanFacts } from "./frame-rule.ts";
import { worstOf } from "./worst-of.ts";

const entry: CodeEntry = {
  code: "checks/frame-ribs",
  severity: "fault",
  title: "ribs of a frame that want the same place",
  why: "Each rib stands in a slot of the cheeks. Where ribs are nearer than the sheet is thick, the boards meet and the slots run together.",
  example: "frame: { type: side-console, sheet: birch-ply-12, ribs: { spacing: 10 mm } }",
};

export const ribsMeet: FrameRule<PlanFacts> = {
  entry,
  judge: ({ plan, texts }) =>
    worstOf(
      allSections(plan).flatMap((section) =>
        section.bays.flatMap((bay) => meeting(bay, section, texts)),
      ),
    ),
};

/** At four thicknesses even a run that is parted unevenly leaves one between its ribs. */
const meeting = (
  bay: FrameBay,
  { design, thickness }: FramePlan,
  texts: PlanFacts["texts"],
): readonly Finding[] => {
  const slot = thickness + design.clearance;
  const [first, second] = ribPlaces(bay.length, { thickness, spacing: design.ribs.spacing });
  if (first === undefined || second === undefined || second - first > slot) return [];
  const apart = second - first;
  const works = `${decimal(Math.ceil(4 * thickness), 0)} mm`;
  return [
    finding(entry, {
      message: `The ribs of ${bay.id} begin ${millimetres(apart, slot)} apart, and their slots are ${millimetres(slot, apart)} wide: ${millimetres(slot - apart, 0)} more are wanted before any wood stands between them. spacing: ${works} does.`,
      span: spanOf(design.written, "ribs"),
      subjects: [bay.id],
      measured: measureMm(apart),
      limit: measureMm(slot),
      source: { kind: "geometry", name: "the face of the other board" },
      remedies: [frameRemedy({ texts }, design, { group: "ribs", key: "spacing", value: works })],
    }),
  ];
};

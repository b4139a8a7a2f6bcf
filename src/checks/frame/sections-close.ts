// Two sections whose ends want the same room.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { downToTenth } from "../../geometry/tenths.ts";
import type { Parting } from "../../parts/frame/sections.ts";
import type { SizedFrame } from "../../parts/frame/sized-frame.ts";
import { isOver } from "../limits.ts";
import { measureMm, millimetres } from "../words.ts";
import { frameRemedy } from "./frame-remedy.ts";
import type { FrameRule, PlanFacts } from "./frame-rule.ts";

const entry: CodeEntry = {
  code: "checks/frame-sections",
  severity: "fault",
  title: "no room to part the frame between two bays",
  why: "Where the frame is parted, each section has an end board and its cheeks run on beyond it. Move the bays apart, or have the whole cut on a larger bed.",
  example: "frame: { type: side-console, sheet: birch-ply-12 }",
};

export const sectionsClose: FrameRule<PlanFacts> = {
  entry,
  judge: ({ plan, texts }) =>
    plan.units
      .flatMap(({ partings }) => partings)
      .filter(({ overlap }) => isOver(overlap, 0))
      .map((parting) => tooClose(parting, plan.sheet.design, texts)),
};

const tooClose = (
  { before, after, overlap }: Parting,
  design: SizedFrame,
  texts: PlanFacts["texts"],
): Finding => {
  const less = downToTenth(design.beyond - overlap / 2);
  const value = `${decimal(less, 1)} mm`;
  const or = less >= 0 ? `, or make beyond: ${value}` : "";
  return finding(entry, {
    message: `${before.id} and ${after.id}: the frame is to be parted between them, and the two ends take ${millimetres(overlap, 0)} more than there is. Move them apart by that${or}.`,
    span: spanOf(after.layout.design.written, "at"),
    related: [{ what: before.id, span: spanOf(before.layout.design.written, "at") }],
    subjects: [before.id, after.id],
    measured: measureMm(overlap),
    limit: measureMm(0),
    source: { kind: "geometry", name: "the section beside it" },
    remedies:
      less >= 0 ? [frameRemedy({ texts }, design, { group: null, key: "beyond", value })] : [],
  });
};

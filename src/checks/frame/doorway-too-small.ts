// Sections that do not pass the doorway.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { doorwayRoom } from "../../parts/frame/doorway.ts";
import type { FramePlan } from "../../parts/frame/frame-plan.ts";
import { allSections } from "../../parts/frame/planned-frame.ts";
import { tooSmall } from "../too-small.ts";
import { measureMm } from "../words.ts";
import type { FrameRule, PlanFacts } from "./frame-rule.ts";

const entry: CodeEntry = {
  code: "checks/frame-doorway",
  severity: "fault",
  title: "a section that does not pass the doorway",
  why: "The frame is parted between bays into sections that pass the door; a single bay can't be parted.",
  example: "frame: { type: side-console, sheet: birch-ply-12, doorway: [180, 1900] }",
};

export const doorwayTooSmall: FrameRule<PlanFacts> = {
  entry,
  judge: ({ plan }) => allSections(plan).flatMap(tooLarge),
};

const tooLarge = (section: FramePlan): readonly Finding[] => {
  const { design, bays } = section;
  const short = doorwayRoom(section, design.doorway);
  if (short === null || design.doorway === null) return [];
  return [
    finding(entry, {
      message: tooSmall(
        `At its least the section with ${bays.map(({ id }) => id).join(", ")}`,
        { name: "the doorway", room: design.doorway },
        short,
      ),
      span: spanOf(design.written, "doorway"),
      subjects: bays.map(({ id }) => id),
      measured: measureMm(short.measured),
      limit: measureMm(short.limit),
      source: { kind: "geometry", name: "the doorway" },
    }),
  ];
};

// Sections that do not pass the doorway.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { type DoorwayShortage, doorwayRoom, type SectionSide } from "../../parts/frame/doorway.ts";
import type { FramePlan } from "../../parts/frame/frame-plan.ts";
import { allSections } from "../../parts/frame/planned-frame.ts";
import { tooSmall } from "../too-small.ts";
import { atLeast, measureMm, millimetres } from "../words.ts";
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
  const size = tooSmall(
    `At its least the section with ${bays.map(({ id }) => id).join(", ")}`,
    { name: "the doorway", room: design.doorway },
    short,
  );
  return [
    finding(entry, {
      message: `${size} ${passes(design.doorway, short)}`,
      span: spanOf(design.written, "doorway"),
      subjects: bays.map(({ id }) => id),
      measured: measureMm(short.measured),
      limit: measureMm(short.limit),
      source: { kind: "geometry", name: "the doorway" },
    }),
  ];
};

/** A door is as wide as it is, so that no edit is offered: what would do, of the door and of the section. */
const passes = (
  doorway: readonly [number, number],
  { measured, limit, long, short, side }: DoorwayShortage,
): string => {
  const [narrow, wide] = doorway[0] <= doorway[1] ? doorway : [doorway[1], doorway[0]];
  const needs = [sideFor(short, narrow), sideFor(long, wide)];
  const door = (doorway[0] <= doorway[1] ? needs : needs.toReversed()).join(" x ");
  const isOneSide = short <= narrow || long <= wide;
  const own = `, this one with its ${SMALLER[side](millimetres(measured - limit, 0))}`;
  return `A doorway of ${door} lets it pass${isOneSide ? own : ""}.`;
};

const sideFor = (size: number, room: number): string =>
  size > room ? atLeast(size) : millimetres(room);

/** The cheeks stand as far apart as the panels are wide. */
const SMALLER: Readonly<Record<SectionSide, (by: string) => string>> = {
  length: (by) => `bays ${by} shorter`,
  width: (by) => `panels ${by} narrower`,
  height: (by) => `bays ${by} lower`,
};

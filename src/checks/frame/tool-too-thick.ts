// No tool of the machine reaches into the corners of the frame's slots.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { tenths, tenthsIn } from "../../geometry/tenths.ts";
import type { FramePlan } from "../../parts/frame/frame-plan.ts";
import { allSections } from "../../parts/frame/planned-frame.ts";
import { measureMm, millimetres } from "../words.ts";
import type { FrameRule, PlanFacts } from "./frame-rule.ts";
import { holesMeet } from "./rail-holes-meet.ts";
import { tablessEdges } from "./rib-tabless.ts";

const entry: CodeEntry = {
  code: "checks/frame-tool",
  severity: "fault",
  title: "no tool that reaches into the corners of the slots",
  why: "A round tool leaves its radius in each corner; reliefs (dogbones) of the tool's own radius let the square tab in, and must find room in the slot's width.",
  example: "machines:\n  router: { type: router, bed: [1300, 900], tools: [{ diameter: 12 mm }] }",
};

/** Where the ribs' tabs have no room their slots have none for a tool: one cause, told of the tabs. */
export const toolTooThick: FrameRule<PlanFacts> = {
  entry,
  judge: ({ plan }) => {
    const { design, machine } = plan.sheet;
    const { tooThick } = plan.relief;
    if (tooThick === null || machine === null) return [];
    if (allSections(plan).some(hasNoRoomForTabs)) return [];
    return [
      finding(entry, {
        message: `The finest tool of ${machine.id} is ${millimetres(tooThick.least, tooThick.most)}; reliefs in the frame's slots find room for ${millimetres(tooThick.most, tooThick.least)} at most. A tool of ${decimal(thinnerThan(tooThick.most), 1)} mm works.`,
        span: spanOf(design.written, "joints"),
        related: [{ what: machine.id, span: machine.written.span }],
        subjects: [machine.id],
        measured: measureMm(tooThick.least),
        limit: measureMm(tooThick.most),
        source: { kind: "machine", name: machine.id },
      }),
    ];
  },
};

const hasNoRoomForTabs = (section: FramePlan): boolean =>
  tablessEdges(section).length > 0 || section.bays.some((bay) => holesMeet(section, bay));

/** The next whole tenth that finds room: a tool as thick as the most does not. */
const thinnerThan = (most: number): number => tenths(tenthsIn(most) - 1);

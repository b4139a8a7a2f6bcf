// What of a frame stays open: gaps that no strip closes, and openings that found no room on their board.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { allSections } from "../../parts/frame/planned-frame.ts";
import { millimetres } from "../words.ts";
import type { BoardFacts, FrameRule } from "./frame-rule.ts";

const entry: CodeEntry = {
  code: "checks/frame-left-open",
  severity: "note",
  title: "an opening of the frame that found no room, or a gap that no strip closes",
  why: "Strips need room for a tab and its webs; hatch, vents and passes need a clear board. What is left out here a person may still cut by hand.",
  example: "frame: { type: side-console, sheet: birch-ply-12 }",
};

export const leftOpen: FrameRule<BoardFacts> = {
  entry,
  judge: ({ plan, leftOut }) => {
    const { span } = plan.sheet.design.written;
    const gaps = allSections(plan).flatMap((section) => section.leftOpen);
    return [
      ...gaps.map(
        (gap) =>
          `A gap of ${millimetres(gap)} between bays or before an end board stays open: a strip with tabs does not fit into it.`,
      ),
      ...leftOut.map((what) => `There is no room for: ${what}. It is left out.`),
    ].map((message) => finding(entry, { message, span }));
  },
};

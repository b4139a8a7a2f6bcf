// What of a frame stays open: gaps that no strip closes, and openings that found no room on their board.

import { type CodeEntry, type FindingParts, finding } from "../../diagnostics/finding.ts";
import { allSections } from "../../parts/frame/planned-frame.ts";
import { isOver } from "../limits.ts";
import { measureMm, millimetres } from "../words.ts";
import type { BoardFacts, FrameRule } from "./frame-rule.ts";

const entry: CodeEntry = {
  code: "checks/frame-left-open",
  severity: "note",
  title: "an opening of the frame that found no room, or a gap that no strip closes",
  why: "Strips need room for a tab and its webs, and give way to the panels of a bay that stands hard over another; hatch, vents and passes need a clear board. What is left out here a person may still cut by hand.",
  example: "frame: { type: side-console, sheet: birch-ply-12 }",
};

/**
 * Judges gaps beside strips from the sheet's thickness on: a strip's end that is planed to its bay's angle, of 45 degrees at most,
 * closes what is narrower.
 */
export const leftOpen: FrameRule<BoardFacts> = {
  entry,
  judge: ({ plan, leftOut }) => {
    const { span } = plan.sheet.design.written;
    const gaps = allSections(plan).flatMap((section) => section.leftOpen);
    const beside = allSections(plan).flatMap(({ openBeside, thickness }) =>
      openBeside
        .filter(({ gap }) => isOver(gap, thickness))
        .map(({ strip, gap }) => besideStrip(strip, gap, thickness)),
    );
    return [
      ...gaps.map((gap) => ({
        message: `A gap of ${millimetres(gap)} between bays or before an end board stays open: a strip with tabs does not fit into it.`,
      })),
      ...beside,
      ...leftOut.map((what) => ({
        message: `There is no room for: ${what}. It is left out.`,
      })),
    ].map((said) => finding(entry, { ...said, span }));
  },
};

const besideStrip = (
  strip: string,
  gap: number,
  thickness: number,
): Omit<FindingParts, "span"> => ({
  message: `Beside ${strip} a gap of ${millimetres(gap, thickness)} stays open, where it gives way to the panels of a bay: light and dust pass. Its end, planed to the bay's angle, closes ${millimetres(thickness, gap)}, ${millimetres(gap - thickness, 0)} less. Close it with a batten or foil.`,
  measured: measureMm(gap),
  limit: measureMm(thickness),
  source: {
    kind: "geometry",
    name: "the sheet's thickness, which a strip's planed end reaches over",
  },
});

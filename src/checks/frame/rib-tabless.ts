// Ribs that stand too low at a cheek for a tab to go into it: a bay that is canted steeply.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import type { FramePlan } from "../../parts/frame/frame-plan.ts";
import { allSections } from "../../parts/frame/planned-frame.ts";
import { type RibEdge, ribEdges } from "../../parts/frame/rib-edges.ts";
import { isUnder } from "../limits.ts";
import { measureMm, millimetres } from "../words.ts";
import type { FrameRule, PlanFacts } from "./frame-rule.ts";
import { worstOf } from "./worst-of.ts";

const entry: CodeEntry = {
  code: "checks/frame-rib-tab",
  severity: "fault",
  title: "a rib without room for a tab in a cheek",
  why: "A canted bay meets one cheek low. Its ribs reach down only as far as the room of the panels and the web below it; where the cheek is met lower than that, no wood is left for the joint. A deeper web, or less cant, leaves some.",
  example:
    "bays:\n  aft: { mount: console-rail, at: [0, -420, 620], along: [1, 0, 0], cant: 70 deg, length: 60 modules, depth: 80 mm }\nframe: { type: side-console, sheet: birch-ply-12 }",
};

export const ribTabless: FrameRule<PlanFacts> = {
  entry,
  judge: ({ plan }) =>
    worstOf(
      allSections(plan).flatMap((section) =>
        tablessEdges(section).map((edge) => tooLow(edge, section)),
      ),
    ),
};

export const tablessEdges = (section: FramePlan): readonly RibEdge[] =>
  ribEdges(section).filter(({ height, least }) => isUnder(height, least));

const tooLow = ({ bay, side, height, least }: RibEdge, { design }: FramePlan): Finding => {
  const web = Math.ceil(design.ribs.web + least - height);
  // They reach as far down as the room of the panels and the web, and the cheek may begin lower still.
  const stand =
    height > 0
      ? `stand ${millimetres(height, least)} high at the ${side} cheek`
      : `have no wood at the ${side} cheek, and end ${millimetres(-height, 0)} above where it would begin`;
  return finding(entry, {
    message: `The ribs of ${bay.id} ${stand}, and a tab with its webs takes ${millimetres(least, height)}, ${millimetres(least - height, 0)} more. ribs: { web: ${decimal(web, 0)} mm } leaves it room.`,
    span: spanOf(design.written, "ribs"),
    subjects: [bay.id],
    measured: measureMm(height),
    limit: measureMm(least),
    source: { kind: "geometry", name: "a tab and the webs on both sides of it" },
  });
};

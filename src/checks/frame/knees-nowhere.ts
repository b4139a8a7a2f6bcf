// A front desk of several units none of which stands before its operator.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { allSections } from "../../parts/frame/planned-frame.ts";
import { KNEE_BOX } from "../../standards/reach.ts";
import { millimetres } from "../words.ts";
import type { FrameRule, PlanFacts } from "./frame-rule.ts";

const entry: CodeEntry = {
  code: "checks/frame-no-knees",
  severity: "query",
  title: "a front desk without room for knees",
  why: "Of a front desk of several units those have a knee space that stand before the operator, across the width that his knees take. Where he sits before none, nobody's knees go under it: move his seat or the bays, or make it a side console.",
  example:
    "operator: { seat-height: 430 mm, at: [900, 0], hand: right }\nbays:\n  left: { mount: console-rail, at: [0, 110, 820], along: [1, 0, 0], length: 60 modules, depth: 80 mm }\n  right: { mount: console-rail, at: [0, -110, 820], along: [1, 0, 0], length: 60 modules, depth: 80 mm }\nframe: { type: front-desk, sheet: birch-ply-12 }",
};

export const kneesNowhere: FrameRule<PlanFacts> = {
  entry,
  judge: ({ plan }) => {
    const { type, written } = plan.sheet.design;
    if (type !== "front-desk" || allSections(plan).some(({ kneeRoom }) => kneeRoom !== null))
      return [];
    return [
      finding(entry, {
        message: `No unit of the front desk stands before the operator, across the ${millimetres(KNEE_BOX.width)} that knees take: none has a knee space. type: side-console makes the same boards; for knees the operator's seat belongs behind the bays' beginnings.`,
        span: spanOf(written, "type"),
      }),
    ];
  },
};

// A console's frame: planned, judged, and its boards made where nothing is found against the plan. Takes the layout; gives
// the frame, or none where a fault stands in its way, and what is to be said of it.

import type { Finding } from "../../diagnostics/finding.ts";
import { mm } from "../../geometry/quantity.ts";
import type { ConsoleLayout } from "../../layout/console/console-layout.ts";
import { consoleFrame } from "../../parts/frame/console-frame.ts";
import type { ConsoleFrame } from "../../parts/frame/frame-part.ts";
import { type FrameContext, plannedFrame } from "../../parts/frame/planned-frame.ts";
import { notCarried } from "./not-carried.ts";
import { judgeFrameBoards, judgeFramePlan, judgeFrameSheet } from "./rules.ts";

export interface JudgedFrame {
  readonly frame: ConsoleFrame | null;
  readonly findings: readonly Finding[];
}

/** `texts`: of the design, by path; for remedies. */
export const judgedFrame = (
  layout: ConsoleLayout,
  context: FrameContext,
  texts: ReadonlyMap<string, string>,
): JudgedFrame => {
  const { workshop, catalogue, lettering } = context;
  const shop = { workshop, catalogue, texts };
  const planned = plannedFrame(layout, context);
  if (planned.kind === "no-sheet") return { frame: null, findings: [planned.finding] };
  const { sheet } = planned.kind === "planned" ? planned.plan : planned;
  const ofSheet = judgeFrameSheet({ sheet, ...shop });
  if (planned.kind === "not-carried") {
    const { faults } = planned;
    const found = notCarried(faults, { layout, sheet, texts });
    return { frame: null, findings: [...ofSheet, ...found] };
  }
  const { plan } = planned;
  const ofPlan = judgeFramePlan({ plan, ...shop });
  const isSound = ofPlan.every(({ severity }) => severity !== "fault");
  if (!isSound) return { frame: null, findings: [...ofSheet, ...ofPlan] };
  const made = consoleFrame(plan, { layout, lettering });
  const withBeyond = (beyond: number): ConsoleFrame | null => {
    const design = { ...context.design, beyond: mm(beyond) };
    const again = plannedFrame(layout, { ...context, design });
    if (again.kind !== "planned") return null;
    const found = judgeFramePlan({ plan: again.plan, ...shop });
    const isFaulty = found.some(({ severity }) => severity === "fault");
    return isFaulty ? null : consoleFrame(again.plan, { layout, lettering }).frame;
  };
  const ofBoards = judgeFrameBoards({ plan, ...made, ...shop, withBeyond });
  return { frame: made.frame, findings: [...ofSheet, ...ofPlan, ...ofBoards] };
};

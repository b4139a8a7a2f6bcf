// Little wood between two slots of a cheek, or a slot and its edge.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { FramePart } from "../../parts/frame/frame-part.ts";
import { thinnestWeb } from "../../parts/frame/webs.ts";
import { houseLimit } from "../house-rule.ts";
import { isOver, isUnder } from "../limits.ts";
import { measureMm, millimetres } from "../words.ts";
import type { BoardFacts, FrameRule } from "./frame-rule.ts";
import { frameWeb } from "./web-limit.ts";
import { worstOf } from "./worst-of.ts";

const entry: CodeEntry = {
  code: "checks/frame-web",
  severity: "query",
  title: "little wood between two slots, or a slot and an edge",
  why: "What stands between slots carries the joint: at least the sheet's thickness is common practice; less breaks out when the frame is knocked together: a query. A slot that runs out at the edge is a notch, and a person must decide; slots that run into one another hold nothing: a fault.",
  example: "frame: { type: side-console, sheet: birch-ply-12, beyond: 4 mm }",
};

export const thinWeb: FrameRule<BoardFacts> = {
  entry,
  judge: (facts) =>
    worstOf(
      facts.frame.parts.filter(({ role }) => role === "cheek").flatMap((part) => thin(part, facts)),
    ),
};

const isSlot = (feature: string): boolean => feature.startsWith("slot.");

const thin = (part: FramePart, facts: BoardFacts): readonly Finding[] => {
  const { limit, source } = houseLimit(facts, frameWeb(part.thickness));
  const web = thinnestWeb(part, { from: isSlot, to: isSlot });
  if (web === null || !isUnder(web.gap, limit)) return [];
  return [
    {
      ...finding(entry, {
        message: `${part.id}: ${millimetres(web.gap, limit)} stand between ${web.between}; ${millimetres(limit, web.gap)} is wanted, ${millimetres(limit - web.gap, 0)} more.`,
        span: facts.plan.sheet.design.written.span,
        subjects: [part.id],
        measured: measureMm(web.gap),
        limit: measureMm(limit),
        source,
      }),
      severity: web.isAtEdge || isOver(web.gap, 0) ? "query" : "fault",
    },
  ];
};

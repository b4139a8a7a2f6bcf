// Bolt holes between two sections or units that find no wood round them: at the edge of their board, or beside another opening.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { FramePart } from "../../parts/frame/frame-part.ts";
import { thinnestWeb } from "../../parts/frame/webs.ts";
import { houseLimit } from "../house-rule.ts";
import { isOver, isUnder } from "../limits.ts";
import { measureMm } from "../words.ts";
import type { BoardFacts, FrameRule } from "./frame-rule.ts";
import { frameWeb, webWords } from "./web-limit.ts";
import { worstOf } from "./worst-of.ts";

const entry: CodeEntry = {
  code: "checks/frame-bolt",
  severity: "fault",
  title: "a bolt hole of the frame with too little wood round it",
  why: "Sections are bolted together through their end boards, near both cheeks and the foot; units that stand side by side through their cheeks, below the bays. A hole that runs into the board's edge or into a cable pass holds nothing: a fault. Less wood than the sheet is thick may split when the bolt is tightened: a query.",
  example:
    "frame: { type: side-console, sheet: birch-ply-12, doorway: [700, 1900], cables: { diameter: 90 mm } }",
};

export const boltWood: FrameRule<BoardFacts> = {
  entry,
  judge: (facts) => worstOf(facts.frame.parts.flatMap((part) => thin(part, facts))),
};

const isBolt = (feature: string): boolean => feature.startsWith("bolt.");

const thin = (part: FramePart, facts: BoardFacts): readonly Finding[] => {
  const { limit, source } = houseLimit(facts, frameWeb(part.thickness));
  const web = thinnestWeb(part, { from: isBolt, to: () => true });
  if (web === null || !isUnder(web.gap, limit)) return [];
  const { written } = facts.plan.sheet.design;
  return [
    {
      ...finding(entry, {
        message: webWords(part.id, web, limit),
        span: written.span,
        subjects: [part.id],
        measured: measureMm(web.gap),
        limit: measureMm(limit),
        source,
      }),
      severity: isOver(web.gap, 0) ? "query" : "fault",
    },
  ];
};

// Little wood between two slots of a cheek, or a slot and its edge.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { upToTenth } from "../../geometry/tenths.ts";
import type { FramePart } from "../../parts/frame/frame-part.ts";
import { thinnestWeb, type Web } from "../../parts/frame/webs.ts";
import { houseLimit } from "../house-rule.ts";
import { isOver, isUnder } from "../limits.ts";
import { measureMm } from "../words.ts";
import { frameRemedy } from "./frame-remedy.ts";
import type { BoardFacts, FrameRule } from "./frame-rule.ts";
import { frameWeb, webWords } from "./web-limit.ts";
import { worstOf } from "./worst-of.ts";

const entry: CodeEntry = {
  code: "checks/frame-web",
  severity: "query",
  title: "little wood between two slots, or a slot and an edge",
  why: "What stands between slots carries the joint: at least the sheet's thickness is common practice; less breaks out when the frame is knocked together: a query. A slot that runs out over the edge, or into another, holds nothing: a fault.",
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
  const web = slotWeb(part);
  if (web === null || !isUnder(web.gap, limit)) return [];
  const { design } = facts.plan.sheet;
  const value = beyondThatWorks(limit, limit - web.gap, facts);
  return [
    {
      ...finding(entry, {
        message: `${webWords(part.id, web, limit)}${value === null ? "" : ` beyond: ${value} leaves it.`}`,
        span: design.written.span,
        subjects: [part.id],
        measured: measureMm(web.gap),
        limit: measureMm(limit),
        source,
        remedies:
          value === null ? [] : [frameRemedy(facts, design, { group: null, key: "beyond", value })],
      }),
      severity: isOver(web.gap, 0) ? "query" : "fault",
    },
  ];
};

/**
 * The frame is made again with it, for a web grows with how far the cheeks stand out by as much, by less, or not at all; null
 * where that helps none.
 */
const beyondThatWorks = (limit: number, lack: number, facts: BoardFacts): string | null => {
  let beyond: number = facts.plan.sheet.design.beyond;
  let lacking = lack;
  for (let turn = 0; turn < TURNS; turn += 1) {
    beyond = upToTenth(beyond + lacking);
    const frame = facts.withBeyond(beyond);
    if (frame === null) return null;
    const cheeks = frame.parts.filter(({ role }) => role === "cheek");
    const least = Math.min(...cheeks.map((part) => slotWeb(part)?.gap ?? limit));
    if (!isUnder(least, limit)) return `${decimal(beyond, 1)} mm`;
    lacking = limit - least;
  }
  return null;
};

const TURNS = 4;

const slotWeb = (part: FramePart): Web | null => thinnestWeb(part, { from: isSlot, to: isSlot });

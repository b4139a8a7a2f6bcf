// A hatch that another unit would keep shut, and where it went instead.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { HATCH_ROOM } from "../../parts/frame/frame-practice.ts";
import type { MovedHatch } from "../../parts/frame/unit-boards.ts";
import { millimetres } from "../words.ts";
import type { BoardFacts, FrameRule } from "./frame-rule.ts";

const entry: CodeEntry = {
  code: "checks/frame-hatch",
  severity: "note",
  title: "a hatch that another unit would keep shut",
  why: "A hatch wants room before it for a forearm and a screwdriver. Where another unit of the frame stands there, the hatch goes to a side that is free; where none has room for it, the panels are the only way in.",
  example:
    "bays:\n  left: { mount: console-rail, at: [0, 110, 620], along: [1, 0, 0], length: 24 modules, depth: 120 mm }\n  right: { mount: console-rail, at: [0, -110, 620], along: [1, 0, 0], length: 24 modules, depth: 120 mm }\nframe: { type: side-console, sheet: birch-ply-12 }",
};

export const hatchMoved: FrameRule<BoardFacts> = {
  entry,
  judge: ({ plan, movedHatches }) => {
    const span = spanOf(plan.sheet.design.written, "hatch");
    return movedHatches.map((moved) => said(moved, span));
  },
};

const said = ({ unit, written, against, side }: MovedHatch, span: Finding["span"]): Finding =>
  finding(entry, {
    message: `${unit.name.words}: ${against.name.words} stands less than ${millimetres(HATCH_ROOM)} before its ${written} side, where a hatch would not open. ${side === null ? "No other side has room for it: it has none." : `It is in the ${side} instead.`}`,
    span,
    subjects: [unit.name.words],
  });

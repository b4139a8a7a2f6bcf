// Pieces of the frame, with their waste, that do not lie on the machine's bed.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { fitsBed } from "../../parts/frame/bed.ts";
import type { FramePart } from "../../parts/frame/frame-part.ts";
import type { FrameSheet } from "../../parts/frame/planned-frame.ts";
import { tooSmall } from "../too-small.ts";
import { measureMm } from "../words.ts";
import type { BoardFacts, FrameRule } from "./frame-rule.ts";
import { worstOf } from "./worst-of.ts";

const entry: CodeEntry = {
  code: "checks/frame-bed",
  severity: "fault",
  title: "a piece of the frame larger than the machine's bed",
  why: "The piece with its waste must lie on the bed, turned a quarter where that helps. Choose another machine for the frame under `use`, or a cutting service.",
  example: "frame: { type: side-console, sheet: birch-ply-12 }",
};

export const largerThanBed: FrameRule<BoardFacts> = {
  entry,
  judge: ({ frame, plan }) => worstOf(frame.parts.flatMap((part) => largerThan(part, plan.sheet))),
};

const largerThan = (part: FramePart, { design, machine }: FrameSheet): readonly Finding[] => {
  const sheet = part.sheetPart.setUps[0]?.sheet;
  if (sheet === undefined || machine === null) return [];
  const short = fitsBed([extentWidth(sheet), extentHeight(sheet)], machine);
  if (short === null) return [];
  return [
    finding(entry, {
      message: tooSmall(
        `${part.id} with its waste`,
        { name: `the bed of ${machine.id}`, room: [machine.bed[0], machine.bed[1]] },
        short,
      ),
      span: design.written.span,
      related: [{ what: `the bed of ${machine.id}`, span: machine.written.span }],
      subjects: [part.id],
      measured: measureMm(short.measured),
      limit: measureMm(short.limit),
      source: { kind: "machine", name: machine.id },
    }),
  ];
};

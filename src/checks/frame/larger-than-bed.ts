// Pieces of the frame, with their waste, that do not lie on the machine's bed.

import type { MachineDesign } from "../../design/workshop-design.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { fitsBed, type Shortage } from "../../parts/frame/bed.ts";
import type { FramePart } from "../../parts/frame/frame-part.ts";
import type { FrameSheet } from "../../parts/frame/planned-frame.ts";
import { measureMm, millimetres } from "../words.ts";
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
  judge: ({ frame, plan }) => worstOf(frame.parts.flatMap((part) => tooLarge(part, plan.sheet))),
};

const tooLarge = (part: FramePart, { design, machine }: FrameSheet): readonly Finding[] => {
  const sheet = part.sheetPart.setUps[0]?.sheet;
  if (sheet === undefined || machine === null) return [];
  const short = fitsBed([extentWidth(sheet), extentHeight(sheet)], machine);
  if (short === null) return [];
  return [
    finding(entry, {
      message: `${part.id} with its waste is ${sideWords(short, short.long)} x ${sideWords(short, short.short)}; ${bedWords(machine, short)}, ${millimetres(short.measured - short.limit, 0)} too small.`,
      span: design.written.span,
      related: [{ what: `the bed of ${machine.id}`, span: machine.written.span }],
      subjects: [part.id],
      measured: measureMm(short.measured),
      limit: measureMm(short.limit),
      source: { kind: "machine", name: machine.id },
    }),
  ];
};

/** The side that is too long is told from the bed's; the other is none the worse for it. */
const sideWords = ({ measured, limit }: Shortage, side: number): string =>
  side === measured ? millimetres(side, limit) : millimetres(side);

const bedWords = ({ id, bed }: MachineDesign, { measured, limit }: Shortage): string => {
  const [wide, deep] = bed.map((side) =>
    side === limit ? millimetres(side, measured) : millimetres(side),
  );
  return `the bed of ${id} is ${wide} x ${deep}`;
};

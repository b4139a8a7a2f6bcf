// Pieces of the frame, with their waste, that do not lie on the machine's bed.

import type { MachineDesign } from "../../design/workshop-design.ts";
import { type CodeEntry, type Finding, finding, type Remedy } from "../../diagnostics/finding.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { fitsBed } from "../../parts/frame/bed.ts";
import type { FramePart } from "../../parts/frame/frame-part.ts";
import { keyRemedy } from "../key-remedy.ts";
import { tooSmall } from "../too-small.ts";
import { atLeast, measureMm } from "../words.ts";
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
  judge: (facts) => {
    const { machine } = facts.plan.sheet;
    if (machine === null) return [];
    const sizes = facts.frame.parts.flatMap(sizeOf);
    return worstOf(
      facts.frame.parts.flatMap((part) => largerThan(part, { machine, sizes, facts })),
    );
  },
};

type Size = readonly [number, number];

interface Bed {
  readonly machine: MachineDesign;
  /** Of all pieces, with their waste. */
  readonly sizes: readonly Size[];
  readonly facts: BoardFacts;
}

const sizeOf = ({ sheetPart }: FramePart): readonly Size[] => {
  const sheet = sheetPart.setUps[0]?.sheet;
  return sheet === undefined ? [] : [[extentWidth(sheet), extentHeight(sheet)]];
};

const largerThan = (part: FramePart, { machine, sizes, facts }: Bed): readonly Finding[] => {
  const [size] = sizeOf(part);
  const short = size === undefined ? null : fitsBed(size, machine);
  if (short === null) return [];
  const words = tooSmall(
    `${part.id} with its waste`,
    { name: `the bed of ${machine.id}`, room: [machine.bed[0], machine.bed[1]] },
    short,
  );
  return [
    finding(entry, {
      message: `${words} ${takesAll(sizes)}`,
      span: facts.plan.sheet.design.written.span,
      related: [{ what: `the bed of ${machine.id}`, span: machine.written.span }],
      subjects: [part.id],
      measured: measureMm(short.measured),
      limit: measureMm(short.limit),
      source: { kind: "machine", name: machine.id },
      remedies: otherMachine({ machine, sizes, facts }),
    }),
  ];
};

const takesAll = (sizes: readonly Size[]): string => {
  const most = (pick: (...both: readonly number[]) => number): string =>
    atLeast(Math.max(...sizes.map((both) => pick(...both))));
  return `A bed of ${most(Math.max)} x ${most(Math.min)} takes every piece of the frame.`;
};

/** The first of the workshop's, of the same kind, on which every piece lies. */
const otherMachine = ({ machine, sizes, facts }: Bed): readonly Remedy[] => {
  const { workshop, texts } = facts;
  const other = Object.values(workshop?.machines ?? {}).find(
    (one) => one.kind === machine.kind && sizes.every((size) => fitsBed(size, one) === null),
  );
  if (workshop === null || other === undefined) return [];
  const { file } = workshop.written.span;
  return [keyRemedy({ texts }, { file, path: ["use"], key: "frame", value: other.id })];
};

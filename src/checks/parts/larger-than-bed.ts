// A part, with its waste, that does not lie on the machine's bed.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { isOver } from "../limits.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { machinedParts, sheetSpan } from "./machined.ts";

const entry: CodeEntry = {
  code: "checks/larger-than-bed",
  severity: "fault",
  title: "a part larger than the machine's bed",
  why: "The sheet with its waste must lie on the bed, turned a quarter where that helps.",
  example:
    "# in the workshop\nmachines:\n  small: { type: co2-laser, bed: [120, 80], spot: 0.15 mm, kerf: left-to-cutter }",
};

export const largerThanBed: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    machinedParts(facts).flatMap((one) => {
      const { part, layer, machine } = one;
      const sheet = part.setUps[0]?.sheet;
      if (sheet === undefined) return [];
      const [short = 0, long = 0] = inOrder(extentWidth(sheet), extentHeight(sheet));
      const [narrow = 0, wide = 0] = inOrder(machine.bed[0], machine.bed[1]);
      if (!isOver(short, narrow) && !isOver(long, wide)) return [];
      const [size, most] = isOver(long, wide) ? [long, wide] : [short, narrow];
      return [
        finding(entry, {
          message: `${layer.id} with its waste is ${millimetres(long, wide)} x ${millimetres(short, narrow)}; the bed of ${machine.id} is ${millimetres(wide, long)} x ${millimetres(narrow, short)}, ${millimetres(size - most, 0)} too small.`,
          span: sheetSpan(one),
          related: [{ what: `the bed of ${machine.id}`, span: machine.written.span }],
          subjects: [layer.id],
          measured: measureMm(size),
          limit: measureMm(most),
          source: { kind: "machine", name: machine.id },
        }),
      ];
    }),
};

const inOrder = (a: number, b: number): readonly number[] => [a, b].toSorted((x, y) => x - y);

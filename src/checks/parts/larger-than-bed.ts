// A part, with its waste, that does not lie on the machine's bed.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { fitsBed } from "../../parts/frame/bed.ts";
import type { Rule } from "../rule.ts";
import { tooSmall } from "../too-small.ts";
import { measureMm } from "../words.ts";
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
      const short = fitsBed([extentWidth(sheet), extentHeight(sheet)], machine);
      if (short === null) return [];
      return [
        finding(entry, {
          message: tooSmall(
            `${layer.id} with its waste`,
            { name: `the bed of ${machine.id}`, room: [machine.bed[0], machine.bed[1]] },
            short,
          ),
          span: sheetSpan(one),
          related: [{ what: `the bed of ${machine.id}`, span: machine.written.span }],
          subjects: [layer.id],
          measured: measureMm(short.measured),
          limit: measureMm(short.limit),
          source: { kind: "machine", name: machine.id },
        }),
      ];
    }),
};

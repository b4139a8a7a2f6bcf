// A hole smaller than the machine can cut.

import type { MachineDesign } from "../../design/workshop-design.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { isUnder } from "../limits.ts";
import type { Rule } from "../rule.ts";
import { atMost, measureMm, millimetres } from "../words.ts";
import { machinedParts, onePerCut } from "./machined.ts";

const entry: CodeEntry = {
  code: "checks/hole-below-machine",
  severity: "fault",
  title: "a hole smaller than the machine can cut",
  why: "A router can't make a hole narrower than its tool, a laser's spot burns away anything near its own width, and a drill bench has the drills that it has. Take a finer tool, or have this layer made elsewhere.",
  example:
    "# in the workshop; the panel's face holds a led-3\nmachines:\n  router: { type: router, bed: [700, 500], tools: [ { diameter: 6 mm } ] }\nuse: { face: router }",
};

/** A beam makes clean holes from about four spots across: common practice. */
const SPOTS = 4;

export const holeBelowMachine: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    machinedParts(facts).flatMap((one) => {
      const { machine, layer } = one;
      const least = leastHole(machine);
      return onePerCut(one, ({ cut, cutOut }) => {
        const box = contourExtent(cut.contour);
        const size = Math.min(extentWidth(box), extentHeight(box));
        if (!isUnder(size, least)) return null;
        return finding(entry, {
          message: `${cutOut.owner}: an opening in ${layer.id} is ${millimetres(size, least)} wide and the least that ${machine.id} makes is ${millimetres(least, size)}, ${millimetres(least - size, 0)} more. ${finerWords(machine, size)} or less makes it.`,
          span: cutOut.span,
          related: [{ what: machine.id, span: machine.written.span }],
          subjects: [cutOut.owner],
          measured: measureMm(size),
          limit: measureMm(least),
          source: { kind: "machine", name: machine.id },
        });
      });
    }),
};

const finerWords = (machine: MachineDesign, size: number): string => {
  switch (machine.kind) {
    case "co2-laser":
    case "diode-laser":
      return `A spot of ${atMost(size / SPOTS)}`;
    case "drill-bench":
      return `A drill of ${atMost(size)}`;
    case "router":
    case "printer":
      return `A tool of ${atMost(size)}`;
  }
};

const leastHole = (machine: MachineDesign): number => {
  switch (machine.kind) {
    case "co2-laser":
    case "diode-laser":
      return SPOTS * machine.spot;
    case "router":
      return Math.min(...machine.tools.map(({ diameter }) => diameter));
    case "drill-bench":
      return Math.min(...machine.drills);
    case "printer":
      return 0;
  }
};

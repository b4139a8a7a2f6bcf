// A kerf in a file that nobody has measured and no figures are known of.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { ASSUMED_KERF, KERF_UNCERTAINTY, kerfReading, typicalKerf } from "../../parts/kerf.ts";
import type { Rule } from "../rule.ts";
import { millimetres } from "../words.ts";
import { machinedParts, sheetSpan } from "./machined.ts";

const entry: CodeEntry = {
  code: "checks/kerf-assumed",
  severity: "query",
  title: "a kerf that is assumed, of a material without figures",
  why: "For acrylic, laminate, wood and card there are typical kerfs; for others a width is assumed, and every hole of the file is made with it. Cut the test piece and enter what it says, or leave the kerf to the cutter.",
  example: `# in the workshop; the panel's stack is [{ layer: face, sheet: foil }]
machines:
  laser: { type: co2-laser, bed: [600, 400], spot: 0.15 mm, kerf: in-file }
stock:
  foil: { material: film, colour: black, nominal: 0.5 mm }`,
};

export const kerfAssumed: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    machinedParts(facts).flatMap((one) => {
      const { part, layer, machine } = one;
      const kerf = part.setUps.find((setUp) => setUp.kerf.kind === "in-file")?.kerf;
      if (kerf?.kind !== "in-file" || kerfReading(machine, part.stock) !== null) return [];
      if (typicalKerf(part.stock) !== null) return [];
      return [
        finding(entry, {
          message: `${layer.id}: nobody has measured the kerf of ${machine.id} in ${part.stock.id}, and no typical one of ${part.stock.material} is known; ${millimetres(ASSUMED_KERF)} is assumed, which may be ${millimetres(KERF_UNCERTAINTY)} out either way. Cut the test piece: consolewright testpiece laser --stock ${part.stock.id}.`,
          span: sheetSpan(one),
          related: [{ what: machine.id, span: spanOf(machine.written, "kerf") }],
          subjects: [layer.id],
          source: { kind: "practice", name: "kerfs of other sheets, 0.15 to 0.28 mm" },
        }),
      ];
    }),
};

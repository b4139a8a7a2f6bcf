// What the catalogue says of a stock on a machine, as a finding: one text for "cannot" and "try it".

import { machineVerdict } from "../../catalogue/verdict.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { type Machined, machinedParts, sheetSpan } from "./machined.ts";

export const stockVerdict = (entry: CodeEntry, wanted: "cannot" | "try"): Rule => ({
  entry,
  move: null,
  judge: (facts) =>
    machinedParts(facts).flatMap((one) => {
      const { part, layer, machine } = one;
      const verdict = machineVerdict(part.stock, machine.kind, facts.catalogue);
      if (verdict?.verdict !== wanted) return [];
      const others = wanted === "cannot" ? othersThatCan(one, facts) : [];
      const advice = others.length === 0 ? "" : ` ${others.join(" or ")} can.`;
      return [
        finding(entry, {
          message: `${layer.id}: ${part.stock.id} on ${machine.id} (${machine.kind.replaceAll("-", " ")}): ${verdict.why}.${advice}`,
          span: sheetSpan(one),
          subjects: [layer.id],
          source: { kind: "machine", name: `${machine.id}, ${part.stock.material}` },
        }),
      ];
    }),
});

/** Machines of the workshop that cut it, by name. */
const othersThatCan = ({ part }: Machined, facts: PanelFacts): readonly string[] =>
  Object.values(facts.workshop?.machines ?? {})
    .filter(({ kind }) => machineVerdict(part.stock, kind, facts.catalogue)?.verdict === "can")
    .map(({ id }) => id)
    .toSorted();

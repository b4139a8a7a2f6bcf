// Nuts, screws and plugs that no tool comes to, at the step of the best order that there is.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { serviceOrder } from "../../service/service-order.ts";
import { toolWords } from "../../service/tool.ts";
import type { Rule } from "../rule.ts";
import { spanOfOwner } from "./seen-lamps.ts";

const entry: CodeEntry = {
  code: "checks/out-of-reach",
  severity: "query",
  title: "a nut, a screw or a plug that its tool does not come to",
  why: "Service comes last in the design and first in the life of a panel. Whatever order it is put together in, something stands in the way of this tool. Move one of the two, or say with what other tool it is done.",
  example: `stack:
  - { layer: face, sheet: aluminium-2 }
components:
  a: { part: toggle-6, at: { x: 40 mm, y: 40 mm } }
  b: { part: toggle-6, at: { x: 51.3 mm, y: 40 mm } }`,
};

export const outOfReach: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    serviceOrder(facts).outOfReach.flatMap(({ number, item, by }) => {
      const [first] = by;
      if (first === undefined || item.tool === null) return [];
      return [
        finding(entry, {
          message: `Step ${number}: ${toolWords(item.tool)} does not come to the ${item.kind} of ${item.owner} from the ${item.side}: ${by.join(", ")} ${by.length === 1 ? "stands" : "stand"} in the way.`,
          span: spanOfOwner(item.owner, facts),
          related: by.map((owner) => ({ what: owner, span: spanOfOwner(owner, facts) })),
          subjects: [item.owner, first],
          source: { kind: "geometry", name: "room for the tool in the order of assembly" },
        }),
      ];
    }),
};

// Lit sheets with bare edges or a bare face: they glow all round.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import type { Rule } from "../rule.ts";
import { lampName, sightsIn, spanOfOwner } from "./seen-lamps.ts";

const entry: CodeEntry = {
  code: "checks/bare-edge",
  severity: "note",
  title: "a lit sheet whose edges or face are bare",
  why: "Light that has come into acrylic leaves it wherever it is bare: all free edges leak, and the walls of holes. Paint or foil them. The finish cut-paint-engrave paints face and edges; paint before cutting leaves the edges to be touched in by hand.",
  example: `stack:
  - { layer: face, sheet: opal-acrylic-3, finish: paint-then-cut }
  - { layer: spacer, print: black-petg, depth: 14 mm, lighting: { strip: strip-60-5v-addressable, circuit: night } }
components:
  a: { part: led-5, at: { x: 60 mm, y: 40 mm } }`,
};

export const bareEdge: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    sightsIn(facts).flatMap((sight) => {
      if (sight.through !== "bare-edge" && sight.through !== "bare-face") return [];
      const where = sight.through === "bare-edge" ? "its edges are bare" : "its face is bare";
      return [
        finding(entry, {
          message: `${sight.owner} is lit by ${lampName(sight.lamp.of)} and ${where}: it glows there. Paint or foil it, edges and the walls of holes too.`,
          span: spanOfOwner(sight.owner, facts),
          subjects: [sight.owner],
          source: { kind: "geometry", name: "a straight line from a lamp into the sheet" },
        }),
      ];
    }),
};

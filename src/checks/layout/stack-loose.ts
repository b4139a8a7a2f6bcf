// Layers that nothing but the components' nuts holds together.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { keyRemedy } from "../key-remedy.ts";
import type { Rule } from "../rule.ts";
import { measureOf } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/stack-loose",
  severity: "query",
  title: "layers that only the components' nuts hold together",
  why: "A stack wants screws and dowels of its own: take one switch out for service and the layers shift.",
  example:
    "stack:\n  - { layer: face, sheet: opal-acrylic-3 }\n  - { layer: backing, sheet: aluminium-2 }",
};

/** Screws and two dowels. */
const WANTED = 4;
const USUAL = "{ screws: m3, dowels: 3 mm }";

export const stackLoose: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const { layout } = facts;
    const { design } = layout;
    const solid = layout.layers.filter(({ kind }) => kind === "sheet" || kind === "spacer");
    if (solid.length < 2 || design.fixings !== null || design.unread.includes("fixings")) return [];
    const remedy = { path: [], key: "fixings", value: USUAL, file: design.file };
    return [
      finding(entry, {
        message: `The stack has ${solid.length} layers (${solid.map(({ id }) => id).join(", ")}) and no fixings of its own. fixings: ${USUAL} sets them.`,
        span: spanOf(design.written, "stack"),
        subjects: solid.map(({ id }) => id),
        measured: measureOf(0, "count"),
        limit: measureOf(WANTED, "count"),
        source: {
          kind: "geometry",
          name: "what holds and registers a stack: two screws and two dowels",
        },
        remedies: [keyRemedy(facts, remedy)],
      }),
    ];
  },
};

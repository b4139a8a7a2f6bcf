// A printed part that falls into loose pieces: what stands in it cuts it through from edge to edge.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { loosePieces } from "../../parts/printed/loose-pieces.ts";
import type { Rule } from "../rule.ts";

const entry: CodeEntry = {
  code: "checks/loose-pieces",
  severity: "query",
  title: "a printed part that falls into loose pieces",
  why: "Pockets that meet and reach the edge cut a part through. Each piece is then held by its own screws alone, nothing says where it stands to the others, and light passes between them. Move the components apart or away from the edge, or have each piece hold a screw and a dowel.",
  example: `mount: console-rail
height: 6 modules
stack:
  - { layer: backing, sheet: aluminium-2 }
  - { layer: spacer, print: black-petg, depth: 14 mm }
fixings: { screws: m3, dowels: 3 mm }
components:
  a: { part: seven-segment-4-056, turn: 90 deg, at: centre }`,
};

export const fallsApart: Rule = {
  entry,
  move: null,
  judge: ({ printedParts }) =>
    printedParts.flatMap((part) => {
      const pieces = loosePieces(part);
      if (pieces <= 1) return [];
      return [
        finding(entry, {
          message: `${part.owner} falls into ${pieces} loose pieces: what stands in it cuts it through. Leave a bridge between the pockets and an edge, or give each piece a screw and a dowel.`,
          span: part.span,
          subjects: [part.owner],
          measured: { value: pieces, unit: "count" },
          limit: { value: 1, unit: "count" },
          source: { kind: "geometry", name: "the one piece that a part is printed as" },
        }),
      ];
    }),
};

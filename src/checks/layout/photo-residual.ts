// A photograph whose marks do not agree: whatever is read from it is off by as much.

import { photoPlane } from "../../design/photo-plane.ts";
import { markName } from "../../design/photo-words.ts";
import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { type HouseRule, houseLimit } from "../house-rule.ts";
import { isOver } from "../limits.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/photo-residual",
  severity: "query",
  title: "a photograph whose marks do not agree",
  why: "Four marks always fit. A fifth shows how well: what is left of it is a mark set beside its spot, a measure misread, a face that is not flat, or a lens that bends straight lines. Set the worst mark again, or photograph from farther away, where lenses bend less.",
  example:
    "photo:\n  file: old.png\n  points:\n    - { in-picture: [100, 900], on-panel: [0, 0] }\n    - { in-picture: [1300, 900], on-panel: [120, 0] }\n    - { in-picture: [1300, 100], on-panel: [120, 80] }\n    - { in-picture: [100, 100], on-panel: [0, 80] }\n    - { in-picture: [740, 500], on-panel: [60, 40] }",
};

/** A picture of 1500 pixels across a panel of 150 mm, marked by hand to 3 pixels, leaves 0.3 mm; more is a slip. */
const RULE: HouseRule = {
  key: "photo-residual",
  usual: 0.5,
  name: "marks of a photograph within 0.5 mm",
};

export const photoResidual: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const { photo } = facts.layout.design;
    const plane = photo === null ? null : photoPlane(photo.marks);
    if (photo === null || plane?.kind !== "plane") return [];
    const { limit, source } = houseLimit(facts, RULE);
    const { mark, residual } = plane.worst;
    if (!isOver(residual, limit)) return [];
    return [
      finding(entry, {
        message: `${photo.file}: ${markName(mark, photo.marks.kind)} is ${millimetres(residual)} off where the others put it, more than ${millimetres(limit)}; all of them ${millimetres(plane.rms)} on average. Set it again.`,
        span: spanOf(photo.written, photo.marks.kind),
        measured: measureMm(residual),
        limit: measureMm(limit),
        source,
      }),
    ];
  },
};

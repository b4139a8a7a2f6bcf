// Studs or screws of a rail mount that clamp acrylic beside a thin web.

import { machineVerdict } from "../../catalogue/verdict.ts";
import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding, type Remedy } from "../../diagnostics/finding.ts";
import { contourDistance } from "../../geometry/distance.ts";
import type { LayerLayout } from "../../layout/panel-layout.ts";
import { seatedLayer } from "../../layout/seated-layer.ts";
import { type HouseRule, houseLimit } from "../house-rule.ts";
import { isUnder } from "../limits.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/mount-in-acrylic",
  severity: "query",
  title: "studs that clamp acrylic",
  why: "Beside a rail's stud hole only about 1.3 mm of the sheet is left. Acrylic cracks there when the stud is drawn tight, sooner or later. Aluminium of 1.5 to 2 mm, laminate, or a bush round each stud holds.",
  example: "mount: console-rail\nstack:\n  - { layer: face, sheet: black-acrylic-3 }",
};

const BESIDE_A_STUD: HouseRule = {
  key: "mount-web-acrylic",
  usual: 2,
  name: "at least 2 mm of acrylic beside a stud that is drawn tight (common practice)",
};

export const mountInAcrylic: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const { layout } = facts;
    const held = seatedLayer(layout);
    if (!(held?.material?.startsWith("acrylic") ?? false) || held === null) return [];
    const hole = held.cutOuts.find(({ purpose }) => purpose === "mount");
    if (layout.mount.holes.kind !== "columns" || hole === undefined) return [];
    const { gap } = contourDistance(layout.outline, hole.contour);
    const { limit, source } = houseLimit(facts, BESIDE_A_STUD);
    if (!isUnder(gap, limit)) return [];
    return [
      finding(entry, {
        message: `The studs clamp ${held.id}, which is acrylic, with ${millimetres(gap, limit)} of it beside each hole; ${millimetres(limit, gap)} is wanted, ${millimetres(limit - gap, 0)} more. Aluminium of 1.5 or 2 mm, laminate, or a bush round each stud holds.`,
        span: spanOf(held.design.written, "sheet"),
        related: [{ what: "mount", span: spanOf(layout.design.written, "mount") }],
        subjects: [held.id],
        measured: measureMm(gap),
        limit: measureMm(limit),
        source,
        remedies: inAluminium(held, facts),
      }),
    ];
  },
};

const ALUMINIUM = "aluminium-2";

/** A backing may become aluminium where its machine cuts it; a face is looked at. */
const inAluminium = (held: LayerLayout, facts: PanelFacts): readonly Remedy[] => {
  const stock = facts.workshop?.stock[ALUMINIUM] ?? facts.catalogue.stock.get(ALUMINIUM);
  const first = facts.layout.layers.find(({ kind }) => kind === "sheet");
  if (stock === undefined || first === held) return [];
  const verdict =
    held.machine === null ? null : machineVerdict(stock, held.machine.kind, facts.catalogue);
  if (verdict !== null && verdict.verdict !== "can") return [];
  const span = spanOf(held.design.written, "sheet");
  return [{ title: `sheet: ${ALUMINIUM} (${held.id})`, edits: [facts.edit(span, ALUMINIUM)] }];
};

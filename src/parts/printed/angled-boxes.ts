// The angled box that a panel lies on, where it asks for one: printed in one piece with its face on the bed.

import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { leastInset } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { PanelLayout } from "../../layout/panel-layout.ts";
import { METRIC_THREADS, type MetricThread } from "../../standards/metric-fasteners.ts";
import { ANGLED_BOX_FOOTPRINT, ANGLED_BOX_MOUNT } from "./angled-box-codes.ts";
import type { AngledBoxFact, AngledBoxPart } from "./angled-box-facts.ts";
import { angledBoxFindings } from "./angled-box-findings.ts";
import { type AngledBoxPlan, type AngledBoxScene, angledBoxPlan } from "./angled-box-plan.ts";
import { angledBoxSolid } from "./angled-box-solid.ts";
import { bareFacts, solidBox, wallFact } from "./bare-facts.ts";
import { insertFor } from "./bosses.ts";
import { fittedStock } from "./fitted-stock.ts";
import { tidy } from "./opaque-wall.ts";
import { type PrintedContext, type PrintedMaker, printerFor } from "./printed-context.ts";
import type { BossFact } from "./printed-facts.ts";
import type { PrintedParts } from "./printed-part.ts";
import { bedFindings, singlePart } from "./single-part.ts";

export const angledBoxesOf: PrintedMaker = (layout, context): PrintedParts => {
  const scene = sceneOf(layout, context);
  if (scene === null) return { parts: [], findings: [] };
  if ("missing" in scene) return { parts: [], findings: [scene.missing] };
  const plan = angledBoxPlan(scene);
  if (plan === null) return { parts: [], findings: [noFootprint(scene)] };
  const findings = angledBoxFindings(scene, plan);
  if (findings.length > 0) return { parts: [], findings };
  const part = boxPart(scene, plan);
  return { parts: [part], findings: bedFindings(part) };
};

const sceneOf = (
  layout: PanelLayout,
  context: PrintedContext,
): AngledBoxScene | { readonly missing: Finding } | null => {
  const { box: design } = layout.design;
  if (design === null) return null;
  const fastener = context.catalogue.hardware.get(layout.mount.fastener);
  const thread = fastener?.kind === "screw" ? threadOf(fastener.thread) : null;
  const insert = thread === null ? null : insertFor(thread, context, LONGEST_BOSS);
  if (insert === null || layout.mountHoles.length === 0)
    return {
      missing: finding(ANGLED_BOX_MOUNT, {
        message: `${layout.name} is held by ${layout.mount.id}, which has no screws that end in a box. Write mount: box-lid.`,
        span: spanOf(layout.design.written, "mount"),
        subjects: [layout.name],
      }),
    };
  const asked = { written: design.written, owner: layout.name, key: "print" };
  const print = fittedStock(design.print, asked, context);
  return print.kind === "missing"
    ? { missing: print.finding }
    : { layout, design, stock: print.stock, printer: printerFor("box", context), insert };
};

/** Room for the longest insert of any thread that a lid is held by. */
const LONGEST_BOSS = 12;

const threadOf = (thread: string): MetricThread | null =>
  METRIC_THREADS.find((known) => known === thread) ?? null;

const noFootprint = ({ design, layout }: AngledBoxScene): Finding =>
  finding(ANGLED_BOX_FOOTPRINT, {
    message: `The ${design.footprint.length} corners of ${layout.name}'s box make no walls: they cross, lie on one line, leave less than two walls between them, or turn in too sharply.`,
    span: spanOf(design.written, "footprint"),
    subjects: [layout.name],
  });

const boxPart = (scene: AngledBoxScene, plan: AngledBoxPlan): AngledBoxPart => {
  const { layout, design, stock, printer } = scene;
  const solid = angledBoxSolid(plan, scene);
  const thickness = tidy(plan.lines * plan.wall.line);
  const part = singlePart({
    id: `${layout.name}-box`,
    panel: layout.name,
    title: `${layout.design.title}, box`,
    revision: layout.design.revision,
    role: "angled-box",
    owner: layout.name,
    stock,
    printer,
    solid,
    bedSide: "front",
    facts: bareFacts(solidBox(solid), {
      walls: [wallFact("box", [layout.name], { thickness, wall: plan.wall })],
      bosses: bossFacts(scene, plan),
    }),
    span: design.written.span,
  });
  return { ...part, role: "angled-box", angledBox: factOf(scene, plan) };
};

const bossFacts = (
  { layout, insert }: AngledBoxScene,
  { boss, heights }: AngledBoxPlan,
): readonly BossFact[] =>
  layout.mountHoles.map(({ id, at }) => ({
    owner: id,
    at,
    kind: "insert",
    thread: insert.thread,
    hole: boss.hole,
    outside: boss.outside,
    wall: tidy((boss.outside - boss.hole.modelled) / 2),
    depth: tidy(heights.front - heights.holeEnd),
    below: tidy(heights.holeEnd - heights.bossEnd),
    insert: insert.length,
  }));

const factOf = ({ layout, design }: AngledBoxScene, plan: AngledBoxPlan): AngledBoxFact => {
  const box = contourExtent(plan.outer);
  return {
    slope: design.slope,
    low: tidy(plan.undersideAt(box.minY)),
    high: tidy(plan.undersideAt(box.maxY)),
    wall: tidy(plan.lines * plan.wall.line),
    lines: plan.lines,
    line: plan.wall.line,
    flange: {
      width: design.flange,
      thickness: plan.flangeThickness,
      holes: plan.flangeHoles,
    },
    face: {
      outline: plan.face,
      opening: plan.openingContour,
      thickness: tidy(plan.heights.front - plan.heights.underside),
      seat: tidy(leastInset(contourExtent(layout.outline), plan.opening)),
    },
    screws: layout.mountHoles.map(({ at }) => at),
  };
};

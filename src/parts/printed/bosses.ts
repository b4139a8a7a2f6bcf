// Bosses at the fixings of the stack: heat-set inserts in the last printed layer, clearance in the others, dowels through
// all of them. The pilot is the datasheet's, the printer's allowance stands beside it.

import type { Insert } from "../../catalogue/insert.ts";
import type { PrinterDesign } from "../../design/workshop-design.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { containsPoint } from "../../geometry/containment.ts";
import { type Circle, type Contour, circle, type Region } from "../../geometry/contour.ts";
import { pointToContour } from "../../geometry/distance.ts";
import { degrees, type Mm, mm } from "../../geometry/quantity.ts";
import { slotContour } from "../../geometry/shapes.ts";
import { DOWEL_FIT, DOWEL_SLOT } from "../../layout/holes.ts";
import type { LayerLayout, PanelLayout, PlacedFixing } from "../../layout/panel-layout.ts";
import { HEAT_SET_BOSS } from "../../standards/heat-set.ts";
import { CLEARANCE_HOLES, type MetricThread } from "../../standards/metric-fasteners.ts";
import { NO_INSERT } from "./codes.ts";
import { type OpaqueWall, tidy, wholeSteps } from "./opaque-wall.ts";
import { type AllowedHole, allowedHole } from "./print-allowance.ts";
import type { PrintedContext } from "./printed-context.ts";
import type { BossFact } from "./printed-facts.ts";

export interface Boss {
  readonly fact: BossFact;
  /** The boss itself, before anything is cut from it. */
  readonly outside: Circle;
  readonly hole: Contour;
  /** z from which the hole runs up to the layer's front. */
  readonly holeFrom: Mm;
  /** A pin fits in it: the bed side is relieved. */
  readonly isFit: boolean;
}

export interface BossScene {
  readonly layout: PanelLayout;
  readonly layer: LayerLayout;
  readonly context: PrintedContext;
  readonly printer: PrinterDesign | null;
  readonly wall: OpaqueWall;
  /** z of the part's front and rear. */
  readonly front: number;
  readonly rear: number;
}

export const bossesOf = (
  scene: BossScene,
): { readonly bosses: readonly Boss[]; readonly findings: readonly Finding[] } => {
  const { layout, layer, context } = scene;
  const thread = layout.design.fixings?.screws;
  const takesInserts = lastPrinted(layout) === layer.index;
  const insert =
    takesInserts && thread !== undefined
      ? insertFor(thread, context, scene.front - scene.rear)
      : null;
  const findings =
    takesInserts && thread !== undefined && insert === null && layout.fixings.length > 0
      ? [noInsert(thread, layout)]
      : [];
  return {
    bosses: layout.fixings.map((fixing) =>
      bossOf(fixing, { ...scene, insert, thread: thread ?? null }),
    ),
    findings,
  };
};

/** Screws end in the last printed layer that they meet: an insert there holds everything in front of it. */
const lastPrinted = ({ layers }: PanelLayout): number =>
  layers.findLastIndex(({ kind }) => kind === "spacer" || kind === "tray");

/** The longest insert of a thread that leaves solid plastic below it, else the shortest there is. */
export const insertFor = (
  thread: MetricThread,
  { catalogue }: PrintedContext,
  depth: number,
): Insert | null => {
  const known = [...catalogue.inserts.values()]
    .filter((insert) => insert.thread === thread)
    .toSorted((a, b) => b.length - a.length || (a.id < b.id ? -1 : 1));
  const { holeBeyondInsert, solidBelow } = HEAT_SET_BOSS;
  const fits = known.find(({ length }) => length + holeBeyondInsert.most + solidBelow <= depth);
  return fits ?? known.at(-1) ?? null;
};

const noInsert = (thread: MetricThread, layout: PanelLayout): Finding =>
  finding(NO_INSERT, {
    message: `The catalogue has no heat-set insert for ${thread}, so that the stack's screws pass the printed part and end in nuts. Write fixings: { screws: m3 }, or add an insert's record.`,
    span: layout.design.fixings?.written.span ?? layout.design.written.span,
  });

interface FixingScene extends BossScene {
  readonly insert: Insert | null;
  readonly thread: MetricThread | null;
}

const bossOf = (fixing: PlacedFixing, scene: FixingScene): Boss => {
  if (fixing.kind !== "screw") return dowelBoss(fixing, scene);
  return scene.insert === null
    ? passedBoss(fixing, scene)
    : insertBoss(fixing, scene.insert, scene);
};

/** Hole = insert and room for melt, blind where that leaves solid plastic below. */
const insertBoss = (fixing: PlacedFixing, insert: Insert, scene: FixingScene): Boss => {
  const { front, rear, printer } = scene;
  const hole = allowedHole(insert.pilot, sourceOf(insert, "pilot"), printer);
  const wanted = insert.length + HEAT_SET_BOSS.holeBeyondInsert.most;
  const below = tidy(front - rear - wanted);
  const isBlind = below > 0;
  return boss(fixing, scene, {
    kind: "insert",
    hole,
    least: Math.max(insert.boss, HEAT_SET_BOSS.outsideOverInsert * insert.outside),
    depth: isBlind ? mm(wanted) : tidy(front - rear),
    below: isBlind ? below : null,
    insert: insert.length,
    contour: circle(fixing.at, hole.modelled / 2),
  });
};

const sourceOf = ({ figures }: Insert, field: string): string =>
  figures.exceptions[field]?.source ?? figures.source;

const passedBoss = (fixing: PlacedFixing, scene: FixingScene): Boss => {
  const { front, rear, printer, wall, thread } = scene;
  const source = thread === null ? "the panel's fixings" : "ISO 273, medium";
  const nominal = thread === null ? fixing.diameter : CLEARANCE_HOLES[thread].medium;
  const hole = allowedHole(nominal, source, printer);
  return boss(fixing, scene, {
    kind: "clearance",
    hole,
    least: hole.modelled + 2 * wall.thickness,
    depth: tidy(front - rear),
    below: null,
    insert: null,
    contour: circle(fixing.at, hole.modelled / 2),
  });
};

const dowelBoss = (fixing: PlacedFixing, scene: FixingScene): Boss => {
  const { front, rear, printer, wall } = scene;
  const hole = allowedHole(
    fixing.diameter + DOWEL_FIT,
    "dowel, running fit (common practice)",
    printer,
  );
  const isSlot = fixing.kind === "dowel-slotted";
  const size = { length: mm(hole.modelled + DOWEL_SLOT), width: hole.modelled, turn: degrees(0) };
  return boss(fixing, scene, {
    kind: "dowel",
    hole,
    least: hole.modelled + (isSlot ? DOWEL_SLOT : 0) + 2 * wall.thickness,
    depth: tidy(front - rear),
    below: null,
    insert: null,
    contour: isSlot ? slotContour(fixing.at, size) : circle(fixing.at, hole.modelled / 2),
  });
};

interface BossSize {
  readonly kind: BossFact["kind"];
  readonly hole: AllowedHole;
  /** Diameter that it must have at least; its wall becomes whole lines. */
  readonly least: number;
  readonly depth: Mm;
  readonly below: Mm | null;
  readonly insert: Mm | null;
  readonly contour: Contour;
}

const boss = (fixing: PlacedFixing, scene: FixingScene, size: BossSize): Boss => {
  const { hole, depth, below, insert } = size;
  const lines = wholeSteps((size.least - hole.modelled) / 2, scene.wall.line);
  const wall = tidy(lines * scene.wall.line);
  const outside = tidy(hole.modelled + 2 * wall);
  return {
    fact: {
      owner: fixing.id,
      at: fixing.at,
      kind: size.kind,
      thread: size.kind === "dowel" ? null : scene.thread,
      hole,
      outside,
      wall,
      depth,
      below,
      insert,
    },
    outside: circle(fixing.at, outside / 2),
    hole: size.contour,
    holeFrom: tidy(scene.front - depth),
    isFit: size.kind === "dowel",
  };
};

/** The boss's fact with the plastic that is really left round its hole. */
export const measuredBoss = (
  { fact, hole }: Boss,
  around: { readonly outline: Contour; readonly pockets: readonly Region[] },
): BossFact => {
  const { at } = fact;
  const reach = hole.kind === "circle" ? hole.radius : (fact.hole.modelled + DOWEL_SLOT) / 2;
  const toEdge =
    pointToContour(at, around.outline).gap * (containsPoint(around.outline, at) ? 1 : -1);
  const toPockets = around.pockets.map(({ outline }) => {
    const { gap } = pointToContour(at, outline);
    return containsPoint(outline, at) ? -gap : gap;
  });
  const room = Math.min(toEdge, ...toPockets) - reach;
  return { ...fact, wall: mm(Math.min(fact.wall, room)) };
};

// Sections of the frame: runs of bays whose piece passes the doorway and whose cheeks lie on the bed. One where that is
// possible; parted between bays where it helps. Takes the bays in a row; gives a plan each, and what stands in the way.

import type { FrameDesign } from "../../design/frame-design.ts";
import type { MachineDesign } from "../../design/workshop-design.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import { fitsBed } from "./bed.ts";
import type { Span } from "./board.ts";
import { SECTIONS_CLOSE } from "./codes.ts";
import { doorwayRoom } from "./doorway.ts";
import type { FrameBay } from "./frame-bay.ts";
import { type FramePlan, framePlan } from "./frame-plan.ts";
import { SHEET_MARGIN } from "./frame-practice.ts";

export interface PartingOptions {
  readonly design: FrameDesign;
  readonly thickness: number;
  readonly across: Span;
  readonly machine: MachineDesign | null;
}

export interface Parted {
  readonly plans: readonly FramePlan[];
  readonly findings: readonly Finding[];
}

export const parted = (bays: readonly FrameBay[], options: PartingOptions): Parted => {
  const whole = plansOf([bays], options);
  if (whole.every((plan) => isManageable(plan, options))) return { plans: whole, findings: [] };
  const runs = greedyRuns(bays, options);
  const sections = plansOf(runs, options);
  const helps = sections.length > 1 && sections.every((plan) => isManageable(plan, options));
  return helps
    ? { plans: sections, findings: tooClose(sections, options) }
    : { plans: whole, findings: [] };
};

const plansOf = (
  runs: readonly (readonly FrameBay[])[],
  { design, thickness, across }: PartingOptions,
): readonly FramePlan[] =>
  runs.map((run, index) =>
    framePlan(run, {
      design,
      thickness,
      across,
      suffix: runs.length === 1 ? "" : `-s${index + 1}`,
      isFirst: index === 0,
    }),
  );

/** As many bays a section as pass. */
const greedyRuns = (
  bays: readonly FrameBay[],
  options: PartingOptions,
): readonly (readonly FrameBay[])[] => {
  const runs: FrameBay[][] = [];
  for (const bay of bays) {
    const run = runs.at(-1);
    const longer = run === undefined ? null : [...run, bay];
    const plan = longer === null ? null : plansOf([longer], options)[0];
    if (run !== undefined && plan !== null && plan !== undefined && isManageable(plan, options))
      run.push(bay);
    else runs.push([bay]);
  }
  return runs;
};

const isManageable = (plan: FramePlan, { design, machine }: PartingOptions): boolean =>
  doorwayRoom(plan, design.doorway) === null &&
  (["left", "right"] as const).every((side) => fitsBed(cheekSize(plan, side), machine) === null);

const cheekSize = (plan: FramePlan, side: "left" | "right"): readonly [number, number] => {
  const ups = plan.cheeks[side].map(({ y }) => y);
  const waste = 2 * SHEET_MARGIN;
  return [plan.ends.to - plan.ends.from + waste, Math.max(...ups) + waste];
};

const tooClose = (plans: readonly FramePlan[], { design }: PartingOptions): readonly Finding[] =>
  plans.slice(1).flatMap((plan, index) => {
    const before = plans[index]!;
    const overlap = before.ends.to - plan.ends.from;
    if (overlap <= samePlace) return [];
    const beyond = Math.floor((design.beyond - overlap / 2) * TENTHS) / TENTHS;
    const or = beyond >= 0 ? `, or make beyond: ${decimal(beyond, 1)} mm` : "";
    const [bay, last] = [plan.bays[0]!, before.bays.at(-1)!];
    return [
      finding(SECTIONS_CLOSE, {
        message: `${last.id} and ${bay.id}: the frame is to be parted between them, and the two ends take ${decimal(overlap, 2)} mm more than there is. Move them apart by that${or}.`,
        span: spanOf(bay.layout.design.written, "at"),
        related: [{ what: last.id, span: spanOf(last.layout.design.written, "at") }],
        subjects: [last.id, bay.id],
        measured: { value: Math.round(overlap * 1e6) / 1e6, unit: "mm" },
        limit: { value: 0, unit: "mm" },
        source: { kind: "geometry", name: "sections stand side by side" },
      }),
    ];
  });

/** `beyond` is offered in whole tenths, rounded so that the ends do part. */
const TENTHS = 10;

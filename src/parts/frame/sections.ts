// Sections of the frame: runs of bays whose piece passes the doorway and whose cheeks lie on the bed. One where that is
// possible; parted between bays where it helps. Takes the bays in a row; gives a plan each, and how the ends of two lie.

import type { MachineDesign } from "../../design/workshop-design.ts";
import { fitsBed } from "./bed.ts";
import type { Span } from "./board.ts";
import { doorwayRoom } from "./doorway.ts";
import type { FrameBay } from "./frame-bay.ts";
import { type FramePlan, framePlan } from "./frame-plan.ts";
import { SHEET_MARGIN } from "./frame-practice.ts";
import type { KneesAsked } from "./knees-asked.ts";
import type { SizedFrame } from "./sized-frame.ts";

export interface PartingOptions {
  readonly design: SizedFrame;
  readonly thickness: number;
  readonly across: Span;
  readonly machine: MachineDesign | null;
  /** Of the unit, in the ids of its parts. */
  readonly suffix: string;
  readonly knees: KneesAsked | null;
}

export interface Parted {
  readonly plans: readonly FramePlan[];
  readonly partings: readonly Parting[];
}

/** Between two bays that stand in sections of their own. */
export interface Parting {
  readonly before: FrameBay;
  readonly after: FrameBay;
  /** How far the one section reaches into the other; less than 0: what parts them. */
  readonly overlap: number;
}

export const parted = (bays: readonly FrameBay[], options: PartingOptions): Parted => {
  const whole = plansOf([bays], options);
  if (whole.every((plan) => isManageable(plan, options))) return { plans: whole, partings: [] };
  const runs = greedyRuns(bays, options);
  const sections = plansOf(runs, options);
  const helps = sections.length > 1 && sections.every((plan) => isManageable(plan, options));
  return helps
    ? { plans: sections, partings: partingsOf(sections) }
    : { plans: whole, partings: [] };
};

const plansOf = (
  runs: readonly (readonly FrameBay[])[],
  { design, thickness, across, suffix, knees }: PartingOptions,
): readonly FramePlan[] =>
  runs.map((run, index) =>
    framePlan(run, {
      design,
      thickness,
      across,
      suffix: runs.length === 1 ? suffix : `${suffix}-s${index + 1}`,
      knees: index === 0 ? knees : null,
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

const partingsOf = (plans: readonly FramePlan[]): readonly Parting[] =>
  plans.slice(1).map((plan, index) => {
    const before = plans[index]!;
    return {
      before: before.bays.at(-1)!,
      after: plan.bays[0]!,
      overlap: before.ends.to - plan.ends.from,
    };
  });

// A frame from its plan: every board with its joints, and the order of assembly. Takes a plan that nothing was found against;
// gives the parts, and in words what found no room on them.

import type { ConsoleLayout } from "../../layout/console/console-layout.ts";
import type { Lettering } from "../../lettering/lettering.ts";
import { finishedPart, type Making } from "./finished-part.ts";
import { frameInside } from "./frame-inside.ts";
import type { AssemblyStep, ConsoleFrame, FramedUnit } from "./frame-part.ts";
import type { ConsolePlan } from "./planned-frame.ts";
import { type MovedHatch, type UnitBoards, unitBoards } from "./unit-boards.ts";
import { type CheekPair, cheekPairs } from "./unit-bolts.ts";
import { joiningSteps } from "./unit-joining.ts";
import type { UnitPlan } from "./unit-plan.ts";

export interface FrameOf {
  readonly layout: ConsoleLayout;
  readonly lettering: Lettering;
}

export interface FramedConsole {
  readonly frame: ConsoleFrame;
  readonly leftOut: readonly string[];
  readonly movedHatches: readonly MovedHatch[];
}

export const consoleFrame = (plan: ConsolePlan, of: FrameOf): FramedConsole => {
  const { units } = plan;
  const pairs = cheekPairs(units);
  const made = units.map((unit) => ({ unit, ...unitBoards(unit, { plan, pairs }) }));
  const making = makingOf(plan, of);
  const parts = made
    .flatMap(({ unit, pieces }) => pieces.map((piece) => ({ piece, unit: unit.name })))
    .map(({ piece, unit }, index) => finishedPart(piece, index + 1, { ...making, unit }));
  const frame: ConsoleFrame = {
    parts,
    joints: made.flatMap(({ joints }) => joints),
    units: units.map((unit) => framedUnit(unit, plan)),
    assembly: [
      ...made.flatMap(({ unit, steps }) => steps.map((step) => stepOf(unit, step, units.length))),
      ...joiningSteps(units, pairs),
    ],
  };
  return {
    frame,
    leftOut: [...made.flatMap(({ leftOut }) => leftOut), ...withoutBolts(pairs)],
    movedHatches: made.flatMap(({ movedHatches }) => movedHatches),
  };
};

const makingOf = (
  { sheet: { stock, thickness, machine } }: ConsolePlan,
  { layout, lettering }: FrameOf,
): Omit<Making, "unit"> => ({
  console: layout.name,
  title: layout.design.title,
  revision: layout.design.revision,
  stock,
  thickness,
  machine,
  lettering,
});

const framedUnit = (
  { name, profile, sections }: UnitPlan,
  { sheet: { design } }: ConsolePlan,
): FramedUnit => ({
  number: name.number,
  bays: sections.flatMap(({ bays }) => bays.map(({ id }) => id)),
  inside: frameInside(sections, { profile, span: design.written.span }),
  knees: sections[0]?.kneeRoom ?? null,
});

const stepOf = (
  { name }: UnitPlan,
  step: UnitBoards["steps"][number],
  count: number,
): AssemblyStep => ({
  ...step,
  unit: name.number,
  words: count === 1 ? step.words : `Unit ${name.number}: ${step.words}`,
});

const withoutBolts = (pairs: readonly CheekPair[]): readonly string[] =>
  pairs
    .filter(({ bolts }) => bolts.length === 0)
    .map(
      ({ left, right }) =>
        `bolts between cheek-right${left.section.suffix} and cheek-left${right.section.suffix}`,
    );

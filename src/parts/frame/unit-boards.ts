// The boards of one unit with everything that is cut in them, section by section, and the steps in which they go together.

import type { FrameSide } from "../../design/frame-design.ts";
import { decimal } from "../../geometry/number.ts";
import { assembled, type SectionStep } from "./assembly.ts";
import type { FramePlan } from "./frame-plan.ts";
import { proud } from "./hatch.ts";
import { hatchSides } from "./hatch-sides.ts";
import { withOpenings } from "./openings.ts";
import { type Piece, type Pieces, withHoles } from "./piece.ts";
import type { ConsolePlan } from "./planned-frame.ts";
import { sectionPieces } from "./section-pieces.ts";
import { type CheekPair, cheekBolts } from "./unit-bolts.ts";
import type { UnitPlan } from "./unit-plan.ts";

export interface UnitBoards extends Pieces {
  readonly steps: readonly SectionStep[];
  readonly leftOut: readonly string[];
  readonly movedHatches: readonly MovedHatch[];
}

/** A hatch that another unit would keep shut where it is written. */
export interface MovedHatch {
  readonly unit: UnitPlan;
  readonly written: FrameSide;
  readonly against: UnitPlan;
  /** Where it went instead; null where no other side has room. */
  readonly side: FrameSide | null;
}

export interface UnitScene {
  readonly plan: ConsolePlan;
  readonly pairs: readonly CheekPair[];
}

export const unitBoards = (unit: UnitPlan, scene: UnitScene): UnitBoards => {
  const { joints } = scene.plan.sheet.design;
  const sections = unit.sections.map((section, index) =>
    sectionOf(section, unit, { ...scene, index }),
  );
  const ordered = sections.map(({ pieces }) =>
    assembled(pieces, { joints, profile: unit.profile }),
  );
  return {
    pieces: ordered.flatMap(({ pieces }) => pieces),
    joints: sections.flatMap((section) => section.joints),
    steps: [...ordered.flatMap(({ steps }) => steps), ...bolting(unit.sections)],
    leftOut: sections.flatMap(({ leftOut }) => leftOut),
    movedHatches: sections.flatMap(({ movedHatches }) => movedHatches),
  };
};

type SectionBoards = Omit<UnitBoards, "steps">;

const sectionOf = (
  section: FramePlan,
  unit: UnitPlan,
  { plan, pairs, index }: UnitScene & { readonly index: number },
): SectionBoards => {
  const { suffix, thickness } = section;
  const { profile, sections } = unit;
  const made = sectionPieces(section, { profile, section: index + 1, suffix, relief: plan.relief });
  const bolted = made.pieces.map((piece) => withBolts(piece, pairs, { unit, section }));
  const hatch = hatchSides({ unit, section }, plan.units);
  const opened = withOpenings(section, bolted, {
    suffix,
    isFirst: index === 0,
    isLast: index === sections.length - 1,
    sides: hatch?.sides ?? [],
  });
  const against = hatch?.against ?? null;
  return {
    pieces: opened.pieces.map((piece) => proud(piece, thickness)),
    joints: made.joints,
    leftOut: opened.leftOut,
    movedHatches:
      hatch === null || against === null
        ? []
        : [{ unit, written: hatch.written, against, side: opened.side }],
  };
};

const withBolts = (
  piece: Piece,
  pairs: readonly CheekPair[],
  at: { readonly unit: UnitPlan; readonly section: FramePlan },
): Piece => {
  const side = (["left", "right"] as const).find(
    (each) => piece.id === `cheek-${each}${at.section.suffix}`,
  );
  const holes = side === undefined ? [] : cheekBolts(pairs, at, side);
  return holes.length === 0 ? piece : withHoles(piece, holes);
};

const bolting = (plans: readonly FramePlan[]): readonly SectionStep[] =>
  plans.slice(1).map((plan, index) => {
    const before = plans[index]!;
    const spacer = plan.ends.from - before.ends.to + 2 * plan.design.beyond;
    return {
      adds: [],
      enters: null,
      words: `Stand section ${index + 2} in line with section ${index + 1}; bolt their end boards together with four M8 and spacers ${decimal(spacer, 1)} mm long.`,
    };
  });

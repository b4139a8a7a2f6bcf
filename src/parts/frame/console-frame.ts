// A frame from its plan: every board with its joints, and the order of assembly. Takes a plan that nothing was found against;
// gives the parts, and in words what found no room on them.

import { decimal } from "../../geometry/number.ts";
import type { ConsoleLayout } from "../../layout/console/console-layout.ts";
import type { Lettering } from "../../lettering/lettering.ts";
import { assembled } from "./assembly.ts";
import { finishedPart, type Making } from "./finished-part.ts";
import { frameInside } from "./frame-inside.ts";
import type { ConsoleFrame } from "./frame-part.ts";
import type { FramePlan } from "./frame-plan.ts";
import { proud, withOpenings } from "./openings.ts";
import type { Piece, Pieces } from "./piece.ts";
import type { ConsolePlan } from "./planned-frame.ts";
import { sectionPieces } from "./section-pieces.ts";

export interface FrameOf {
  readonly layout: ConsoleLayout;
  readonly lettering: Lettering;
}

export interface FramedConsole {
  readonly frame: ConsoleFrame;
  readonly leftOut: readonly string[];
}

export const consoleFrame = (plan: ConsolePlan, of: FrameOf): FramedConsole => {
  const { sheet, profile, sections: plans } = plan;
  const { design } = sheet;
  const sections = plans.map((section, index) => sectionOf(section, plan, index));
  const ordered = sections.map(({ pieces }) =>
    assembled(pieces, { joints: design.joints, profile }),
  );
  const making = makingOf(plan, of);
  const parts = ordered
    .flatMap(({ pieces }) => pieces)
    .map((piece, index) => finishedPart(piece, index + 1, making));
  const frame: ConsoleFrame = {
    parts,
    joints: sections.flatMap(({ joints }) => joints),
    inside: frameInside(plans, { profile, span: design.written.span }),
    assembly: [...ordered.flatMap(({ steps }) => steps), ...bolting(plans)],
  };
  return { frame, leftOut: sections.flatMap(({ leftOut }) => leftOut) };
};

const makingOf = (
  { sheet: { stock, thickness, machine } }: ConsolePlan,
  { layout, lettering }: FrameOf,
): Making => ({
  console: layout.name,
  title: layout.design.title,
  revision: layout.design.revision,
  stock,
  thickness,
  machine,
  lettering,
});

interface SectionPieces extends Pieces {
  readonly leftOut: readonly string[];
}

const sectionOf = (
  section: FramePlan,
  { profile, relief, sections }: ConsolePlan,
  index: number,
): SectionPieces => {
  const { suffix } = section;
  const made = sectionPieces(section, { profile, section: index + 1, suffix, relief });
  const isFirst = index === 0;
  const isLast = index === sections.length - 1;
  const opened = withOpenings(section, made.pieces, { suffix, isFirst, isLast });
  const pieces = opened.pieces.map((piece: Piece) => proud(piece, section.thickness));
  return { pieces, joints: made.joints, leftOut: opened.leftOut };
};

const bolting = (plans: readonly FramePlan[]): ConsoleFrame["assembly"] =>
  plans.slice(1).map((plan, index) => {
    const before = plans[index]!;
    const spacer = plan.ends.from - before.ends.to + 2 * plan.design.beyond;
    return {
      adds: [],
      enters: null,
      words: `Stand section ${index + 2} in line with section ${index + 1}; bolt their end boards together with four M8 and spacers ${decimal(spacer, 1)} mm long.`,
    };
  });

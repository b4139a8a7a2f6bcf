// Holes of the rail bars that the panels' own fasteners don't pass.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import type { FrameBay } from "../../parts/frame/frame-bay.ts";
import { allSections } from "../../parts/frame/planned-frame.ts";
import { railHoleSize } from "../../parts/frame/rail-holes.ts";
import { isUnder } from "../limits.ts";
import { atLeast, measureMm, millimetres } from "../words.ts";
import { fastenerThrough } from "./fastener-through.ts";
import { frameRemedy } from "./frame-remedy.ts";
import type { FrameRule, PlanFacts } from "./frame-rule.ts";
import { worstOf } from "./worst-of.ts";

const entry: CodeEntry = {
  code: "checks/frame-rail-fastener",
  severity: "fault",
  title: "holes of the rails that the panels' fasteners don't pass",
  why: "Screws and studs of the panels go through the wooden rails to what holds them behind. Holes as wide as the panels' own let them pass; a number of your own that is less than the fastener itself does not, and every hole would be drilled again.",
  example: "frame: { type: side-console, sheet: birch-ply-12, rails: { hole: 5 mm } }",
};

export const railFastener: FrameRule<PlanFacts> = {
  entry,
  judge: (facts) =>
    worstOf(
      allSections(facts.plan).flatMap(({ design, bays }) => {
        // Left out, it is as wide as the panels' own.
        const { hole } = design.rails;
        return hole === null ? [] : bays.flatMap((bay) => tooNarrow(bay, design, facts));
      }),
    ),
};

const tooNarrow = (
  bay: FrameBay,
  design: Parameters<typeof frameRemedy>[1],
  facts: PlanFacts,
): readonly Finding[] => {
  const hole = railHoleSize(design, bay.railHoles);
  const fastener = fastenerThrough(bay.layout.mount, facts.catalogue);
  if (bay.railHoles.reach === null || fastener === null || !isUnder(hole, fastener.diameter))
    return [];
  const { id, diameter, source } = fastener;
  const { value, words } = passing(bay.railHoles.size, diameter);
  return [
    finding(entry, {
      message: `The rails of ${bay.id}: holes of ${millimetres(hole, diameter)} don't let ${id} pass, which is ${millimetres(diameter, hole)} thick, ${millimetres(diameter - hole, 0)} more. ${words}`,
      span: spanOf(design.written, "rails"),
      subjects: [bay.id],
      measured: measureMm(hole),
      limit: measureMm(diameter),
      source,
      remedies: [frameRemedy(facts, design, { group: "rails", key: "hole", value })],
    }),
  ];
};

/** The panels' own hole where the fastener goes through that; a catalogue may give a mount a fastener that doesn't. */
const passing = (
  own: number,
  diameter: number,
): { readonly value: string; readonly words: string } => {
  if (!isUnder(own, diameter)) {
    const value = `${decimal(own, 3)} mm`;
    return { value, words: `hole: ${value}, as wide as the panels' own, does.` };
  }
  const value = atLeast(diameter);
  return {
    value,
    words: `hole: ${value} does; the panels' own, ${millimetres(own, diameter)}, let it pass no more than these.`,
  };
};

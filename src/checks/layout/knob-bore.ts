// A knob that does not go with its shaft.

import type { Knob } from "../../catalogue/hardware.ts";
import { limitOfFigures } from "../../catalogue/limit-of-figures.ts";
import type { Shaft } from "../../catalogue/part.ts";
import { spanOf } from "../../design/written.ts";
import {
  type CodeEntry,
  type Finding,
  finding,
  type LimitSource,
} from "../../diagnostics/finding.ts";
import type { PlacedComponent } from "../../layout/panel-layout.ts";
import { type HouseRule, houseLimit } from "../house-rule.ts";
import { isOver, isUnder } from "../limits.ts";
import { onePerEntry } from "../one-finding.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/knob-bore",
  severity: "fault",
  title: "a knob whose bore does not go with the shaft",
  why: "A 6 mm knob stays off a 6.35 mm shaft, and a 6.35 mm knob wobbles on a 6 mm one.",
  example:
    "components:\n  volume: { part: pot-16, knob: knob-24-quarter, at: { x: centre, y: centre } }",
};

/** A bore wider than its shaft by more than this wobbles. */
const PLAY: HouseRule = {
  key: "knob-play",
  usual: 0.15,
  name: "a bore at most 0.15 mm wider than its shaft (common practice)",
};

export const knobBore: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    onePerEntry(facts.layout.components, (component) => {
      const { shaft } = component.part;
      const knob = component.fitted.find((hardware) => hardware.kind === "knob");
      if (shaft === null || knob?.kind !== "knob" || goesOn(knob, shaft, facts)) return null;
      return misfit(component, { knob, shaft, facts });
    }),
};

const goesOn = (knob: Knob, shaft: Shaft, facts: PanelFacts): boolean =>
  !isUnder(knob.bore, shaft.diameter) &&
  !isOver(knob.bore, shaft.diameter + houseLimit(facts, PLAY).limit);

const misfit = (
  component: PlacedComponent,
  of: { readonly knob: Knob; readonly shaft: Shaft; readonly facts: PanelFacts },
): Finding => {
  const { knob, shaft, facts } = of;
  const other = nearestThatFits(knob, shaft, facts);
  const span = spanOf(component.written, "knob");
  const { limit, wrong, source } = boundOf(component, { knob, shaft, facts });
  const advice = other === null ? "" : ` knob: ${other.id} fits.`;
  return finding(entry, {
    message: `${component.id}: ${knob.id} has a bore of ${millimetres(knob.bore, limit)} and the shaft of ${component.part.id} is ${millimetres(shaft.diameter, knob.bore)}: ${wrong}, ${millimetres(Math.abs(knob.bore - limit), 0)} too much.${advice}`,
    span,
    subjects: [component.id],
    measured: measureMm(knob.bore),
    limit: measureMm(limit),
    source,
    remedies:
      other === null || component.written.keys["knob"] === undefined
        ? []
        : [
            {
              title: `knob: ${other.id} (${component.entry})`,
              edits: [facts.edit(span, other.id)],
            },
          ],
  });
};

interface Bound {
  readonly limit: number;
  readonly wrong: string;
  readonly source: LimitSource;
}

/** A shaft's size is the part's own; how loose a knob may be on it is the house's. */
const boundOf = (
  { part }: PlacedComponent,
  of: { readonly knob: Knob; readonly shaft: Shaft; readonly facts: PanelFacts },
): Bound => {
  const { knob, shaft, facts } = of;
  if (knob.bore < shaft.diameter)
    return {
      limit: shaft.diameter,
      wrong: "it is too thick for the bore",
      source: limitOfFigures(part.figures),
    };
  const play = houseLimit(facts, PLAY);
  return {
    limit: shaft.diameter + play.limit,
    wrong: `a bore of up to ${millimetres(shaft.diameter + play.limit, knob.bore)} sits firmly on it`,
    source: play.source,
  };
};

/** Of the knobs that go on the shaft, the one nearest in size; among equals the first by name. */
const nearestThatFits = (knob: Knob, shaft: Shaft, facts: PanelFacts): Knob | null =>
  [...facts.catalogue.hardware.values()]
    .filter(
      (hardware): hardware is Knob => hardware.kind === "knob" && goesOn(hardware, shaft, facts),
    )
    .reduce<Knob | null>(
      (best, one) =>
        best === null ||
        Math.abs(one.diameter - knob.diameter) < Math.abs(best.diameter - knob.diameter)
          ? one
          : best,
      null,
    );

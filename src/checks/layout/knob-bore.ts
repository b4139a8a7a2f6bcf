// A knob that does not go with its shaft.

import type { Knob } from "../../catalogue/hardware.ts";
import type { Shaft } from "../../catalogue/part.ts";
import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { PlacedComponent } from "../../layout/panel-layout.ts";
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

/** A bore this much wider than its shaft wobbles: common practice. */
const LOOSE = 0.15;

export const knobBore: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    onePerEntry(facts.layout.components, (component) => {
      const { shaft } = component.part;
      const knob = component.fitted.find((hardware) => hardware.kind === "knob");
      if (shaft === null || knob?.kind !== "knob" || goesOn(knob, shaft)) return null;
      return misfit(component, { knob, shaft, facts });
    }),
};

const goesOn = (knob: Knob, shaft: Shaft): boolean =>
  !isUnder(knob.bore, shaft.diameter) && !isOver(knob.bore, shaft.diameter + LOOSE);

const misfit = (
  component: PlacedComponent,
  of: { readonly knob: Knob; readonly shaft: Shaft; readonly facts: PanelFacts },
): Finding => {
  const { knob, shaft, facts } = of;
  const other = nearestThatFits(knob, shaft, facts);
  const span = spanOf(component.written, "knob");
  const isTight = knob.bore < shaft.diameter;
  const advice = other === null ? "" : ` knob: ${other.id} fits.`;
  return finding(entry, {
    message: `${component.id}: ${knob.id} has a bore of ${millimetres(knob.bore)} and the shaft of ${component.part.id} is ${millimetres(shaft.diameter)}, ${millimetres(Math.abs(knob.bore - shaft.diameter))} too ${isTight ? "thick for it" : "thin for it"}.${advice}`,
    span,
    subjects: [component.id],
    measured: measureMm(knob.bore),
    limit: measureMm(shaft.diameter),
    source: { kind: "datasheet", name: component.part.figures.source },
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

/** Of the knobs that go on the shaft, the one nearest in size; among equals the first by name. */
const nearestThatFits = (knob: Knob, shaft: Shaft, { catalogue }: PanelFacts): Knob | null =>
  [...catalogue.hardware.values()]
    .filter((hardware): hardware is Knob => hardware.kind === "knob" && goesOn(hardware, shaft))
    .reduce<Knob | null>(
      (best, one) =>
        best === null ||
        Math.abs(one.diameter - knob.diameter) < Math.abs(best.diameter - knob.diameter)
          ? one
          : best,
      null,
    );

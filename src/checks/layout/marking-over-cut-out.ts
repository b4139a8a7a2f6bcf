// A marking that an opening cuts.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { CutOut, PanelLayout, PlacedMarking } from "../../layout/panel-layout.ts";
import type { Rule } from "../rule.ts";
import { measureMm } from "../words.ts";
import { clearingOf } from "./marking-clear.ts";
import { capitalised, isMarkedOn, isShown, markingName } from "./marking-shapes.ts";

const entry: CodeEntry = {
  code: "checks/marking-over-cut-out",
  severity: "fault",
  title: "a marking that an opening cuts",
  why: "Part of the legend or scale falls out with the opening. Put it on another side, or farther away.",
  example:
    "markings:\n  - window: { at: { x: 60 mm, y: 30 mm }, width: 30 mm, height: 10 mm, layers: [face] }\n  - legend: { text: PUMP, at: { x: 60 mm, y: 34 mm } }",
};

export const markingOverCutOut: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const openings = openingsByLayer(facts.layout);
    return facts.layout.markings.filter(isShown).flatMap((marking) => {
      const over = openingOver(marking, openings.get(marking.layer) ?? []);
      if (over === null) return [];
      const clearing = clearingOf(marking, over.box, facts);
      return [
        finding(entry, {
          message: `${capitalised(markingName(marking))} runs into the opening of ${over.cutOut.owner} in ${over.cutOut.layer}: ${clearing.advice}.`,
          span: marking.span,
          related: [{ what: over.cutOut.owner, span: over.cutOut.span }],
          subjects: [marking.owner, over.cutOut.owner],
          measured: measureMm(clearing.measured),
          limit: measureMm(clearing.limit),
          source: { kind: "geometry", name: "the material that a marking needs under it" },
          remedies: clearing.remedies,
        }),
      ];
    });
  },
};

interface Opening {
  readonly cutOut: CutOut;
  readonly box: ReturnType<typeof contourExtent>;
}

const openingsByLayer = (layout: PanelLayout): ReadonlyMap<string, readonly Opening[]> =>
  new Map(
    layout.layers.map(({ id, cutOuts }) => [
      id,
      cutOuts.map((cutOut) => ({ cutOut, box: contourExtent(cutOut.contour) })),
    ]),
  );

const openingOver = (marking: PlacedMarking, openings: readonly Opening[]): Opening | null =>
  openings.find(({ cutOut, box }) => isMarkedOn(marking, cutOut.contour, box)) ?? null;

// A hole round a nut that is wider than the nut, with a lamp that is seen through the gap.

import { entryName } from "../../design/entry-name.ts";
import { type CodeEntry, type Finding, finding, type Remedy } from "../../diagnostics/finding.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { PlacedComponent } from "../../layout/panel-layout.ts";
import { keyRemedy } from "../key-remedy.ts";
import { onePerOwner } from "../one-finding.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { lampWords, owned, sightsIn, spanOfOwner } from "./seen-lamps.ts";

const entry: CodeEntry = {
  code: "checks/nut-hole",
  severity: "query",
  title: "a lamp that is seen past a nut",
  why: "The sheet in front of the clamped one has a hole for the nut and its spanner. What the nut does not cover lets a lamp dazzle where the sheet behind lets light through. A light-tight washer closes the gap; so does a place farther from the lamp or from the window in the backing.",
  example: `stack:
  - { layer: face, sheet: opal-acrylic-3, finish: paint-and-engrave }
  - { layer: backing, sheet: aluminium-2 }
  - { layer: spacer, print: black-petg, depth: 14 mm, lighting: { strip: strip-60-5v-addressable, circuit: night } }
components:
  a: { part: toggle-6, turn: 90 deg, at: { x: 60 mm, y: 30 mm }, legend: PUMP }
markings:
  - window: { at: { x: 60 mm, y: 40.5 mm }, width: 30 mm, height: 11 mm, corner: 1 mm, layers: [backing] }`,
};

export const nutHole: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    onePerOwner(owned(sightsIn(facts)), ({ sight }) => {
      const component = facts.layout.components.find(({ id }) => id === sight.owner);
      const hole = component === undefined ? null : holeRound(component, facts);
      if (sight.through !== "nut" || component === undefined || hole === null) return null;
      const cover = coverOf(component);
      return finding(entry, {
        message: `${component.id}: ${lampWords(sight)} is seen past the nut: its hole in ${hole.layer} is ${millimetres(hole.width, cover)} and nut and washers cover ${millimetres(cover, hole.width)}. washer: light-tight closes it.`,
        span: spanOfOwner(component.id, facts),
        subjects: [component.id],
        measured: measureMm(hole.width),
        limit: measureMm(cover),
        source: { kind: "geometry", name: "what nut and washers cover" },
        remedies: washerRemedy(component, facts),
      });
    }),
};

const holeRound = (
  { id }: PlacedComponent,
  { layout }: PanelFacts,
): { readonly layer: string; readonly width: number } | null => {
  const cutOut = layout.layers[0]?.cutOuts.find(
    ({ owner, purpose }) => owner === id && purpose === "front-clearance",
  );
  if (cutOut === undefined) return null;
  const box = contourExtent(cutOut.contour);
  return { layer: cutOut.layer, width: Math.min(box.maxX - box.minX, box.maxY - box.minY) };
};

const coverOf = ({ bodies }: PlacedComponent): number =>
  bodies
    .filter(({ role }) => role === "nut" || role === "washer")
    .map(({ footprint }) => contourExtent(footprint))
    .reduce((most, box) => Math.max(most, box.maxX - box.minX), 0);

/** Nothing is offered where the washer is asked for already. */
const washerRemedy = (component: PlacedComponent, facts: PanelFacts): Finding["remedies"] => {
  if (component.common.lightTight) return [];
  const remedy: Remedy = keyRemedy(facts, {
    file: component.span.file,
    path: ["components", entryName(component.id)],
    key: "washer",
    value: "light-tight",
  });
  return [remedy];
};

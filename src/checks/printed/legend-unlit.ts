// A legend on a lit face that no lamp reaches: one finding for all that have one cause.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { type LegendLight, legendLightOf } from "../../light/legend-light.ts";
import { lightScene } from "../../light/light-scene.ts";
import type { Rule } from "../rule.ts";

const entry: CodeEntry = {
  code: "checks/legend-unlit",
  severity: "query",
  title: "a legend that no lamp lights",
  why: "Behind a legend there must be a straight way from a lamp: a window in an opaque backing, no wall or boss, and a lamp near enough. A legend without one stays dark when the panel is lit. Cut a window behind it (window, with layers: [backing]), take a backing that lets light through, or move it.",
  example: `stack:
  - { layer: face, sheet: opal-acrylic-3, finish: paint-and-engrave }
  - { layer: backing, sheet: aluminium-2 }
  - { layer: spacer, print: black-petg, depth: 14 mm, lighting: { strip: strip-60-5v-addressable, circuit: night } }
components:
  a: { part: toggle-6, at: { x: 60 mm, y: 40 mm }, legend: PUMP }`,
};

export const legendUnlit: Rule = {
  entry,
  move: null,
  judge: ({ layout, printedParts }) => {
    const dark = legendLightOf(lightScene(layout, printedParts)).filter(({ lamps }) => lamps === 0);
    const causes = new Map<string, LegendLight[]>();
    for (const one of dark) {
      const key = one.behind ?? one.marking.id;
      causes.set(key, [...(causes.get(key) ?? []), one]);
    }
    return [...causes.values()].flatMap(unlit);
  },
};

const unlit = ([first, ...others]: readonly LegendLight[]): readonly Finding[] => {
  if (first === undefined) return [];
  const { marking, behind } = first;
  const name = marking.text === null ? marking.id : `"${marking.text}"`;
  const why =
    behind === null
      ? "no lamp has a straight way to it"
      : `${behind} is opaque and has no window behind it`;
  return [
    finding(entry, {
      message: `${marking.owner}: the legend ${name} stays dark: ${why}.`,
      span: marking.span,
      subjects: [marking.owner],
      source: { kind: "geometry", name: "straight lines from the lamps to the legend" },
      suppressed: others.length,
    }),
  ];
};

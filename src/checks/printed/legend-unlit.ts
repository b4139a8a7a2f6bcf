// A legend on a lit face that no lamp reaches: one finding for all that have one cause. Where something is in the way of the
// window that would open behind it, that is named.

import { type CodeEntry, type Finding, finding, type Remedy } from "../../diagnostics/finding.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import type { ClosedWindow } from "../../layout/panel-layout.ts";
import { type LegendLight, legendLightOf } from "../../light/legend-light.ts";
import { lightScene } from "../../light/light-scene.ts";
import { keyRemedy } from "../key-remedy.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/legend-unlit",
  severity: "query",
  title: "a legend that no lamp lights",
  why: "Behind a legend there must be a straight way from a lamp: a window in an opaque backing, no wall or boss, and a lamp near enough. A legend without one stays dark when the panel is lit. An opaque sheet opens behind each legend by itself (windows: legends) unless a hole, a nut, a screw or the rail is in the way: move one of the two, or let the window go less far round the letters (window-margin).",
  example: `stack:
  - { layer: face, sheet: opal-acrylic-3, finish: paint-and-engrave }
  - { layer: backing, sheet: aluminium-2, windows: none }
  - { layer: spacer, print: black-petg, depth: 14 mm, lighting: { strip: strip-60-5v-addressable, circuit: night } }
components:
  a: { part: toggle-6, at: { x: 60 mm, y: 40 mm }, legend: PUMP }`,
};

export const legendUnlit: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const { layout, printedParts } = facts;
    const lights = legendLightOf(lightScene(layout, printedParts));
    const lit = new Set(lights.filter(({ lamps }) => lamps > 0).map(({ marking }) => marking));
    // A scale is read by its pointer: it is dark when no figure of it is lit.
    const dark = lights.filter(({ marking }) => !lit.has(marking));
    const causes = new Map<string, Unlit[]>();
    for (const light of dark) {
      const closed =
        layout.closedWindows.find(
          ({ word, layer }) => word === light.word && layer === light.behind,
        ) ?? null;
      const key = causeOf(light, closed);
      causes.set(key, [...(causes.get(key) ?? []), { light, closed }]);
    }
    return [...causes.values()].flatMap((group) => unlit(group, facts));
  },
};

interface Unlit {
  readonly light: LegendLight;
  readonly closed: ClosedWindow | null;
}

const causeOf = ({ behind, marking }: LegendLight, closed: ClosedWindow | null): string => {
  if (closed === null) return behind ?? marking.id;
  const { owner, what } = closed.obstacle;
  return `${closed.layer} ${owner} ${what}`;
};

const unlit = (group: readonly Unlit[], facts: PanelFacts): readonly Finding[] => {
  const [first, ...others] = group;
  if (first === undefined) return [];
  const { marking, behind } = first.light;
  const name = marking.text === null ? marking.id : `"${marking.text}"`;
  const common = {
    span: marking.span,
    subjects: [marking.owner],
    suppressed: others.length,
  };
  const dark = `${marking.owner}: the legend ${name} stays dark`;
  const source = { kind: "geometry", name: "straight lines from the lamps to the legend" } as const;
  if (first.closed !== null)
    return [
      finding(entry, { ...common, source, ...inTheWay(first.closed, { group, dark, facts }) }),
    ];
  const why =
    behind === null
      ? "no lamp has a straight way to it"
      : `${behind} is opaque and has no window behind it`;
  const remedies = behind === null ? [] : openRemedy(behind, facts);
  return [finding(entry, { ...common, source, message: `${dark}: ${why}.`, remedies })];
};

const inTheWay = (
  { layer, obstacle }: ClosedWindow,
  {
    group,
    dark,
    facts,
  }: { readonly group: readonly Unlit[]; readonly dark: string; readonly facts: PanelFacts },
): Pick<Finding, "message"> & Partial<Pick<Finding, "measured" | "limit" | "remedies">> => {
  const { owner, what, gap, wanted, margin } = obstacle;
  const thing = owner === layer ? `its ${what}` : `the ${what} of ${owner}`;
  const cause = `${dark}: ${thing} is in the way of a window in ${layer}`;
  const works = marginForAll(group);
  if (works === null)
    return {
      message: `${cause}: even with nothing round the letters ${millimetres(gap, wanted)} would be left between the two, ${millimetres(wanted, gap)} is wanted. Move one of them.`,
      measured: measureMm(gap),
      limit: measureMm(wanted),
    };
  const value = millimetres(works);
  return {
    message: `${cause}, which goes ${millimetres(margin, works)} round the letters; past it ${value} goes. window-margin: ${value} (${layer}) works.`,
    measured: measureMm(works),
    limit: measureMm(margin),
    remedies: layerRemedy(layer, { key: "window-margin", value }, facts),
  };
};

/** null where some legend of the group gets none whatever its margin. */
const marginForAll = (group: readonly Unlit[]): Mm | null => {
  const all = group.map(({ closed }) => closed?.obstacle.works ?? null);
  return all.reduce((least, one) =>
    least === null || one === null ? null : mm(Math.min(one, least)),
  );
};

/** Only where the sheet was told not to open. */
const openRemedy = (layer: string, facts: PanelFacts): readonly Remedy[] => {
  const design = facts.layout.design.stack.find(({ id }) => id === layer);
  return design?.kind === "sheet" && design.windows === "none"
    ? layerRemedy(layer, { key: "windows", value: "legends" }, facts)
    : [];
};

const layerRemedy = (
  layer: string,
  wanted: { readonly key: string; readonly value: string },
  facts: PanelFacts,
): readonly Remedy[] => {
  const { design } = facts.layout;
  const index = design.stack.findIndex(({ id }) => id === layer);
  const written = design.stack[index]?.written.span.file;
  if (written === undefined) return [];
  const made = keyRemedy(facts, { file: written, path: ["stack", `${index}`], ...wanted });
  return [{ ...made, title: `${made.title} (${layer})` }];
};

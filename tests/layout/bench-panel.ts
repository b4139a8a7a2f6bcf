// Panels for tests, written from few words: a workshop whose sheets, paint and kerf are measured, a panel on a rail, and
// the whole way from text to project.

import type { Finding } from "../../src/diagnostics/finding.ts";
import type { CutOut, LayerLayout, PanelLayout } from "../../src/layout/panel-layout.ts";
import { compile, type PanelProject, type Project } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

export const WORKSHOP = `consolewright: 1
kind: workshop
name: bench
stock:
  opal: { material: acrylic-cast, colour: opal, light: translucent, nominal: 3 mm, measured: 2.9 mm, dated: 2026-01-31 }
  raw-opal: { material: acrylic-cast, colour: opal, light: translucent, nominal: 3 mm }
  frosted: { material: acrylic-cast, colour: frosted, light: translucent, nominal: 3 mm, measured: 3 mm, dated: 2026-01-31 }
  black: { material: acrylic-cast, colour: black, light: opaque, nominal: 3 mm, measured: 3.1 mm, dated: 2026-01-31 }
  metal: { material: aluminium, colour: grey, light: opaque, nominal: 2 mm, measured: 2 mm, dated: 2026-01-31 }
  two-colour: { material: laminate, colour: black on white, light: opaque, nominal: 1.6 mm, measured: 1.6 mm, dated: 2026-01-31, cap: 0.2 mm }
finishes:
  painted: { coats: [white, black], thickness: 0.08 mm, dated: 2026-01-31, order: cut-paint-engrave }
  painted-sheet: { coats: [white, black], thickness: 0.08 mm, dated: 2026-01-31, order: paint-then-cut }
  sprayed: { coats: [white, black], order: cut-paint-engrave }
  filled: { coats: [white], order: engrave-fill }
machines:
  laser:
    type: co2-laser
    bed: [700, 500]
    spot: 0.15 mm
    kerf: in-file
    measured:
      - { stock: opal, kerf: [0.2, 0.2], dated: 2026-01-31 }
      - { stock: black, kerf: [0.2, 0.2], dated: 2026-01-31 }
      - { stock: frosted, kerf: [0.2, 0.2], dated: 2026-01-31 }
      - { stock: two-colour, kerf: [0.16, 0.16], dated: 2026-01-31 }
  mill: { type: router, bed: [700, 500], tools: [{ diameter: 1 mm }] }
use: { default: laser, metal: mill }
`;

const HEAD = {
  mount: "console-rail",
  height: "8 modules",
  stack: [
    "{ layer: face, sheet: opal, finish: painted }",
    "{ layer: metal, sheet: metal }",
  ] as readonly string[],
  fixings: "{ screws: m3, dowels: 3 mm }",
  components: [] as readonly string[],
  markings: [] as readonly string[],
  more: [] as readonly string[],
};

export type PanelWords = Partial<typeof HEAD>;

/** The text of a panel; each component and marking is a line as it stands in a design. */
export const panelText = (words: PanelWords = {}): string => {
  const { mount, height, stack, fixings, components, markings, more } = { ...HEAD, ...words };
  return [
    "consolewright: 1",
    "kind: panel",
    "name: bench",
    "title: Bench",
    "revision: A",
    "workshop: workshop.yaml",
    `mount: ${mount}`,
    `height: ${height}`,
    "viewing-distance: 600 mm",
    ...more,
    "stack:",
    ...stack.map((layer) => `  - ${layer}`),
    ...(fixings === "" ? [] : [`fixings: ${fixings}`]),
    ...(components.length === 0 ? [] : ["components:", ...components.map((line) => `  ${line}`)]),
    ...(markings.length === 0 ? [] : ["markings:", ...markings.map((line) => `  - ${line}`)]),
    "",
  ].join("\n");
};

export const projectOf = (text: string, workshop = WORKSHOP): Project =>
  compile(
    {
      entry: "panel.yaml",
      files: new Map([
        ["panel.yaml", text],
        ["workshop.yaml", workshop],
      ]),
    },
    testLibrary(),
  );

export const panelOf = (words: PanelWords | string, workshop = WORKSHOP): PanelProject => {
  const [panel] = projectOf(typeof words === "string" ? words : panelText(words), workshop).panels;
  if (panel === undefined) throw new Error("the test's panel could not be read");
  return panel;
};

export const layoutOf = (words: PanelWords | string, workshop = WORKSHOP): PanelLayout => {
  const { layout, findings } = panelOf(words, workshop);
  if (layout === null) throw new Error(messages(findings).join("\n"));
  return layout;
};

const messages = (findings: readonly Finding[]): readonly string[] =>
  findings.map(({ severity, code, message }) => `${severity} ${code} ${message}`);

export const codes = (findings: readonly Finding[]): readonly string[] =>
  findings.map(({ code }) => code);

/** Findings that stop or question a panel, without those that only ask for measuring. */
export const troubles = (findings: readonly Finding[]): readonly string[] =>
  messages(
    findings.filter(({ severity, code }) => severity !== "note" && !code.includes("unmeasured")),
  );

export const layerNamed = (layout: PanelLayout, id: string): LayerLayout => {
  const layer = layout.layers.find((one) => one.id === id);
  if (layer === undefined) throw new Error(`no layer ${id}`);
  return layer;
};

export const holeNamed = (layout: PanelLayout, id: string): CutOut => {
  const hole = layout.layers.flatMap(({ cutOuts }) => cutOuts).find((one) => one.id === id);
  if (hole === undefined) throw new Error(`no cut-out ${id}`);
  return hole;
};

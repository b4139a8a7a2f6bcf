// A panel for the tests of papers: two sheets, screws and dowels, three toggles, a pot with a knob, a later lamp, spares.

import { processColours } from "../../src/export/process-colours.ts";
import { packOfPanel } from "../../src/pack/pack-of-panel.ts";
import type { PanelForPack } from "../../src/pack/panel-pack.ts";
import { compile, type PanelPack, type Project } from "../../src/project.ts";
import { testLibrary } from "../cli/test-library.ts";

const PANEL = `consolewright: 1
kind: panel
name: pumps
title: Fire pumps
revision: C
dated: 2026-02-03
workshop: workshop.yaml
mount: console-rail
height: 16 modules
stack:
  - { layer: face, sheet: opal-acrylic-3, finish: paint-and-engrave }
  - { layer: backing, sheet: aluminium-2 }
fixings: { screws: m3, dowels: 3 mm }
components:
  pump: { row: { part: toggle-12, count: 3, pitch: 30 mm, left: 40 mm, top: 40 mm }, legends: [ONE, TWO, THREE] }
  speed: { part: pot-16, knob: knob-22-skirt, at: { left: 50 mm, top: 90 mm }, legend: SPEED }
  run: { part: led-5-bezel, at: { right-of: speed, centres: 40 mm }, legend: RUN, fitted: later }
spare: { part: toggle-12, count: 2 }
`;

const WORKSHOP = `consolewright: 1
kind: workshop
name: shed
stock:
  opal-acrylic-3: { material: acrylic-cast, colour: opal, light: translucent, nominal: 3 mm }
  aluminium-2: { material: aluminium, colour: aluminium, nominal: 2 mm, measured: 1.98 mm, dated: 2026-01-31 }
finishes:
  paint-and-engrave: { coats: [white, black], thickness: 0.08 mm, dated: 2026-01-31, order: cut-paint-engrave }
machines:
  laser: { type: co2-laser, bed: [600, 400], spot: 0.15 mm, kerf: in-file, measured: [{ stock: opal-acrylic-3, kerf: 0.2, dated: 2026-01-31 }] }
  bench: { type: drill-bench, bed: [600, 400], drills: [2.8, 3, 3.2, 3.4, 5, 6.6, 7.2, 12.2] }
use: { face: laser, backing: bench }
`;

export const pumpProject = async (workshop = WORKSHOP): Promise<Project> =>
  compile(
    {
      entry: "panel.yaml",
      files: new Map([
        ["panel.yaml", PANEL],
        ["workshop.yaml", workshop],
      ]),
    },
    await testLibrary(),
  );

export const pumpWorkshop = WORKSHOP;

/** What the papers are made from. */
export const pumpPanel = async (workshop = WORKSHOP): Promise<PanelForPack> => {
  const project = await pumpProject(workshop);
  const [panel] = project.panels;
  if (panel?.layout == null) throw new Error("the pump panel can be laid out");
  const { catalogue, lettering, files: texts } = project;
  const { design, layout, sheetParts, findings } = panel;
  const colours = processColours(panel.workshop?.processColours ?? {}).colours;
  return {
    design,
    layout,
    printedParts: [],
    fitted: { sheets: [], films: [] },
    rail: null,
    sheetParts,
    findings,
    catalogue,
    lettering,
    colours,
    paper: "A4",
    texts,
  };
};

let whole: PanelPack | null = null;

/** Everything that there is, card included; made once. */
export const wholePumpPack = async (): Promise<PanelPack> => {
  whole ??= packOfPanel(await pumpPanel(), { only: "everything", card: true });
  return whole;
};

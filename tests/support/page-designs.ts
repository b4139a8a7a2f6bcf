// Small designs for looking at in the page: a sound panel, and one with faults, texts that want to be markup.

import type { DesignInput } from "./pack-hashes.ts";

const WORKSHOP = `consolewright: 1
kind: workshop
name: shed
stock:
  opal: { material: acrylic-cast, colour: opal, light: translucent, nominal: 3 mm, measured: 2.9 mm, dated: 2026-01-31 }
  metal: { material: aluminium, colour: grey, light: opaque, nominal: 1.5 mm, measured: 1.5 mm, dated: 2026-01-31 }
finishes:
  painted: { coats: [white, black], thickness: 0.08 mm, dated: 2026-01-31, order: cut-paint-engrave }
machines:
  laser: { type: co2-laser, bed: [600, 400], spot: 0.15 mm, kerf: left-to-cutter }
  mill: { type: router, bed: [600, 400], tools: [{ diameter: 1 mm }] }
use: { face: laser, backing: mill, default: laser }
`;

const panel = (title: string, components: string): string => `consolewright: 1
kind: panel
name: bilge
title: ${JSON.stringify(title)}
revision: A
workshop: ../shed.yaml
mount: console-rail
height: 8 modules
viewing-distance: 600 mm
stack:
  - { layer: face, sheet: opal, finish: painted }
  - { layer: backing, sheet: metal }
fixings: { screws: m3, dowels: 3 mm }
components:
${components}
`;

const SOUND = `  pump: { part: toggle-6, at: { x: 40 mm, y: 38 mm }, legend: PUMP }
  full: { part: led-5-bezel, at: { right-of: pump, centres: 32 mm }, legend: FULL }
  flow: { part: pot-9, at: { right-of: full, centres: 32 mm }, legend: FLOW }`;

const FAULTY = `  pump: { part: toggle-6, at: { x: 40 mm, y: 38 mm }, legend: PUMP }
  full: { part: led-5-bezel, at: { right-of: pump, centres: 2 mm }, legend: FULL }
  lost: { part: no-such-part, at: { x: 90 mm, y: 38 mm } }`;

const design = (title: string, components: string): DesignInput => ({
  entry: "panels/bilge.yaml",
  files: { "panels/bilge.yaml": panel(title, components), "shed.yaml": WORKSHOP },
});

export const soundDesign: DesignInput = design("Bilge pumps", SOUND);

export const faultyDesign: DesignInput = design("Bilge pumps, crowded", FAULTY);

export const markupDesign: DesignInput = design(
  `<img src="x" onerror="document.title='taken'"><script>document.title='taken'</script>`,
  SOUND.replace("legend: PUMP", `legend: "<b>P</b>"`),
);

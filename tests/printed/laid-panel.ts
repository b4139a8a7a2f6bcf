// A panel read and laid out from its top-level keys, each with what stands behind its colon, on a workshop of measured sheets.

import { readDesign } from "../../src/design/read-design.ts";
import type { WorkshopDesign } from "../../src/design/workshop-design.ts";
import { layoutPanel } from "../../src/layout/layout-panel.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import type { PrintedContext } from "../../src/parts/printed/printed-context.ts";
import { testLibrary } from "../support/test-library.ts";

/** What a test does not say. */
const USUAL: Readonly<Record<string, string>> = {
  mount: "console-rail",
  height: "9 modules",
  stack: `
  - { layer: face, sheet: opal-3 }
  - { layer: backing, sheet: metal-2 }
  - { layer: spacer, print: black-petg, depth: 14 mm }`,
};

const STOCK = `stock:
  opal-3: { material: acrylic-cast, colour: opal, nominal: 3 mm, measured: 3 mm, dated: 2026-10-02 }
  metal-2: { material: aluminium, nominal: 2 mm, measured: 2 mm, dated: 2026-10-02 }
  black-petg: { material: petg, colour: black, opaque-from: 1.35 mm }`;

/** `workshop` continues the workshop's stock, then its other keys. */
export const laidPanel = (
  keys: Readonly<Record<string, string>>,
  workshop = "",
): { readonly layout: PanelLayout; readonly context: PrintedContext } => {
  const lines = Object.entries({ ...USUAL, ...keys }).map(([key, value]) => `${key}: ${value}`);
  const { design, findings } = readDesign(
    "panel.yaml",
    `consolewright: 1\nkind: panel\nname: test\n${lines.join("\n")}\n`,
  );
  if (design?.kind !== "panel") throw new Error(JSON.stringify(findings));
  const { catalogue, lettering } = testLibrary();
  const context = { workshop: workshopOf(workshop), catalogue, lettering };
  const laid = layoutPanel(design, context);
  if (laid.layout === null) throw new Error(JSON.stringify(laid.findings));
  return { layout: laid.layout, context };
};

const workshopOf = (lines: string): WorkshopDesign => {
  const text = `consolewright: 1\nkind: workshop\nname: shed\n${STOCK}\n${lines}\n`;
  const { design, findings } = readDesign("shed.yaml", text);
  if (design?.kind !== "workshop" || findings.length > 0) throw new Error(JSON.stringify(findings));
  return design;
};

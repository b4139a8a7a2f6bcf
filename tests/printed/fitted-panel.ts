// Panels for the tests of trims, lamp boxes and angled boxes: read, laid out, and whatever was found on the way.

import { lampBoxDepth } from "../../src/checks/printed/lamp-box-depth.ts";
import { trimHidesDisplay } from "../../src/checks/printed/trim-hides-display.ts";
import { trimLeaks } from "../../src/checks/printed/trim-leaks.ts";
import { readDesign } from "../../src/design/read-design.ts";
import type { WorkshopDesign } from "../../src/design/workshop-design.ts";
import type { Finding, Span } from "../../src/diagnostics/finding.ts";
import { layoutPanel } from "../../src/layout/layout-panel.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import type { PrintedContext } from "../../src/parts/printed/printed-context.ts";
import type { PrintedPart } from "../../src/parts/printed/printed-part.ts";
import { testLibrary } from "../support/test-library.ts";

export interface LaidPanel {
  readonly layout: PanelLayout;
  readonly context: PrintedContext;
  readonly findings: readonly Finding[];
}

/** Keys that a panel needs; what a test writes stands instead of them. */
const USUAL: Readonly<Record<string, string>> = {
  mount: "console-rail",
  height: "9 modules",
  stack: `
  - { layer: face, sheet: opal-3 }
  - { layer: backing, sheet: metal-2 }
  - { layer: spacer, print: black-petg, depth: 18 mm }`,
};

const STOCK = `stock:
  opal-3: { material: acrylic-cast, colour: opal, nominal: 3 mm, measured: 3 mm, dated: 2026-01-31 }
  metal-2: { material: aluminium, nominal: 2 mm, measured: 2 mm, dated: 2026-01-31 }
  smoke-2: { material: acrylic-cast, colour: smoke, light: clear, nominal: 2 mm, measured: 2 mm, dated: 2026-01-31 }
  frosted-3: { material: acrylic-cast, colour: frosted, nominal: 3 mm, measured: 3 mm, dated: 2026-01-31 }
  black-petg: { material: petg, colour: black, light: opaque, opaque-from: 1.35 mm }`;

/** Top-level keys, each with what stands behind its colon. `workshop` is the workshop's machines and further keys. */
export const laidPanel = (
  keys: Readonly<Record<string, string>>,
  workshopLines = "",
): LaidPanel => {
  const own = { ...USUAL, ...keys };
  const text = `consolewright: 1\nkind: panel\nname: test\nworkshop: shed.yaml\n${Object.entries(
    own,
  )
    .map(([key, value]) => `${key}: ${value}`)
    .join("\n")}\n`;
  const shed = `consolewright: 1\nkind: workshop\nname: shed\n${STOCK}\n${workshopLines}\n`;
  const read = readDesign("test.yaml", text);
  const workshop = workshopOf(shed);
  if (read.design?.kind !== "panel") throw new Error(JSON.stringify(read.findings));
  const { catalogue, lettering } = testLibrary();
  const context = { workshop, catalogue, lettering };
  const laid = layoutPanel(read.design, context);
  if (laid.layout === null) throw new Error(JSON.stringify(laid.findings));
  return { layout: laid.layout, context, findings: [...read.findings, ...laid.findings] };
};

/** What the rules over printed parts say of parts that were made, whatever else is wrong with the panel. */
export const printedFindings = (
  { layout, context }: LaidPanel,
  parts: readonly PrintedPart[],
): readonly Finding[] => {
  const { workshop, catalogue } = context;
  const edit = (span: Span, text: string) => ({ ...span, baseHash: "", text });
  const facts = { layout, sheetParts: [], printedParts: parts, workshop, catalogue, edit };
  return FITTED_RULES.flatMap(({ judge }) => judge(facts));
};

const FITTED_RULES = [lampBoxDepth, trimHidesDisplay, trimLeaks];

const workshopOf = (text: string): WorkshopDesign => {
  const { design, findings } = readDesign("shed.yaml", text);
  if (design?.kind !== "workshop" || findings.length > 0) throw new Error(JSON.stringify(findings));
  return design;
};

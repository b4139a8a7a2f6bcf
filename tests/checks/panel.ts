// A panel for a check, in a few words: components, stack and whatever else as lines of text, in a workshop where everything
// is measured unless the check is about that.

import type { Finding } from "../../src/diagnostics/finding.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

export interface Checked {
  readonly findings: readonly Finding[];
  readonly layout: PanelLayout;
  readonly texts: ReadonlyMap<string, string>;
}

const WORKSHOP = `consolewright: 1
kind: workshop
name: shed
stock:
  plate: { material: aluminium, nominal: 2 mm, measured: 2 mm, dated: 2026-01-31 }
  black: { material: acrylic-cast, colour: black, nominal: 3 mm, measured: 2.9 mm, dated: 2026-01-31 }
finishes:
  painted: { coats: [black, black], thickness: 0.08 mm, dated: 2026-01-31, order: cut-paint-engrave }
`;

const HEAD = `consolewright: 1
kind: panel
name: check
workshop: shed.yaml
`;

const USUAL = `mount: corner-screws
width: 420 mm
height: 220 mm
stack:
  - { layer: face, sheet: plate }
`;

/** `own` takes the place of mount, size and stack. */
export const checked = (lines: string, own: string = USUAL): Checked => {
  const texts = new Map([
    ["panel.yaml", `${HEAD}${own}${lines}`],
    ["shed.yaml", WORKSHOP],
  ]);
  const project = compile({ entry: "panel.yaml", files: texts }, testLibrary());
  const [panel] = project.panels;
  if (panel?.layout == null)
    throw new Error(project.findings.map(({ message }) => message).join("\n"));
  return { findings: [...project.findings, ...panel.findings], layout: panel.layout, texts };
};

export const ofCode = (of: Checked, code: string): readonly Finding[] =>
  of.findings.filter((found) => found.code === code);

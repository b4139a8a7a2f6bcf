// Short ways to read a design in a test: a whole panel round a few lines, and what was found with its place.

import type { ComponentEntry, PanelDesign } from "../../src/design/panel-design.ts";
import { readDesign } from "../../src/design/read-design.ts";
import type { Finding } from "../../src/diagnostics/finding.ts";

export const FILE = "panels/test.yaml";

const HEAD = `consolewright: 1
kind: panel
name: test
mount: console-rail
height: 6 modules
stack:
  - { layer: face, sheet: opal-acrylic-3 }
`;

/** A sound panel with further lines at its end. */
export const panelText = (lines: string): string => `${HEAD}${lines}\n`;

export const readPanel = (
  lines: string,
): { readonly panel: PanelDesign | null; readonly findings: readonly Finding[] } => {
  const { design, findings } = readDesign(FILE, panelText(lines));
  return { panel: design?.kind === "panel" ? design : null, findings };
};

/** The component `a`, written as `a: <text>`. */
export const readComponent = (
  text: string,
): { readonly component: ComponentEntry | undefined; readonly findings: readonly Finding[] } => {
  const { panel, findings } = readPanel(`components:\n  a: ${text}`);
  return { component: panel?.components[0], findings };
};

/** Codes without their floor, in the order of the text. */
export const codesOf = (findings: readonly Finding[]): readonly string[] =>
  findings.map(({ code }) => code.replace("design/", ""));

/** What a finding points at. */
export const pointedAt = (text: string, { span }: Finding): string =>
  text.slice(span.start, span.end);

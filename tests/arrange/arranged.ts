// A component list arranged and read back: the text, the panel that it makes, and what is found in it.

import { type Arranged, arrangeList } from "../../src/arrange/arrange-list.ts";
import { readComponentList } from "../../src/design/component-list.ts";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { compile, type PanelProject } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

export interface ArrangedPanel extends Arranged {
  readonly panel: PanelProject | null;
  /** Faults, and queries about hands, of the text as `check` would judge it. */
  readonly troubles: readonly Finding[];
}

export interface How {
  readonly mount?: string;
  readonly stack?: "plain" | "lit";
  readonly width?: number | null;
}

export const arranged = (list: string, how: How = {}): ArrangedPanel => {
  const { catalogue, lettering } = testLibrary();
  const { mount = "console-rail", stack = "plain", width = null } = how;
  const made = arrangeList(readComponentList("list.csv", list), {
    name: "arranged",
    title: "Arranged",
    mount,
    width: width === null ? null : mm(width),
    stack,
    workshopPath: null,
    workshop: null,
    cataloguePath: null,
    catalogue,
    lettering,
  });
  if (made.text === null) return { ...made, panel: null, troubles: made.findings };
  const files = new Map([["panel.yaml", made.text]]);
  const project = compile({ entry: "panel.yaml", files }, testLibrary());
  const found = [...project.findings, ...project.panels.flatMap(({ findings }) => findings)];
  const troubles = found.filter(
    ({ severity, code }) => severity === "fault" || code === "checks/hands",
  );
  return { ...made, panel: project.panels[0] ?? null, troubles };
};

// The list of all findings counts as the command line does: a file that stands twice in a console is told of once.

import { expect, test } from "vitest";
import { distinctFindings } from "../../src/diagnostics/distinct-findings.ts";
import { compile } from "../../src/project.ts";
import { toldOnce } from "../../viewer/panel/told-once.ts";
import { testLibrary } from "../support/test-library.ts";

const CONSOLE = `consolewright: 1
kind: console
name: desk
panels:
  - { as: left, file: pumps.yaml }
  - { as: right, file: pumps.yaml }
`;

const PANEL = `consolewright: 1
kind: panel
name: pumps
mount: console-rail
height: 10 modules
stack: [{ layer: face, sheet: aluminium-2 }]
components:
  main: { part: toggle-6, at: { x: 40 mm, y: 50 mm } }
  aux: { part: toggle-6, at: { x: 52 mm, y: 50 mm } }
`;

test("what is wrong with a file that stands twice is one finding", () => {
  const files = new Map([
    ["console.yaml", CONSOLE],
    ["pumps.yaml", PANEL],
  ]);
  const { panels } = compile({ entry: "console.yaml", files }, testLibrary());
  const findings = panels.flatMap((panel) => panel.findings);
  const placed = findings.map((finding) => ({ finding, line: 1, column: 1 }));
  expect(panels).toHaveLength(2);
  expect(findings.length).toBeGreaterThan(0);
  expect(toldOnce(placed)).toHaveLength(findings.length / 2);
  expect(toldOnce(placed).map(({ finding }) => finding)).toEqual(distinctFindings(findings));
});

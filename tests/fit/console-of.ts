// A console for tests of fit, in a few words: its texts, laid out, with every body in it.

import { consoleBodies } from "../../src/fit/bodies/console-bodies.ts";
import type { ConsoleBody } from "../../src/fit/console-body.ts";
import type { ConsoleLayout, PlacedPanel } from "../../src/layout/console/console-layout.ts";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

export interface TestConsole {
  readonly layout: ConsoleLayout;
  readonly bodies: readonly ConsoleBody[];
  readonly texts: ReadonlyMap<string, string>;
}

const WORKSHOP = `consolewright: 1
kind: workshop
name: shed
stock:
  plate: { material: aluminium, nominal: 2 mm, measured: 2 mm, dated: 2026-01-31 }
`;

/** Lines of the console, and of each panel by its name: its components and what follows. `layers`: behind its one sheet. */
export const consoleOf = (
  lines: string,
  panels: Readonly<Record<string, string>>,
  layers: readonly string[] = [],
): TestConsole => {
  const texts = new Map([
    ["console.yaml", `consolewright: 1\nkind: console\nname: desk\nworkshop: shed.yaml\n${lines}`],
    ["shed.yaml", WORKSHOP],
    ...Object.entries(panels).map(
      ([name, text]) => [`${name}.yaml`, panelText(name, text, layers)] as const,
    ),
  ]);
  const project = compile({ entry: "console.yaml", files: texts }, testLibrary());
  const said = project.findings.filter(({ severity }) => severity === "fault");
  if (project.console === null || said.length > 0)
    throw new Error(said.map(({ message }) => message).join("\n"));
  const { layout } = project.console;
  const printedParts = new Map(
    project.panels.map(({ name, printedParts: parts }) => [name, parts] as const),
  );
  return { layout, bodies: consoleBodies({ layout, printedParts, frame: null }), texts };
};

const panelText = (name: string, text: string, layers: readonly string[]): string =>
  `consolewright: 1\nkind: panel\nname: ${name}\nworkshop: shed.yaml\n${text.includes("mount:") ? "" : "mount: console-rail\nheight: 10 modules\n"}stack: [${["{ layer: face, sheet: plate }", ...layers].join(", ")}]\n${text}`;

export const panelOf = ({ layout }: TestConsole, name: string): PlacedPanel => {
  const found = layout.panels.find((panel) => panel.name === name);
  if (found === undefined) throw new Error(`there is no panel ${name}`);
  return found;
};

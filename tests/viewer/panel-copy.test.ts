// A panel that shares its file gets a file of its own. The check: the program reads the design that comes out, finds both
// panels in it, the change in the one alone; and the moves taken back give the first texts.

import { expect, test } from "vitest";
import { replacement, source } from "../../src/design/source.ts";
import { compile, type Project } from "../../src/project.ts";
import { movesBack, withMoves } from "../../viewer/history.ts";
import { panelCopy } from "../../viewer/panel/panel-copy.ts";
import { panelText, WORKSHOP } from "../layout/bench-panel.ts";
import { testLibrary } from "../support/test-library.ts";

const PANEL = panelText({
  components: ["a: { part: led-5-bezel, at: { x: 40 mm, y: 38 mm } }"],
}).replace("workshop.yaml", "../workshop.yaml");

const CONSOLE = `consolewright: 1
kind: console
name: desk
workshop: workshop.yaml
bays:
  aft: { mount: console-rail, at: [0, 0, 700], along: [1, 0, 0], slope: 0, cant: 0 deg, length: 20 modules, depth: 180 mm }
panels:
  - { file: "panels/bench.yaml", as: port, bay: aft, module: 0 } # the left one
  - { file: panels/bench.yaml, as: starboard, bay: aft, after: port }
`;

const TEXTS = new Map([
  ["console.yaml", CONSOLE],
  ["panels/bench.yaml", PANEL],
  ["workshop.yaml", WORKSHOP],
]);

const read = (texts: ReadonlyMap<string, string>): Project =>
  compile({ entry: "console.yaml", files: texts }, testLibrary());

const placesOf = (project: Project): Readonly<Record<string, number | undefined>> =>
  Object.fromEntries(project.panels.map(({ name, layout }) => [name, layout?.components[0]?.at.x]));

const copied = (texts: ReadonlyMap<string, string>, panel: string) => {
  const design = read(texts).console?.design;
  if (design === undefined) throw new Error("no console");
  const from = source("panels/bench.yaml", PANEL);
  const at = PANEL.indexOf("x: 40 mm") + 3;
  const edits = [replacement(from, { file: from.file, start: at, end: at + 2 }, "55")];
  const made = panelCopy(texts, { file: from.file, edits, panel, design });
  if (made.kind === "refused") throw new Error(made.why);
  const changed = withMoves(texts, made.moves);
  if (changed.kind === "refused") throw new Error(changed.why);
  return { made, changed };
};

test.each([
  [
    "port",
    { port: 55, starboard: 40 },
    'file: "panels/port.yaml", as: port, bay: aft, module: 0 } # the left one',
  ],
  ["starboard", { port: 40, starboard: 55 }, "file: panels/starboard.yaml, as: starboard"],
])("the copy for %s alone is changed", (panel, places, line) => {
  expect(placesOf(read(TEXTS))).toEqual({ port: 40, starboard: 40 });
  const { made, changed } = copied(TEXTS, panel);
  expect(placesOf(read(changed.texts))).toEqual(places);
  expect(changed.texts.get("console.yaml")).toContain(line);
  expect(changed.texts.get("panels/bench.yaml")).toBe(PANEL);
  expect(changed.texts.get(made.file)).toContain(`name: ${panel}\n`);
  const back = withMoves(changed.texts, movesBack(made.moves));
  expect(back.kind === "changed" ? back.texts : back).toEqual(TEXTS);
});

test("a file that is there is never written over", () => {
  const { made } = copied(new Map([...TEXTS, ["panels/port.yaml", "kind: panel\n"]]), "port");
  expect(made.file).toBe("panels/port-2.yaml");
});

test("a folder that is called like the file keeps its name", () => {
  const file = "bench.yaml/bench.yaml";
  const texts = new Map([
    ["console.yaml", CONSOLE.replaceAll("panels/bench.yaml", file)],
    [file, PANEL],
    ["workshop.yaml", WORKSHOP],
  ]);
  const design = read(texts).console?.design;
  if (design === undefined) throw new Error("no console");
  const made = panelCopy(texts, { file, edits: [], panel: "port", design });
  if (made.kind === "refused") throw new Error(made.why);
  const changed = withMoves(texts, made.moves);
  if (changed.kind === "refused") throw new Error(changed.why);
  expect(made.file).toBe("bench.yaml/port.yaml");
  expect(changed.texts.get("console.yaml")).toContain('file: "bench.yaml/port.yaml", as: port');
  expect(placesOf(read(changed.texts))).toEqual({ port: 40, starboard: 40 });
});

test("a file whose name can't be changed is not copied, and why is said", () => {
  // Two names are a fault of their own: which of them is meant, nobody knows.
  const twice = PANEL.replace(/^name: .*$/m, (line) => `${line}\n${line}`);
  const texts = new Map([...TEXTS, ["panels/bench.yaml", twice]]);
  const design = read(TEXTS).console?.design;
  if (design === undefined) throw new Error("no console");
  const made = panelCopy(texts, { file: "panels/bench.yaml", edits: [], panel: "port", design });
  expect(made).toEqual({
    kind: "refused",
    why: "the copy can't be named port: name is written twice",
  });
});

// A project that is compiled again and again: what an edit leaves alone is not worked out again, and the result is what it
// would have been without any memory.

import { expect, test } from "vitest";
import { compile, type PanelMemory, type Project } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

const panel = (name: string, part: string): string => `consolewright: 1
kind: panel
name: ${name}
workshop: shed.yaml
mount: console-rail
height: 8 modules
catalogue: own.yaml
stack: [{ layer: face, sheet: aluminium-2 }]
components:
  one: { part: ${part}, at: { x: 40 mm, y: 38 mm }, legend: ONE }
`;

const FILES: ReadonlyMap<string, string> = new Map([
  [
    "console.yaml",
    `consolewright: 1
kind: console
name: desk
workshop: shed.yaml
bays: [{ id: main, mount: console-rail, modules: 20, at: [400, 0, 720], along: right }]
panels:
  - { file: left.yaml, as: left, bay: main, module: 0 }
  - { file: right.yaml, as: right, bay: main, module: 10 }
`,
  ],
  ["left.yaml", panel("left", "toggle-6")],
  ["right.yaml", panel("right", "no-such-part")],
  ["shed.yaml", "consolewright: 1\nkind: workshop\nname: shed\n"],
  ["own.yaml", "consolewright: 1\nkind: parts\nparts: {}\n"],
]);

const compiled = (files: ReadonlyMap<string, string>, before?: PanelMemory): Project =>
  compile({ entry: "console.yaml", files }, testLibrary(), before);

const said = ({ kind, panels, console, findings }: Project): string =>
  JSON.stringify({ kind, panels, console, findings });

const first = compiled(FILES);

test.each([
  ["nothing", "left.yaml", (text: string) => text, 2],
  ["one panel", "left.yaml", (text: string) => text.replace("toggle-6", "toggle-12"), 1],
  ["a comment above", "right.yaml", (text: string) => `# moved down\n${text}`, 1],
  ["the console", "console.yaml", (text: string) => text.replace("module: 10", "module: 11"), 2],
  ["the workshop", "shed.yaml", (text: string) => `${text}# dry\n`, 0],
  ["own parts", "own.yaml", (text: string) => `${text}# none\n`, 0],
])("an edit of %s", (_what, file, change, kept) => {
  const files = new Map([...FILES, [file, change(FILES.get(file) ?? "")]]);
  const again = compiled(files, first.memory);
  expect(said(again)).toBe(said(compiled(files)));
  const before = new Set(first.memory.values());
  expect([...again.memory.values()].filter((one) => before.has(one))).toHaveLength(kept);
});

test("both panels are there to be remembered, one with a fault", () => {
  expect(first.panels.map(({ name }) => name)).toEqual(["left", "right"]);
  expect(said(first)).toContain("no-such-part");
});

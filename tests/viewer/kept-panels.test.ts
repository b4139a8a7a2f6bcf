// Panels whose text can't be read for the moment stay as they last could be, each at its place, until they can be read again or
// their file is gone. The readings are the program's own of a console of two panels.

import { expect, test } from "vitest";
import { lineAndColumn } from "../../src/diagnostics/position.ts";
import { compile } from "../../src/project.ts";
import type { DesignReading } from "../../viewer/core-messages.ts";
import { firstFiles } from "../../viewer/first-files.ts";
import {
  NO_PANELS,
  panelsWithDrawn,
  panelsWithKept,
  type ShownPanels,
} from "../../viewer/kept-panels.ts";
import { testLibrary } from "../support/test-library.ts";

const library = testLibrary();

const panel = (name: string): string => `consolewright: 1
kind: panel
name: ${name}
mount: console-rail
height: 10 modules
stack: [{ layer: face, sheet: aluminium-2 }]
components:
  main: { part: toggle-6, at: { x: 40 mm, y: 50 mm } }
`;

const CONSOLE = `consolewright: 1
kind: console
name: desk
title: Desk
panels:
  - { as: left, file: left.yaml }
  - { as: right, file: right.yaml }
`;

type Texts = Readonly<Record<string, string>>;

const SOUND: Texts = {
  "console.yaml": CONSOLE,
  "left.yaml": panel("left"),
  "right.yaml": panel("right"),
};

const shownAfter = (before: ShownPanels, files: Texts): ShownPanels => {
  const texts = new Map(Object.entries(files));
  const projects = firstFiles(texts).map((entry) => compile({ entry, files: texts }, library));
  const panels = projects.flatMap((one) => one.panels);
  const findings = [
    ...projects.flatMap((one) => one.findings),
    ...panels.flatMap((one) => one.findings),
  ].map((finding) => ({
    finding,
    ...lineAndColumn(texts.get(finding.span.file) ?? "", finding.span.start),
  }));
  const reading: DesignReading = {
    kind: "read",
    number: 1,
    console: null,
    findings,
    panels: panels.map(({ name, design, layout }) => ({
      name,
      title: design.title,
      file: design.file,
      design,
      layout,
      picture: null,
    })),
  };
  return panelsWithKept(before, reading, texts);
};

const names = ({ panels }: ShownPanels): readonly string[] => panels.map(({ name }) => name);

const first = shownAfter(NO_PANELS, SOUND);

test("a sound reading is shown as it is", () => {
  expect([names(first), [...first.unread.keys()]]).toEqual([["left", "right"], []]);
});

test.each([
  ["a second colon", "mount: console-rail", "mount: console-rail:", 4],
  ["a value half typed", "height: 10 modules", "height: ", 5],
  ["a kind half typed", "kind: panel", "kind: pan", 2],
  ["an open bracket", "components:", "components: [[[", 7],
])("%s keeps the panel at its place, with the line of the fault", (_, from, to, line) => {
  const broken = { ...SOUND, "left.yaml": SOUND["left.yaml"]!.replace(from, to) };
  const shown = shownAfter(first, broken);
  expect(names(shown)).toEqual(["left", "right"]);
  expect(shown.panels[0]).toBe(first.panels[0]);
  expect(shown.unread.get("left")?.file).toBe("left.yaml");
  expect(shown.unread.get("left")?.line).toBe(line);
  expect(shown.unread.has("right")).toBe(false);
  // Still broken a letter later, and sound again.
  const again = shownAfter(shown, { ...broken, "right.yaml": `${SOUND["right.yaml"]}\n` });
  expect(names(again)).toEqual(["left", "right"]);
  expect([...shownAfter(again, SOUND).unread.keys()]).toEqual([]);
});

test("a console that can't be read keeps all its panels", () => {
  const shown = shownAfter(first, { ...SOUND, "console.yaml": `${CONSOLE}]: x\n` });
  expect(names(shown)).toEqual(["left", "right"]);
  expect(shown.unread.get("right")?.file).toBe("console.yaml");
});

test("a panel that is taken out, or whose file is gone, is shown no more", () => {
  const out = CONSOLE.replace("  - { as: right, file: right.yaml }\n", "");
  expect(names(shownAfter(first, { ...SOUND, "console.yaml": out }))).toEqual(["left"]);
  const { "right.yaml": _gone, ...left } = SOUND;
  expect(names(shownAfter(first, left))).toEqual(["left"]);
});

test("a picture that comes early takes the place of its own panel, and of none that can't be read", () => {
  const sound = shownAfter(NO_PANELS, SOUND);
  const broken = shownAfter(sound, { ...SOUND, "left.yaml": `${panel("left")}  ]` });
  expect([...broken.unread.keys()]).toEqual(["left"]);
  const drawn = sound.panels.map((one) => ({ ...one, title: `${one.name} anew` }));
  expect(panelsWithDrawn(broken, drawn).panels).toEqual([broken.panels[0], drawn[1]]);
});

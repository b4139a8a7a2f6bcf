// Where a reading of opened texts begins. The rule: one console, the nearest to the root; others are offered by name; without
// a console every panel by itself.

import { expect, test } from "vitest";
import { consolesIn, firstFiles, withOneConsole } from "../../viewer/first-files.ts";

const textsOf = (kinds: Readonly<Record<string, string>>): ReadonlyMap<string, string> =>
  new Map(Object.entries(kinds).map(([path, kind]) => [path, `consolewright: 1\nkind: ${kind}\n`]));

const FOLDER = textsOf({
  "variants/aft.yaml": "console",
  "variants/forward.yaml": "console",
  "console.yaml": "console",
  "panels/winch.yaml": "panel",
  "workshop.yaml": "workshop",
});

test("the root's console comes first, its variants after it", () => {
  expect(consolesIn(FOLDER)).toEqual([
    "console.yaml",
    "variants/aft.yaml",
    "variants/forward.yaml",
  ]);
  expect(firstFiles(FOLDER)).toEqual(["console.yaml"]);
});

test("a chosen variant is read in its place", () => {
  const texts = withOneConsole(FOLDER, "variants/forward.yaml");
  expect(firstFiles(texts)).toEqual(["variants/forward.yaml"]);
  expect([...texts.keys()]).toContain("panels/winch.yaml");
});

test("with one console or none the texts are what they were", () => {
  const one = textsOf({ "console.yaml": "console", "a.yaml": "panel" });
  expect(withOneConsole(one, "console.yaml")).toBe(one);
  const none = textsOf({
    "b.yaml": "panel",
    "a.yaml": "panel",
    "parts.yaml": "parts",
    "w.yaml": "workshop",
  });
  expect(firstFiles(none)).toEqual(["a.yaml", "b.yaml"]);
});

test("a text whose kind can't be told is begun with, so that it is told of", () => {
  expect(firstFiles(new Map([["odd.yaml", "name: odd\n"]]))).toEqual(["odd.yaml"]);
});

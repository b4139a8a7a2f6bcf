// What is said of an open stretch of a bay: the finding, the fit report and the text agree on what closes it. A blanking panel is
// written as a count of modules, U or HP; a bay that counts in millimetres has none.

import { expect, test } from "vitest";
import { blankingItem } from "../../src/checks/fit/blanking-item.ts";
import { compile } from "../../src/project.ts";
import { findingsOf, type Texts } from "../findings/example.ts";
import { testLibrary } from "../support/test-library.ts";

const open = (bay: string): Texts =>
  new Map([
    [
      "console.yaml",
      `consolewright: 1\nkind: console\nname: stand\nbays:\n  side: { at: [0, 0, 700], along: [1, 0, 0], depth: 80 mm, ${bay} }\n`,
    ],
  ]);

const itemOf = (texts: Texts): ReturnType<typeof blankingItem> => {
  const project = compile({ entry: "console.yaml", files: texts }, testLibrary());
  const bay = project.console!.layout.bays[0]!;
  return blankingItem(bay, bay.free[0]!);
};

const SCREWS = open("mount: corner-screws, length: 400 mm, clear-width: 90 mm");

test("a bay that counts in millimetres is told the panel that closes it", () => {
  const found = findingsOf(SCREWS).filter(({ code }) => code === "fit/free-modules");
  expect(found.map(({ message, remedies }) => [message, remedies])).toEqual([
    ["Bay side is open from 0 on, for 400 mm. A panel of 400 mm closes it.", []],
  ]);
  expect(itemOf(SCREWS)).toBeNull();
});

test("the line that the finding would have offered there is no line of a console", () => {
  const text = `${SCREWS.get("console.yaml")}panels:\n  - { blanking: 400 mm, bay: side, module: 0 }\n`;
  const codes = findingsOf(new Map([["console.yaml", text]])).map(({ code }) => code);
  expect(codes).toContain("design/not-a-size");
});

// 100 mm are 10 modules of 9.525 and half a module more.
test("a stretch with part of a module is closed as far as whole ones go", () => {
  const texts = open("mount: console-rail, length: 100 mm");
  expect(itemOf(texts)).toEqual({
    text: "{ blanking: 10 modules, bay: side, module: 0 }",
    closesAll: false,
  });
  const [found] = findingsOf(texts).filter(({ code }) => code === "fit/free-modules");
  expect(found?.remedies).toEqual([]);
});

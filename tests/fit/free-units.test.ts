// What is free in a rack is told in its own units.

import { expect, test } from "vitest";
import { findingsOf } from "../findings/example.ts";

test("a gap of one unit is measured as 1 U, not as a module", () => {
  const found = findingsOf(
    new Map([
      [
        "console.yaml",
        "consolewright: 1\nkind: console\nname: rack\nbays:\n  rack: { mount: rack-19, at: [300, -400, 760], along: [1, 0, 0], length: 3 U, depth: 160 mm }\npanels:\n  - { file: a.yaml, as: a, bay: rack, module: 0 }\n",
      ],
      [
        "a.yaml",
        "consolewright: 1\nkind: panel\nname: a\nmount: rack-19\nheight: 2 U\nstack: [{ layer: face, sheet: aluminium-2 }]\n",
      ],
    ]),
  ).find(({ code }) => code === "fit/free-modules");
  expect(found?.measured).toEqual({ value: 1, unit: "U" });
  expect(found?.limit).toEqual({ value: 0, unit: "U" });
});

// Where a panel that stands on another's modules goes: what stands behind it moves with it.

import { expect, test } from "vitest";
import { findingsOf } from "../findings/example.ts";

const plate = (name: string, units: number): string =>
  `consolewright: 1\nkind: panel\nname: ${name}\nmount: rack-19\nheight: ${units} U\nstack: [{ layer: face, sheet: aluminium-2 }]\n`;

const overlapsOf = (units: number, audio: string, big: string): ReturnType<typeof findingsOf> =>
  findingsOf(
    new Map([
      [
        "console.yaml",
        `consolewright: 1
kind: console
name: rack
bays:
  rack: { mount: rack-19, at: [300, -400, 760], along: [1, 0, 0], length: ${units} U, depth: 160 mm }
panels:
  - { file: power.yaml, as: power, bay: rack, module: 0 }
  - { file: audio.yaml, as: audio, bay: rack, ${audio} }
  - { file: big.yaml, as: big, bay: rack${big} }
`,
      ],
      ["power.yaml", plate("power", 1)],
      ["audio.yaml", plate("audio", 2)],
      ["big.yaml", plate("big", 4)],
    ]),
  ).filter(({ code }) => code === "fit/panels-overlap" || code === "fit/bay-overrun");

// 1 + 2 + 4 = 7 U.
test.each([
  ["by name", ", after: audio"],
  ["by the order of the text", ""],
])("what follows %s moves along, and exactly fills the bay", (_, big) => {
  const [found, ...others] = overlapsOf(7, "module: 0", big);
  expect(others).toEqual([]);
  expect(found?.message).toContain("module: 1 is free, and big follows.");
  expect(found?.remedies.map(({ title }) => title)).toEqual(["module: 1"]);
  expect(overlapsOf(7, "module: 1", big)).toEqual([]);
});

test("where the train is longer than what is free no place is named", () => {
  const [found] = overlapsOf(6, "module: 0", ", after: audio");
  expect(found?.message).toContain("No place in bay rack is free for it and big, which follows.");
  expect(found?.remedies).toEqual([]);
});

// Two units are free before the last, and four stand behind: to move the first alone would put them on one another.
test("a gap that holds the panel alone is not offered where others follow it", () => {
  const [found] = overlapsOf(9, "module: 0", ", after: audio");
  expect(found?.remedies.map(({ title }) => title)).toEqual(["module: 1"]);
});

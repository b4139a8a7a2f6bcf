// Trim, lamp box and angled box in a design: their usual values, what is refused, and the schema that explains them.

import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { readDesign } from "../../src/design/read-design.ts";
import { designSchema } from "../../src/design/schema.ts";
import { codesOf, FILE, panelText, readComponent, readPanel } from "./reading.ts";
import { isValid } from "./schema-check.ts";

const SCHEMA: unknown = JSON.parse(JSON.stringify(designSchema()));

const display = (trim: string): string => `{ part: p, at: centre, trim: ${trim} }`;
const windows = (box: string): string =>
  `{ grid: { part: w, columns: 2, rows: 1, pitch: 24 }, at: centre, lamp-box: ${box} }`;

describe("a trim", () => {
  test("snaps in, reaches to the window and has no filter unless it says so", () => {
    expect(readComponent(display("{}")).component).toMatchObject({
      trim: { lip: null, fixing: "snap", filter: null, print: null },
    });
    expect(readComponent("{ part: p, at: centre }").component).toMatchObject({ trim: null });
  });

  test("says lip, fixing, filter and stock", () => {
    const text = "{ lip: 2 mm, fixing: screw, filter: smoke-acrylic-2, print: black-petg }";
    expect(readComponent(display(text)).component).toMatchObject({
      trim: { lip: 2, fixing: "screw", filter: "smoke-acrylic-2", print: "black-petg" },
    });
    expect(isValid(SCHEMA, parse(panelText(`components:\n  a: ${display(text)}`)))).toBe(true);
  });

  test.each([
    ["{ lip: 0 }", "out-of-range"],
    ["{ fixing: rivet }", "unknown-word"],
    ["{ lips: 2 }", "unknown-key"],
    ["[]", "wrong-shape"],
  ])("%s is refused", (trim, code) => {
    expect(codesOf(readComponent(display(trim)).findings)).toContain(code);
  });
});

describe("a lamp box", () => {
  test("has two LEDs of 3 mm in a window, a frosted sheet and a flange of 3 mm unless it says so", () => {
    expect(readComponent(windows("{}")).component).toMatchObject({
      lampBox: {
        leds: 2,
        led: "led-3",
        depth: null,
        diffuser: "frosted-acrylic-3",
        flange: 3,
        print: null,
      },
    });
  });

  test.each([
    ["{ leds: 0 }", "out-of-range"],
    ["{ leds: 1.5 }", "not-a-count"],
    ["{ depth: 2 m }", "out-of-range"],
    ["{ flange: -1 }", "out-of-range"],
  ])("%s is refused", (box, code) => {
    expect(codesOf(readComponent(windows(box)).findings)).toContain(code);
  });

  test("is explained by the schema", () => {
    const text = panelText(`components:\n  a: ${windows("{ leds: 4, led: led-5, depth: 18 mm }")}`);
    expect(isValid(SCHEMA, parse(text))).toBe(true);
    expect(isValid(SCHEMA, parse(text.replace("leds: 4", "leds: 0")))).toBe(false);
  });
});

describe("an angled box", () => {
  const FOOTPRINT = "footprint: [[0, 0], [100, 0], [4 in, 60 mm], [0, 60]]";

  test("stands level, with a flange of 12 mm, unless it says so", () => {
    const { panel } = readPanel(`box: { ${FOOTPRINT}, rise: 20 }`);
    expect(panel?.box).toMatchObject({
      footprint: [
        { x: 0, y: 0 },
        { x: 100, y: 0 },
        { x: 101.6, y: 60 },
        { x: 0, y: 60 },
      ],
      slope: 0,
      rise: 20,
      flange: 12,
      print: "black-petg",
    });
    expect(readPanel("").panel?.box).toBeNull();
  });

  test.each([
    [`{ ${FOOTPRINT} }`, "missing-key"],
    ["{ footprint: [[0, 0], [1, 1]], rise: 20 }", "wrong-count"],
    ["{ footprint: [[0, 0], [1, 1], [2]], rise: 20 }", "wrong-count"],
    [`{ ${FOOTPRINT}, rise: 20, slope: 80 deg }`, "out-of-range"],
  ])("%s is refused, and the panel stands", (box, code) => {
    const { panel, findings } = readPanel(`box: ${box}`);
    expect(codesOf(findings)).toContain(code);
    expect(panel?.box).toBeNull();
  });

  test("is explained by the schema", () => {
    const text = panelText(`box: { ${FOOTPRINT}, rise: 20 mm, slope: 30 deg }`);
    expect(isValid(SCHEMA, parse(text))).toBe(true);
    expect(readDesign(FILE, text).findings).toEqual([]);
  });
});

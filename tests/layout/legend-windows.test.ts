// Windows that open by themselves behind what is read: their size by hand from the letters' box, their corners by the
// machine, webs and merging, and what may be in the way.

import { describe, expect, test } from "vitest";
import { tightestInsideRadius } from "../../src/geometry/corners.ts";
import { contoursOverlap } from "../../src/geometry/distance.ts";
import { type Extent, extentGap } from "../../src/geometry/extent.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import type { CutOut, PanelLayout } from "../../src/layout/panel-layout.ts";
import { layoutOf, WORKSHOP } from "./bench-panel.ts";

const LIT =
  "{ layer: spacer, print: black-petg, depth: 14 mm, lighting: { strip: strip-60-5v, circuit: night } }";

const stackWith = (backing: string, behind = LIT): readonly string[] => [
  "{ layer: face, sheet: opal, finish: painted }",
  `{ layer: backing, ${backing} }`,
  behind,
];

const windowsIn = (layout: PanelLayout): readonly CutOut[] =>
  layout.layers.flatMap(({ cutOuts }) => cutOuts.filter(({ purpose }) => purpose === "window"));

const wordsOf = (layout: PanelLayout, id: string): Extent => {
  const [box] = layout.markings.find((one) => one.id === id)?.words ?? [];
  if (box === undefined) throw new Error(id);
  return box;
};

const PUMP = "pump: { part: led-5-bezel, at: { x: centre, y: centre }, legend: PUMP }";

describe("behind a legend", () => {
  test("the backing opens 0.6 mm round the letters, with the corners of a laser", () => {
    const layout = layoutOf({ stack: stackWith("sheet: black"), components: [PUMP] });
    const [window, ...others] = windowsIn(layout);
    expect(others).toEqual([]);
    expect(window).toMatchObject({ id: "pump/legend/window@backing", layer: "backing" });
    const letters = wordsOf(layout, "pump/legend");
    const box = contourExtent(window!.contour);
    // By hand: grown by the margin on all four sides.
    expect(box.minX).toBeCloseTo(letters.minX - 0.6, 6);
    expect(box.maxX).toBeCloseTo(letters.maxX + 0.6, 6);
    expect(box.minY).toBeCloseTo(letters.minY - 0.6, 6);
    expect(box.maxY).toBeCloseTo(letters.maxY + 0.6, 6);
    expect(tightestInsideRadius(window!.contour)).toBeCloseTo(0.5, 6);
  });

  test.each([
    ["sheet: metal, window-margin: 0.1 mm", 0.1464466, "1 mm tool: 0.5 (1 - 1 / sqrt 2) beats 0.1"],
    ["sheet: metal, window-margin: 1.2 mm", 1.2, "room enough for the tool"],
  ])("%s: %f mm round the letters, for the corner must not cut them", (sheet, margin) => {
    const layout = layoutOf(
      { stack: stackWith(sheet), components: [PUMP] },
      WORKSHOP.replace("metal: mill", "backing: mill"),
    );
    const [window] = windowsIn(layout);
    const box = contourExtent(window!.contour);
    expect(wordsOf(layout, "pump/legend").minX - box.minX).toBeCloseTo(margin, 6);
    expect(tightestInsideRadius(window!.contour)).toBeCloseTo(0.5, 6);
  });

  test.each([
    [
      "no lamps lie behind",
      stackWith("sheet: black", "{ layer: spacer, print: black-petg, depth: 14 mm }"),
    ],
    ["the sheet is told not to", stackWith("sheet: black, windows: none")],
    ["the sheet lets light through itself", stackWith("sheet: frosted")],
    [
      "the face is opaque",
      ["{ layer: face, sheet: black }", "{ layer: backing, sheet: black }", LIT],
    ],
  ])("nothing opens where %s", (_, stack) =>
    expect(windowsIn(layoutOf({ stack, components: [PUMP] }))).toEqual([]),
  );

  test("nothing opens where the design has drawn a window", () => {
    const layout = layoutOf({
      stack: stackWith("sheet: black"),
      components: [PUMP],
      markings: [
        "window: { at: { x: centre, y: 45.5 mm }, width: 30 mm, height: 8 mm, layers: [backing] }",
      ],
    });
    expect(windowsIn(layout).map(({ owner }) => owner)).toEqual(["window-1"]);
  });

  test("titles of groups and figures of scales have windows of their own", () => {
    const layout = layoutOf({
      stack: stackWith("sheet: black"),
      components: [
        "a: { part: pot-16, knob: knob-22-skirt, at: { x: centre, y: centre }, scale: { from: 0, to: 10, major: 5 } }",
      ],
      markings: ["border: { around: [a], gap: 9 mm, legend: GAIN }"],
    });
    const ids = windowsIn(layout).map(({ id }) => id);
    expect(ids).toContain("border-1/window@backing");
    expect(ids.filter((id) => id.startsWith("a/scale-figures"))).toHaveLength(3);
  });
});

const two = (apart: number): PanelLayout =>
  layoutOf({
    stack: stackWith("sheet: black"),
    markings: [
      "legend: { name: one, text: II, at: { x: 60 mm, y: centre } }",
      `legend: { name: other, text: II, at: { x: ${60 + apart} mm, y: centre } }`,
    ],
  });

describe("two neighbours", () => {
  const width = wordsOf(two(30), "one").maxX - wordsOf(two(30), "one").minX;

  test("with the least web, 1.5 mm, between them stay two", () =>
    expect(windowsIn(two(width + 1.2 + 1.51))).toHaveLength(2));

  test("become one where less would be left", () => {
    const layout = two(width + 1.2 + 1.49);
    const windows = windowsIn(layout);
    expect(windows.map(({ id }) => id)).toEqual(["one+1/window@backing"]);
    const box = contourExtent(windows[0]!.contour);
    expect(box.minX).toBeCloseTo(wordsOf(layout, "one").minX - 0.6, 6);
    expect(box.maxX).toBeCloseTo(wordsOf(layout, "other").maxX + 0.6, 6);
  });
});

describe("something in the way", () => {
  test("a key's own hole leaves no web: no window, and the margin that would go by", () => {
    const key = "key: { part: tactile-12-cap, at: { x: centre, y: centre }, legend: DUAL }";
    const layout = layoutOf({ stack: stackWith("sheet: black"), components: [key] });
    expect(windowsIn(layout)).toEqual([]);
    const [closed] = layout.closedWindows;
    expect(closed).toMatchObject({ marking: "key/legend", layer: "backing" });
    expect(closed?.obstacle).toMatchObject({
      owner: "key",
      what: "hole",
      wanted: 1.5,
      margin: 0.6,
    });
    const works = closed?.obstacle.works ?? 0;
    const narrower = layoutOf({
      stack: stackWith(`sheet: black, window-margin: ${works} mm`),
      components: [key],
    });
    expect(narrower.closedWindows).toEqual([]);
    const [window] = windowsIn(narrower);
    const hole = narrower.layers[1]?.cutOuts.find(({ purpose }) => purpose === "clamp");
    const web = extentGap(contourExtent(window!.contour), contourExtent(hole!.contour));
    expect(web).toBeGreaterThanOrEqual(1.5 - 1e-6);
  });

  test("no window meets a nut, a washer, a flange, a rail or another opening, on a crowded panel", () => {
    const layout = layoutOf({
      height: "14 modules",
      stack: stackWith("sheet: black"),
      components: [
        "a: { row: { part: toggle-12, count: 5, pitch: 24 mm }, at: { left: 24 mm, top: 40 mm }, legends: [ONE, TWO, THREE, FOUR, FIVE] }",
        "b: { row: { part: tactile-12-cap, count: 5, pitch: 22 mm }, at: { left: 24 mm, bottom: 20 mm }, legends: [ONE, TWO, THREE, FOUR, FIVE] }",
      ],
    });
    const backing = layout.layers[1]!;
    const windows = windowsIn(layout);
    expect(windows.length).toBeGreaterThan(2);
    const pressed = layout.components.flatMap(({ bodies }) =>
      bodies.filter(({ role }) => ["nut", "washer", "flange"].includes(role)),
    );
    expect(pressed.length).toBeGreaterThan(5);
    for (const { id, contour } of windows) {
      for (const body of pressed) expect(contoursOverlap(contour, body.footprint), id).toBe(false);
      for (const rail of layout.rails)
        expect(contoursOverlap(contour, rectangle(rail))).toBe(false);
      for (const other of backing.cutOuts)
        if (other.id !== id) expect(contoursOverlap(contour, other.contour), id).toBe(false);
    }
  });
});

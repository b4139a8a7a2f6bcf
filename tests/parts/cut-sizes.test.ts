// From finished size to the line that the beam follows: paint makes holes larger and outlines smaller, kerf does it once more.

import { describe, expect, test } from "vitest";
import { machinePaths } from "../../src/export/machine-paths.ts";
import type { Contour } from "../../src/geometry/contour.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import type { SetUp } from "../../src/parts/sheet-part.ts";
import type { PanelProject } from "../../src/project.ts";
import { holeNamed, panelOf } from "../layout/bench-panel.ts";

const cuttingSetUp = (panel: PanelProject, layer: string): SetUp => {
  const part = panel.sheetParts.find((one) => one.layer === layer);
  const setUp = part?.setUps.find(({ operations }) =>
    operations.some(({ kind }) => kind === "cut"),
  );
  if (setUp === undefined) throw new Error(`${layer} is not cut`);
  return setUp;
};

const size = (contour: Contour): readonly [number, number] => {
  const box = contourExtent(contour);
  return [box.maxX - box.minX, box.maxY - box.minY];
};

/** Size of one feature as it leaves the machine, and of the line in the file. */
const sizes = (
  panel: PanelProject,
  layer: string,
  feature: string,
): { readonly cut: readonly [number, number]; readonly line: readonly [number, number] } => {
  const setUp = cuttingSetUp(panel, layer);
  const cut = setUp.operations.find((one) => one.kind === "cut" && one.feature === feature);
  const paths = machinePaths(setUp);
  if (cut?.kind !== "cut" || paths.kind === "refused") throw new Error(`${feature} is not cut`);
  const lines = paths.groups.flatMap(({ shapes }) => shapes);
  const line = lines.find((one) => one.kind === "cut" && one.feature === feature);
  if (line?.kind !== "cut") throw new Error(`${feature} has no line`);
  return { cut: size(cut.contour), line: size(line.contour) };
};

const FREE = {
  mount: "corner-screws",
  height: "57.15 mm",
  more: ["width: 146.05 mm"],
  fixings: "",
};

describe("a plate of 146.05 x 57.15 at kerf 0.2", () => {
  // Kerf arithmetic: between line centres the outline is 146.25 x 57.35, and a hole of 6.6 is drawn 6.4.
  const plate = panelOf({
    ...FREE,
    stack: ["{ layer: face, sheet: opal }"],
    components: ["a: { part: led-5-bezel, hole: 6.6 mm, at: centre }"],
  });

  test("unpainted, its outline is drawn 146.25 x 57.35", () => {
    const { cut, line } = sizes(plate, "face", "outline");
    expect(cut).toEqual([expect.closeTo(146.05, 9), expect.closeTo(57.15, 9)]);
    expect(line).toEqual([expect.closeTo(146.25, 9), expect.closeTo(57.35, 9)]);
  });

  test("and a hole that the design wants cut at 6.6 is drawn 6.4", () => {
    const { cut, line } = sizes(plate, "face", "a/clamp@face");
    expect(cut[0]).toBeCloseTo(6.6, 9);
    expect(line[0]).toBeCloseTo(6.4, 9);
  });
});

describe("painted after cutting, 0.08 a side", () => {
  const painted = panelOf({
    ...FREE,
    stack: ["{ layer: face, sheet: opal, finish: painted }"],
    components: [
      "a: { part: toggle-6, at: { x: 40 mm, y: centre } }",
      "b: { part: toggle-6, hole: 6.6 mm, at: { x: 90 mm, y: centre } }",
    ],
  });

  test("a hole is cut at its finished size and paint twice", () => {
    const { layout } = painted;
    const finished =
      layout === null ? Number.NaN : size(holeNamed(layout, "a/clamp@face").contour)[0];
    // 1/4-40 bush of 6.35 in acrylic: bush + 0.2 to 0.3, common practice.
    expect(finished).toBeGreaterThanOrEqual(6.55);
    expect(finished).toBeLessThanOrEqual(6.65);
    const { cut, line } = sizes(painted, "face", "a/clamp@face");
    expect(cut[0]).toBeCloseTo(finished + 2 * 0.08, 9);
    expect(line[0]).toBeCloseTo(finished + 2 * 0.08 - 0.2, 9);
  });

  test("the outline is cut smaller by paint on both edges", () => {
    expect(sizes(painted, "face", "outline").cut).toEqual([
      expect.closeTo(146.05 - 0.16, 9),
      expect.closeTo(57.15 - 0.16, 9),
    ]);
  });

  test("`hole` is the size at the machine; its gauge knows that paint narrows it", () => {
    const { layout } = painted;
    expect(sizes(painted, "face", "b/clamp@face").cut[0]).toBeCloseTo(6.6, 9);
    const gauge = layout === null ? null : holeNamed(layout, "b/clamp@face").gauge;
    expect(gauge?.finishedSize).toBeCloseTo(6.6 - 2 * 0.08, 9);
    expect(gauge?.goSize).toBeCloseTo(6.35, 9);
  });
});

describe("painted before cutting", () => {
  test("no paint comes into the holes: they are cut at finished size", () => {
    const panel = panelOf({
      ...FREE,
      stack: ["{ layer: face, sheet: opal, finish: painted-sheet }"],
      components: ["a: { part: toggle-6, at: centre }"],
    });
    const finished =
      panel.layout === null ? Number.NaN : size(holeNamed(panel.layout, "a/clamp@face").contour)[0];
    expect(sizes(panel, "face", "a/clamp@face").cut[0]).toBeCloseTo(finished, 9);
    expect(sizes(panel, "face", "outline").cut[0]).toBeCloseTo(146.05, 9);
  });
});

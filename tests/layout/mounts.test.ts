// Sizes and holes of the mounts, held against the standards' own figures.

import { describe, expect, test } from "vitest";
import { containsPoint } from "../../src/geometry/containment.ts";
import { point } from "../../src/geometry/contour.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { codes, holeNamed, layerNamed, layoutOf, panelOf } from "./bench-panel.ts";

const ONE_SHEET = ["{ layer: face, sheet: metal }"];

const framed = (mount: string, height: string, more: readonly string[] = []): PanelLayout =>
  layoutOf({ mount, height, stack: ONE_SHEET, fixings: "", more });

const columns = (layout: PanelLayout): readonly number[] => [
  ...new Set(layout.mountHoles.map(({ at }) => at.x)),
];
const rows = (layout: PanelLayout): readonly number[] => [
  ...new Set(layout.mountHoles.map(({ at }) => at.y)),
];

describe("console rail", () => {
  // MS25212 and MIL-F-25173A, secondary copies: 146.05 wide, modules of 9.525, stud columns 136.525 apart.
  const six = framed("console-rail", "6 modules");

  test("six modules are 146.05 x 57.15, round which a tape measures 406.4", () => {
    expect(six.nominal.maxX).toBe(146.05);
    expect(six.nominal.maxY).toBe(57.15);
    expect(2 * (six.nominal.maxX + six.nominal.maxY)).toBeCloseTo(406.4, 9);
  });

  test("stud columns lie 136.525 apart, 4.7625 from the sides, rows half a module from the ends", () => {
    const [left = 0, right = 0] = columns(six);
    expect(right - left).toBeCloseTo(136.525, 9);
    expect(left).toBeCloseTo(4.7625, 9);
    expect(rows(six)[0]).toBeCloseTo(4.7625, 9);
    expect(rows(six).at(-1)).toBeCloseTo(57.15 - 4.7625, 9);
  });

  test("is cut 0.15 to 0.2 under nominal on each side (common practice)", () => {
    const { minX, maxX, minY, maxY } = contourExtent(six.outline);
    for (const gap of [minX, minY, 146.05 - maxX, 57.15 - maxY]) {
      expect(gap).toBeGreaterThanOrEqual(0.15);
      expect(gap).toBeLessThanOrEqual(0.2);
    }
  });

  test.each([1, 2, 5, 14, 15, 30, 44])(
    "%i modules have whole studs on the pitch, no two rows further apart than 14",
    (count) => {
      const found = rows(framed("console-rail", `${count} modules`)).toSorted((a, b) => a - b);
      expect(found[0]).toBeCloseTo(4.7625, 9);
      expect(found.at(-1)).toBeCloseTo(Math.max(4.7625, 9.525 * count - 4.7625), 9);
      found.slice(1).forEach((row, index) => {
        const step = (row - (found[index] ?? 0)) / 9.525;
        expect(Math.abs(step - Math.round(step))).toBeLessThan(1e-9);
        expect(Math.round(step)).toBeLessThanOrEqual(14);
      });
    },
  );

  test("an acrylic backing gets 7.0 holes, the right column slotted along x", () => {
    // "stud holes 7.0 with one column slotted" in painted acrylic: common practice.
    const layout = layoutOf({
      height: "6 modules",
      stack: ["{ layer: back, sheet: black }"],
      fixings: "",
    });
    const size = (id: string): readonly [number, number] => {
      const box = contourExtent(holeNamed(layout, id).contour);
      return [box.maxX - box.minX, box.maxY - box.minY];
    };
    expect(size("mount.1.left/mount@back")).toEqual([expect.closeTo(7, 9), expect.closeTo(7, 9)]);
    expect(size("mount.1.right/mount@back")).toEqual([
      expect.closeTo(7.4, 9),
      expect.closeTo(7, 9),
    ]);
  });

  test("the face before it opens for the studs' heads: a notch at each corner, not a sliver", () => {
    const layout = layoutOf({ height: "6 modules" });
    const face = layerNamed(layout, "face");
    for (const { at } of layout.mountHoles) {
      expect(containsPoint(layout.outline, at)).toBe(true);
      expect(containsPoint(face.outline, at)).toBe(false);
      // Open to the corner as well: nothing thin is left outside the head's room.
      expect(containsPoint(face.outline, point(at.x < 73 ? 1 : 145, at.y < 28 ? 1 : 56))).toBe(
        false,
      );
      expect(containsPoint(face.outline, point(at.x < 73 ? 12 : 134, at.y))).toBe(true);
    }
    expect(face.cutOuts.filter(({ purpose }) => purpose === "mount")).toEqual([]);
  });
});

describe("19-inch rack", () => {
  // IEC 60297-3-100, EIA/ECA-310: 482.6 wide, holes 465.1 apart, n units are 44.45 n - 0.79 high.
  test.each([
    [1, 43.66],
    [2, 88.11],
    [3, 132.56],
    [4, 177.01],
  ])("%i U are %f high", (units, height) => {
    const layout = framed("rack-19", `${units} U`);
    expect(layout.nominal.maxX).toBe(482.6);
    expect(layout.nominal.maxY).toBe(height);
    const [left = 0, right = 0] = columns(layout);
    expect(right - left).toBeCloseTo(465.1, 9);
  });

  test.each([1, 2, 3, 4, 6])(
    "holes of %i U stand on the rail's own: 6.35 from the unit's edge, then 15.875, 15.875, 12.7",
    (units) => {
      const onRail = Array.from({ length: units }, (_, unit) =>
        [6.35, 22.225, 38.1].map((at) => 44.45 * unit + at),
      ).flat();
      // The panel is 0.79 lower than its units, half of it at each end.
      for (const row of rows(framed("rack-19", `${units} U`)))
        expect(Math.min(...onRail.map((at) => Math.abs(at - (row + 0.395))))).toBeLessThan(1e-9);
    },
  );

  test("the rails cover (482.6 - 450) / 2 at each side", () => {
    expect(framed("rack-19", "3 U").rails).toEqual([
      { minX: 0, minY: 0, maxX: expect.closeTo(16.3, 9), maxY: 132.56 },
      { minX: expect.closeTo(466.3, 9), minY: 0, maxX: 482.6, maxY: 132.56 },
    ]);
  });
});

describe("subrack", () => {
  // IEC 60297-3-101: 3U panels are 128.5 high, rows 122.5 apart and 3 from the edges, first hole 7.5 from the left, pitch 5.08.
  test("rows 122.5 apart, 3 mm from both edges", () => {
    const layout = framed("subrack-3u", "128.5 mm", ["width: 12 HP"]);
    expect(layout.nominal.maxY).toBe(128.5);
    expect(rows(layout)).toEqual([3, 125.5]);
    expect(columns(layout)[0]).toBe(7.5);
  });

  // The second column stands n - 3 pitches from the first; agreeing secondary copies of IEC 60297-3-101.
  test.each([4, 6, 8, 10, 12, 14, 21, 42, 84])(
    "%i HP: the last column lies n - 3 pitches from the first",
    (pitches) => {
      const layout = framed("subrack-3u", "128.5 mm", [`width: ${pitches} HP`]);
      expect(columns(layout).at(-1)).toBeCloseTo(7.5 + (pitches - 3) * 5.08, 9);
      // n x 5.08 - 0.5 <= width < n x 5.08.
      expect(layout.nominal.maxX).toBeGreaterThanOrEqual(pitches * 5.08 - 0.5);
      expect(layout.nominal.maxX).toBeLessThan(pitches * 5.08);
    },
  );
});

describe("corner screws and box lid", () => {
  test("a screw near each corner, holes by ISO 273 medium for M3", () => {
    const layout = framed("corner-screws", "80 mm", ["width: 120 mm"]);
    expect(layout.mountHoles.map(({ at }) => [at.x, at.y])).toEqual([
      [7, 7],
      [113, 7],
      [7, 73],
      [113, 73],
    ]);
    const box = contourExtent(holeNamed(layout, "mount.1.left/mount@face").contour);
    expect(box.maxX - box.minX).toBeCloseTo(3.4, 9);
  });

  test("a lid rests on four walls", () => {
    const layout = framed("box-lid", "80 mm", ["width: 120 mm"]);
    expect(layout.rails).toEqual([
      { minX: 0, minY: 0, maxX: 10, maxY: 80 },
      { minX: 110, minY: 0, maxX: 120, maxY: 80 },
      { minX: 0, minY: 0, maxX: 120, maxY: 10 },
      { minX: 0, minY: 70, maxX: 120, maxY: 80 },
    ]);
  });
});

describe("sizes that can't be", () => {
  test.each([
    ["console-rail", "0.3 mm", "layout/size-too-small"],
    ["console-rail", "11 m", "layout/size-too-large"],
    ["console-rail", "3 U", "layout/size-unit"],
    ["corner-screws", "80 mm", "layout/size-missing"],
  ])("%s of %s", (mount, height, code) => {
    const panel = panelOf({ mount, height });
    expect(panel.layout).toBeNull();
    expect(codes(panel.findings)).toEqual([code]);
  });

  test.each([
    ["rack-19", "2 U", "width: 300 mm"],
    ["rack-19", "2 U", "width: 20 HP"],
    ["console-rail", "10 modules", "width: 120 mm"],
    ["subrack-3u", "6 U", "width: 20 HP"],
    ["subrack-3u", "100 mm", "width: 20 HP"],
    ["subrack-3u", "3 modules", "width: 20 HP"],
  ])(
    "%s %s high with %s: what the mount settles is not dropped in silence",
    (mount, height, width) => {
      const panel = panelOf({ mount, height, more: [width] });
      expect(panel.layout).toBeNull();
      expect(codes(panel.findings)).toEqual(["layout/size-fixed"]);
    },
  );

  test.each([
    ["rack-19", "2 U", "width: 482.6 mm"],
    ["rack-19", "2 U", "width: 19 in"],
    ["console-rail", "10 modules", "width: 5 3/4 in"],
    ["subrack-3u", "3 U", "width: 20 HP"],
    ["subrack-3u", "128.5 mm", "width: 20 HP"],
  ])("%s %s high with %s says what the mount says", (mount, height, width) => {
    expect(panelOf({ mount, height, more: [width] }).layout).not.toBeNull();
  });
});

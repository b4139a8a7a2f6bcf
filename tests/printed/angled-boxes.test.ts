// Angled boxes: volumes by hand, one closed solid of any footprint, the panel's place on its face, and what has no room.

import fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import { containsContour } from "../../src/geometry/containment.ts";
import { contourDistance } from "../../src/geometry/distance.ts";
import { contourArea, contourExtent } from "../../src/geometry/measure.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { recipeExtent } from "../../src/geometry/solid/recipe-extent.ts";
import { recipeVolume } from "../../src/geometry/solid/recipe-volume.ts";
import { type AngledBoxPart, isAngledBoxPart } from "../../src/parts/printed/angled-box-facts.ts";
import { angledBoxesOf } from "../../src/parts/printed/angled-boxes.ts";
import { spacerOutline } from "../../src/parts/printed/spacer-outline.ts";
import { openKernel } from "../support/kernel.ts";
import { laidPanel } from "./fitted-panel.ts";
import { printed } from "./trim-solid-check.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await openKernel();
});

const OBLONG = "[[0, 0], [100, 0], [100, 75], [0, 75]]";

const standing = (box: string, keys: Readonly<Record<string, string>> = {}) => {
  const laid = laidPanel({
    mount: "box-lid",
    width: "76 mm",
    height: "64 mm",
    stack: "[{ layer: face, sheet: metal-2 }]",
    box,
    ...keys,
  });
  const made = angledBoxesOf(laid.layout, laid.context);
  return { ...laid, ...made, box: made.parts.find(isAngledBoxPart) };
};

const soundBox = (box: AngledBoxPart | undefined): AngledBoxPart => {
  if (box === undefined) throw new Error("no box");
  return box;
};

const codes = (findings: readonly { readonly code: string }[]): readonly string[] =>
  findings.map(({ code }) => code);

/**
 * Face, bosses, flange and walls of the oblong box with the panel of 76 x 64. Walls of 5 lines, 2.25: 95.5 x 70.5 inside.
 * An offset of d with round corners adds P d + pi d² (Steiner). Walls under a plane hold their area times the plane's height
 * over its centroid.
 */
const oblongVolume = (slope: number): number => {
  const cosine = Math.cos((slope * Math.PI) / 180);
  const tangent = Math.tan((slope * Math.PI) / 180);
  const grown = (width: number, height: number, by: number): number =>
    width * height + 2 * (width + height) * by + Math.PI * by * by;
  const inside = 95.5 * 70.5;
  const middle = 30 + 37.5 * tangent;
  // Flange 3 thick with M4 clearance, 4.5 and 0.3 for the printer: two holes on each side of 100, one on each of 75.
  const flange = 3 * (grown(100, 75, 12) - inside - 6 * Math.PI * 2.4 ** 2);
  const walls = (100 * 75 - inside) * (middle - 3);
  // Opening: the mount's seat of 10 a side, corners of 3: a boss of 4.6 at (6, 6) keeps 0.4 from a corner at 6 + 5 / sqrt 2 =
  // 9.54 already. Insert M3 of 5.7: pilot 4.3, 6.7 deep, 2 below.
  const opening = 56 * 44 - (4 - Math.PI) * 9;
  const pilot = Math.PI * 2.15 ** 2;
  const face = 3 * (grown(100, 75 / cosine, 1.5) - opening - 4 * pilot);
  const bosses = 4 * (Math.PI * 4.6 ** 2 * (6.7 + 2 - 3) - pilot * (6.7 - 3));
  return flange + walls + face + bosses;
};

// The walls go 0.02 into the face, on purpose: 0.02 of 767 mm² is 15 mm³, 0.03 %.
test.each([0, 15, 30, 45])(
  "a box with a face at %i degrees has the volume that it has by hand",
  (slope) => {
    const { box, findings } = standing(
      `{ footprint: ${OBLONG}, slope: ${slope} deg, rise: 30 mm }`,
    );
    expect(findings).toEqual([]);
    const volume = recipeVolume(soundBox(box).bodies[0]!.solid);
    const bite = (0.02 * (100 * 75 - 95.5 * 70.5)) / Math.cos((slope * Math.PI) / 180);
    expect(volume - bite).toBeCloseTo(oblongVolume(slope), 3);
    expect(bite / volume).toBeLessThan(1e-3);
    const mesh = printed(soundBox(box), kernel);
    expect(mesh).toMatchObject({ faults: [], shells: 1, recipe: [] });
    expect(mesh.strays).toBeLessThan(1e-3);
  },
);

const FOOTPRINTS: Readonly<Record<string, string>> = {
  "cut corners": "[[10, 0], [95, 0], [115, 40], [90, 80], [5, 90], [-10, 35]]",
  "a corner toward the operator": "[[60, -60], [200, 50], [60, 160], [-80, 50]]",
  "a corner that turns in": "[[0, 0], [160, 0], [160, 110], [80, 95], [0, 110]]",
};

describe("a footprint with", () => {
  test.each(Object.entries(FOOTPRINTS))("%s is one closed solid", (_, footprint) => {
    const { box, findings } = standing(`{ footprint: ${footprint}, slope: 20 deg, rise: 40 mm }`);
    expect(findings).toEqual([]);
    const mesh = printed(soundBox(box), kernel);
    expect(mesh).toMatchObject({ faults: [], shells: 1, recipe: [] });
    expect(mesh.strays).toBeLessThan(1e-3);
  });

  test("any convex corners is one closed solid (20 random ones)", () => {
    // Angles in order round a centre, on a circle: always convex.
    const corners = fc
      .uniqueArray(fc.integer({ min: 0, max: 359 }), { minLength: 5, maxLength: 9 })
      .map((angles) => angles.toSorted((a, b) => a - b))
      .filter((angles) =>
        angles.every((angle, at) => {
          const step = (angles[(at + 1) % angles.length]! - angle + 360) % 360;
          return step > 12 && step < 95;
        }),
      );
    let made = 0;
    fc.assert(
      fc.property(corners, fc.integer({ min: 0, max: 40 }), (angles, slope) => {
        const written = angles
          .map((angle) => (angle * Math.PI) / 180)
          .map((a) => `[${(95 * Math.cos(a)).toFixed(3)}, ${(95 * Math.sin(a)).toFixed(3)}]`);
        const { box } = standing(
          `{ footprint: [${written.join(", ")}], slope: ${slope} deg, rise: 30 mm }`,
          { width: "60 mm", height: "50 mm" },
        );
        if (box === undefined) return;
        made += 1;
        const mesh = printed(box, kernel);
        expect(mesh.faults).toEqual([]);
        expect(mesh.shells).toBe(1);
        expect(mesh.strays).toBeLessThan(1e-3);
      }),
      { numRuns: 20, seed: 20261002 },
    );
    // The others have too small a face.
    expect(made).toBeGreaterThan(12);
  });
});

describe("the box", () => {
  const { box, layout } = standing(`{ footprint: ${OBLONG}, slope: 30 deg, rise: 30 mm }`);
  const { angledBox: fact, facts } = soundBox(box);

  test("has walls of whole lines that keep light in", () => {
    expect(fact.lines).toBe(5);
    expect(fact.wall).toBeCloseTo(5 * 0.45, 9);
    expect(facts.walls).toMatchObject([{ kind: "box", lines: 5 }]);
    expect(fact.wall).toBeGreaterThanOrEqual(1.35);
  });

  // 30 + 75 tan 30 = 73.301.
  test("rises with its slope", () => {
    expect(fact.low).toBe(30);
    expect(fact.high).toBeCloseTo(73.301, 3);
  });

  test("carries the panel on its face: front against rear, holes over inserts, opening inside", () => {
    expect(recipeExtent(soundBox(box).bodies[0]!.solid).maxZ).toBe(layout.layers.at(-1)!.rear);
    expect(facts.bosses.map(({ at }) => at)).toEqual(layout.mountHoles.map(({ at }) => at));
    expect(containsContour(fact.face.outline, layout.outline)).toBe(true);
    expect(containsContour(layout.outline, fact.face.opening)).toBe(true);
    // The mount's seat of 10 less the panel's undersize of 0.25.
    expect(fact.face.seat).toBeCloseTo(9.75, 6);
    for (const { insert, depth, below } of facts.bosses) {
      // Heat-set bosses: hole = insert + 0.5 to 1, 2 mm solid below (common practice).
      expect(depth - insert!).toBeCloseTo(1, 9);
      expect(below).toBeGreaterThanOrEqual(2);
    }
  });

  test("stands on a flange whose screws lie in it, outside the walls", () => {
    expect(fact.flange.holes).toHaveLength(6);
    for (const { x, y } of fact.flange.holes) {
      const off = Math.max(-x, x - 100, -y, y - 75);
      expect(off).toBeCloseTo(6, 9);
    }
    const none = standing(`{ footprint: ${OBLONG}, rise: 30 mm, flange: 0 mm }`);
    expect(soundBox(none.box).angledBox.flange.holes).toEqual([]);
  });

  // The console's plane is the plane of the box's foot: in the panel it falls off by the slope.
  test("has its foot on the console, slope down from the panel", () => {
    const { minZ } = recipeExtent(soundBox(box).bodies[0]!.solid);
    const cosine = Math.cos(Math.PI / 6);
    const middle = 30 + 37.5 * Math.tan(Math.PI / 6);
    // The far edge of the flange, 37.5 + 12 behind the middle, lies deepest.
    const expected = -2 - 3 - (middle * cosine + 49.5 * Math.sin(Math.PI / 6));
    expect(minZ).toBeCloseTo(expected, 6);
  });
});

test("a stretched footprint stretches the face by the slope's cosine", () => {
  const { box } = standing(`{ footprint: ${OBLONG}, slope: 30 deg, rise: 30 mm }`);
  const { minX, maxX, minY, maxY } = contourExtent(soundBox(box).angledBox.face.outline);
  expect(maxX - minX).toBeCloseTo(100 + 3, 9);
  expect(maxY - minY).toBeCloseTo(75 / Math.cos(Math.PI / 6) + 3, 9);
  expect(contourArea(soundBox(box).angledBox.face.outline)).toBeGreaterThan(0);
});

describe("is not made, and says why,", () => {
  test("where the panel is not screwed to it", () => {
    const keys = { mount: "console-rail", height: "6 modules" };
    const { layout, context } = laidPanel({
      ...keys,
      box: `{ footprint: ${OBLONG}, rise: 30 mm }`,
    });
    expect(codes(angledBoxesOf(layout, context).findings)).toEqual(["parts/angled-box-mount"]);
  });

  test.each([
    ["its corners cross", "[[0, 0], [100, 75], [100, 0], [0, 75]]"],
    ["its corners lie on one line", "[[0, 0], [50, 0], [100, 0]]"],
    ["its walls meet", "[[0, 0], [100, 0], [100, 4], [0, 4]]"],
  ])("where %s", (_, footprint) => {
    const { findings } = standing(`{ footprint: ${footprint}, rise: 30 mm }`);
    expect(codes(findings)).toEqual(["parts/angled-box-footprint"]);
  });

  test("where its face is too small for the panel, or a boss would stand in a wall", () => {
    const small = standing("{ footprint: [[0, 0], [60, 0], [60, 60], [0, 60]], rise: 30 mm }");
    expect(codes(small.findings)).toEqual(["parts/angled-box-face"]);
    // 76 x 64 on 76.2 x 64.2: the boss ends 1.4 inside the panel's edge, the wall 2.25.
    const tight = standing(
      "{ footprint: [[0, 0], [76.2, 0], [76.2, 64.2], [0, 64.2]], rise: 30 mm }",
    );
    expect(codes(tight.findings)).toEqual(["parts/angled-box-face"]);
    expect(tight.findings[0]!.message).toContain("boss");
  });

  test("where a component ends below the console", () => {
    const components = "\n  a: { part: toggle-12, at: centre }";
    const low = standing(`{ footprint: ${OBLONG}, rise: 10 mm }`, { components });
    expect(codes(low.findings)).toEqual(["parts/angled-box-room"]);
    expect(low.findings[0]!.message).toMatch(/a reaches [\d.]+ mm below the console/);
    expect(standing(`{ footprint: ${OBLONG}, rise: 60 mm }`, { components }).findings).toEqual([]);
  });

  test("where a component does not pass the face's opening", () => {
    const components = "\n  a: { part: toggle-12, at: { left: 14 mm, y: centre } }";
    const { findings } = standing(`{ footprint: ${OBLONG}, rise: 60 mm }`, { components });
    expect(codes(findings)).toEqual(["parts/angled-box-room"]);
    expect(findings[0]!.message).toContain("opening");
  });

  test("where it is larger than the printer's bed", () => {
    const wide = "[[0, 0], [260, 0], [260, 75], [0, 75]]";
    const laid = laidPanel(
      {
        mount: "box-lid",
        width: "76 mm",
        height: "64 mm",
        stack: "[{ layer: face, sheet: metal-2 }]",
        box: `{ footprint: ${wide}, rise: 30 mm }`,
      },
      "machines: { printer: { type: printer, bed: [220, 220, 250], line: 0.45 mm, layer: 0.2 mm } }",
    );
    const { findings } = angledBoxesOf(laid.layout, laid.context);
    expect(codes(findings)).toEqual(["parts/no-split"]);
  });
});

test("a spacer behind the panel passes the face's opening, a loose fit a side", () => {
  const { box, layout } = standing(`{ footprint: ${OBLONG}, slope: 15 deg, rise: 40 mm }`);
  const { opening } = soundBox(box).angledBox.face;
  const spacer = spacerOutline(layout);
  if (spacer === null) throw new Error("the panel has room for a spacer");
  expect(containsContour(opening, spacer)).toBe(true);
  // 0.4: loose, 0.3 to 0.5 a side (common practice for printed parts).
  expect(contourDistance(opening, spacer).gap).toBeCloseTo(0.4, 6);
});

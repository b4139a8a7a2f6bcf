// Where a dragged thing comes to rest. Every expected place is worked out by hand from the boxes.

import { describe, expect, test } from "vitest";
import { extent } from "../../src/geometry/extent.ts";
import { type SnapScene, snapped } from "../../viewer/panel/snap.ts";

/** A thing of 10 by 10 about its axis. */
const thing = (id: string, x: number, y: number) => ({
  id,
  at: { x, y },
  box: extent(x - 5, y - 5, x + 5, y + 5),
});

const scene = (
  moving: ReturnType<typeof thing>,
  still: SnapScene["still"],
  grid = 0.5,
): SnapScene => ({
  moving,
  still,
  panel: extent(0, 0, 200, 100),
  grid,
  stated: moving.at,
  reach: 1,
});

describe("the grid", () => {
  test("is of the number that the design states: 37.2 from the top becomes 35.5, not 35.7", () => {
    // From the top the number shrinks on the way up: minus 37.2 and 1.6 is minus 35.6, on the half minus 35.5.
    const stated = { x: 20, y: -37.2 };
    const { y } = snapped({ x: 0, y: 1.6 }, { ...scene(thing("a", 20, 30.1), []), stated });
    expect(y).toBeCloseTo(37.2 - 35.5, 9);
  });

  test("is of the place, not of the shift", () => {
    const { x, y, guides } = snapped({ x: 3.1, y: -2.3 }, scene(thing("a", 20.2, 30.1), []));
    // 20.2 + 3.1 = 23.3, on the half 23.5; 30.1 - 2.3 = 27.8, on the half 28.
    expect(20.2 + x).toBeCloseTo(23.5, 9);
    expect(30.1 + y).toBeCloseTo(28, 9);
    expect(guides).toEqual([]);
  });

  test("may be a thirty-second of an inch", () => {
    const grid = 25.4 / 32;
    const { x } = snapped({ x: 1, y: 0 }, scene(thing("a", 20, 30), [], grid));
    expect((20 + x) / grid).toBeCloseTo(Math.round(21 / grid), 9);
  });
});

describe("lines", () => {
  const other = thing("b", 60, 70);
  test("the centre of another one, with the number of the line", () => {
    const { x, guides } = snapped({ x: 39.4, y: 3 }, scene(thing("a", 20, 30), [other]));
    expect(20 + x).toBeCloseTo(60, 9);
    expect(guides[0]).toMatchObject({ kind: "line", axis: "x", value: 60, by: "b" });
  });

  test("the centre, where an edge lies nearer by a hair", () => {
    // Centre to centre 60 - 20 = 40, left edge to left edge 55 - 14.9 = 40.1; both within reach of 40.2.
    const wide = { id: "a", at: { x: 20, y: 30 }, box: extent(14.9, 28, 25.1, 32) };
    for (const asked of [39.9, 40.04, 40.2]) {
      const { x, guides } = snapped({ x: asked, y: 9.2 }, scene(wide, [other]));
      expect(x).toBeCloseTo(40, 9);
      expect(guides[0]).toMatchObject({ kind: "line", value: 60 });
    }
  });

  test("the middle of the panel too goes before an edge", () => {
    // 100 - 20 = 80; the other one's left edge at 95.2, its own at 15: 80.2.
    const beside = thing("b", 100.2, 70);
    const { x } = snapped(
      { x: 80.15, y: 9.2 },
      scene(thing("a", 20, 30), [{ ...beside, at: { x: 140, y: 70 } }]),
    );
    expect(20 + x).toBeCloseTo(100, 9);
  });

  test("its edge, where the sizes differ", () => {
    const small = { id: "a", at: { x: 20, y: 30 }, box: extent(18, 28, 22, 32) };
    const { x, guides } = snapped({ x: 36.7, y: 9.2 }, scene(small, [other]));
    // Left edge to left edge: 55 - 18 = 37.
    expect(x).toBeCloseTo(37, 9);
    expect(guides[0]).toMatchObject({ kind: "line", value: 55 });
  });

  test("the middle of the panel", () => {
    const { x, y } = snapped({ x: 79.5, y: 20.6 }, scene(thing("a", 20, 30), []));
    expect([20 + x, 30 + y]).toEqual([100, 50]);
  });

  test("beyond reach there is only the grid", () => {
    const { x, guides } = snapped({ x: 38.8, y: 9.2 }, scene(thing("a", 20, 30), [other]));
    expect(20 + x).toBeCloseTo(59, 9);
    expect(guides).toEqual([]);
  });
});

describe("equal gaps", () => {
  test("between two, both gaps told", () => {
    const still = [thing("l", 20, 30), thing("r", 83, 30)];
    const { x, guides } = snapped({ x: 1.2, y: 0 }, scene(thing("a", 50, 33), still));
    // Free between 25 and 78: 53, less its own 10, is 21.5 a side; its centre at 51.5.
    expect(50 + x).toBeCloseTo(51.5, 9);
    const gaps = guides.filter(({ kind }) => kind === "gap");
    expect(gaps).toHaveLength(2);
    for (const gap of gaps)
      expect(gap.kind === "gap" ? gap.to - gap.from : Number.NaN).toBeCloseTo(21.5, 9);
  });

  test("going on with the gap of two neighbours", () => {
    const still = [thing("l", 20, 30), thing("m", 43, 30)];
    const { x } = snapped({ x: 0.4, y: 0.2 }, scene(thing("a", 65.8, 33), still));
    // 13 between l and m: from 48 to 61, its centre at 66.
    expect(65.8 + x).toBeCloseTo(66, 9);
  });

  test("what is not in its way counts for nothing", () => {
    const still = [thing("l", 20, 80), thing("r", 83, 80)];
    const { guides } = snapped({ x: 1.2, y: 0 }, scene(thing("a", 50, 33), still));
    expect(guides.filter(({ kind }) => kind === "gap")).toEqual([]);
  });
});

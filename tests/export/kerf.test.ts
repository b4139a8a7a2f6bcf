// Kerf against the worked example of a cutting bureau's guide: with a kerf of 0.2 a rectangle of 2.0 x 4.0 cut on the line gives
// an opening of 2.2 x 4.2 and a piece of 1.8 x 3.8, so an opening of 2.0 x 4.0 is drawn 1.8 x 3.8 and such a piece 2.2 x 4.2.

import { describe, expect, test } from "vitest";
import { compensate, kerfResidual } from "../../src/export/kerf.ts";
import { machinePaths } from "../../src/export/machine-paths.ts";
import { circle, loop, point, vertex } from "../../src/geometry/contour.ts";
import { extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import { contourExtent, regionArea } from "../../src/geometry/measure.ts";
import { mm } from "../../src/geometry/quantity.ts";
import type { Operation, SetUp } from "../../src/parts/sheet-part.ts";
import { FRONT_UP, KERF, OPERATIONS } from "./bureau-plate.ts";

const named = (feature: string): Operation => {
  const found = OPERATIONS.find((operation) => operation.feature === feature);
  if (found === undefined) throw new Error(`no ${feature}`);
  return found;
};

const lineOf = (
  operation: Operation,
  setUp: Pick<SetUp, "kerf" | "machine"> = FRONT_UP,
): Operation => {
  const result = compensate(operation, setUp);
  if (result.kind === "refusal") throw new Error(result.why);
  return result.operation;
};

const sizeOf = (operation: Operation): readonly [number, number] => {
  if (operation.kind !== "cut") throw new Error("not a cut");
  const box = contourExtent(operation.contour);
  return [extentWidth(box), extentHeight(box)];
};

const expectSize = (operation: Operation, width: number, height: number): void => {
  const [across, up] = sizeOf(operation);
  expect(across).toBeCloseTo(width, 9);
  expect(up).toBeCloseTo(height, 9);
};

describe("the cutting bureau's example", () => {
  test("an opening of 2 x 4 is drawn 1.8 x 3.8, a piece of 2 x 4 is drawn 2.2 x 4.2", () => {
    expectSize(lineOf(named("opening")), 1.8, 3.8);
    expectSize(lineOf(named("piece")), 2.2, 4.2);
  });

  test("a 146.05 x 57.15 plate with 6.6 holes: lines 146.25 x 57.35 and 6.4", () => {
    expectSize(lineOf(named("outline")), 146.25, 57.35);
    expectSize(lineOf(named("stud-1")), 6.4, 6.4);
  });

  test("left to the cutter, lines are the edges themselves", () => {
    const setUp = { ...FRONT_UP, kerf: { kind: "left-to-cutter" } } as const;
    for (const operation of OPERATIONS) expect(lineOf(operation, setUp)).toBe(operation);
  });
});

describe("what kerf leaves alone", () => {
  test("a drilled hole and a stroke stay", () => {
    for (const feature of ["pilot", "bracket", "witness"])
      expect(lineOf(named(feature))).toBe(named(feature));
  });

  test("engraved areas shrink by half the spot: a ring of radii 3 and 2 by 0.075 on both sides", () => {
    const fill = lineOf(named("legend"));
    if (fill.kind !== "fill") throw new Error("not a fill");
    const areas = fill.regions.map(regionArea).toSorted((a, b) => b - a);
    // π (2.925² - 2.075²) and 5.85 x 0.85, by hand.
    expect(areas[0]).toBeCloseTo(Math.PI * (2.925 ** 2 - 2.075 ** 2), 2);
    expect(areas[1]).toBeCloseTo(5.85 * 0.85, 2);
  });

  test("the mean kerf leaves half the difference of the axes on each side", () => {
    const residual = kerfResidual(KERF);
    expect(residual.x).toBeCloseTo(0.005, 12);
    expect(residual.y).toBeCloseTo(-0.005, 12);
    expect(kerfResidual({ kind: "left-to-cutter" })).toEqual({ x: 0, y: 0 });
  });
});

describe("refusals", () => {
  const cutOf = (
    feature: string,
    process: "cut-inner" | "cut-outer",
    radius: number,
  ): Operation => ({
    kind: "cut",
    process,
    feature,
    centre: point(20, 20),
    contour: circle(point(20, 20), radius),
  });
  const refusalsOf = (operations: readonly Operation[]): readonly string[] => {
    const paths = machinePaths({ ...FRONT_UP, operations });
    return paths.kind === "refused"
      ? paths.refusals.map(({ reason, feature }) => `${reason} ${feature}`)
      : [];
  };

  test("an opening that the kerf fills has no line", () => {
    expect(refusalsOf([cutOf("pinhole", "cut-inner", 0.1)])).toEqual(["kerf-offset pinhole"]);
    expect(refusalsOf([cutOf("hole", "cut-inner", 0.11)])).toEqual([]);
  });

  test("engraving thinner than the spot would vanish", () => {
    const thin = loop([vertex(0, 0), vertex(9, 0), vertex(9, 0.14), vertex(0, 0.14)]);
    const fill: Operation = {
      kind: "fill",
      process: "engrave",
      feature: "hair",
      regions: [{ outline: thin, holes: [] }],
    };
    expect(refusalsOf([fill])).toEqual(["engraving-vanishes hair"]);
  });

  test("two cuts on one line are refused, whoever made them", () => {
    expect(refusalsOf([cutOf("one", "cut-inner", 3), cutOf("two", "cut-inner", 3)])).toEqual([
      "same-line two",
    ]);
  });

  test("a line over the sheet's edge is refused, at the last digit of the file", () => {
    const sheet = { ...FRONT_UP.sheet, minX: mm(20 - 5.1) };
    const reasons = (minX: number): number => {
      const paths = machinePaths({
        ...FRONT_UP,
        sheet: { ...sheet, minX: mm(minX) },
        operations: [cutOf("outline", "cut-outer", 5)],
      });
      return paths.kind === "refused" ? paths.refusals.length : 0;
    };
    expect(reasons(14.9)).toBe(0);
    expect(reasons(14.901)).toBe(1);
  });
});

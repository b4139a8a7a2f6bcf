import { expect, test } from "vitest";
import {
  RACK,
  rackHoleRows,
  rackPanelHeight,
  rackUprightHoles,
  SUBRACK,
  subrackPanelWidths,
} from "../../src/standards/rack.ts";

// IEC 60297-3-100 / EIA/ECA-310: n units are 44.45 n - 0.79 high.
test.each([
  [1, 43.66],
  [2, 88.11],
  [3, 132.56],
  [4, 177.01],
])("%i units are %f mm high", (units, height) => {
  expect(rackPanelHeight(units)).toBeCloseTo(height, 10);
});

test("the three hole steps make one unit, 1 3/4 in", () => {
  expect(RACK.steps[0] + RACK.steps[1] + RACK.steps[2]).toBeCloseTo(RACK.unit, 12);
  expect(RACK.unit).toBeCloseTo(1.75 * 25.4, 10);
  expect(RACK.width).toBeCloseTo(19 * 25.4, 10);
});

// EIA/ECA-310 panel holes: 31.75 (1 1/4 in) apart on one unit, 76.2 (3 in) on two, 57.15 (2 1/4 in) on three, 101.6 (4 in) on four.
test.each([
  [1, 31.75],
  [2, 76.2],
  [3, 57.15],
  [4, 101.6],
])("the holes of %i units are %f mm apart", (units, apart) => {
  const [low, high] = rackHoleRows(units);
  expect(high! - low!).toBeCloseTo(apart, 10);
});

test("every hole lies on the rail's pattern of 15.875, 15.875, 12.7", () => {
  for (let units = 1; units <= 6; units += 1)
    for (const row of rackHoleRows(units)) {
      const inUnit = (row + RACK.less / 2) % RACK.unit;
      const holes = [6.35, 22.225, 38.1];
      expect(
        holes.some((hole) => Math.abs(hole - inUnit) < 1e-9),
        `${units} U at ${row}`,
      ).toBe(true);
    }
});

// IEC 60297-3-101: rows 3.0 from each edge of 128.5; n HP are narrower than n pitches by half a millimetre at most.
test("subrack rows and widths", () => {
  expect(SUBRACK.height - 2 * SUBRACK.rowFromEdge).toBe(SUBRACK.rowsApart);
  const { least, under } = subrackPanelWidths(42);
  expect(least).toBeCloseTo(212.86, 10);
  expect(under).toBeCloseTo(213.36, 10);
});

// EIA/ECA-310: the unit begins and ends in the middle of the short step; 15.875, 15.875, 12.7 from hole to hole.
test("a rail of two units has six holes, each on the standard's steps", () => {
  const holes = rackUprightHoles(2);
  expect(holes.map((hole) => Number(hole.toFixed(4)))).toEqual([
    6.35, 22.225, 38.1, 50.8, 66.675, 82.55,
  ]);
  expect(rackUprightHoles(0)).toEqual([]);
});

import { expect, test } from "vitest";
import { mm } from "../../src/geometry/quantity.ts";
import { generalTolerance } from "../../src/standards/general-tolerance.ts";

// ISO 2768-1:1989, table 1: the upper end of each step belongs to it, the next size to the following step.
const STEPS = [
  [0.5, 0.05, 0.1, 0.2],
  [3, 0.05, 0.1, 0.2],
  [3.01, 0.05, 0.1, 0.3],
  [6, 0.05, 0.1, 0.3],
  [6.01, 0.1, 0.2, 0.5],
  [30, 0.1, 0.2, 0.5],
  [30.01, 0.15, 0.3, 0.8],
  [120, 0.15, 0.3, 0.8],
  [120.01, 0.2, 0.5, 1.2],
  [400, 0.2, 0.5, 1.2],
  [400.01, 0.3, 0.8, 2],
  [1000, 0.3, 0.8, 2],
] as const;

test.each(STEPS)("%f mm is ±%f fine, ±%f medium, ±%f coarse (ISO 2768-1)", (size, f, m, c) => {
  expect(generalTolerance(mm(size), "f")).toBe(f);
  expect(generalTolerance(mm(size), "m")).toBe(m);
  expect(generalTolerance(mm(size), "c")).toBe(c);
});

test("the boundary of the standard's own words: 30 is ±0.2 and 30.01 is ±0.3", () => {
  expect(generalTolerance(mm(30), "m")).toBe(0.2);
  expect(generalTolerance(mm(30.01), "m")).toBe(0.3);
});

test("outside the table there is no tolerance", () => {
  expect(generalTolerance(mm(0.49), "m")).toBeNull();
  expect(generalTolerance(mm(1000.01), "m")).toBeNull();
});

// Readings of the laser's test piece, by hand: a piece of 20 mm that measures 19.79 was cut with a kerf of 0.21, a slot of 3 mm
// that measures 3.2 with 0.2.

import { expect, test } from "vitest";
import { readLaser } from "../../src/parts/laser-readings.ts";

test("readings that are finer than a caliper are refused, not rounded", () => {
  const read = readLaser({ "square-x": 19.79, "square-y": 19.7812 }, null);
  expect(read.kind === "refused" ? read.why : []).toEqual([
    "square-y: 19.7812 mm is finer than a caliper reads (0.001 mm); 19.781 mm can be entered",
  ]);
});

test("a mean of readings is kept as it was worked out", () => {
  const read = readLaser({ "square-x": 19.79, "slot-x": 3.205, "square-y": 19.8 }, null);
  if (read.kind !== "read") throw new Error(read.why.join());
  expect(read.readings.kerf).toEqual([0.2075, 0.2]);
});

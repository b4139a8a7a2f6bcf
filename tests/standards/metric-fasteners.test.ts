import { expect, test } from "vitest";
import { mm } from "../../src/geometry/quantity.ts";
import {
  CLEARANCE_HOLES,
  countersinkDepth,
  ISO_2009_7046,
  ISO_4032,
  ISO_4762,
  ISO_7089,
  ISO_7380_1,
  ISO_10642,
  THREAD_DIAMETER,
} from "../../src/standards/metric-fasteners.ts";

// ISO 273:1979, table: fine, medium, coarse.
const ISO_273 = [
  ["m2", 2.2, 2.4, 2.6],
  ["m2.5", 2.7, 2.9, 3.1],
  ["m3", 3.2, 3.4, 3.6],
  ["m4", 4.3, 4.5, 4.8],
  ["m5", 5.3, 5.5, 5.8],
  ["m6", 6.4, 6.6, 7.0],
  ["m8", 8.4, 9.0, 10],
] as const;

test.each(ISO_273)("clearance holes of %s are those of ISO 273", (thread, fine, medium, coarse) => {
  expect(CLEARANCE_HOLES[thread]).toEqual({ fine, medium, coarse });
});

test("every clearance hole passes its thread, wider by class and by thread", () => {
  const rows = ISO_273.map(([thread]) => ({ thread, hole: CLEARANCE_HOLES[thread] }));
  for (const { thread, hole } of rows) {
    expect(hole.fine).toBeGreaterThan(THREAD_DIAMETER[thread]);
    expect(hole.medium).toBeGreaterThan(hole.fine);
    expect(hole.coarse).toBeGreaterThan(hole.medium);
  }
  const mediums = rows.map(({ hole }) => hole.medium);
  expect(mediums).toEqual(mediums.toSorted((a, b) => a - b));
});

// The theoretical head of ISO 10642 is a 90° cone on the thread: k = (dk - d) / 2 must give the table's own heights.
test.each(Object.entries(ISO_10642))(
  "countersink depth of %s agrees with ISO 10642",
  (thread, head) => {
    const diameter = Object.entries(THREAD_DIAMETER).find(([name]) => name === thread)?.[1];
    expect(countersinkDepth(head.diameter, diameter ?? mm(0))).toBeCloseTo(head.height, 10);
  },
);

test("an M3 head in 3 mm acrylic leaves 1.14 mm under it, by the same formula", () => {
  expect(3 - countersinkDepth(mm(6.72), mm(3))).toBeCloseTo(1.14, 10);
});

// Slotted and cross-recessed heads are other numbers than socket heads of the same thread: ISO 2009 and 7046 against ISO 10642.
test("heads of two norms are not taken for each other", () => {
  expect(ISO_2009_7046.m3).toEqual({ diameter: 6.3, height: 1.65 });
  expect(ISO_10642.m3).toEqual({ diameter: 6.72, height: 1.86 });
  expect(ISO_2009_7046.m4).toEqual({ diameter: 9.4, height: 2.7 });
  expect(ISO_10642.m4).toEqual({ diameter: 8.96, height: 2.48 });
});

test("button and cap heads are those of ISO 7380-1 and ISO 4762", () => {
  expect(ISO_7380_1).toEqual({
    m3: { diameter: 5.7, height: 1.65 },
    m4: { diameter: 7.6, height: 2.2 },
    m5: { diameter: 9.5, height: 2.75 },
    m6: { diameter: 10.5, height: 3.3 },
  });
  expect(ISO_4762).toEqual({
    m3: { diameter: 5.5, height: 3 },
    m4: { diameter: 7, height: 4 },
    m5: { diameter: 8.5, height: 5 },
    m6: { diameter: 10, height: 6 },
  });
});

test("nuts and washers are those of ISO 4032 and ISO 7089", () => {
  expect(ISO_4032.m3).toEqual({ acrossFlats: 5.5, thickness: 2.4 });
  expect(ISO_4032.m6).toEqual({ acrossFlats: 10, thickness: 5.2 });
  expect(ISO_7089.m3).toEqual({ inside: 3.2, outside: 7, thickness: 0.5 });
  expect(ISO_7089.m6).toEqual({ inside: 6.4, outside: 12, thickness: 1.6 });
});

// A washer of ISO 7089 goes over its screw by the fine clearance of ISO 273: the two standards agree.
test.each(Object.entries(ISO_7089))(
  "washer hole of %s is the fine clearance hole",
  (thread, washer) => {
    const hole = Object.entries(CLEARANCE_HOLES).find(([name]) => name === thread)?.[1];
    expect(washer.inside).toBe(hole?.fine);
  },
);

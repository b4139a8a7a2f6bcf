import { expect, test } from "vitest";
import { mm } from "../../src/geometry/quantity.ts";
import {
  CAST_ACRYLIC,
  EXTRUDED_ACRYLIC,
  thicknessDeviation,
} from "../../src/standards/acrylic-thickness.ts";
import { BUSHINGS } from "../../src/standards/bushings.ts";
import { HEAT_SET_BOSS, HEAT_SET_PILOTS } from "../../src/standards/heat-set.ts";
import {
  DEPTH_FROM_FRONT_EDGE,
  KNEE_BOX,
  ROTARY_SELECTOR,
  SEATED_PERSON,
} from "../../src/standards/reach.ts";

// ISO 7823-1: ±(0.4 + 0.1 t): "3 mm" may be 2.3 to 3.7.
test("cast acrylic of 3 mm runs from 2.3 to 3.7", () => {
  const deviation = thicknessDeviation(mm(3), CAST_ACRYLIC);
  expect(3 - deviation).toBeCloseTo(2.3, 12);
  expect(3 + deviation).toBeCloseTo(3.7, 12);
});

// ISO 7823-2: ±10 % below 3 mm, ±5 % from 3 mm up.
test("extruded acrylic changes its rule at 3 mm", () => {
  expect(thicknessDeviation(mm(2.99), EXTRUDED_ACRYLIC)).toBeCloseTo(0.299, 12);
  expect(thicknessDeviation(mm(3), EXTRUDED_ACRYLIC)).toBeCloseTo(0.15, 12);
});

// Inch threads: 1/4, 3/8 and 15/32 in are their major diameters (ASME B1.1 names them so).
test.each([
  ["1/4-40", 25.4 / 4],
  ["3/8-32", (25.4 * 3) / 8],
  ["15/32-32", (25.4 * 15) / 32],
])("the bush of %s is its name in inches", (thread, diameter) => {
  const bushing = BUSHINGS.find((row) => row.thread === thread)!;
  expect(Math.abs(bushing.diameter - diameter)).toBeLessThan(0.01);
});

test("every bush goes into the least hole that its makers ask for", () => {
  for (const { diameter, hole } of BUSHINGS) {
    expect(hole.least).toBeGreaterThan(diameter);
    expect(hole.most).toBeGreaterThanOrEqual(hole.least);
  }
});

// Makers' datasheets of heat-set inserts agree.
test("heat-set pilots", () => {
  expect(HEAT_SET_PILOTS).toEqual({ m3: 4, m4: 5.6, m5: 6.4, m6: 8 });
});

// NUREG-0700 Rev 3, table 11.4, and MIL-STD-1472E, figure 4.
test("people and selectors", () => {
  expect(SEATED_PERSON.functionalReach).toEqual({ small: 677, large: 886 });
  expect(SEATED_PERSON.extendedReach).toEqual({ small: 735, large: 942 });
  expect(SEATED_PERSON.eyeAboveSeat).toEqual({ small: 724, large: 862 });
  expect(ROTARY_SELECTOR.step).toEqual({ least: 15, most: 40 });
  expect(ROTARY_SELECTOR.length).toEqual({ least: 25, most: 100 });
});

// NUREG-0700 Rev 2, 11.1.1-5: 25 in. OSHA workstation guidance: more depth at the foot than at the knee.
test("edges of a console", () => {
  expect(DEPTH_FROM_FRONT_EDGE.most).toBe(25 * 25.4);
  expect(DEPTH_FROM_FRONT_EDGE.most).toBeLessThan(SEATED_PERSON.functionalReach.small);
  expect(KNEE_BOX).toMatchObject({ width: 520, depthAtKnee: 440, depthAtFoot: 600 });
});

// Common practice: a boss twice the insert, room for melt, two millimetres of solid below.
test("bosses of heat-set inserts", () => {
  expect(HEAT_SET_BOSS).toMatchObject({
    outsideOverInsert: 2,
    holeBeyondInsert: { least: 0.5, most: 1 },
    solidBelow: 2,
  });
});

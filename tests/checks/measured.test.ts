// Measured sizes that no part can have. What goes round a thing is wider than it; a length is more than nothing; heights keep
// their side of the seat.

import { expect, test } from "vitest";
import { checked, ofCode } from "./panel.ts";

const found = (part: string, measured: string): readonly string[] =>
  ofCode(
    checked(
      `components:\n  a: { part: ${part}, at: centre, measured: { ${measured}, dated: 2026-01-31 } }\n`,
    ),
    "checks/measured-impossible",
  ).map(({ message }) => message);

test.each([
  ["pot-16", "hold.length: -8 mm", "more than nothing"],
  ["pot-16", "hold.length: 0 mm", "more than nothing"],
  ["pot-16", "shaft.length: -20 mm", "more than nothing"],
  ["pot-16", "shaft.diameter: 12 mm", "thinner than its bush"],
  ["toggle-6", "hold.diameter: 8.5 mm", "thinner than its nut, 8 mm across the flats"],
  ["rotary-12", "bodies.case.from: 22 mm", "less than nothing, as the record's -22 mm"],
])("%s with %s is a fault", (part, measured, why) => {
  expect(found(part, measured).join()).toContain(why);
});

test.each([
  ["pot-16", "hold.length: 9 mm"],
  ["toggle-6", "hold.diameter: 6.2 mm"],
  ["rotary-12", "bodies.case.from: -30 mm"],
])("%s with %s is none", (part, measured) => {
  expect(found(part, measured)).toEqual([]);
});

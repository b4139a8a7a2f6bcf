// What a finding says is missing is enough: moved by just that much, and no less, the finding is gone. Closed form: distances
// to a straight edge add up.

import { expect, test } from "vitest";
import { decimal } from "../../src/geometry/number.ts";
import { checked, ofCode } from "./panel.ts";

const SPACED = `mount: console-rail
height: 12 modules
stack:
  - { layer: face, sheet: plate }
  - { layer: spacer, print: black-petg, depth: 14 mm }
`;

const pot = (left: number): ReturnType<typeof checked> =>
  checked(`components:\n  a: { part: pot-16, at: { left: ${left} mm, y: 60 mm } }\n`, SPACED);

test("a pocket that breaks out says how far it must move, all of it", () => {
  const [found] = ofCode(pot(19), "checks/pocket-breaks");
  const more = found!.limit!.value - found!.measured!.value;
  expect(found!.measured!.value).toBeLessThan(0);
  expect(found!.message).toContain(`${decimal(more, 2)} mm more`);
  expect(ofCode(pot(19 + more + 0.001), "checks/pocket-breaks")).toEqual([]);
  expect(ofCode(pot(19 + more - 0.01), "checks/pocket-breaks")).toHaveLength(1);
});

const BOSSED = `mount: corner-screws
width: 120 mm
height: 80 mm
stack:
  - { layer: face, sheet: plate }
  - { layer: spacer, print: black-petg, depth: 14 mm }
`;

const screwed = (up: number): ReturnType<typeof checked> =>
  checked(
    `fixings: { screws: m3, dowels: 3 mm, at: [{ x: 14 mm, y: 30 mm }, { x: 106 mm, y: 30 mm }, { x: 60 mm, y: ${up} mm }] }
components:\n  a: { part: pot-16, at: { x: 60 mm, y: 40 mm } }\n`,
    BOSSED,
  );

test("a boss that a pocket cuts into past its hole says how far it must move, all of it", () => {
  const [found] = ofCode(screwed(50), "checks/boss-room");
  const more = found!.limit!.value - found!.measured!.value;
  expect(found!.measured!.value).toBeLessThan(0);
  expect(found!.message).toContain(`${decimal(more, 2)} mm more`);
  expect(ofCode(screwed(50 + more + 0.001), "checks/boss-room")).toEqual([]);
  expect(ofCode(screwed(50 + more - 0.01), "checks/boss-room")).toHaveLength(1);
});

test("a knob may be as much wider than its shaft as the workshop says", () => {
  const [found] = ofCode(
    checked("components:\n  a: { part: pot-16, knob: knob-24-quarter, at: centre }\n"),
    "checks/knob-bore",
  );
  expect(found).toMatchObject({
    measured: { value: 6.35 },
    limit: { value: 6.15 },
    source: { kind: "house-rule", key: "knob-play" },
  });
});

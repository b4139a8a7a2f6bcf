import { expect, test } from "vitest";
import {
  ARRAY_SEPARATION,
  type HandKind,
  KEYS_OF_ONE_PAD,
  separation,
} from "../../src/standards/separation.ts";

const TOUCHED: readonly HandKind[] = [
  "push-button",
  "toggle",
  "lever-lock-toggle",
  "rotary-selector",
  "knob",
  "thumbwheel",
  "slide",
  "key-operated",
];

// MIL-STD-1472E Table VII and NUREG-0700 Rev 3 Table 11.5 (they agree where they overlap), as a square so that the
// table's own symmetry is written down twice.
const COLUMNS = [
  "push-button",
  "toggle",
  "thumbwheel",
  "rotary-selector",
  "knob",
  "slide",
] as const;
const TABLE: Readonly<Record<(typeof COLUMNS)[number], readonly number[]>> = {
  "push-button": [13, 13, 13, 13, 13, 13],
  toggle: [13, 19, 13, 19, 19, 19],
  thumbwheel: [13, 13, 13, 19, 19, 13],
  "rotary-selector": [13, 19, 19, 25, 25, 13],
  knob: [13, 19, 19, 25, 25, 13],
  slide: [13, 19, 13, 13, 13, 13],
};

test.each(COLUMNS)(
  "the row of %s is that of NUREG-0700 Table 11.5 / MIL-STD-1472E Table VII",
  (row) => {
    expect(COLUMNS.map((column) => separation(row, column)?.least)).toEqual(TABLE[row]);
  },
);

test("the table is symmetric, and no pair that a hand touches is missing", () => {
  for (const a of TOUCHED)
    for (const b of TOUCHED) {
      expect(separation(a, b), `${a} beside ${b}`).not.toBeNull();
      expect(separation(a, b)).toEqual(separation(b, a));
    }
});

test("what nobody touches needs no room for fingers", () => {
  for (const kind of [...TOUCHED, "none"] as const) expect(separation("none", kind)).toBeNull();
});

// NUREG-0700 Rev 3, Table 11.5, further rows.
test("key-operated switches: 25 to their kind, 13 to a push button, 19 to toggle and knob", () => {
  expect(separation("key-operated", "key-operated")?.least).toBe(25);
  expect(separation("key-operated", "push-button")?.least).toBe(13);
  expect(separation("key-operated", "toggle")?.least).toBe(19);
  expect(separation("key-operated", "knob")?.least).toBe(19);
});

test("figures that stand in no table say so", () => {
  expect(separation("knob", "knob")?.source).toMatch(/from memory, unverified/);
  expect(separation("lever-lock-toggle", "lever-lock-toggle")?.source).toMatch(/from memory/);
  expect(separation("key-operated", "slide")?.source).toMatch(/no published figure/);
  expect(separation("toggle", "toggle")?.source).not.toMatch(/memory/);
});

// NUREG-0700 Rev 3, Table 11.5: arrays stand farther apart than single buttons; keys of one pad (from memory) nearer.
test("arrays and pads", () => {
  expect(ARRAY_SEPARATION).toMatchObject({ betweenGroups: 50, toToggle: 38 });
  const single = separation("push-button", "push-button")!.least;
  expect(ARRAY_SEPARATION.toToggle).toBeGreaterThan(single);
  expect(KEYS_OF_ONE_PAD.least).toBeLessThan(single);
  expect(KEYS_OF_ONE_PAD.source).toMatch(/from memory, unverified/);
});

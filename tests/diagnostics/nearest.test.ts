// Which names a mistyped one may have meant.

import { describe, expect, test } from "vitest";
import { inWords, nearestNames } from "../../src/diagnostics/nearest.ts";

const KEYS = ["part", "at", "legend", "legends", "clamps", "turn", "measured"];

describe("the nearest names", () => {
  test.each([
    ["legned", "legend"], // two letters swapped count as one slip (Damerau 1964, table of single errors)
    ["prat", "part"],
    ["clamp", "clamps"],
    ["mesured", "measured"],
    ["LEGEND", "legend"],
  ])("of %s begin with %s", (written, meant) => {
    expect(nearestNames(written, KEYS)[0]).toBe(meant);
  });

  test("are three at most, each once, in an order that does not depend on that of the names", () => {
    const one = nearestNames("led", ["led-5", "led-3", "knob", "led-5", "toggle"]);
    const other = nearestNames("led", ["toggle", "led-3", "led-5", "knob"]);
    expect(one).toEqual(["led-3", "led-5", "knob"]);
    expect(other).toEqual(one);
  });

  test("know a name by its part", () => {
    const parts = ["pot-16", "toggle-12-locking", "togo"];
    expect(nearestNames("locking", parts, 1)).toEqual(["toggle-12-locking"]);
  });

  test("of nothing are none, and of a very long word come at once", () => {
    expect(nearestNames("a", [])).toEqual([]);
    expect(nearestNames("a".repeat(1_000_000), KEYS)).toHaveLength(3);
  });

  test("are joined as a sentence joins them", () => {
    expect([[], ["a"], ["a", "b"], ["a", "b", "c"]].map((names) => inWords(names))).toEqual([
      "",
      "a",
      "a or b",
      "a, b or c",
    ]);
  });
});

// Numbers as text: no exponent, no negative zero, zeros trimmed only behind the point.

import { describe, expect, it } from "vitest";
import { decimal, fixed } from "../../src/geometry/number.ts";

describe("numbers as text", () => {
  it.each([
    [146.05, 3, "146.05"],
    [12, 4, "12"],
    [100, 0, "100"],
    [-0.00004, 3, "0"],
    [-0.0005, 3, "-0.001"],
    [1e-9, 6, "0"],
    [0.1 + 0.2, 6, "0.3"],
    [123456789012, 2, "123456789012"],
  ])("writes %d to %d places as %s", (value, places, text) => {
    expect(decimal(value, places)).toBe(text);
  });

  it("keeps the zeros where asked", () => {
    expect(fixed(3, 2)).toBe("3.00");
    expect(fixed(-0, 2)).toBe("0.00");
  });

  it("refuses what is no number", () => {
    expect(() => decimal(Number.NaN, 2)).toThrow("finite");
    expect(() => decimal(1e22, 2)).toThrow("1e21");
  });
});

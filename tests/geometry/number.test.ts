// Numbers as text: no exponent, no negative zero, zeros trimmed only behind the point. Digits against Number.toFixed, which
// the language defines by the exact value (ECMA-262, Number.prototype.toFixed).

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decimal, decimalBeside, fixed } from "../../src/geometry/number.ts";

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

  it.each([
    [11.988, 11.99, 2, "11.988", "11.990"],
    [1.25, 1.5, 2, "1.25", "1.5"],
    [3, 3.004, 2, "3.000", "3.004"],
    [15.98, 16, 1, "15.98", "16.00"],
    [0.003, 0, 2, "0.003", "0.000"],
    [19, 19.00000001, 2, "19.00000000", "19.00000001"],
    [19, 19 + 1e-12, 2, "19", "19"],
  ])("tells %d from %d, to %d places where they do", (value, other, places, text, beside) => {
    expect(decimalBeside(value, other, places)).toBe(text);
    expect(decimalBeside(other, value, places)).toBe(beside);
  });

  it("refuses what is no number", () => {
    expect(() => decimal(Number.NaN, 2)).toThrow("finite");
    expect(() => decimal(1e22, 2)).toThrow("1e21");
  });

  const plain = (value: number, places: number): string => {
    const text = value.toFixed(places);
    return /[1-9]/.test(text) ? text : text.replace("-", "");
  };

  const trimmed = (text: string): string =>
    text.includes(".") ? text.replace(/\.?0+$/, "") : text;

  /** Lengths as they come: any double, what is written already, and what lies on or beside half a digit. */
  const anyLength = fc.oneof(
    fc.double({ min: -1e20, max: 1e20, noNaN: true }),
    fc.double({ min: -3000, max: 3000, noNaN: true }),
    fc.integer({ min: -3e8, max: 3e8 }).map((digits) => digits / 1e5),
    fc
      .tuple(fc.integer({ min: -1e6, max: 1e6 }), fc.integer({ min: 0, max: 7 }), fc.nat(2))
      .map(
        ([digits, places, step]) => ((digits + 0.5) / 10 ** places) * (1 + (step - 1) * 2 ** -52),
      ),
  );

  it("writes every number as toFixed does, but for the sign of zero", () => {
    fc.assert(
      fc.property(anyLength, fc.integer({ min: 0, max: 10 }), (value, places) => {
        expect(fixed(value, places)).toBe(plain(value, places));
        expect(decimal(value, places)).toBe(trimmed(plain(value, places)));
      }),
      { seed: 20260131, numRuns: 20_000 },
    );
  });
});

// Numbers read from a file's text against Number itself, which the language defines (ECMA-262, StringToNumber).

import fc from "fast-check";
import { expect, test } from "vitest";
import { numberBetween, numbersBetween } from "../../src/inspection/plain-number.ts";

const digits = fc.string({ unit: fc.constantFrom(..."0123456789"), maxLength: 12 });
const sign = fc.constantFrom("", "-", "+");
const written = fc
  .tuple(sign, digits, fc.constantFrom("", "."), digits)
  .map((parts) => parts.join(""));

test("a number anywhere in a text is the number that it is alone", () => {
  fc.assert(
    fc.property(
      fc.oneof(
        written,
        fc.double({ min: -1e6, max: 1e6, noNaN: true }).map((value) => value.toFixed(6)),
        fc.string({ unit: fc.constantFrom(..."0123456789.+-eE x"), maxLength: 8 }),
      ),
      (text) => {
        const alone = text.trim() === "" ? Number.NaN : Number(text);
        expect(numberBetween(`<${text}>`, 1, 1 + text.length)).toBe(alone);
      },
    ),
    { seed: 20260131, numRuns: 20_000 },
  );
});

test("all numbers of a run, as SVG's grammar tells them apart (SVG 2, 9.3.9)", () => {
  const plain = fc.integer({ min: -99_999, max: 99_999 }).map((value) => String(value / 1000));
  fc.assert(
    fc.property(fc.array(plain), fc.constantFrom(" ", ",", " , ", "\n"), (parts, between) => {
      const text = parts.join(between);
      expect(numbersBetween(`9${text}9`, 1, 1 + text.length)).toEqual(parts.map(Number));
    }),
    { seed: 20260131 },
  );
  expect(numbersBetween("1-2.5+.5 .25.5", 0, 14)).toEqual([1, -2.5, 0.5, 0.25, 0.5]);
  expect(numbersBetween("- . +x", 0, 6)).toEqual([]);
});

// Lines and columns, against a second way of counting them.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lineAndColumn, lineText } from "../../src/diagnostics/position.ts";

describe("line and column", () => {
  test.each([
    ["a: 1\nb: 2", 5, { line: 2, column: 1 }],
    ["a: 1\r\nb: 2", 6, { line: 2, column: 1 }],
    ["a: 1\r\nb: 2", 4, { line: 1, column: 5 }],
    ["\uFEFFa: 1", 1, { line: 1, column: 1 }],
    ["\uFEFFa: 1", 0, { line: 1, column: 1 }],
    ["a: 😀 x", 6, { line: 1, column: 6 }],
    ["a: é x", 5, { line: 1, column: 6 }],
    ["", 0, { line: 1, column: 1 }],
    ["a\n", 99, { line: 2, column: 1 }],
  ])("of %j at %i", (text, offset, position) => {
    expect(lineAndColumn(text, offset)).toEqual(position);
  });

  test("agree with counting the lines before and the characters since", () => {
    const letters = fc.constantFrom("a", " ", "\n", "\r\n", "😀", "é", "°");
    fc.assert(
      fc.property(fc.array(letters), fc.array(letters), (before, after) => {
        const head = before.join("");
        const lines = head.split("\n");
        expect(lineAndColumn(head + after.join(""), head.length)).toEqual({
          line: lines.length,
          column: [...(lines.at(-1) ?? "")].length + 1,
        });
      }),
    );
  });

  test("find the text of a line", () => {
    const text = "\uFEFFone\r\ntwo\nthree";
    expect([1, 2, 3, 4].map((line) => lineText(text, line))).toEqual(["one", "two", "three", ""]);
  });
});

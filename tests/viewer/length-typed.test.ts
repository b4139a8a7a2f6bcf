// A length typed into a field of the page. One inch is 25.4 mm exactly (international yard and pound agreement of 1959).

import { expect, test } from "vitest";
import { lengthTyped } from "../../viewer/panel/length-typed.ts";

test.each([
  ["3/8 in", 9.525],
  ["5 3/4 in", 146.05],
  ["5-3/4 in", 146.05],
  ["1 1/2 in", 38.1],
  ['1 1/2"', 38.1],
  ["12.5 mm", 12.5],
  ["1.2cm", 12],
  ["-0.5 in", -12.7],
  ["33.333333 mm", 33.333333],
])("%s is %d mm, and goes into the text as it was typed", (typed, mm) => {
  const length = lengthTyped(typed, "mm");
  expect(length).toMatchObject({ kind: "length", text: typed });
  expect(length.kind === "length" ? length.mm : Number.NaN).toBeCloseTo(mm, 9);
});

test("a plain number is in the unit of the file, and says so", () => {
  expect(lengthTyped("12", "mm")).toEqual({ kind: "length", text: "12", mm: 12 });
  expect(lengthTyped("2", "in")).toEqual({ kind: "length", text: "2 in", mm: 50.8 });
  expect(lengthTyped(" 3/8 ", "in")).toMatchObject({ kind: "length", text: "3/8 in" });
});

test("what is no length is refused with one that is", () => {
  expect(lengthTyped("wide", "mm")).toEqual({
    kind: "refused",
    why: '"wide" is no length; write 12.5 mm or 3/8 in',
  });
  expect(lengthTyped("3/8", "mm")).toEqual({
    kind: "refused",
    why: '"3/8" has no unit; write 3/8 in',
  });
  for (const typed of ["", "1/0 in", "4 ft", "1e3 mm", "12,5"])
    expect(lengthTyped(typed, "mm").kind).toBe("refused");
});

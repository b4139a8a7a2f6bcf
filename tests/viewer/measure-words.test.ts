// The numbers under a finding's sentence have the sentence's unit. One inch is 25.4 mm exactly.

import { expect, test } from "vitest";
import type { Measure } from "../../src/diagnostics/finding.ts";
import { measureWords, unitOfSentence } from "../../viewer/measure-words.ts";

const mm = (value: number): Measure => ({ value, unit: "mm" });

test("lengths that the sentence tells in inches are in inches", () => {
  // 3/16 in is 4.7625 mm, 1/4 in is 6.35 mm.
  const pair = [mm(4.7625), mm(6.35)];
  const unit = unitOfSentence("the hole is 0.1875 in from the edge and needs 0.25 in", pair);
  expect(pair.map((one) => measureWords(one, unit))).toEqual(["0.1875 in", "0.25 in"]);
});

test("lengths in millimetres, and words that only look like inches, leave millimetres", () => {
  const pair = [mm(4.7625), mm(6.35)];
  for (const sentence of [
    "the hole is 4.763 mm from the edge and needs 6.35 mm",
    "the 4 in this row stand too near: 4.763 mm",
  ])
    expect(unitOfSentence(sentence, [mm(4.763), mm(6.35)])).toBe("mm");
  expect(measureWords(pair[0]!, "mm")).toBe("4.763 mm");
});

test("angles and counts are what they are", () => {
  expect(measureWords({ value: 12.5, unit: "deg" }, "in")).toBe("12.5°");
  expect(measureWords({ value: 3, unit: "count" }, "in")).toBe("3");
});

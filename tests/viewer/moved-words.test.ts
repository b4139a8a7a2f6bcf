// What is said under the sheet of a move.

import { expect, test } from "vitest";
import { movedWords } from "../../viewer/panel/moved-words.ts";

const sixty = Array.from({ length: 60 }, (_, index) => `c${index}`);
const says = sixty.map(() => "x: 30.5 mm").join(", ");

test("of one thing are its own numbers, and its name as it is written", () => {
  expect(movedWords({ entries: ["c33"], shift: { x: 9, y: 0 }, says: "x: 219 mm" }, "mm")).toBe(
    "moved c33: x: 219 mm",
  );
});

test("of sixty things is how far they went, and no list of sixty numbers", () => {
  expect(movedWords({ entries: sixty, shift: { x: 0.5, y: 0 }, says }, "mm")).toBe(
    "moved 60 things 0.5 mm to the right",
  );
  expect(movedWords({ entries: sixty, shift: { x: -25.4, y: -12.7 }, says }, "in")).toBe(
    "moved 60 things 1 in to the left and 0.5 in down",
  );
});

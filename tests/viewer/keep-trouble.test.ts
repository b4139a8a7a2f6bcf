// Why the browser keeps nothing, in words of ours: what it throws is written for those who program it, and ends in a full stop or not
// as each browser likes.

import { expect, test } from "vitest";
import { keepTrouble } from "../../viewer/files/keep-trouble.ts";

test.each([
  ["QuotaExceededError", "the browser has no room left for them"],
  // Chromium's words for a full disk, as seen on one of 80 MB.
  ["AbortError", "the browser can't write what it keeps; the disk under it may be full"],
  ["UnknownError", "the browser can't write what it keeps; the disk under it may be full"],
  ["DataError", "the browser can't write what it keeps; the disk under it may be full"],
  ["SecurityError", "the browser does not allow it"],
  ["InvalidStateError", "the browser does not allow it"],
])("%s", (name, words) => {
  const thrown = new DOMException("The transaction was aborted, so it cannot be fulfilled.", name);
  expect(keepTrouble(thrown)).toBe(words);
});

test("anything else keeps its own words, without a full stop", () => {
  expect(keepTrouble(new Error("out of memory."))).toBe("out of memory");
  expect(keepTrouble(undefined)).toBe("the browser does not allow it");
});

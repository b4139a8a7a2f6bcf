// What is offered for a key that can't stand where it does: what was likely meant, and nothing that would do harm as an edit.

import { expect, test } from "vitest";
import { nearKeys } from "../../src/design/near-keys.ts";

const FREE = ["part", "at", "legend", "colour", "boot", "turn"];

test.each([
  ["legnd", ["legend"]],
  ["Legend", ["legend"]],
  ["label", ["legend"]],
  ["COLOR", ["colour"]],
  ["position", ["at"]],
])("%s was meant to be %j", (written, meant) => {
  const near = nearKeys(written, FREE);
  expect(near.meant).toEqual(meant);
  expect(near.hint).toBe(`; the nearest is ${meant[0]}`);
});

test("a word for what can't stand there either is told nothing of it", () => {
  expect(nearKeys("label", ["part", "boot"]).meant).toEqual([]);
});

test("a coordinate is told that it stands in the place", () => {
  expect(nearKeys("left", FREE)).toEqual({
    meant: [],
    hint: "; it belongs into at: { left: ... }",
  });
});

test("a key of quite other letters is told what can stand there, the first dozen of it", () => {
  expect(nearKeys("wavelength", ["part", "at"])).toEqual({
    meant: [],
    hint: "; here can stand part and at",
  });
  const many = Array.from({ length: 14 }, (_, index) => `key-${index + 1}`);
  expect(nearKeys("wavelength", many).hint).toBe(
    `; here can stand ${many.slice(0, 12).join(", ")} and 2 more`,
  );
  expect(nearKeys("wavelength", [])).toEqual({ meant: [], hint: "" });
});

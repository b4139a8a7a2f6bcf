// Numbers that a finding compares, where they lie nearer together than two decimals say.

import { join } from "node:path";
import { expect, test } from "vitest";
import { findingsOf, readExample } from "../findings/example.ts";

const example = readExample(join(import.meta.dirname, "../findings/fit/panel-too-wide.yaml"));

const told = (changes: Readonly<Record<string, string>>): string => {
  const texts = new Map(
    [...example].map(([file, text]) => [
      file,
      Object.entries(changes).reduce((from, [a, b]) => from.replace(a, b), text),
    ]),
  );
  return findingsOf(texts).find(({ code }) => code === "fit/panel-too-wide")?.message ?? "";
};

test("a panel that is four micrometres too wide is not told to be as wide as its room", () => {
  expect(told({ "119.6 mm": "119.996 mm" })).toMatch(
    /is 120\.000 mm wide when it is finished; bay aft has room for 119\.996 mm, 0\.004 mm less\. width: 119\.996 mm goes in\.$/,
  );
});

// 4.708661 in: the next ten-thousandth above is too much.
test("a width that goes in is never written up, in inches neither", () => {
  const [, works = ""] =
    /width: ([\d.]+) in goes in/.exec(told({ "width: 120 mm": "width: 5 in" })) ?? [];
  expect(Number(works) * 25.4).toBeLessThanOrEqual(119.6);
  expect(Number(works) * 25.4).toBeGreaterThan(119.59);
});

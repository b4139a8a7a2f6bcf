// Sections beyond the end of their bay: all are told, each as it is written, and the drawings of the rest are made.

import { join } from "node:path";
import { expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { findingsOf, readExample } from "../findings/example.ts";

const texts = readExample(join(import.meta.dirname, "../findings/fit/section-beyond-bay.yaml"));
const CONSOLE = "console.yaml";

const toldOf = (changes: readonly (readonly [string, string])[] = []): readonly Finding[] =>
  findingsOf(
    new Map(texts).set(
      CONSOLE,
      changes.reduce((text, [from, to]) => text.replace(from, to), texts.get(CONSOLE) ?? ""),
    ),
  ).filter(({ code }) => code === "fit/section-beyond-bay");

test("all of them are told, each in the unit that it is written in", () => {
  const [found, ...others] = toldOf();
  expect(others).toEqual([]);
  // 6 x 9.525 = 57.15; 90 - 57.15 = 32.85.
  expect(found?.message).toBe(
    "Sections of bay aft are to be drawn 90 mm and 2.5 in from its beginning, and the bay is 57.15 mm long, 32.85 mm less. 57.15 mm is the last place there is.",
  );
  const written = [found!, ...found!.related].map(({ span }) =>
    (texts.get(CONSOLE) ?? "").slice(span.start, span.end),
  );
  expect(written).toEqual(["90 mm", "2.5 in"]);
});

test("inches are told in inches", () => {
  // 57.15 mm are 2.25 in.
  expect(toldOf([["[20 mm, 90 mm, 2.5 in]", "[2 1/2 in]"]])[0]?.message).toBe(
    "A section of bay aft is to be drawn 2.5 in from its beginning, and the bay is 2.25 in long, 0.25 in less. 2.25 in is the last place there is.",
  );
});

test("the last place there is can be drawn", () => {
  expect(toldOf([["[20 mm, 90 mm, 2.5 in]", "[57.15 mm, 2.25 in]"]])).toEqual([]);
});

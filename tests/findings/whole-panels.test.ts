// A panel seeded with twelve faults gives those twelve, each at its line and each of another code; a sound one gives nothing
// that a person would have to answer.

import { join } from "node:path";
import { expect, test } from "vitest";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";
import { ENTRY, expectedLines, findingsOf, foundLines, readExample } from "./example.ts";

const panel = (name: string): ReturnType<typeof readExample> =>
  readExample(join(import.meta.dirname, `${name}.yaml`));

test("twelve different faults are found, each at its line, and no other fault or query", () => {
  const texts = panel("twelve-faults");
  const expected = expectedLines(texts);
  expect(expected).toHaveLength(12);
  expect(foundLines(texts).toSorted()).toEqual(expected.toSorted());
  const codes = new Set(findingsOf(texts).map(({ code }) => code));
  expect([...codes].filter((code) => expected.some((line) => line.includes(code)))).toHaveLength(
    12,
  );
});

test("a sound panel of ten lines of components gives no fault and no query", () => {
  const texts = panel("clean");
  expect(foundLines(texts)).toEqual([]);
  const [laid] = compile({ entry: ENTRY, files: texts }, testLibrary()).panels;
  expect(laid?.layout?.components).toHaveLength(12);
  expect(laid?.layout?.layers.map(({ id }) => id)).toEqual(["face", "backing", "spacer"]);
  expect(laid?.layout?.markings.length).toBeGreaterThan(15);
});

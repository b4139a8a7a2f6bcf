// A revision goes into every file's own words, where readers of old formats know ASCII only and a comma ends it.

import { expect, test } from "vitest";
import { readDesign } from "../../src/design/read-design.ts";
import { codesOf, FILE, panelText, pointedAt } from "./reading.ts";

test.each(["é", "漢字", "😀", "A, panel b", "A;B", "'</svg>'", "'\"'", "-a", "A/2", "'A '"])(
  "a revision that no file could repeat is refused: %s",
  (revision) => {
    const text = panelText(`revision: ${revision}`);
    const { findings } = readDesign(FILE, text);
    expect(codesOf(findings)).toEqual(["not-a-revision"]);
    expect(findings.map((found) => pointedAt(text, found))).toEqual([revision]);
  },
);

test.each(["A", "b2", "1.04", "2026-10-02", "A_3", "draft 2"])("%s is a revision", (revision) => {
  expect(readDesign(FILE, panelText(`revision: ${revision}`)).findings).toEqual([]);
});

test("a text too long or cut by a # keeps its own finding", () => {
  const codes = (text: string): readonly string[] => codesOf(readDesign(FILE, text).findings);
  expect(codes(panelText("revision: abcdefghijklm"))).toEqual(["text-too-long"]);
  expect(codes(panelText("revision: B#"))).toEqual(["not-a-revision"]);
});

// Remedies that are offered only where nothing else goes wrong with them: here it would, and they are held back.

import { join } from "node:path";
import { expect, test } from "vitest";
import { findingsOf, readExample } from "../findings/example.ts";

const titles = (code: string, changed: readonly (readonly [string, string, string])[]) => {
  const texts = new Map(readExample(join(import.meta.dirname, "../findings/fit", `${code}.yaml`)));
  for (const [file, from, to] of changed) {
    const text = texts.get(file) ?? "";
    expect(text).toContain(from);
    texts.set(file, text.replace(from, to));
  }
  return findingsOf(texts)
    .filter((found) => found.code === `fit/${code}`)
    .flatMap(({ remedies }) => remedies.map(({ title }) => title));
};

test("a panel is made narrower where everything on it keeps its room", () => {
  expect(titles("panel-too-wide", [])).toEqual(["width: 119.6 mm", "clear-width: 120 mm (aft)"]);
});

test("and not where a lamp would come too near to its edge", () => {
  const near = [["lid.yaml", "at: centre", "at: { x: 6 mm, y: centre }"]] as const;
  expect(titles("panel-too-wide", near)).toEqual(["clear-width: 120 mm (aft)"]);
});

test("nor where what is placed from one side would meet what is placed from the other", () => {
  const both = [
    [
      "lid.yaml",
      "a: { part: led-5, at: centre }",
      "a: { part: led-5, at: { left: 55 mm, y: centre } }\n  b: { part: led-5, at: { right: 55 mm, y: centre } }",
    ],
  ] as const;
  expect(titles("panel-too-wide", both)).toEqual(["clear-width: 120 mm (aft)"]);
});

test("a panel that touches is moved to the nearest free module, and nowhere where its bay is full", () => {
  expect(titles("touching", []).some((title) => title.startsWith("module: "))).toBe(true);
  expect(titles("touching", [["console.yaml", "18 modules", "6 modules"]])).toEqual([]);
});

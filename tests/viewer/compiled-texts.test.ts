// One compilation for everybody who asks: the same words give the very same projects, others give what a fresh one would.

import { expect, test } from "vitest";
import { compile, type LaidPanel } from "../../src/project.ts";
import { compiledTexts } from "../../viewer/compiled-texts.ts";
import type { DesignSources } from "../../viewer/core-messages.ts";
import { SMALL_CONSOLE } from "../support/small-console.ts";
import { testLibrary } from "../support/test-library.ts";

const library = testLibrary();

const sourcesOf = (changed: Readonly<Record<string, string>> = {}): DesignSources => ({
  texts: new Map(Object.entries({ ...SMALL_CONSOLE, ...changed })),
  binaries: new Map([["shape.stl", Uint8Array.of(1, 2, 3)]]),
});

test("texts that came by another way and say the same are not compiled again", () => {
  const compiled = compiledTexts();
  const first = compiled.of(sourcesOf(), library);
  expect(compiled.of(structuredClone(sourcesOf()), library)).toBe(first);
  expect(compiled.last()).toBe(first);
});

test("another text is, and what it leaves alone is not worked out again", () => {
  const compiled = compiledTexts();
  const [before] = compiled.of(sourcesOf(), library);
  const one = SMALL_CONSOLE["one.yaml"]!.replace("at: centre", "at: { x: 0 mm, y: 40 mm }");
  const sources = sourcesOf({ "one.yaml": one });
  const [now] = compiled.of(sources, library);
  const { texts: files, binaries } = sources;
  const fresh = compile({ entry: "console.yaml", files, binaries }, library);
  expect(fresh.panels[0]?.findings).not.toEqual(before?.panels[0]?.findings);
  expect(now?.findings).toEqual(fresh.findings);
  expect(now?.panels).toEqual(fresh.panels);
  expect(now?.panels[0]?.layout).not.toBe(before?.panels[0]?.layout);
  expect(now?.panels[1]?.layout).toBe(before?.panels[1]?.layout);
});

test("a shape of other bytes is another design", () => {
  const compiled = compiledTexts();
  const first = compiled.of(sourcesOf(), library);
  const binaries = new Map([["shape.stl", Uint8Array.of(1, 2, 4)]]);
  expect(compiled.of({ ...sourcesOf(), binaries }, library)).not.toBe(first);
});

test("panels are handed over as they are laid out, once for each text, before anything is judged", () => {
  const compiled = compiledTexts();
  const told: (readonly LaidPanel[])[] = [];
  const [project] = compiled.of(sourcesOf(), library, (laid) => told.push(laid));
  compiled.of(sourcesOf(), library, (laid) => told.push(laid));
  expect(told).toHaveLength(1);
  const layouts = (panels: readonly LaidPanel[]) => panels.map(({ layout }) => layout);
  // The console's blanking panels are known only when the others are done.
  const used = project?.panels.slice(0, told[0]?.length) ?? [];
  expect(layouts(told[0] ?? []).every((layout, place) => layout === used[place]?.layout)).toBe(
    true,
  );
  expect(told[0]?.length).toBeGreaterThan(1);
});

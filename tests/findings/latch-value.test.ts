// What gives a plug's latch its room is found by trying: the panel's module where no number places the jack, and where nothing does, how
// much must be given. The place of the post and the room of 18 mm are the example's own.

import { join } from "node:path";
import { expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { findingsOf, readExample, type Texts } from "./example.ts";
import { faultsOf, remedied } from "./remedied.ts";

const EXAMPLE = readExample(join(import.meta.dirname, "fit", "latch-room.yaml"));

const changed = (...changes: readonly (readonly [string, string])[]): Texts =>
  new Map(
    [...EXAMPLE].map(([file, text]) => [
      file,
      changes.reduce((done, [from, to]) => done.replace(from, to), text),
    ]),
  );

const barredIn = (texts: Texts): readonly Finding[] =>
  findingsOf(texts).filter(({ code }) => code === "fit/latch-room");

test("a jack in the middle has its panel moved along a longer bay", () => {
  const texts = changed(
    ["y: 75 mm", "y: centre"],
    ["[99, 0, 380]", "[81, 0, 380]"],
    ["length: 12 modules", "length: 30 modules"],
  );
  const [found] = barredIn(texts);
  const [remedy] = found?.remedies ?? [];
  expect(remedy?.title).toMatch(/^module: \d+ \(net\)$/);
  if (remedy === undefined) return;
  const mended = remedied(texts, remedy);
  expect(barredIn(mended)).toEqual([]);
  expect(faultsOf(findingsOf(mended))).toEqual([]);
});

test("where no place is free the least that must be given is said", () => {
  const [found] = barredIn(changed(["y: 75 mm", "y: centre"], ["[99, 0, 380]", "[81, 0, 380]"]));
  expect(found?.remedies).toEqual([]);
  const lack = (found?.limit?.value ?? 0) - (found?.measured?.value ?? 0);
  expect(found?.message).toContain(
    `${Math.round(lack * 100) / 100} mm more between the two would do, or a plug without a latch.`,
  );
});

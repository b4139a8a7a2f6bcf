// Members of one row picked to be lined up: what is said of them, and of what is more than one row.

import { expect, test } from "vitest";
import { onePatternWords } from "../../viewer/panel/one-pattern.ts";
import { sheetThings } from "../../viewer/panel/sheet-things.ts";
import { layoutOf, panelText } from "../layout/bench-panel.ts";

const LAYOUT = layoutOf(
  panelText({
    height: "16 modules",
    fixings: "",
    components: [
      "warn: { part: led-5-bezel, row: { count: 3, pitch: 20 mm }, at: { x: 30 mm, y: 30 mm } }",
      "lone: { part: led-5-bezel, at: { x: 30 mm, y: 60 mm } }",
    ],
    markings: [
      "window: { row: { count: 2, pitch: 12 mm, x: 80 mm, y: 60 mm }, width: 6, height: 4, layers: [metal] }",
    ],
  }),
);

const saidOf = (...ids: readonly string[]): string | null =>
  onePatternWords(
    sheetThings(LAYOUT, {}).filter(({ id }) => ids.includes(id)),
    LAYOUT,
  );

test("the first and the third of a row are said to be one row", () => {
  expect(saidOf("warn.1", "warn.3")).toMatch(/^These are members of one row, warn, /);
});

test("two windows of a row are said to be one row", () => {
  expect(saidOf("window-1.1", "window-1.2")).toMatch(/^These are members of one row, window-1, /);
});

test("a row and something beside it, one thing and none are no members of one row alone", () => {
  expect([saidOf("warn.1", "lone"), saidOf("lone"), saidOf("warn.2"), saidOf()]).toEqual([
    null,
    null,
    null,
    null,
  ]);
});

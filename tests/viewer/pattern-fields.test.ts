// The numbers of a row, a grid or a ring and the legends of its members, typed in the ticket. What comes out is laid out anew:
// members must stand where pitch and count put them, and each word beside the member that had it.

import { describe, expect, test } from "vitest";
import type { Edit } from "../../src/design/edit.ts";
import { source } from "../../src/design/source.ts";
import { memberLegendTyped } from "../../viewer/panel/legend-edits.ts";
import { patternNumbers, patternTyped } from "../../viewer/panel/pattern-field-edits.ts";
import { layoutOf, panelText } from "../layout/bench-panel.ts";
import { changedText } from "../support/changed-text.ts";

const LAMP = "part: led-5-bezel";

const textOf = (component: string): string =>
  panelText({ height: "16 modules", fixings: "", components: [component] });

const [W, G, R] = [
  ["components", "w"],
  ["components", "g"],
  ["components", "r"],
];

const from = (text: string) => source("panel.yaml", text);

/** Each member with its place and its words. */
const members = (text: string): readonly string[] => {
  const { components, design } = layoutOf(text);
  const [pattern] = design.components;
  if (pattern?.kind !== "pattern") throw new Error("no pattern");
  return components.map(
    ({ at }, index) =>
      `${Math.round(at.x)}, ${Math.round(at.y)} ${pattern.legends[index]?.text ?? "-"}`,
  );
};

describe("numbers of a pattern", () => {
  const ROW = textOf(
    `w: { row: { ${LAMP}, count: 3, pitch: 20 mm, x: 30 mm, y: 40 mm }, legends: [ONE, "", "NO"] }`,
  );

  test("are those that the text says", () => {
    expect(patternNumbers(from(ROW), W)).toEqual([
      { key: "count", value: "3" },
      { key: "pitch", value: "20 mm" },
    ]);
  });

  test("a pitch moves its members, a count brings more of them, without a word", () => {
    const wide = changedText(ROW, patternTyped(from(ROW), W, { key: "pitch", value: "25" }));
    expect(members(wide)).toEqual(["30, 40 ONE", "55, 40 -", "80, 40 NO"]);
    const more = changedText(ROW, patternTyped(from(ROW), W, { key: "count", value: " 4 " }));
    expect(members(more)).toEqual(["30, 40 ONE", "50, 40 -", "70, 40 NO", "90, 40 -"]);
  });

  test("a count that would take a word with it is refused; one that takes none is done", () => {
    expect(patternTyped(from(ROW), W, { key: "count", value: "2" })).toEqual({
      kind: "refused",
      why: '"NO" would go with the members: take these legends off first',
    });
    const bare = ROW.replace('"NO"', '""');
    const fewer = changedText(bare, patternTyped(from(bare), W, { key: "count", value: "1" }));
    expect(members(fewer)).toEqual(["30, 40 ONE"]);
  });

  test("a column more in a grid leaves each word with its own place", () => {
    const grid = textOf(
      `g: { grid: { ${LAMP}, columns: 2, rows: 2, pitch: 20 mm, x: 30 mm, y: 40 mm }, legends: [A, B, C, D] }`,
    );
    const more = changedText(grid, patternTyped(from(grid), G, { key: "columns", value: "3" }));
    expect(members(more)).toEqual([
      "30, 60 A",
      "50, 60 B",
      "70, 60 -",
      "30, 40 C",
      "50, 40 D",
      "70, 40 -",
    ]);
    const rows = changedText(grid, patternTyped(from(grid), G, { key: "rows", value: "3" }));
    expect(members(rows).slice(4)).toEqual(["30, 40 -", "50, 40 -"]);
    expect(members(rows).slice(0, 4)).toEqual(["30, 80 A", "50, 80 B", "30, 60 C", "50, 60 D"]);
  });

  test("of a ring: radius and the first one's angle", () => {
    const ring = textOf(
      `r: { ring: { ${LAMP}, count: 4, radius: 20 mm, from: 0, x: 50 mm, y: 40 mm } }`,
    );
    const larger = changedText(
      ring,
      patternTyped(from(ring), R, { key: "radius", value: "30 mm" }),
    );
    // Twelve, three, six and nine o'clock; x and y are the lowest centres.
    expect(members(larger)).toEqual(["80, 100 -", "110, 70 -", "80, 40 -", "50, 70 -"]);
    const turned = changedText(ring, patternTyped(from(ring), R, { key: "from", value: "90 deg" }));
    expect(members(turned)[0]).toBe("90, 60 -");
  });

  test.each([
    ["pitch", "12,5", 'pitch: "12,5" is no length; write 12.5 mm or 3/8 in'],
    ["pitch", "0", 'pitch: "0" is not more than 0; write 12.5 mm or 3/8 in'],
    ["pitch", "-20 mm", 'pitch: "-20 mm" is not more than 0; write 12.5 mm or 3/8 in'],
    ["count", "0", 'count: "0" is no count from 1 to 999; write 4'],
    ["count", "1000", 'count: "1000" is no count from 1 to 999; write 4'],
    ["count", "2 }", 'count: "2 }" is no count from 1 to 999; write 4'],
    ["from", "x", 'from: "x" is no angle; write 15 deg'],
  ] as const)("%s %s is refused in words", (key, value, why) => {
    expect(patternTyped(from(ROW), W, { key, value })).toEqual({
      kind: "refused",
      why,
    });
  });
});

describe("the legend of a member", () => {
  const ROW = textOf(`w: { row: { ${LAMP}, count: 3, pitch: 20 mm, x: 30 mm, y: 40 mm } }`);
  const typed = (text: string, index: number, words: string): string =>
    changedText(text, memberLegendTyped(from(text), W, { index, members: 3, typed: words }));
  const words = (text: string): readonly string[] =>
    members(text).map((member) => member.replace(/^\S+ \S+ /, ""));

  test("begins a list, and the last one taken off ends it", () => {
    const one = typed(ROW, 1, "ON");
    expect(one).toContain('legends: ["", "ON", ""]');
    expect(words(one)).toEqual(["-", "ON", "-"]);
    expect(typed(one, 1, " ")).toBe(ROW);
  });

  test.each([["PUMP #3"], ["A: [B], {C}"], ['"x"'], ["12"], ["FIRE\nROOM"]])(
    "is read as it was typed: %j",
    (said) => {
      const text = typed(typed(ROW, 0, "FIRST"), 2, said);
      expect(words(text)).toEqual(["FIRST", "-", said]);
    },
  );

  test("keeps what else is said of it", () => {
    const text = ROW.replace("mm } }", 'mm }, legends: [{ text: A, side: below }, "", ""] }');
    const next = typed(text, 0, "B");
    expect(next).toContain("{ text: B, side: below }");
    expect(words(next)).toEqual(["B", "-", "-"]);
  });

  test("is refused with a line without words, and where there is none to take off", () => {
    const made = (said: string): Edit =>
      memberLegendTyped(from(ROW), W, { index: 0, members: 3, typed: said });
    expect(made("A\n\nB")).toEqual({
      kind: "refused",
      why: "a line of the legend of w.1 has no words",
    });
    expect(made("")).toEqual({ kind: "refused", why: "w.1 has no legend" });
  });
});

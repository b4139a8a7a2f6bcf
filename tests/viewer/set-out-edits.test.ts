// Rows, columns and rings made of windows, free legends, lines and screws that are picked, and what is done with them then: copied,
// taken off, moved, turned, counted anew. What comes out is laid out again and held against arithmetic, not against the edit.

import { describe, expect, test } from "vitest";
import type { Edit } from "../../src/design/edit.ts";
import { type Source, source } from "../../src/design/source.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { moveEdits } from "../../src/layout/move-edits.ts";
import { separateMoves } from "../../src/layout/separate-moves.ts";
import { thingsCopied } from "../../viewer/panel/copy-edits.ts";
import { memberLegendTyped } from "../../viewer/panel/legend-edits.ts";
import type { Pattern } from "../../viewer/panel/pattern-edits.ts";
import { patternNumbers, patternTyped } from "../../viewer/panel/pattern-field-edits.ts";
import { thingsRemoved } from "../../viewer/panel/removal-edits.ts";
import { setOutPattern } from "../../viewer/panel/set-out-edits.ts";
import { entryPath } from "../../viewer/panel/set-out-entry.ts";
import { sheetThings } from "../../viewer/panel/sheet-things.ts";
import { thingsTurned } from "../../viewer/panel/turn-edits.ts";
import { layoutOf, panelText } from "../layout/bench-panel.ts";
import { changedText } from "../support/changed-text.ts";

const from = (text: string): Source => source("panel.yaml", text);

/** Each place with its number, in hundredths of a millimetre; of a line its beginning. */
const spots = (text: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    layoutOf(text)
      .ownPlaces.filter(({ end }) => end !== "to")
      .map(({ id, at }) => [
        id,
        `${Math.round(at.x * 100) / 100}, ${Math.round(at.y * 100) / 100}`,
      ]),
  );

const made = (text: string, kind: "row" | "column" | "ring", entries: readonly string[]): Pattern =>
  setOutPattern(from(text), kind, { entries, layout: layoutOf(text) });

const path = (text: string, entry: string): readonly string[] => {
  const found = entryPath(from(text), entry, layoutOf(text));
  if (found === null) throw new Error(`no path to ${entry}`);
  return found;
};

const markings = (...lines: readonly string[]): string =>
  panelText({ fixings: "", markings: lines });

const window = (x: number, y: number, name = ""): string =>
  `window: { ${name}at: { x: ${x} mm, y: ${y} mm }, width: 6 mm, height: 4 mm, layers: [metal] }`;

describe("windows made a row", () => {
  const THREE = markings(window(30, 40), window(51, 41), window(70, 39));

  test("are one entry, at the mean pitch and height", () => {
    const row = made(THREE, "row", ["window-1", "window-2", "window-3"]);
    const text = changedText(THREE, row.edit);
    expect(text).toContain("row: { count: 3, pitch: 20 mm, x: 30 mm, y: 40 mm }");
    expect(row).toMatchObject({ says: "row of 3, pitch 20 mm", names: ["window-1"] });
    expect(spots(text)).toEqual({
      "window-1.1": "30, 40",
      "window-1.2": "50, 40",
      "window-1.3": "70, 40",
    });
  });

  test("keep the name of the first of them, and others their numbers", () => {
    const text = markings(window(9, 9), window(30, 40, "name: slot, "), window(50, 40));
    const row = made(text, "row", ["slot", "window-3"]);
    expect(row.names).toEqual(["slot"]);
    expect(Object.keys(spots(changedText(text, row.edit)))).toEqual([
      "window-1",
      "slot.1",
      "slot.2",
    ]);
    const later = made(text, "row", ["window-1", "window-3"]);
    expect(later.names).toEqual(["window-1"]);
  });

  test("a ring of four stands at its radius from the first, clockwise", () => {
    const text = markings(window(60, 55), window(75, 40), window(60, 25), window(45, 40));
    const ring = made(text, "ring", ["window-1", "window-2", "window-3", "window-4"]);
    const after = changedText(text, ring.edit);
    expect(after).toContain("ring: { count: 4, radius: 15 mm, x: 45 mm, y: 25 mm }");
    expect(spots(after)).toEqual({
      "window-1.1": "60, 55",
      "window-1.2": "75, 40",
      "window-1.3": "60, 25",
      "window-1.4": "45, 40",
    });
  });

  test.each([
    [[window(30, 40), window(50, 40).replace("6 mm", "8 mm")], "say different things"],
    [[window(30, 40), "legend: { text: A, at: { x: 50, y: 40 } }"], "of different kinds"],
    [[window(30, 40), window(30, 50)], "one x"],
  ])("are not: %s", (lines, why) => {
    const text = markings(...lines);
    const ids = layoutOf(text).design.markings.map(({ id }) => id);
    expect(made(text, "row", ids).edit).toMatchObject({
      kind: "refused",
      why: expect.stringContaining(why),
    });
  });
});

describe("legends made a column", () => {
  const word = (text: string, y: number): string =>
    `legend: { text: ${text}, at: { x: 40 mm, y: ${y} mm } }`;

  test("have a text each, from the top", () => {
    const text = markings(word("LOW", 20), word('"ON"', 50), word("[A, B]", 35));
    const after = changedText(
      text,
      made(text, "column", ["legend-1", "legend-2", "legend-3"]).edit,
    );
    expect(after).toContain('texts: ["ON", [A, B], LOW]');
    expect(layoutOf(after).markings.map(({ id, text: words }) => [id, words])).toEqual([
      ["legend-1.1", "ON"],
      ["legend-1.2", "A\nB"],
      ["legend-1.3", "LOW"],
    ]);
  });

  test("have one text where all read the same; a member's own is typed", () => {
    const text = markings(word("ON", 20), word("ON", 50));
    const after = changedText(text, made(text, "column", ["legend-1", "legend-2"]).edit);
    expect(after).toContain("legend: { text: ON, column: { count: 2, pitch: 30 mm");
    const owner = path(after, "legend-1");
    const typed = changedText(
      after,
      memberLegendTyped(from(after), owner, { index: 1, members: 2, typed: "OFF" }),
    );
    expect(layoutOf(typed).markings.map(({ text: words }) => words)).toEqual(["ON", "OFF"]);
    const none = memberLegendTyped(from(typed), owner, { index: 0, members: 2, typed: "" });
    expect(layoutOf(changedText(typed, none)).markings.map(({ id }) => id)).toEqual(["legend-1.2"]);
    const longer = patternTyped(from(typed), owner, { key: "count", value: "3" });
    expect(changedText(typed, longer)).toContain('texts: [ON, "OFF", ""]');
  });
});

describe("lines", () => {
  const line = (x: number, length: number): string =>
    `line: { from: { x: ${x} mm, y: 20 mm }, to: { x: ${x} mm, y: ${20 + length} mm } }`;
  const TWO = markings(line(30, 25), line(45, 25));

  test("of one length and direction are a row", () => {
    const after = changedText(TWO, made(TWO, "row", ["line-1", "line-2"]).edit);
    expect(after).toContain("row: { count: 2, pitch: 15 mm }");
    expect(spots(after)).toEqual({ "line-1.1": "30, 20", "line-1.2": "45, 20" });
  });

  test("of two lengths are none, and a ring of them is not written", () => {
    const text = markings(line(30, 25), line(45, 20), line(60, 25));
    expect(made(text, "row", ["line-1", "line-2"]).edit).toMatchObject({ kind: "refused" });
    expect(made(text, "ring", ["line-1", "line-2", "line-3"]).edit).toMatchObject({
      why: expect.stringContaining("no ring of lines"),
    });
  });

  test("turned in their row turn each about its own middle", () => {
    const row = changedText(TWO, made(TWO, "row", ["line-1", "line-2"]).edit);
    const { edit } = thingsTurned(from(row), ["line-1"], { by: 90, layout: layoutOf(row) });
    const ends = layoutOf(changedText(row, edit)).ownPlaces;
    const middles = ["line-1.1", "line-1.2"].map((id) => {
      const [a, b] = ends.filter((own) => own.id === id).map(({ at }) => at);
      return [(a!.x + b!.x) / 2, (a!.y + b!.y) / 2, b!.y - a!.y];
    });
    expect(middles).toEqual([
      [30, 32.5, 0],
      [45, 32.5, 0],
    ]);
  });
});

const SCREWS = (at: string): string => panelText({ fixings: `{ screws: m3, dowels: 3 mm${at} }` });

describe("screws made a ring or a row", () => {
  const GIVEN = SCREWS(
    ", at: [{ x: 20 mm, y: 8 mm }, { x: 60 mm, y: 8 mm }, { x: 20 mm, y: 70 mm }, { x: 100 mm, y: 8 mm }]",
  );

  test("stand in the list where the first of them stood", () => {
    const row = made(GIVEN, "row", ["fixing.1", "fixing.2", "fixing.4"]);
    const after = changedText(GIVEN, row.edit);
    expect(after).toContain(
      "at: [{ row: { count: 3, pitch: 40 mm, x: 20 mm, y: 8 mm } }, { x: 20 mm, y: 70 mm }]",
    );
    expect(row).toMatchObject({ names: ["fixing.1", "fixing.2", "fixing.3"], offer: null });
    expect(spots(after)).toMatchObject({
      "fixing.1": "20, 8",
      "fixing.2": "60, 8",
      "fixing.3": "100, 8",
      "fixing.4": "20, 70",
    });
  });

  test("that the rule sets are written down, all of them, when that is wanted", () => {
    const text = SCREWS("");
    const before = layoutOf(text).fixings.filter(({ kind }) => kind === "screw");
    const row = made(text, "row", ["fixing.1", "fixing.2"]);
    expect(row.offer?.title).toMatch(
      new RegExp(`^Write down where all ${before.length} screws stand, these as a row of 2, pitch`),
    );
    const after = layoutOf(changedText(text, row.edit)).fixings.filter(
      ({ kind }) => kind === "screw",
    );
    expect(after.map(({ entry }) => entry).slice(0, 2)).toEqual(["fixing.1-2", "fixing.1-2"]);
    for (const [index, { at }] of after.entries()) {
      expect(at.x).toBeCloseTo(before[index]!.at.x, 3);
      expect(at.y).toBeCloseTo(before[index]!.at.y, 3);
    }
  });

  test("dowels are not", () => {
    expect(made(GIVEN, "row", ["dowel.1", "dowel.2"]).edit).toMatchObject({
      why: expect.stringContaining("two dowels"),
    });
  });
});

describe("a row of windows", () => {
  const ROW = markings(
    "window: { row: { count: 3, pitch: 12 mm, left: 30 mm, top: 30 mm }, width: 6 mm, height: 4 mm, layers: [metal] } # lamps",
  );

  test("is picked by its members, and moved whole by its own numbers", () => {
    const layout = layoutOf(ROW);
    expect(sheetThings(layout, {}).map(({ id, entry }) => [id, entry])).toEqual([
      ["window-1.1", "window-1"],
      ["window-1.2", "window-1"],
      ["window-1.3", "window-1"],
    ]);
    const outcome = moveEdits({ entries: ["window-1"], x: 2, y: -3 }, layout, from(ROW));
    if (outcome.kind !== "edits") throw new Error(JSON.stringify(outcome));
    const moved = applyEdits(ROW, outcome.edits);
    expect(moved).toMatchObject({ text: expect.stringContaining("left: 32 mm, top: 33 mm") });
  });

  test("is copied as a row, with its comment's line left alone", () => {
    const copied = thingsCopied(from(ROW), {
      entries: ["window-1"],
      shift: { x: 0, y: -10 },
      layout: layoutOf(ROW),
      nameLike: (name) => `${name}-2`,
    });
    if (copied.kind !== "copied") throw new Error(JSON.stringify(copied));
    expect(copied.names).toEqual(["window-2"]);
    const text = changedText(ROW, copied.edit);
    expect(text.match(/# lamps/g)).toHaveLength(1);
    // 76.2 high: 30 from the top is 46.2 from below, and the copy 10 lower.
    expect(spots(text)).toMatchObject({
      "window-1.3": "54, 46.2",
      "window-2.1": "30, 36.2",
      "window-2.3": "54, 36.2",
    });
  });

  test("is spaced between others as one thing", () => {
    const text = `${ROW}  - ${window(10, 46)}\n  - ${window(110, 46)}\n`;
    const outcome = separateMoves(
      new Map([["window-1", { x: 18, y: 0 }]]),
      layoutOf(text),
      from(text),
    );
    if (outcome.kind !== "edits") throw new Error(JSON.stringify(outcome));
    const spaced = applyEdits(text, outcome.edits);
    if (spaced.kind === "refused") throw new Error(spaced.why);
    expect(spots(spaced.text)).toMatchObject({ "window-1.2": "60, 46.2", "window-2": "10, 46" });
  });

  test("is taken off whole", () => {
    const { edit } = thingsRemoved(from(ROW), ["window-1"], layoutOf(ROW));
    expect(layoutOf(changedText(ROW, edit)).design.markings).toEqual([]);
  });

  test("has its numbers in the ticket", () => {
    const owner = path(ROW, "window-1");
    expect(patternNumbers(from(ROW), owner)).toEqual([
      { key: "count", value: "3" },
      { key: "pitch", value: "12 mm" },
    ]);
    const wider = patternTyped(from(ROW), owner, { key: "pitch", value: "15" });
    expect(spots(changedText(ROW, wider))).toMatchObject({ "window-1.3": "60, 46.2" });
  });
});

describe("a row of screws", () => {
  const ROW = SCREWS(
    ", at: [{ x: 20 mm, y: 70 mm }, { row: { count: 3, pitch: 30 mm, x: 20 mm, y: 8 mm } }, { x: 60 mm, y: 70 mm }]",
  );

  test("is moved, counted and copied as one", () => {
    const layout = layoutOf(ROW);
    const outcome = moveEdits({ entries: ["fixing.2-4"], x: 5, y: 0 }, layout, from(ROW));
    expect(outcome).toMatchObject({ kind: "edits", says: "x: 25 mm" });
    const owner = path(ROW, "fixing.2-4");
    const four = patternTyped(from(ROW), owner, { key: "count", value: "4" });
    expect(spots(changedText(ROW, four))).toMatchObject({ "fixing.5": "110, 8" });
    const copied = thingsCopied(from(ROW), {
      entries: ["fixing.2-4", "fixing.1"],
      shift: { x: 10, y: 20 },
      layout,
      nameLike: (name) => name,
    });
    if (copied.kind !== "copied") throw new Error(JSON.stringify(copied));
    expect(copied.names).toEqual(["fixing.6", "fixing.7", "fixing.8", "fixing.9"]);
    expect(spots(changedText(ROW, copied.edit))).toMatchObject({
      "fixing.6": "30, 90",
      "fixing.7": "30, 28",
      "fixing.9": "90, 28",
    });
  });

  test("is taken off whole where enough screws are left", () => {
    const { edit } = thingsRemoved(from(ROW), ["fixing.2-4"], layoutOf(ROW));
    expect(spots(changedText(ROW, edit))).toEqual({ "fixing.1": "20, 70", "fixing.2": "60, 70" });
    const both = thingsRemoved(from(ROW), ["fixing.1", "fixing.2-4"], layoutOf(ROW));
    expect(both.edit).toMatchObject({ why: "the stack takes at least 2 screws" });
  });
});

test("an edit that is refused changes nothing", () => {
  const text = markings(window(30, 40));
  const refused: Edit = patternTyped(from(text), path(text, "window-1"), {
    key: "pitch",
    value: "5",
  });
  expect(refused).toEqual({ kind: "refused", why: "the window is no row, column, grid or ring" });
});

// Where a copy goes: the nearest place that is clear of everything on the sheet. What comes out is laid out and judged anew by the
// rules themselves, which know nothing of how the place was sought.

import { describe, expect, test } from "vitest";
import { namer } from "../../src/arrange/unit-names.ts";
import { source } from "../../src/design/source.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { thingsCopied } from "../../viewer/panel/copy-edits.ts";
import { freePlace } from "../../viewer/panel/free-place.ts";
import { layoutOf, panelOf, panelText, troubles } from "../layout/bench-panel.ts";
import { changedText } from "../support/changed-text.ts";

const STEP = 0.5;

const idsOf = (layout: PanelLayout, entries: readonly string[]): ReadonlySet<string> =>
  new Set([
    ...layout.components.filter(({ entry }) => entries.includes(entry)).map(({ id }) => id),
    ...entries,
  ]);

/** As the page has it: without the shapes of letters and lines. */
function pageLayout(text: string): PanelLayout {
  const layout = layoutOf(text);
  const markings = layout.markings.map((one) => ({ ...one, fills: [], strokes: [] }));
  return { ...layout, markings };
}

function placed(text: string, entries: readonly string[]) {
  const layout = pageLayout(text);
  const place = freePlace(idsOf(layout, entries), layout, STEP);
  if (place === null) throw new Error("nothing of it lies on the sheet");
  return { layout, place };
}

/** The text with the copies in it. */
function copied(text: string, entries: readonly string[]): string {
  const { layout, place } = placed(text, entries);
  const name = namer([...layout.design.components, ...layout.design.markings].map(({ id }) => id));
  const nameLike = (entry: string): string => name(null, entry);
  const made = thingsCopied(source("panel.yaml", text), {
    entries,
    shift: place.shift,
    layout,
    nameLike,
  });
  if (made.kind !== "copied") throw new Error(made.why);
  return changedText(text, made.edit);
}

/** What the rules say of the second text and did not of the first. */
function newTroubles(text: string, next: string): readonly string[] {
  const known = new Set(troubles(panelOf(text).findings));
  return troubles(panelOf(next).findings).filter((words) => !known.has(words));
}

describe("a copy goes to the nearest free place", () => {
  test("past neighbours that stand on all four sides of it", () => {
    const lamp = (name: string, x: number, y: number): string =>
      `${name}: { part: led-5-bezel, at: { x: ${x} mm, y: ${y} mm } }`;
    const text = panelText({
      height: "16 modules",
      fixings: "",
      components: [
        lamp("mid", 70, 76),
        lamp("east", 84, 76),
        lamp("west", 56, 76),
        lamp("north", 70, 90),
        lamp("south", 70, 62),
      ],
    });
    expect(newTroubles(text, copied(text, ["mid"]))).toEqual([]);
    // Between two of its neighbours: within 14 mm across and 14 mm up.
    const { shift } = placed(text, ["mid"]).place;
    expect(Math.max(Math.abs(shift.x), Math.abs(shift.y))).toBeLessThanOrEqual(14);
  });

  test("with the room that hands want between two toggles", () => {
    const text = panelText({
      height: "16 modules",
      fixings: "",
      components: ["main: { part: toggle-6, at: { x: 70 mm, y: 76 mm }, legend: MAIN }"],
    });
    expect(newTroubles(text, copied(text, ["main"]))).toEqual([]);
  });

  test("clear of screws that have their places, and of the rails", () => {
    const text = panelText({
      height: "8 modules",
      fixings:
        "{ screws: m3, dowels: 3 mm, at: [{ x: 28 mm, y: 38 mm }, { x: 40 mm, y: 38 mm }, { x: 120 mm, y: 60 mm }] }",
      components: ["lamp: { part: led-5-bezel, at: { x: 34 mm, y: 50 mm } }"],
    });
    expect(newTroubles(text, copied(text, ["lamp"]))).toEqual([]);
  });
});

describe("it goes as far as it must", () => {
  test("inside a border where there is room, and never on its line", () => {
    const text = panelText({
      height: "16 modules",
      fixings: "",
      components: [
        "a: { part: led-5-bezel, at: { x: 30 mm, y: 40 mm } }",
        "b: { part: led-5-bezel, at: { x: 110 mm, y: 110 mm } }",
      ],
      markings: ["border: { around: [a, b], legend: BILGE }"],
    });
    const next = copied(text, ["a"]);
    expect(newTroubles(text, next)).toEqual([]);
    const copy = layoutOf(next).components.find(({ entry }) => entry === "a-2");
    expect(copy?.at.x).toBeGreaterThan(30);
    expect(copy?.at.x).toBeLessThan(110);
  });

  test("never on a border's line, though that is the nearest place beside it", () => {
    const text = panelText({
      height: "16 modules",
      stack: ["{ layer: metal, sheet: metal }"],
      fixings: "",
      components: [
        "a: { part: led-5-bezel, at: { x: 60 mm, y: 70 mm } }",
        "b: { part: led-5-bezel, at: { x: 92 mm, y: 70 mm } }",
      ],
      markings: [
        "border: { around: [a], gap: 2 mm }",
        "border: { name: wide, around: [a, b], gap: 12 mm, legend: BILGE }",
      ],
    });
    expect(newTroubles(text, copied(text, ["a"]))).toEqual([]);
    // The free legend of a title goes where its own letters have room too.
    expect(newTroubles(text, copied(text, ["b"]))).toEqual([]);
  });

  test("past a field of 130 lamps to the one free end of the sheet", () => {
    const text = panelText({
      height: "20 modules",
      fixings: "",
      components: [
        "one: { part: led-5-bezel, at: { x: 20 mm, y: 18 mm } }",
        "row: { row: { part: led-5-bezel, count: 9, pitch: 12.5 mm, x: 32.5 mm, y: 18 mm } }",
        "field: { grid: { part: led-5-bezel, columns: 10, rows: 12, pitch: 12.5 mm, x: 20 mm, y: 30.5 mm } }",
      ],
    });
    const { place, layout } = placed(text, ["one"]);
    expect(layout.components).toHaveLength(130);
    expect(place.isFree).toBe(true);
    // The field's last row stands at 168 mm; a lamp of 8 mm goes above it.
    expect(place.shift.y).toBeGreaterThan(150 + 8);
    expect(newTroubles(text, copied(text, ["one"]))).toEqual([]);
    // A second field has no room at all.
    expect(placed(text, ["field"]).place.isFree).toBe(false);
  });
});

describe("where no place is free", () => {
  const crowded = panelText({
    mount: "corner-screws",
    height: "50 mm",
    more: ["width: 50 mm"],
    fixings: "",
    components: ["big: { part: push-button-16, at: { x: 25 mm, y: 25 mm } }"],
  });

  test("it is said, and the copy is on the sheet with its finding", () => {
    const { place } = placed(crowded, ["big"]);
    expect(place.isFree).toBe(false);
    const next = copied(crowded, ["big"]);
    const copy = layoutOf(next).components.find(({ entry }) => entry === "big-2");
    expect(copy?.at.x).toBeGreaterThan(0);
    expect(copy?.at.x).toBeLessThan(50);
    expect(copy?.at.y).toBeGreaterThan(0);
    expect(copy?.at.y).toBeLessThan(50);
    const told = panelOf(next).findings.filter(({ subjects }) => subjects.includes("big-2"));
    expect(told.length).toBeGreaterThan(0);
  });
});

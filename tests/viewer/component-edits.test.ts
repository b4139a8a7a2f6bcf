// Components added, turned, taken off and set out as changes of text. What comes out is laid out by the
// program, and every component must stand where the hand-worked place says.

import { describe, expect, test } from "vitest";
import { namer } from "../../src/arrange/unit-names.ts";
import { source } from "../../src/design/source.ts";
import { componentAdded, turned } from "../../viewer/panel/component-edits.ts";
import { patternOf } from "../../viewer/panel/pattern-edits.ts";
import { thingsRemoved } from "../../viewer/panel/removal-edits.ts";
import { layoutOf, panelText } from "../layout/bench-panel.ts";
import { changedText } from "../support/changed-text.ts";

const LAMP = "part: led-5-bezel";

const textOf = (...components: readonly string[]): string =>
  panelText({ height: "16 modules", fixings: "", components });

const panelFrom = (text: string) => source("panel.yaml", text);

const places = (text: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    layoutOf(text).components.map(({ id, at }) => [
      id,
      `${Math.round(at.x * 100) / 100}, ${Math.round(at.y * 100) / 100}`,
    ]),
  );

describe("names", () => {
  test("are readable and never one in use", () => {
    const name = namer(["toggle", "toggle-2", "lamp"]);
    expect([name(null, "toggle"), name(null, "toggle"), name(null, "knob")]).toEqual([
      "toggle-3",
      "toggle-4",
      "knob",
    ]);
  });
});

describe("added", () => {
  test("as one line behind the last one, in the file's unit", () => {
    const text = textOf(`a: { ${LAMP}, at: { x: 1 in, y: 2 in } }`);
    const made = componentAdded(panelFrom(text), { name: "b", part: "toggle-6", x: 63.5, y: 50.8 });
    const next = changedText(text, made);
    expect(next).toContain("\n  b: { part: toggle-6, at: { x: 2.5 in, y: 2 in } }\n");
    expect(places(next)).toEqual({ a: "25.4, 50.8", b: "63.5, 50.8" });
  });

  test.each([
    ["no components at all", panelText({})],
    ["an empty list", `${panelText({})}components: {}\n`],
    ["a key with nothing behind it", `${panelText({})}components:\n`],
  ])("to a panel with %s", (_name, text) => {
    const made = componentAdded(panelFrom(text), { name: "b", part: "led-5-bezel", x: 40, y: 50 });
    expect(places(changedText(text, made))).toEqual({ b: "40, 50" });
  });
});

describe("turned and taken off", () => {
  test("a quarter is written, a whole turn takes the key away", () => {
    const text = textOf(`a: { ${LAMP}, at: { x: 40 mm, y: 50 mm } }`);
    const quarter = changedText(text, turned(panelFrom(text), ["components", "a"], 90));
    expect(quarter).toContain("turn: 90 deg");
    expect(changedText(quarter, turned(panelFrom(quarter), ["components", "a"], 360))).toBe(text);
  });

  test("what leaned on it keeps its place", () => {
    const text = textOf(
      `a: { ${LAMP}, at: { x: 40 mm, y: 50 mm } }`,
      `b: { ${LAMP}, at: { right-of: a, centres: 20 mm } }`,
      `c: { ${LAMP}, at: { right-of: b, centres: 20 mm } }`,
    );
    const { edit, says } = thingsRemoved(panelFrom(text), ["a"], layoutOf(text));
    expect(says).toEqual(["b keeps its place by its own numbers"]);
    const next = changedText(text, edit);
    expect(places(next)).toEqual({ b: "60, 50", c: "80, 50" });
  });
});

describe("set out as a pattern", () => {
  const three = textOf(
    `a: { ${LAMP}, at: { x: 30 mm, y: 50 mm }, legend: ONE }`,
    `b: { ${LAMP}, at: { x: 52 mm, y: 50 mm }, legend: TWO }`,
    `c: { ${LAMP}, at: { x: 70 mm, y: 50 mm } }`,
    `d: { ${LAMP}, at: { below: c, centres: 30 mm } }`,
  );

  test("a row, evenly between the first and the last, legends kept", () => {
    const entries = ["c", "a", "b"];
    const made = patternOf(panelFrom(three), "row", { entries, layout: layoutOf(three) });
    expect(made.says).toBe("row of 3, pitch 20 mm");
    const next = changedText(three, made.edit);
    expect(next).toContain('legends: [ONE, TWO, ""]');
    expect(places(next)).toEqual({
      "a.1": "30, 50",
      "a.2": "50, 50",
      "a.3": "70, 50",
      d: "70, 20",
    });
  });

  test("a ring, from the first one clockwise", () => {
    const text = textOf(
      `n: { ${LAMP}, at: { x: 70 mm, y: 90 mm } }`,
      `w: { ${LAMP}, at: { x: 50 mm, y: 70 mm } }`,
      `s: { ${LAMP}, at: { x: 70 mm, y: 50 mm } }`,
      `e: { ${LAMP}, at: { x: 90 mm, y: 70 mm } }`,
    );
    const entries = ["n", "w", "s", "e"];
    const made = patternOf(panelFrom(text), "ring", { entries, layout: layoutOf(text) });
    expect(places(changedText(text, made.edit))).toEqual({
      "n.1": "70, 90",
      "n.2": "90, 70",
      "n.3": "70, 50",
      "n.4": "50, 70",
    });
  });

  test("no row of what stands in a column: all would lie on one spot", () => {
    const text = textOf(
      `a: { ${LAMP}, at: { x: 30 mm, y: 50 mm } }`,
      `b: { ${LAMP}, at: { x: 30 mm, y: 72 mm } }`,
    );
    const entries = ["a", "b"];
    const made = patternOf(panelFrom(text), "row", { entries, layout: layoutOf(text) });
    expect(made.edit).toMatchObject({ kind: "refused", why: expect.stringContaining("one spot") });
    const upright = patternOf(panelFrom(text), "column", { entries, layout: layoutOf(text) });
    expect(upright.says).toBe("column of 2, pitch 22 mm");
  });

  test("things that say different things of themselves are refused", () => {
    const text = textOf(
      `a: { ${LAMP}, at: { x: 30 mm, y: 50 mm }, group: Power }`,
      `b: { ${LAMP}, at: { x: 52 mm, y: 50 mm } }`,
    );
    const made = patternOf(panelFrom(text), "row", { entries: ["a", "b"], layout: layoutOf(text) });
    expect(made.edit).toMatchObject({
      kind: "refused",
      why: "a and b say different things of themselves",
    });
  });
});

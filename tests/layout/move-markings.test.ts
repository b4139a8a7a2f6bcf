// A drag of what is no component: free legends, arrows, windows, screws and dowels move by the keys that place them; borders
// and brackets by the components that they go round. The check is the layout of the text that comes out, against addition.

import { describe, expect, test } from "vitest";
import { source } from "../../src/design/source.ts";
import { applyEdits, type TextEdit } from "../../src/diagnostics/text-edit.ts";
import { extentCentre } from "../../src/geometry/extent.ts";
import { moveEdits } from "../../src/layout/move-edits.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import type { MoveOutcome } from "../../src/layout/place-moves.ts";
import { layoutOf, panelText } from "./bench-panel.ts";

const LAMP = "part: led-5-bezel";

interface Dragged {
  readonly outcome: MoveOutcome;
  readonly text: string;
}

const drag = (
  text: string,
  entries: readonly string[],
  [x, y]: readonly [number, number],
): Dragged => ({
  outcome: moveEdits({ entries, x, y }, layoutOf(text), source("panel.yaml", text)),
  text,
});

const after = (text: string, edits: readonly TextEdit[]): string => {
  const applied = applyEdits(text, edits);
  if (applied.kind === "refused") throw new Error(applied.why);
  return applied.text;
};

const edited = ({ outcome, text }: Dragged): string => {
  if (outcome.kind !== "edits") throw new Error(`not by its keys: ${JSON.stringify(outcome)}`);
  return after(text, outcome.edits);
};

const freed = ({ outcome, text }: Dragged): string => {
  if (outcome.kind !== "choice") throw new Error(`no choice: ${JSON.stringify(outcome)}`);
  return after(text, outcome.free);
};

/** Where everything that stands by itself is, in thousandths of a millimetre. */
const spotsIn = (layout: PanelLayout): ReadonlyMap<string, readonly [number, number]> => {
  const windows = layout.layers
    .flatMap(({ cutOuts }) => cutOuts)
    .filter(({ purpose }) => purpose === "window");
  return new Map([
    ...layout.components.map(({ id, at }) => [id, [at.x, at.y]] as const),
    ...layout.markings
      .filter(({ id, owner }) => id === owner)
      .map(({ id, box }) => [id, [extentCentre(box).x, extentCentre(box).y]] as const),
    ...windows.map(({ owner, centre }) => [owner, [centre.x, centre.y]] as const),
    ...layout.fixings.map(({ id, at }) => [id, [at.x, at.y]] as const),
  ]);
};

const shiftsOf = (before: string, now: string): Readonly<Record<string, string>> => {
  const spots = spotsIn(layoutOf(now));
  const moved = [...spotsIn(layoutOf(before))].flatMap(([id, [x, y]]) => {
    const [nowX, nowY] = spots.get(id) ?? [Number.NaN, Number.NaN];
    const round = (value: number): number => Math.round(value * 100) / 100 + 0;
    const shift = `${round(nowX - x)}, ${round(nowY - y)}`;
    return shift === "0, 0" ? [] : [[id, shift]];
  });
  return Object.fromEntries(moved);
};

const BY = [3, -2] as const;

describe("what stands by a place of its own", () => {
  test.each([
    [
      "a legend",
      "legend: { name: word, text: WORD, at: { x: 40 mm, top: 20 mm } }",
      "x: 43 mm, top: 22 mm",
    ],
    [
      "a window",
      "window: { name: word, at: { left: 40 mm, bottom: 50 mm }, width: 9 mm, height: 9 mm, layers: [face] }",
      "left: 43 mm, bottom: 48 mm",
    ],
  ])("%s", (_name, marking, expected) => {
    const text = panelText({ height: "16 modules", fixings: "", markings: [`{ ${marking} }`] });
    const now = edited(drag(text, ["word"], BY));
    expect(now).toContain(expected);
    expect(shiftsOf(text, now)).toEqual({ word: "3, -2" });
  });

  test("an arrow takes both its ends along", () => {
    const text = panelText({
      height: "16 modules",
      fixings: "",
      markings: [
        "{ arrow: { name: way, from: { x: 20 mm, y: 30 mm }, to: { x: 50 mm, y: 45 mm } } }",
      ],
    });
    const now = edited(drag(text, ["way"], BY));
    expect(now).toContain("from: { x: 23 mm, y: 28 mm }, to: { x: 53 mm, y: 43 mm }");
    expect(shiftsOf(text, now)).toEqual({ way: "3, -2" });
  });

  test("an end that keeps the middle is named by its word when it is set free", () => {
    const text = panelText({
      height: "16 modules",
      fixings: "",
      markings: [
        "{ line: { name: rule, from: { x: centre, y: 30 mm }, to: { x: 110 mm, y: 30 mm } } }",
      ],
    });
    const dragged = drag(text, ["rule"], [3, 0]);
    // 146.05 mm wide: the middle is 73.025.
    expect(dragged.outcome).toMatchObject({
      why: "rule (from) stands in the middle",
      title: "Set rule (from) free at x: 76.025 mm",
    });
    expect(shiftsOf(text, freed(dragged))).toEqual({ rule: "3, 0" });
  });

  test("a legend beside a component edits its distance, and goes along with the component unsaid", () => {
    const text = panelText({
      height: "16 modules",
      fixings: "",
      components: [`a: { ${LAMP}, at: { x: 60 mm, y: 60 mm } }`],
      markings: ["{ legend: { name: word, text: WORD, at: { above: a, centres: 15 mm } } }"],
    });
    expect(edited(drag(text, ["word"], [0, 4]))).toContain("above: a, centres: 19 mm");
    expect(shiftsOf(text, edited(drag(text, ["a"], BY)))).toEqual({ a: "3, -2", word: "3, -2" });
    expect(shiftsOf(text, edited(drag(text, ["a", "word"], BY)))).toEqual({
      a: "3, -2",
      word: "3, -2",
    });
  });

  test("one placed by a word for both axes is set free in its own list item, the others stay", () => {
    const text = panelText({
      height: "16 modules",
      fixings: "",
      markings: [
        "{ legend: { name: one, text: ONE, at: { x: 20 mm, y: 20 mm } } }",
        "{ legend: { name: two, text: TWO, at: centre } }",
      ],
    });
    const now = freed(drag(text, ["two"], BY));
    expect(now).toContain("text: TWO, at: { x: 76.025 mm, y: 74.2 mm }");
    expect(shiftsOf(text, now)).toEqual({ two: "3, -2" });
  });
});

describe("borders and brackets", () => {
  const text = panelText({
    height: "16 modules",
    fixings: "",
    components: [
      `a: { ${LAMP}, at: { x: 40 mm, y: 60 mm } }`,
      `b: { ${LAMP}, at: { right-of: a, centres: 30 mm } }`,
      `c: { ${LAMP}, at: { x: 120 mm, y: 120 mm } }`,
    ],
    markings: ["{ border: { name: frame, around: [a, b] } }"],
  });

  test("are held by what they go round, and offer to move that", () => {
    const dragged = drag(text, ["frame"], BY);
    expect(dragged.outcome).toMatchObject({
      kind: "choice",
      why: "frame goes round a and b",
      title: "Move a and b",
    });
    expect(shiftsOf(text, freed(dragged))).toEqual({ a: "3, -2", b: "3, -2", frame: "3, -2" });
  });

  test("go along unsaid with their components", () => {
    const now = edited(drag(text, ["a", "b", "frame"], BY));
    expect(shiftsOf(text, now)).toEqual({ a: "3, -2", b: "3, -2", frame: "3, -2" });
  });
});

describe("screws and dowels", () => {
  test("that the design places are moved by their own keys", () => {
    const text = panelText({
      fixings:
        "{ screws: m3, dowels: 3 mm, at: [{ left: 20 mm, top: 15 mm }, { right: 20 mm, top: 15 mm }], dowels-at: [{ x: 15 mm, y: 30 mm }, { x: 120 mm, y: 34 mm }] }",
    });
    const screw = edited(drag(text, ["fixing.2"], BY));
    expect(screw).toContain("{ left: 20 mm, top: 15 mm }, { right: 17 mm, top: 17 mm }");
    expect(shiftsOf(text, screw)).toEqual({ "fixing.2": "3, -2" });
    expect(shiftsOf(text, edited(drag(text, ["dowel.1"], BY)))).toEqual({ "dowel.1": "3, -2" });
  });

  test("that the rule sets are held by it, and offer to be written down: the others stay where they are", () => {
    const text = panelText({});
    const dragged = drag(text, ["fixing.1"], [2, 1]);
    expect(dragged.outcome).toMatchObject({
      kind: "choice",
      why: "fixing.1 stands where the rule for screws and dowels sets it",
    });
    const now = freed(dragged);
    expect(now).toMatch(/fixings: \{ screws: m3, dowels: 3 mm, at: \[\{ x: /);
    expect(now).not.toContain("dowels-at");
    expect(shiftsOf(text, now)).toEqual({ "fixing.1": "2, 1" });
  });
});

// Things on the sheet set in order. The shifts are made edits of the text, this is laid out anew, and each must stand where
// school geometry, worked by hand beside it, puts it.

import { describe, expect, test } from "vitest";
import { source } from "../../src/design/source.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { extent } from "../../src/geometry/extent.ts";
import { separateMoves } from "../../src/layout/separate-moves.ts";
import {
  type ArrangedThing,
  type Arrangement,
  arrangedThings,
  equallyGapped,
  evenlySpaced,
  linedUp,
  type SetOut,
  setOut,
} from "../../viewer/panel/arrangements.ts";
import { sheetThings } from "../../viewer/panel/sheet-things.ts";
import { layoutOf, panelText } from "../layout/bench-panel.ts";

const LAMP = "part: led-5-bezel";

const textOf = (components: readonly string[], ...markings: readonly string[]): string =>
  panelText({ height: "16 modules", fixings: "", components, markings });

const window = (name: string, place: string, size: string): string =>
  `window: { name: ${name}, at: { ${place} }, ${size}, layers: [metal] }`;

/** As they are picked, in this order. */
function thingsIn(text: string, entries: readonly string[]): readonly ArrangedThing[] {
  const things = arrangedThings(sheetThings(layoutOf(text), {}));
  return entries.map((entry) => things.find((one) => one.entry === entry)!);
}

const placesAfter = (
  text: string,
  arranged: Pick<Arrangement, "shifts"> | null,
): Readonly<Record<string, string>> => {
  if (arranged === null) throw new Error("not arranged");
  const outcome = separateMoves(arranged.shifts, layoutOf(text), source("panel.yaml", text));
  if (outcome.kind !== "edits") throw new Error(JSON.stringify(outcome));
  const applied = applyEdits(text, outcome.edits);
  if (applied.kind === "refused") throw new Error(applied.why);
  const round = (value: number): number => Math.round(value * 100) / 100;
  return Object.fromEntries(
    sheetThings(layoutOf(applied.text), {})
      .filter(({ kind }) => kind !== "screw" && kind !== "dowel")
      .map(({ id, at }) => [id, `${round(at.x)}, ${round(at.y)}`]),
  );
};

describe("spaced evenly", () => {
  test("between the outermost, whatever leans on what", () => {
    const text = textOf([
      `a: { ${LAMP}, at: { x: 30 mm, y: 50 mm } }`,
      `b: { ${LAMP}, at: { right-of: a, centres: 13 mm } }`,
      `c: { ${LAMP}, at: { right-of: b, centres: 40 mm } }`,
      `d: { ${LAMP}, at: { right: 26.05 mm, y: 50 mm } }`,
    ]);
    const arranged = evenlySpaced(thingsIn(text, ["a", "b", "c", "d"]));
    // 146.05 - 26.05 = 120: ninety in three steps of thirty.
    expect(arranged?.measure).toBeCloseTo(30, 9);
    expect(placesAfter(text, arranged)).toEqual({
      a: "30, 50",
      b: "60, 50",
      c: "90, 50",
      d: "120, 50",
    });
  });

  test("windows, a lamp and a line among each other, upright as well", () => {
    const text = textOf(
      [`a: { ${LAMP}, at: { x: 40 mm, y: 20 mm } }`],
      window("w", "x: 42 mm, y: 61 mm", "width: 10 mm, height: 6 mm"),
      window("v", "x: 41 mm, y: 110 mm", "width: 10 mm, height: 6 mm"),
      "line: { name: rule, from: { x: 30 mm, y: 44 mm }, to: { x: 50 mm, y: 44 mm } }",
    );
    // 20 to 110: ninety in three steps.
    expect(placesAfter(text, evenlySpaced(thingsIn(text, ["v", "rule", "a", "w"])))).toEqual({
      a: "40, 20",
      rule: "40, 50",
      w: "42, 80",
      v: "41, 110",
    });
  });

  test("what the middle holds is offered a number", () => {
    const text = textOf([
      `a: { ${LAMP}, at: { x: 20 mm, y: 50 mm } }`,
      `b: { ${LAMP}, at: { x: centre, y: 50 mm } }`,
      `c: { ${LAMP}, at: { x: 110 mm, y: 50 mm } }`,
    ]);
    const arranged = evenlySpaced(thingsIn(text, ["a", "b", "c"]));
    const outcome = separateMoves(
      arranged?.shifts ?? new Map(),
      layoutOf(text),
      source("panel.yaml", text),
    );
    expect(outcome).toMatchObject({ kind: "choice", title: "Set b free at x: 65 mm" });
  });
});

describe("equal gaps", () => {
  const wide = textOf(
    [],
    window("a", "x: 20 mm, y: 50 mm", "width: 20 mm, height: 6 mm"),
    window("b", "x: 45 mm, y: 50 mm", "width: 10 mm, height: 6 mm"),
    window("c", "x: 100 mm, y: 50 mm", "width: 40 mm, height: 6 mm"),
  );

  test("lie between the edges, not the centres", () => {
    const arranged = equallyGapped(thingsIn(wide, ["c", "a", "b"]));
    // From 10 to 120 there are 110, of which 70 are taken: two gaps of 20, and b from 50 to 60.
    expect(arranged?.measure).toBeCloseTo(20, 9);
    expect(placesAfter(wide, arranged)).toEqual({ a: "20, 50", b: "55, 50", c: "100, 50" });
  });

  test("are less than nothing where there is no room", () => {
    const box = (entry: string, minX: number, maxX: number): ArrangedThing => ({
      entry,
      at: { x: (minX + maxX) / 2, y: 0 },
      box: extent(minX, 0, maxX, 1),
    });
    // 0 to 30 with 36 in it.
    const arranged = equallyGapped([box("a", 0, 12), box("b", 10, 22), box("c", 18, 30)]);
    expect(arranged?.measure).toBeCloseTo(-3, 9);
  });
});

describe("lined up", () => {
  const text = textOf(
    [`a: { ${LAMP}, at: { x: 40 mm, y: 20 mm } }`],
    window("w", "x: 60 mm, top: 91.4 mm", "width: 10 mm, height: 6 mm"),
    window("v", "x: 90 mm, y: 70 mm", "width: 30 mm, height: 16 mm"),
  );

  test.each([
    // v's left edge at 75, w's at 55, w's centre then at 60 and v's at 55 + 15.
    ["left", ["w", "v"], { v: "70, 70" }],
    ["right", ["w", "v"], { w: "100, 61" }],
    // Upper edges at 78 and 64.
    ["top", ["w", "v"], { w: "60, 75" }],
    ["bottom", ["w", "v"], { v: "90, 66" }],
    ["level", ["a", "w", "v"], { w: "60, 20", v: "90, 20" }],
    ["in-line", ["v", "a", "w"], { a: "90, 20", w: "90, 61" }],
  ] as const)("by %s", (how, entries, moved) => {
    // 152.4 high: 91.4 from the top is 61.
    const before = { a: "40, 20", w: "60, 61", v: "90, 70" };
    expect(placesAfter(text, linedUp(thingsIn(text, entries), how))).toEqual({
      ...before,
      ...moved,
    });
  });
});

const arrangedAs = (set: SetOut): Extract<SetOut, { readonly kind: "set" }> => {
  if (set.kind === "refused") throw new Error(set.why);
  return set;
};

describe("set out by places of their own", () => {
  const windows = (...places: readonly string[]): string =>
    textOf(
      [],
      ...places.map((place, index) => window(`w${index}`, place, "width: 6 mm, height: 6 mm")),
    );

  test("in a row at one height", () => {
    const text = windows("x: 30 mm, y: 48 mm", "x: 70 mm, y: 52 mm", "x: 44 mm, y: 53 mm");
    const arranged = arrangedAs(setOut(thingsIn(text, ["w0", "w1", "w2"]), "row"));
    expect(arranged.measure).toBeCloseTo(20, 9);
    expect(placesAfter(text, arranged)).toEqual({ w0: "30, 51", w2: "50, 51", w1: "70, 51" });
  });

  test("in a ring, from the first that was picked clockwise", () => {
    const text = windows(
      "x: 70 mm, y: 90 mm",
      "x: 50 mm, y: 70 mm",
      "x: 70 mm, y: 50 mm",
      "x: 90 mm, y: 70 mm",
    );
    const moved = text.replace("x: 50 mm, y: 70 mm", "x: 50 mm, y: 74 mm");
    const shifted = moved.replace("x: 90 mm, y: 70 mm", "x: 90 mm, y: 66 mm");
    const arranged = arrangedAs(setOut(thingsIn(shifted, ["w0", "w1", "w2", "w3"]), "ring"));
    // Two at 20 mm, two at the root of 20² + 4² from the middle at 70, 70.
    expect(arranged.measure).toBeCloseTo((20 + Math.sqrt(416)) / 2, 9);
    expect(placesAfter(shifted, arranged)).toEqual({
      w0: "70, 90.2",
      w3: "90.2, 70",
      w2: "70, 49.8",
      w1: "49.8, 70",
    });
  });

  test("never all on one spot: in a row of what stands in a column, a ring of what has no middle", () => {
    const column = windows("x: 50 mm, y: 30 mm", "x: 50 mm, y: 60 mm", "x: 50 mm, y: 90 mm");
    const names = ["w0", "w1", "w2"];
    expect(setOut(thingsIn(column, names), "row")).toEqual({
      kind: "refused",
      why: "all of them have one x, and a row of them would lie on one spot; make a column, or draw one aside",
    });
    expect(setOut(thingsIn(column, names), "column")).toMatchObject({ kind: "set", measure: 30 });
    const row = windows("x: 30 mm, y: 50 mm", "x: 60 mm, y: 50 mm", "x: 90 mm, y: 50 mm");
    expect(setOut(thingsIn(row, names), "column")).toEqual({
      kind: "refused",
      why: "all of them have one y, and a column of them would lie on one spot; make a row, or draw one up or down",
    });
    const spot = windows("x: 30 mm, y: 50 mm", "x: 30 mm, y: 50 mm", "x: 30 mm, y: 50 mm");
    expect(setOut(thingsIn(spot, names), "ring")).toEqual({
      kind: "refused",
      why: "all of them have one middle, and a ring of them would lie on one spot; draw one aside",
    });
  });

  test("and not of too few", () => {
    const text = windows("x: 30 mm, y: 48 mm", "x: 70 mm, y: 52 mm");
    expect(setOut(thingsIn(text, ["w0", "w1"]), "ring")).toEqual({
      kind: "refused",
      why: "a ring takes three things or more",
    });
    expect(setOut(thingsIn(text, ["w0"]), "column")).toEqual({
      kind: "refused",
      why: "a column takes two things or more",
    });
  });
});

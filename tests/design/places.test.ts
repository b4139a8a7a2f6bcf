// Places: one statement an axis, contradictions and gaps told, the unsaid axis beside a neighbour kept in line.

import { describe, expect, test } from "vitest";
import { codesOf, readComponent } from "./reading.ts";

const at = (place: string): ReturnType<typeof readComponent> =>
  readComponent(`{ part: led-5, at: ${place} }`);

const beside = { kind: "beside", neighbour: "b", distance: 38 };

describe("a place", () => {
  test.each([
    ["centre", { kind: "centre" }, { kind: "centre" }],
    [
      "{ x: 24 mm, y: 1 in }",
      { kind: "from-low", distance: 24, key: "x" },
      { kind: "from-low", distance: 25.4, key: "y" },
    ],
    [
      "{ left: 24, bottom: 3 }",
      { kind: "from-low", key: "left" },
      { kind: "from-low", key: "bottom" },
    ],
    [
      "{ right: 24, top: 3 }",
      { kind: "from-high", distance: 24, key: "right" },
      { kind: "from-high", key: "top" },
    ],
    ["{ x: left, y: top }", { kind: "low-edge", key: "x" }, { kind: "high-edge", key: "y" }],
    ["{ x: right, y: bottom }", { kind: "high-edge" }, { kind: "low-edge" }],
    ["{ x: centre, y: -2 }", { kind: "centre", key: "x" }, { kind: "from-low", distance: -2 }],
    [
      "{ right-of: b, centres: 38 }",
      { ...beside, toward: "high", measure: "centres" },
      { kind: "in-line", neighbour: "b" },
    ],
    ["{ left-of: b, gap: 38 }", { ...beside, toward: "low", measure: "gap" }, { kind: "in-line" }],
    ["{ above: b, gap: 38 }", { kind: "in-line" }, { ...beside, toward: "high", key: "above" }],
    [
      "{ below: b.3, centres: 38, x: 5 }",
      { kind: "from-low" },
      { ...beside, neighbour: "b.3", toward: "low" },
    ],
    ["{ right-of: b, centres: 38, level-with: c }", beside, { kind: "in-line", neighbour: "c" }],
    ["{ in-line-with: b, y: 4 }", { kind: "in-line", neighbour: "b" }, { kind: "from-low" }],
    ["{ right-of: b, above: c, gap: 38 }", beside, { ...beside, neighbour: "c" }],
    ["{ left: 0, top: 0 }", { kind: "from-low", distance: 0 }, { kind: "from-high", distance: 0 }],
  ])("%s", (text, across, along) => {
    const { component, findings } = at(text);
    expect(codesOf(findings)).toEqual([]);
    expect(component).toMatchObject({ at: { across, along } });
  });

  test("read from a photograph says how far off it may be", () => {
    expect(at("{ x: 3, y: 4, residual: 0.4 mm }").component).toMatchObject({
      at: { residual: 0.4 },
    });
  });

  test.each([
    ["{ x: 1, left: 2, y: 3 }", ["contradiction"]],
    ["{ left: 1, right: 2, top: 3 }", ["contradiction"]],
    ["{ above: b, y: 3, gap: 2, x: 1 }", ["contradiction"]],
    ["{ right-of: b, gap: 2, centres: 3 }", ["contradiction"]],
    ["{ x: 1, left: 2, y: 3, top: 4 }", ["contradiction", "contradiction"]],
    ["{ left: 1 }", ["place-incomplete"]],
    ["{ level-with: b }", ["place-incomplete"]],
    ["{}", ["place-incomplete"]],
    ["{ right-of: b }", ["missing-key"]],
    ["{ left: 1, top: 2, gap: 3 }", ["missing-key"]],
    ["{ left: -1, top: 2 }", ["out-of-range"]],
    ["{ right-of: b, centres: 0 }", ["out-of-range"]],
    ["{ x: middle, y: 3 }", ["not-a-place"]],
    ["{ x: 3, y: 4, z: 5 }", ["unknown-key"]],
    ["{ right-of: Brake Lever, gap: 3 }", ["not-a-name"]],
    ["{ right-of: b.0, gap: 3 }", ["not-a-name"]],
    ["middle", ["unknown-word"]],
    ["[3, 4]", ["wrong-shape"]],
  ])("is not %s", (text, codes) => {
    const { component, findings } = at(text);
    expect(codesOf(findings)).toEqual(codes);
    const isRead = codes[0] === "unknown-key";
    expect(component?.kind).toBe(isRead ? "component" : "unreadable");
  });
});

describe("a pattern", () => {
  test.each([
    [
      "{ row: { part: p, count: 4, pitch: 15, left: 1, top: 2 } }",
      { kind: "row", count: 4, pitch: 15 },
      4,
    ],
    [
      "{ part: p, column: { count: 3, pitch: 1/2 in }, at: { x: 1, y: 2 } }",
      { kind: "column", pitch: 12.7 },
      3,
    ],
    [
      "{ grid: { part: p, columns: 3, rows: 2, pitch: 15, x: 1, y: 2 } }",
      { kind: "grid", rowPitch: 15 },
      6,
    ],
    [
      "{ grid: { part: p, columns: 3, rows: 2, pitch: 15, row-pitch: 12, x: 1, y: 2 } }",
      { kind: "grid", rowPitch: 12 },
      6,
    ],
    [
      "{ ring: { part: p, count: 8, radius: 30, x: centre, y: centre } }",
      { kind: "ring", from: 0, step: 45 },
      8,
    ],
    [
      "{ ring: { part: p, count: 8, radius: 30, from: -60, step: 15°, x: 1, y: 2 } }",
      { from: -60, step: 15 },
      8,
    ],
  ])("%s", (text, pattern, members) => {
    const { component, findings } = readComponent(text);
    expect(codesOf(findings)).toEqual([]);
    expect(component).toMatchObject({ kind: "pattern", part: "p", pattern });
    expect(component?.kind === "pattern" ? component.legends.length : 0).toBe(members);
  });

  test("takes one legend a member; quotation marks with nothing in them leave one out", () => {
    const { component, findings } = readComponent(
      '{ row: { part: p, count: 3, pitch: 15, x: 1, y: 2 }, legends: [A, "", { text: C, side: below }] }',
    );
    expect(codesOf(findings)).toEqual([]);
    expect(component).toMatchObject({
      legends: [{ text: "A" }, null, { text: "C", side: "below" }],
    });
  });

  test.each([
    ["{ row: { part: p, count: 3, pitch: 15, x: 1, y: 2 }, legends: [A, B] }", "wrong-count"],
    ["{ row: { part: p, count: 3, pitch: 15, x: 1, y: 2 }, legend: A }", "contradiction"],
    ["{ part: q, row: { part: p, count: 3, pitch: 15, x: 1, y: 2 } }", "contradiction"],
    ["{ at: centre, row: { part: p, count: 3, pitch: 15, x: 1, y: 2 } }", "contradiction"],
    [
      "{ part: p, at: centre, row: { count: 3, pitch: 15 }, ring: { count: 3, radius: 2 } }",
      "contradiction",
    ],
    ["{ row: { part: p, count: 3, pitch: 15 } }", "missing-key"],
    ["{ row: { count: 3, pitch: 15, x: 1, y: 2 } }", "missing-key"],
    ["{ row: { part: p, count: 3, x: 1, y: 2 } }", "missing-key"],
    ["{ row: { part: p, count: 0, pitch: 15, x: 1, y: 2 } }", "out-of-range"],
    ["{ row: { part: p, count: 3, pitch: 15, x: 1 } }", "place-incomplete"],
    ["{ part: p, at: centre, legends: [A] }", "contradiction"],
  ])("is not %s", (text, code) => {
    const { component, findings } = readComponent(text);
    expect(codesOf(findings)).toEqual([code]);
    expect(component?.kind).toBe("unreadable");
  });
});

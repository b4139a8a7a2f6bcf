// Rows, columns, grids and rings of windows, free markings and screws. Where their members stand is arithmetic: a pitch is
// counted, and a hole of a pitch circle lies at R sin a and R cos a from its centre, for a clock angle a.

import { describe, expect, test } from "vitest";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { extentCentre } from "../../src/geometry/extent.ts";
import { movableThings } from "../../src/layout/movable-things.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { codes, holeNamed, layoutOf, panelOf, panelText, troubles } from "./bench-panel.ts";

type Spot = readonly [number, number];

const thousandths = ([x, y]: Spot): Spot => [
  Math.round(x * 1000) / 1000,
  Math.round(y * 1000) / 1000,
];

const windowsIn = (layout: PanelLayout): ReadonlyMap<string, Spot> =>
  new Map(
    layout.layers
      .flatMap(({ cutOuts }) => cutOuts)
      .filter(({ purpose, layer }) => purpose === "window" && layer === "metal")
      .map(({ owner, centre }) => [owner, thousandths([centre.x, centre.y])]),
  );

const WINDOW = "width: 6 mm, height: 4 mm, layers: [metal]";

/** On a sheet of 146.05 by 76.2, as eight modules on rails are. */
const windows = (words: string): ReadonlyMap<string, Spot> =>
  windowsIn(layoutOf({ markings: [`window: { ${WINDOW}, ${words} }`] }));

describe("windows", () => {
  test("in a row stand at one pitch from the place of the first", () => {
    expect([...windows("row: { count: 4, pitch: 12.5 mm, x: 30 mm, y: 40 mm }")]).toEqual([
      ["window-1.1", [30, 40]],
      ["window-1.2", [42.5, 40]],
      ["window-1.3", [55, 40]],
      ["window-1.4", [67.5, 40]],
    ]);
  });

  test("in a column go down, with the place written beside it", () => {
    expect([
      ...windows("at: { x: 30 mm, top: 20 mm }, column: { count: 3, pitch: 10 mm }").values(),
    ]).toEqual([
      [30, 56.2],
      [30, 46.2],
      [30, 36.2],
    ]);
  });

  test("in a grid are counted across, then down; `right` holds the last column", () => {
    const grid =
      "grid: { columns: 2, rows: 2, pitch: 20 mm, row-pitch: 10 mm, right: 40 mm, y: 30 mm }";
    expect([...windows(grid).values()]).toEqual([
      [86.05, 40],
      [106.05, 40],
      [86.05, 30],
      [106.05, 30],
    ]);
  });

  test("on a pitch circle stand at R sin and R cos of their clock angles", () => {
    const ring = "ring: { count: 6, radius: 25 mm, from: 30 deg, x: centre, y: centre }";
    const [radius, middle] = [25, { x: 146.05 / 2, y: 76.2 / 2 }];
    const expected = Array.from({ length: 6 }, (_, index) => {
      const angle = ((30 + index * 60) * Math.PI) / 180;
      return thousandths([
        middle.x + radius * Math.sin(angle),
        middle.y + radius * Math.cos(angle),
      ]);
    });
    expect([...windows(ring).values()]).toEqual(expected);
  });

  test("take their place from a neighbour as one window does", () => {
    const layout = layoutOf({
      components: ["a: { part: led-5, at: { x: 40 mm, y: 50 mm } }"],
      markings: [`window: { ${WINDOW}, row: { count: 2, pitch: 9 mm, below: a, centres: 15 mm } }`],
    });
    expect([...windowsIn(layout).values()]).toEqual([
      [40, 35],
      [49, 35],
    ]);
  });

  test("are of one size, each with its own opening", () => {
    const layout = layoutOf({
      markings: [`window: { ${WINDOW}, row: { count: 2, pitch: 12 mm, x: 30 mm, y: 40 mm } }`],
    });
    expect(holeNamed(layout, "window-1.2/window@metal").owner).toBe("window-1.2");
  });
});

const middles = (layout: PanelLayout): ReadonlyMap<string, Spot> =>
  new Map(
    layout.markings.map(({ id, box }) => {
      const { x, y } = extentCentre(box);
      return [id, thousandths([x, y])];
    }),
  );

describe("legends by themselves", () => {
  test("of one word stand at their pitch", () => {
    const row = "legend: { text: ON, row: { count: 3, pitch: 20 mm, x: 30 mm, y: 40 mm } }";
    const made = middles(layoutOf({ markings: [row] }));
    expect([...made.keys()]).toEqual(["legend-1.1", "legend-1.2", "legend-1.3"]);
    const [first, second, third] = [...made.values()];
    expect(second![0] - first![0]).toBeCloseTo(20, 6);
    expect(third![0] - first![0]).toBeCloseTo(40, 6);
  });

  test("have words of their own; a member may have none", () => {
    const row =
      'legend: { name: stop, texts: [A, "", [B, C]], row: { count: 3, pitch: 20 mm, x: 30 mm, y: 40 mm } }';
    const { markings } = layoutOf({ markings: [row] });
    expect(markings.map(({ id, text }) => [id, text])).toEqual([
      ["stop.1", "A"],
      ["stop.3", "B\nC"],
    ]);
  });

  test("point at the words of the member where one is wrong", () => {
    const text = panelText({
      markings: [
        "legend: { texts: [A, \u4e16], row: { count: 2, pitch: 20 mm, x: 30 mm, y: 40 mm } }",
      ],
    });
    const found = panelOf(text).findings.find(({ code }) => code === "checks/missing-glyph");
    expect(found?.subjects).toEqual(["legend-1.2"]);
    expect(text.slice(found?.span.start, found?.span.end)).toBe("\u4e16");
  });
});

test("lines in a column are the first one, moved", () => {
  const line =
    "line: { from: { x: 30 mm, y: 50 mm }, to: { x: 60 mm, y: 52 mm }, column: { count: 3, pitch: 8 mm } }";
  const { ownPlaces } = layoutOf({ markings: [line] });
  const ends = (end: string): readonly (readonly [string, number, number])[] =>
    ownPlaces.filter((one) => one.end === end).map(({ id, at }) => [id, at.x, at.y]);
  // y says the lowest centre of a pattern, as it does of components: 30 to 60, and the lowest of three at its number.
  expect(ends("from")).toEqual([
    ["line-1.1", 30, 66],
    ["line-1.2", 30, 58],
    ["line-1.3", 30, 50],
  ]);
  expect(ends("to")).toEqual([
    ["line-1.1", 60, 68],
    ["line-1.2", 60, 60],
    ["line-1.3", 60, 52],
  ]);
});

describe("screws", () => {
  const screws = (at: string): PanelLayout =>
    layoutOf({ fixings: `{ screws: m3, dowels: 3 mm, at: [${at}] }` });
  const places = (layout: PanelLayout): readonly (readonly [string, string, number, number])[] =>
    layout.fixings
      .filter(({ kind }) => kind === "screw")
      .map(({ id, entry, at }) => [id, entry, ...thousandths([at.x, at.y])]);

  test("of rows and by themselves are numbered in the order of the text", () => {
    const layout = screws(
      "{ x: 20 mm, y: 8 mm }, { row: { count: 3, pitch: 30 mm, x: 20 mm, top: 8 mm } }, { x: 80 mm, y: 8 mm }",
    );
    expect(places(layout)).toEqual([
      ["fixing.1", "fixing.1", 20, 8],
      ["fixing.2", "fixing.2-4", 20, 68.2],
      ["fixing.3", "fixing.2-4", 50, 68.2],
      ["fixing.4", "fixing.2-4", 80, 68.2],
      ["fixing.5", "fixing.5", 80, 8],
    ]);
    const movable = movableThings(layout).map(({ id, entry }) => [id, entry]);
    expect(movable).toContainEqual(["fixing.3", "fixing.2-4"]);
  });

  test("lie on a pitch circle", () => {
    const layout = screws("{ ring: { count: 8, radius: 28 mm, x: centre, y: centre } }");
    for (const [index, { at }] of layout.fixings.slice(0, 8).entries()) {
      expect(at.x - 146.05 / 2).toBeCloseTo(28 * Math.sin((index * Math.PI) / 4), 6);
      expect(at.y - 76.2 / 2).toBeCloseTo(28 * Math.cos((index * Math.PI) / 4), 6);
    }
  });

  test("of one row are enough by themselves, and one alone is not", () => {
    const one = panelOf({
      fixings: "{ screws: m3, dowels: 3 mm, at: [{ row: { count: 1, pitch: 9, x: 20, y: 8 } }] }",
    });
    expect(codes(one.findings)).toContain("design/wrong-count");
    expect(places(screws("{ row: { count: 2, pitch: 90 mm, x: 20 mm, y: 8 mm } }"))).toHaveLength(
      2,
    );
  });
});

describe("what is found in a row", () => {
  test("names the member, and the row's pitch mends it", () => {
    const text = panelText({
      markings: ["legend: { text: HAUL, row: { count: 2, pitch: 4 mm, x: 60 mm, y: 40 mm } }"],
    });
    const found = panelOf(text).findings.find(({ code }) => code === "checks/markings-overlap");
    expect(found?.message).toContain('"HAUL" (legend-1.1)');
    expect(found?.remedies.map(({ title }) => title)).toEqual([
      expect.stringMatching(/^pitch: \d+(\.\d+)? mm \(legend-1\)$/),
    ]);
    const [edit] = found?.remedies[0]?.edits ?? [];
    const mended = `${text.slice(0, edit?.start)}${edit?.text}${text.slice(edit?.end)}`;
    expect(codes(panelOf(mended).findings)).not.toContain("checks/markings-overlap");
  });

  test.each([
    [
      "checks/bodies-collide",
      "components",
      "lamps: { part: led-5, at: { x: 60 mm, y: 40 mm }, row: { count: 3, pitch: 6.2 mm } }",
    ],
    [
      "checks/web",
      "markings",
      `window: { ${WINDOW}, at: { x: 60 mm, y: 40 mm }, row: { count: 3, pitch: 6.5 mm } }`,
    ],
  ])("the pitch mends it where the place stands beside it: %s", (code, key, line) => {
    const text = panelText({ [key]: [line] });
    const found = panelOf(text).findings.find((one) => one.code === code);
    const [remedy] = found?.remedies ?? [];
    expect(remedy?.title).toMatch(/^pitch: /);
    const mended = applyEdits(text, remedy?.edits ?? []);
    if (mended.kind === "refused") throw new Error(mended.why);
    expect(codes(panelOf(mended.text).findings)).not.toContain(code);
  });

  test("a window of a row that is too near the next is told once, by their names", () => {
    const { findings } = panelOf({
      markings: [`window: { ${WINDOW}, row: { count: 2, pitch: 6.5 mm, x: 60 mm, y: 40 mm } }`],
    });
    const web = findings.find(({ code }) => code === "checks/web");
    expect([...(web?.subjects ?? [])].sort()).toEqual(["window-1.1", "window-1.2"]);
    expect(web?.remedies.map(({ title }) => title)[0]).toMatch(/^pitch: .* mm \(window-1\)$/);
  });

  test("a neighbour that is not there is told once for the whole row", () => {
    const { findings } = panelOf({
      markings: [`window: { ${WINDOW}, row: { count: 5, pitch: 9 mm, below: nobody, gap: 2 mm } }`],
    });
    expect(codes(findings).filter((code) => code === "layout/unknown-neighbour")).toHaveLength(1);
  });

  test("corners that are too sharp are told once for a row of windows, and mended by one number", () => {
    const sharp =
      "window: { width: 6 mm, height: 4 mm, corner: 0.2 mm, layers: [opal], row: { count: 3, pitch: 12 mm, x: 50 mm, y: 40 mm } }";
    const stack = ["{ layer: opal, sheet: opal }", "{ layer: metal, sheet: metal }"];
    const text = panelText({ stack, markings: [sharp] });
    const found = panelOf(text).findings.filter(({ code }) => code === "checks/sharp-corner");
    expect(found.map(({ subjects, suppressed }) => [subjects, suppressed])).toEqual([
      [["window-1.1"], 2],
    ]);
    const [remedy] = found[0]?.remedies ?? [];
    expect(remedy?.title).toBe("corner: 0.5 mm (window-1)");
    const mended = applyEdits(text, remedy?.edits ?? []);
    if (mended.kind === "refused") throw new Error(mended.why);
    expect(codes(panelOf(mended.text).findings)).not.toContain("checks/sharp-corner");
  });

  test("nothing else is told of a row that stands well", () => {
    const row = `window: { ${WINDOW}, corner: 1 mm, row: { count: 3, pitch: 12 mm, x: 50 mm, y: 40 mm } }`;
    expect(troubles(panelOf({ markings: [row] }).findings)).toEqual([]);
  });
});

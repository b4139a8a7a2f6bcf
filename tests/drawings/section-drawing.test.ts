import { describe, expect, it } from "vitest";
import { sectionSheet } from "../../src/drawings/section-drawing.ts";
import { openStretches, solidStretches } from "../../src/drawings/section-gaps.ts";
import { sectionPlanes } from "../../src/drawings/section-planes.ts";
import { extentsOverlap } from "../../src/geometry/extent.ts";
import { itemExtents, laidOut, library, panelText, sixtyComponents, WINCH } from "./panels.ts";

const sheetOf = (text: string) => {
  const layout = laidOut(text);
  return {
    layout,
    sheet: sectionSheet({ layout, printedParts: [], findings: [] }, library.lettering),
  };
};

describe("silhouettes", () => {
  for (const [what, text] of [
    ["a winch", WINCH],
    ["sixty components", sixtyComponents()],
  ] as const) {
    const { layout, sheet } = sheetOf(text);
    const silhouettes = sheet.views.flatMap((view) => view.silhouettes);

    it(`show every component of ${what} in one view`, () => {
      const ids = silhouettes.map(({ id }) => id).toSorted();
      expect(ids).toEqual(layout.components.map(({ id }) => id).toSorted());
      expect(sheet.views.length).toBeLessThanOrEqual(4);
    });

    it(`reach as deep as the facts say for ${what}`, () => {
      for (const { id, depth } of silhouettes) {
        const component = layout.components.find((each) => each.id === id);
        expect(depth).toBeCloseTo(component?.depth.total.nominal ?? Number.NaN, 9);
      }
    });

    it(`stand in the table of ${what}`, () => {
      const ids = sheet.rows.flatMap((row) => row.ids).toSorted();
      expect(ids).toEqual(layout.components.map(({ id }) => id).toSorted());
    });
  }
});

describe("dimensions in depth", () => {
  const { layout, sheet } = sheetOf(WINCH);
  const said = sheet.views.flatMap(({ dimensions }) => dimensions);

  it("print the distance that they span", () => {
    for (const { text, value } of said) {
      const printed = /\d+(\.\d+)?(?= \(|$)/.exec(text);
      expect(Number(printed?.[0])).toBeCloseTo(value, 2);
    }
  });

  it("name the deepest of each view with its range", () => {
    for (const view of sheet.views) {
      const deepest = view.silhouettes.toSorted((a, b) => b.depth - a.depth)[0]!;
      const dimension = view.dimensions.find(({ text }) => text.startsWith(`${deepest.id} `));
      const total = layout.components.find(({ id }) => id === deepest.id)?.depth.total;
      expect(dimension?.value).toBeCloseTo(total?.nominal ?? Number.NaN, 9);
      if (total !== undefined && total.low !== total.high)
        expect(dimension?.text).toMatch(/\(\d+(\.\d+)? to \d+(\.\d+)?\)$/);
    }
  });

  it("show the depth that there is, once", () => {
    expect(said.filter(({ text }) => text === "depth there is 150")).toHaveLength(1);
    const without = sheetOf(WINCH.replace("depth: 150 mm\n", "")).sheet;
    const dimensions = without.views.flatMap((view) => view.dimensions);
    expect(dimensions.filter(({ text }) => text.startsWith("depth there is"))).toHaveLength(0);
  });

  it("keep clear of the foot", () => {
    for (const { box } of said) expect(extentsOverlap(box, sheet.foot)).toBe(false);
    for (const view of sheet.views) expect(extentsOverlap(view.box, sheet.foot)).toBe(false);
  });
});

describe("the planes of the sections", () => {
  it("part what would hide each other and keep what would not", () => {
    const layout = laidOut(
      panelText([
        "top: { part: toggle-12, at: { left: 40 mm, top: 25 mm } }",
        "foot: { part: toggle-12, at: { left: 43 mm, bottom: 25 mm } }",
        "beside: { part: pot-16, at: { left: 100 mm, top: 25 mm } }",
      ]),
    );
    const planes = sectionPlanes(layout);
    expect(planes.map(({ name }) => name)).toEqual(["A", "B"]);
    expect(planes.map(({ components }) => components.map(({ id }) => id))).toEqual([
      ["top", "foot"],
      ["beside"],
    ]);
    expect(planes[1]?.x).toBe(100);
  });

  it("run through round openings along their whole diameter", () => {
    const layout = laidOut(
      panelText(["lamp: { part: led-5-bezel, at: { left: 60 mm, top: 50 mm } }"]),
    );
    const [plane] = sectionPlanes(layout);
    for (const layer of layout.layers) {
      const hole = layer.cutOuts.find(
        ({ owner, contour }) => owner === "lamp" && contour.kind === "circle",
      );
      if (hole?.contour.kind !== "circle") throw new Error("no round hole");
      const open = openStretches(layer, plane!);
      expect(open).toHaveLength(1);
      expect(open[0]!.high - open[0]!.low).toBeCloseTo(2 * hole.contour.radius, 9);
    }
  });

  it("leave solid what is not open, to the last stretch", () => {
    const open = [
      { low: -1, high: 2 },
      { low: 4, high: 5 },
    ];
    expect(solidStretches({ low: 0, high: 10 }, open)).toEqual([
      { low: 2, high: 4 },
      { low: 5, high: 10 },
    ]);
    expect(solidStretches({ low: 0, high: 10 }, [{ low: -1, high: 11 }])).toEqual([]);
    expect(solidStretches({ low: 0, high: 10 }, [])).toEqual([{ low: 0, high: 10 }]);
  });
});

it("draws everything inside its sheet", () => {
  const { sheet } = sheetOf(sixtyComponents());
  const { box } = sheet.drawing;
  for (const each of itemExtents(sheet.drawing)) {
    expect(each.minX).toBeGreaterThanOrEqual(box.minX);
    expect(each.maxX).toBeLessThanOrEqual(box.maxX);
    expect(each.minY).toBeGreaterThanOrEqual(box.minY);
    expect(each.maxY).toBeLessThanOrEqual(box.maxY);
  }
});

it("a panel without components still shows its stack", () => {
  const { sheet } = sheetOf(
    panelText(["lamp: { part: led-5-bezel, at: { left: 60 mm, top: 50 mm } }"])
      .replace(/ {2}lamp: .*\n/, "")
      .replace("components:\n", ""),
  );
  expect(sheet.views).toHaveLength(1);
  expect(sheet.views[0]?.dimensions.map(({ text }) => text.split(" ")[0])).toEqual(["stack"]);
});

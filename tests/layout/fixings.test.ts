// Where fixings go when the design leaves it to the house rule, and how they register the layers.

import { describe, expect, test } from "vitest";
import { containsPoint } from "../../src/geometry/containment.ts";
import { circle } from "../../src/geometry/contour.ts";
import { contourDistance } from "../../src/geometry/distance.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import type { PanelLayout, PlacedFixing } from "../../src/layout/panel-layout.ts";
import { CLEARANCE_HOLES } from "../../src/standards/metric-fasteners.ts";
import { codes, holeNamed, layoutOf, panelOf } from "./bench-panel.ts";

const screws = (layout: PanelLayout): readonly PlacedFixing[] =>
  layout.fixings.filter(({ kind }) => kind === "screw");

const CROWDED = [
  "a: { grid: { part: tactile-12-cap, columns: 5, rows: 7, pitch: 22 mm, left: 30 mm, top: 18 mm } }",
  "b: { row: { part: led-5-bezel, count: 7, pitch: 14 mm, left: 30 mm, bottom: 9 mm } }",
];

describe("the house rule", () => {
  test.each([4, 8, 11, 14, 20, 40])(
    "%i modules, nothing in the way: corners, and at most 75 mm apart",
    (count) => {
      const layout = layoutOf({ height: `${count} modules` });
      const held = screws(layout);
      const edge = contourExtent(layout.outline);
      expect(held.length).toBeGreaterThanOrEqual(4);
      for (const { at } of held) {
        const nearest = Math.min(
          ...held
            .filter((other) => other.at !== at)
            .map((other) => Math.max(Math.abs(other.at.x - at.x), Math.abs(other.at.y - at.y))),
        );
        expect(nearest).toBeLessThanOrEqual(75);
        expect(at.y).toBeGreaterThanOrEqual(edge.minY + 3);
      }
    },
  );

  test("on a crowded panel every fixing keeps a web of 3 mm to every hole, body and mount head, and stays off the rails", () => {
    const layout = layoutOf({ height: "24 modules", components: CROWDED });
    expect(layout.fixings.length).toBeGreaterThan(4);
    for (const { id, at, diameter } of layout.fixings) {
      const own = circle(at, diameter / 2);
      const others = [
        ...layout.layers.flatMap(({ cutOuts }) =>
          cutOuts.filter(({ owner }) => owner !== id).map(({ contour }) => contour),
        ),
        ...layout.components.flatMap(({ bodies }) => bodies.map(({ footprint }) => footprint)),
      ];
      for (const other of others) {
        const { gap, overlaps } = contourDistance(own, other);
        expect(overlaps).toBe(false);
        expect(gap).toBeGreaterThanOrEqual(3 - 1e-9);
      }
      for (const rail of layout.rails)
        expect(at.x - diameter / 2 > rail.maxX || at.x + diameter / 2 < rail.minX).toBe(true);
    }
  });
});

describe("the house rule among other things", () => {
  test("a border round everything bars no fixing: they may stand within it, not on its line", () => {
    const words = {
      height: "12 modules",
      components: [
        "a: { part: toggle-6, at: { x: 40 mm, y: centre } }",
        "b: { part: toggle-6, at: { right: 40 mm, y: centre } }",
      ],
    };
    const bordered = layoutOf({ ...words, markings: ["border: { around: [a, b], gap: 35 mm }"] });
    const ring = bordered.markings.find(({ kind }) => kind === "border");
    const inside = bordered.fixings.filter(
      ({ at }) =>
        ring !== undefined &&
        at.x > ring.box.minX &&
        at.x < ring.box.maxX &&
        at.y > ring.box.minY &&
        at.y < ring.box.maxY,
    );
    expect(inside.length).toBeGreaterThan(0);
    for (const { at } of bordered.fixings)
      for (const { outline, holes } of ring?.fills ?? [])
        expect(containsPoint(outline, at) && !holes.some((hole) => containsPoint(hole, at))).toBe(
          false,
        );
  });

  test("where nothing is free none is set, and it is said", () => {
    // Two meters of 72 x 72 take the panel from rail to rail and from end to end.
    const panel = panelOf({
      height: "8 modules",
      components: [
        "a: { part: meter-72, at: { x: 44 mm, y: centre } }",
        "b: { part: meter-72, at: { x: 102 mm, y: centre } }",
      ],
    });
    expect(codes(panel.findings)).toContain("layout/fixing-room");
    const room = panel.findings.find(({ code }) => code === "layout/fixing-room");
    expect(room?.severity).toBe("query");
    for (const { at } of panel.layout?.fixings ?? [])
      for (const { contour, owner } of panel.layout?.layers.flatMap(({ cutOuts }) => cutOuts) ?? [])
        if (owner === "a" || owner === "b") expect(containsPoint(contour, at)).toBe(false);
  });

  test("places that are given are kept to the micrometre, and nothing is said", () => {
    const given =
      "{ screws: m4, dowels: 4 mm, at: [{ x: 20 mm, y: 6 mm }, { right: 1 in, top: 6 mm }], dowels-at: [{ x: 20 mm, y: 30 mm }, { right: 20 mm, y: 40 mm }] }";
    const panel = panelOf({ fixings: given });
    expect(panel.layout?.fixings.map(({ at }) => [at.x, at.y])).toEqual([
      [20, 6],
      [expect.closeTo(120.65, 9), expect.closeTo(70.2, 9)],
      [20, 30],
      [expect.closeTo(126.05, 9), 40],
    ]);
    expect(codes(panel.findings)).not.toContain("layout/fixing-places");
  });
});

describe("holes of the fixings", () => {
  // ISO 273:1979, medium: M3 3.4, M4 4.5.
  test.each([
    ["m3", 3.4],
    ["m4", 4.5],
  ] as const)("%s goes through %f in every sheet", (thread, diameter) => {
    const layout = layoutOf({ fixings: `{ screws: ${thread}, dowels: 3 mm }` });
    expect(CLEARANCE_HOLES[thread].medium).toBe(diameter);
    for (const { id } of layout.layers) {
      const { contour } = holeNamed(layout, `fixing.1/fixing@${id}`);
      expect(contour).toMatchObject({ kind: "circle", radius: diameter / 2 });
    }
  });

  test("the slotted dowel gives along the line between the two, and holds across it", () => {
    const places = "dowels-at: [{ x: 30 mm, y: 10 mm }, { x: 30 mm, y: 60 mm }]";
    const layout = layoutOf({ fixings: `{ screws: m3, dowels: 3 mm, ${places} }` });
    const box = contourExtent(holeNamed(layout, "dowel.2/dowel@face").contour);
    expect(box.maxX - box.minX).toBeCloseTo(3.1, 9);
    expect(box.maxY - box.minY).toBeCloseTo(4.1, 9);
  });

  test("the two dowels of the house rule fit only one way: turned or flipped, none meets a hole again", () => {
    const layout = layoutOf({ height: "11 modules" });
    const [round, slotted] = layout.fixings.filter(({ kind }) => kind !== "screw");
    const { maxX, maxY } = layout.nominal;
    const [a, b] = [round?.at ?? { x: 0, y: 0 }, slotted?.at ?? { x: 0, y: 0 }];
    // Half a turn, left for right, top for bottom: the first dowel would have to land on the second.
    expect(Math.abs(maxY - a.y - b.y)).toBeGreaterThan(3);
    expect(Math.abs(a.y - b.y)).toBeGreaterThan(3);
    expect(maxX - a.x).toBeCloseTo(b.x, 0);
  });
});

// What a move, a turn and a mirror of the text do to the layout: they carry everything that belongs to a component along,
// and nothing else.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Contour } from "../../src/geometry/contour.ts";
import type { Extent } from "../../src/geometry/extent.ts";
import { contourArea, contourCentroid, contourExtent } from "../../src/geometry/measure.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { layoutOf } from "./bench-panel.ts";

const seed = 20_261_124;

const FIXED =
  "{ screws: m3, dowels: 3 mm, at: [{ x: 20 mm, y: 6 mm }, { right: 20 mm, top: 6 mm }], dowels-at: [{ x: 20 mm, y: 20 mm }, { right: 20 mm, top: 28 mm }] }";

const scene = (x: number): PanelLayout =>
  layoutOf({
    height: "14 modules",
    fixings: FIXED,
    components: [
      `gain: { part: pot-16, at: { x: ${x} mm, y: 80 mm }, scale: { from: 0, to: 10, major: 2, minor: 1 }, legend: GAIN }`,
      "pump: { part: toggle-6, at: { x: 40 mm, y: 40 mm }, legend: PUMP, positions: { up: ON, down: OFF } }",
    ],
  });

interface Thing {
  readonly owner: string;
  readonly box: Extent;
}

/** Every hole of every layer and every marking, by a name of its own. */
const things = (layout: PanelLayout): ReadonlyMap<string, Thing> =>
  new Map([
    ...layout.layers.flatMap(({ cutOuts }) =>
      cutOuts.map(
        ({ id, owner, contour }) => [id, { owner, box: contourExtent(contour) }] as const,
      ),
    ),
    ...layout.markings.map(({ id, owner, box }) => [id, { owner, box }] as const),
    ...layout.components.flatMap(({ id, bodies }) =>
      bodies.map(
        ({ footprint }, index) =>
          [`${id}/body.${index}`, { owner: id, box: contourExtent(footprint) }] as const,
      ),
    ),
  ]);

describe(`moving a component by 3 mm (seed ${seed})`, () => {
  test("moves its holes in every layer, its bodies, scale and legend by 3 mm, and nothing else", () => {
    fc.assert(
      fc.property(fc.integer({ min: 80, max: 100 }), (x) => {
        const before = things(scene(x));
        const after = things(scene(x + 3));
        expect([...after.keys()]).toEqual([...before.keys()]);
        let moved = 0;
        for (const [id, { owner, box }] of after) {
          const was = before.get(id)?.box;
          const by = owner === "gain" ? 3 : 0;
          moved += by === 3 ? 1 : 0;
          expect(box.minX - (was?.minX ?? 0)).toBeCloseTo(by, 9);
          expect(box.maxX - (was?.maxX ?? 0)).toBeCloseTo(by, 9);
          expect(box.minY - (was?.minY ?? 0)).toBeCloseTo(0, 9);
        }
        // A hole in each of two layers, a tab, bodies, two markings of the scale, the legend.
        expect(moved).toBeGreaterThan(8);
      }),
      { seed, numRuns: 8 },
    );
  });

  test("a neighbour that leans on it follows", () => {
    const leaning = (x: number): PanelLayout =>
      layoutOf({
        components: [
          "b: { part: led-5-bezel, at: { right-of: a, gap: 9 mm } }",
          `a: { part: toggle-6, at: { x: ${x} mm, y: 30 mm } }`,
        ],
      });
    const at = (layout: PanelLayout): number =>
      layout.components.find(({ id }) => id === "b")?.at.x ?? Number.NaN;
    expect(at(leaning(43)) - at(leaning(40))).toBeCloseTo(3, 9);
  });
});

const holesOf = (layout: PanelLayout, owner: string): readonly Contour[] =>
  layout.layers.flatMap(({ cutOuts }) =>
    cutOuts.filter((cutOut) => cutOut.owner === owner).map(({ contour }) => contour),
  );

describe("turning", () => {
  const turned = (turn: number): PanelLayout =>
    layoutOf({
      height: "14 modules",
      fixings: "",
      components: [`port: { part: d-sub-9, at: centre, turn: ${turn} deg }`],
    });

  test.each([0, 17, 90, 180, 270, 333])(
    "by %f° turns every hole about the component's centre, counter-clockwise",
    (turn) => {
      const upright = turned(0);
      const centre = upright.components[0]?.at ?? { x: 0, y: 0 };
      const angle = (turn * Math.PI) / 180;
      const before = holesOf(upright, "port");
      const after = holesOf(turned(turn), "port");
      expect(after).toHaveLength(before.length);
      after.forEach((hole, index) => {
        const was = before[index];
        if (was === undefined) return;
        const { x, y } = contourCentroid(was);
        const [dx, dy] = [x - centre.x, y - centre.y];
        const now = contourCentroid(hole);
        expect(now.x).toBeCloseTo(centre.x + dx * Math.cos(angle) - dy * Math.sin(angle), 6);
        expect(now.y).toBeCloseTo(centre.y + dx * Math.sin(angle) + dy * Math.cos(angle), 6);
        expect(contourArea(hole)).toBeCloseTo(contourArea(was), 6);
      });
    },
  );

  test("once round changes no number at all", () => {
    expect(JSON.stringify(holesOf(turned(360), "port"))).toBe(
      JSON.stringify(holesOf(turned(0), "port")),
    );
  });
});

describe("mirroring the text (left for right)", () => {
  const mirrored = (side: "left" | "right"): PanelLayout => {
    const other = side === "left" ? "right" : "left";
    return layoutOf({
      fixings: "",
      components: [
        `a: { part: toggle-6, at: { ${side}: 30 mm, top: 30 mm }, legend: { text: A, side: ${side} } }`,
        `b: { part: led-5-bezel, at: { ${other}-of: a, centres: 25 mm } }`,
        `c: { part: push-button-16, at: { x: ${other}, y: centre } }`,
        `d: { part: led-5-bezel, at: { ${side}-of: c, gap: 5 mm } }`,
      ],
    });
  };

  test("mirrors every place about the panel's middle", () => {
    const left = mirrored("left");
    const right = mirrored("right");
    for (const component of left.components) {
      const twin = right.components.find(({ id }) => id === component.id);
      expect((twin?.at.x ?? Number.NaN) + component.at.x).toBeCloseTo(146.05, 9);
      expect(twin?.at.y).toBeCloseTo(component.at.y, 9);
    }
    const legend = (layout: PanelLayout): Extent | undefined =>
      layout.markings.find(({ id }) => id === "a/legend")?.box;
    expect((legend(left)?.maxX ?? 0) + (legend(right)?.minX ?? 0)).toBeCloseTo(146.05, 0);
  });
});

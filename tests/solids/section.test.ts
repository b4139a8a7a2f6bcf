// Recipes cut by upright planes, against closed forms of plane geometry: chords by Pythagoras, and the volume of a solid as
// the sum of its sections' areas (Cavalieri), which the recipe's own volume sum knows nothing of.

import { describe, expect, test } from "vitest";
import { circle, loop, point, type Region, vertex } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { contourStretches, lineStretches } from "../../src/geometry/line-stretches.ts";
import { contourExtent, regionArea } from "../../src/geometry/measure.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { rectangle, roundedRectangle } from "../../src/geometry/shapes.ts";
import {
  composed,
  layered,
  lofted,
  opening,
  placed,
  prism,
  revolved,
  type Solid,
  solidLayer,
  solidRegion,
} from "../../src/geometry/solid/solid.ts";
import {
  planeAcrossX,
  planeAcrossY,
  solidSection,
} from "../../src/geometry/solid/solid-section.ts";

const areaOf = (regions: readonly Region[]): number =>
  regions.reduce((sum, region) => sum + regionArea(region), 0);

const box = extent(0, 0, 40, 30);
/** 40 x 30 x 8 with a bore of 10 all through at 20, 15, and a blind one of 16 from a height of 3. */
const bored: Solid = layered([
  solidLayer(0, 3, [solidRegion({ outline: rectangle(box), holes: [circle(point(20, 15), 5)] })]),
  solidLayer(3, 8, [solidRegion({ outline: rectangle(box), holes: [circle(point(20, 15), 8)] })]),
]);

describe("a line through an area", () => {
  const at = (x: number) => ({ at: point(x, 0), along: { x: 0, y: 1 } }) as const;

  test("beside the middle of a bore leaves twice the root of r² - d² open", () => {
    const region = { outline: rectangle(box), holes: [circle(point(20, 15), 5)] };
    for (const away of [0, 1, 3, 4, 4.9]) {
      const half = Math.sqrt(25 - away * away);
      const found = lineStretches([region], at(20 + away));
      expect(found).toHaveLength(2);
      expect(found[0]?.high).toBeCloseTo(15 - half, 12);
      expect(found[1]?.low).toBeCloseTo(15 + half, 12);
    }
    expect(lineStretches([region], at(25))).toEqual([{ low: 0, high: 30 }]);
  });

  test("is the same through a circle and through its two half turns, also the wrong way round", () => {
    const turns = [
      loop([vertex(15, 15, 1), vertex(25, 15, 1)]),
      loop([vertex(25, 15, -1), vertex(15, 15, -1)]),
      loop([vertex(20, 10, 1), vertex(20, 20, 1)]),
    ];
    for (const shape of turns)
      for (const x of [15.25, 18, 20, 22, 24.999]) {
        const [found] = contourStretches(shape, at(x));
        const half = Math.sqrt(25 - (x - 20) * (x - 20));
        expect(found?.low).toBeCloseTo(15 - half, 9);
        expect(found?.high).toBeCloseTo(15 + half, 9);
      }
  });

  test("crosses the round corner of a plate where its circle does", () => {
    const plate = roundedRectangle(box, 6);
    const [found] = contourStretches(plate, at(2));
    // The corner's middle is 6, 6: 4 to the side of it the circle stands at 6 - root of 36 - 16.
    expect(found?.low).toBeCloseTo(6 - Math.sqrt(20), 12);
    expect(found?.high).toBeCloseTo(24 + Math.sqrt(20), 12);
  });

  test("closes whatever corner, edge or bow it comes upon", () => {
    const shapes = [
      loop([vertex(0, 0), vertex(10, 0), vertex(10, 10), vertex(5, 5), vertex(0, 10)]),
      loop([vertex(0, 0, 0.5), vertex(10, 0, -0.5), vertex(10, 10, 0.5), vertex(0, 10, -0.5)]),
    ];
    for (const shape of shapes)
      for (const x of [0, 2.5, 5, 10])
        for (const { low, high } of contourStretches(shape, at(x)))
          expect(high).toBeGreaterThan(low);
    expect(contourStretches(shapes[0]!, at(5))).toEqual([{ low: 0, high: 5 }]);
  });
});

describe("a section of layers", () => {
  test("of a box with a stepped bore is the box less the chords, by Pythagoras", () => {
    for (const away of [0, 2, 4.5, 7, 9]) {
      const chord = (radius: number): number =>
        2 * Math.sqrt(Math.max(0, radius * radius - away * away));
      const expected = 8 * 30 - 3 * chord(5) - 5 * chord(8);
      expect(areaOf(solidSection(bored, planeAcrossX(20 + away)))).toBeCloseTo(expected, 6);
      const lengthwise = 8 * 40 - 3 * chord(5) - 5 * chord(8);
      expect(areaOf(solidSection(bored, planeAcrossY(15 - away)))).toBeCloseTo(lengthwise, 6);
    }
    expect(solidSection(bored, planeAcrossX(41))).toEqual([]);
  });

  test("joins layers that touch: no line where there is none in the part", () => {
    expect(solidSection(bored, planeAcrossX(20))).toHaveLength(2);
    expect(solidSection(bored, planeAcrossX(2))).toHaveLength(1);
  });

  test("adds up to the volume, plane by plane (Cavalieri)", () => {
    // 8 x 40 x 30 less 3 x 25 pi and 5 x 64 pi; the middle rule over 2000 planes.
    const planes = 2000;
    const step = 40 / planes;
    let volume = 0;
    for (let index = 0; index < planes; index += 1)
      volume += step * areaOf(solidSection(bored, planeAcrossX((index + 0.5) * step)));
    expect(volume).toBeCloseTo(9600 - Math.PI * (75 + 320), 1);
  });

  test("of a composed block is what is added less what is cut, a tube's core left standing", () => {
    const tube = prism(
      2,
      10,
      solidRegion({ outline: circle(point(20, 15), 8), holes: [circle(point(20, 15), 3)] }),
    );
    const solid = composed(
      [prism(0, 10, solidRegion({ outline: rectangle(box), holes: [] }))],
      [tube],
    );
    expect(areaOf(solidSection(solid, planeAcrossX(20)))).toBeCloseTo(300 - 8 * (16 - 6), 6);
    const pierced = composed([bored], [opening(0, 8, circle(point(6, 15), 2))]);
    expect(areaOf(solidSection(pierced, planeAcrossX(6)))).toBeCloseTo(8 * 26, 6);
  });
});

describe("a section of lofts, turned and placed pieces", () => {
  test("of a bevelled ring is a trapezium with the bevel's own slope", () => {
    const ring = lofted([
      {
        height: mm(0),
        outline: rectangle(extent(0, 0, 20, 20)),
        holes: [rectangle(extent(5, 5, 15, 15))],
      },
      {
        height: mm(2),
        outline: rectangle(extent(1, 1, 19, 19)),
        holes: [rectangle(extent(4, 4, 16, 16))],
      },
    ]);
    const found = solidSection(ring, planeAcrossX(10));
    expect(found).toHaveLength(2);
    // Two trapezia 2 high, 5 wide at the foot and 3 at the head.
    expect(areaOf(found)).toBeCloseTo(2 * 2 * ((5 + 3) / 2), 9);
  });

  test("of a cone beside its axis is bounded by a hyperbola, of a ball by a smaller circle", () => {
    const cone = revolved(point(3, 4), loop([vertex(0, 0), vertex(6, 0), vertex(0, 12)]));
    expect(areaOf(solidSection(cone, planeAcrossX(3)))).toBeCloseTo(72, 1);
    // r = 6 - z / 2: the area beside the axis at d is 4 times the integral of root(r² - d²) over r from d to 6.
    const away = 2;
    const root = Math.sqrt(36 - away * away);
    const hyperbola = 2 * (6 * root - away * away * Math.log((6 + root) / away));
    expect(Math.abs(areaOf(solidSection(cone, planeAcrossX(3 + away))) - hyperbola)).toBeLessThan(
      0.1,
    );
    const ball = revolved(point(0, 0), loop([vertex(0, -5, 1), vertex(0, 5)]));
    for (const offset of [0, 3]) {
      const circleArea = Math.PI * (25 - offset * offset);
      expect(Math.abs(areaOf(solidSection(ball, planeAcrossY(offset))) - circleArea)).toBeLessThan(
        0.25,
      );
    }
  });

  test("turns with its piece: about the plane's own axis, and about an upright one", () => {
    const turned = placed(bored, { x: 0, y: 7, z: 11 }, { x: -30 });
    const plain = solidSection(bored, planeAcrossX(22));
    const found = solidSection(turned, planeAcrossX(22));
    expect(areaOf(found)).toBeCloseTo(areaOf(plain), 6);
    // The far lower corner 30, 0 turned by -30 degrees: y = 30 cos 30 + 7, z = -30 sin 30 + 11.
    const low = Math.min(...found.map(({ outline }) => contourExtent(outline).minY));
    expect(low).toBeCloseTo(-4, 6);
    const most = Math.max(...found.map(({ outline }) => contourExtent(outline).maxX));
    expect(most).toBeCloseTo(30 * Math.cos(Math.PI / 6) + 8 * Math.sin(Math.PI / 6) + 7, 6);
    // A quarter turn about z brings the plane across y to the plane across x.
    const swung = placed(bored, { x: 0, y: 0, z: 0 }, { z: 90 });
    const there = areaOf(solidSection(bored, planeAcrossY(12)));
    expect(areaOf(solidSection(swung, planeAcrossX(-12)))).toBeCloseTo(there, 6);
  });

  test("refuses a plane that would cut its piece aslant", () => {
    const leaning = placed(bored, { x: 0, y: 0, z: 0 }, { y: 20 });
    expect(() => solidSection(leaning, planeAcrossX(5))).toThrow(/upright/);
  });
});

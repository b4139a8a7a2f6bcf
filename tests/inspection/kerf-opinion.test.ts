// The second opinion on kerf against figures from outside the program, and against closed forms of holes with flats.

import { describe, expect, test } from "vitest";
import { type Contour, circle, loop, point, vertex } from "../../src/geometry/contour.ts";
import { extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import { areaBeside, type LineSize, lineBeside } from "../../src/inspection/kerf-opinion.ts";
import { edgesOfContour, loopArea, loopLength, loopOfEdges } from "../../src/inspection/loop.ts";

const beside = (contour: Contour, offset: number): LineSize => {
  const edges = edgesOfContour(contour);
  return lineBeside(edges, loopOfEdges(edges)!.box, offset);
};

const box = (width: number, height: number): Contour =>
  loop([vertex(0, 0), vertex(width, 0), vertex(width, height), vertex(0, height)]);

const size = ({ box: of }: LineSize): readonly [number, number] => [
  extentWidth(of),
  extentHeight(of),
];

describe("kerf 0.2", () => {
  // The worked example of a cutting bureau's guide: for a piece of 2.0 x 4.0 draw 2.2 x 4.2, for an opening 1.8 x 3.8.
  test("a piece of 2 x 4 is drawn 2.2 x 4.2, an opening 1.8 x 3.8", () => {
    const piece = size(beside(box(2, 4), 0.1));
    expect(piece[0]).toBeCloseTo(2.2, 9);
    expect(piece[1]).toBeCloseTo(4.2, 9);
    const opening = size(beside(box(2, 4), -0.1));
    expect(opening[0]).toBeCloseTo(1.8, 6);
    expect(opening[1]).toBeCloseTo(3.8, 6);
    expect(beside(box(2, 4), -0.1).area).toBeCloseTo(1.8 * 3.8, 6);
  });

  // The same rule on a plate of 146.05 x 57.15 with a hole of 6.6: 146.25 x 57.35 and 6.4.
  test("a plate of 146.05 x 57.15 is drawn 146.25 x 57.35, its hole of 6.6 as 6.4", () => {
    const plate = size(beside(box(146.05, 57.15), 0.1));
    expect(plate[0]).toBeCloseTo(146.25, 9);
    expect(plate[1]).toBeCloseTo(57.35, 9);
    const hole = beside(circle(point(7, 9), 3.3), -0.1);
    expect(size(hole)[0]).toBeCloseTo(6.4, 9);
    expect(hole.area).toBeCloseTo(Math.PI * 3.2 * 3.2, 9);
  });
});

// Steiner's formula for convex shapes with round joins: A + P d + pi d².
test("100 x 50 grown by 2 with round corners has an area of 5612.5664", () => {
  const edges = edgesOfContour(box(100, 50));
  expect(areaBeside(edges, 2, "round")).toBeCloseTo(5612.5664, 4);
  expect(areaBeside(edges, 2, "mitred")).toBeCloseTo(104 * 54, 9);
  expect(areaBeside(edges, -2, "round")).toBeCloseTo(96 * 46, 9);
});

describe("openings with sharp corners, shrunk by 0.1", () => {
  const flatHole = (radius: number, flat: number): Contour => {
    const half = Math.sqrt(radius * radius - flat * flat);
    const turn = 2 * Math.PI - 2 * Math.acos(flat / radius);
    return loop([vertex(flat, -half), vertex(flat, half, Math.tan(turn / 4))]);
  };

  test("a D hole keeps its form: radius and flat both shrink", () => {
    const line = beside(flatHole(6, 5), -0.1);
    expect(size(line)[0]).toBeCloseTo(5.9 + 4.9, 6);
    expect(size(line)[1]).toBeCloseTo(11.8, 6);
    const edges = edgesOfContour(flatHole(5.9, 4.9));
    expect(line.area).toBeCloseTo(loopArea(edges), 5);
  });

  // 22.3 with a notch 3.2 wide, 24.1 over the notch (IEC 60947-5-1's hole for 22 mm devices).
  test("a notched hole shrinks in diameter and over its notch", () => {
    const [radius, half, over] = [11.15, 1.6, 24.1];
    const top = over - radius;
    const side = Math.sqrt(radius * radius - half * half);
    const turn = 2 * Math.PI - 2 * Math.asin(half / radius);
    const hole = loop([
      vertex(half, side),
      vertex(half, top),
      vertex(-half, top),
      vertex(-half, side, Math.tan(turn / 4)),
    ]);
    const line = beside(hole, -0.1);
    expect(size(line)[0]).toBeCloseTo(22.1, 6);
    expect(size(line)[1]).toBeCloseTo(23.9, 6);
  });

  test("a triangle shrinks by more than its box's sides", () => {
    const line = beside(loop([vertex(0, 0), vertex(30, 0), vertex(0, 40)]), -1);
    // A 3-4-5 triangle of inradius 10: within 1 mm it is 9/10 of itself.
    expect(size(line)[0]).toBeCloseTo(27, 4);
    expect(size(line)[1]).toBeCloseTo(36, 4);
    expect(line.area).toBeCloseTo(600 * 0.81, 4);
  });

  test("the answer is the same wherever on the panel the hole is", () => {
    const here = beside(flatHole(6, 5), -0.1);
    const there = beside(
      loop(
        (flatHole(6, 5) as Extract<Contour, { kind: "loop" }>).vertices.map(({ x, y, bulge }) =>
          vertex(x + 100, y + 33.3, bulge),
        ),
      ),
      -0.1,
    );
    expect(there.area).toBe(here.area);
    expect(there.box.minX - here.box.minX).toBeCloseTo(100, 9);
  });
});

test("area and length of lines and arcs", () => {
  const slot = edgesOfContour(
    loop([vertex(-5, -2, 0), vertex(5, -2, 1), vertex(5, 2, 0), vertex(-5, 2, 1)]),
  );
  expect(loopArea(slot)).toBeCloseTo(10 * 4 + Math.PI * 4, 9);
  expect(loopLength(slot)).toBeCloseTo(20 + 4 * Math.PI, 9);
  const { box: of } = loopOfEdges(slot)!;
  expect([of.minX, of.minY, of.maxX, of.maxY]).toEqual([-7, -2, 7, 2]);
});

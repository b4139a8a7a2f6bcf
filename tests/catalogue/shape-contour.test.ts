import { expect, test } from "vitest";
import type { Shape } from "../../src/catalogue/shape.ts";
import { shapeContour, shapeSize } from "../../src/catalogue/shape-contour.ts";
import { containsPoint } from "../../src/geometry/containment.ts";
import { point } from "../../src/geometry/contour.ts";
import { edgesOf } from "../../src/geometry/edges.ts";
import { contourArea, contourExtent } from "../../src/geometry/measure.ts";
import { offsetContour } from "../../src/geometry/offset.ts";
import { degrees, mm } from "../../src/geometry/quantity.ts";

const SHAPES: Readonly<Record<string, Shape>> = {
  round: { kind: "round", diameter: mm(6.4) },
  flat: { kind: "flat", diameter: mm(16.2), flat: mm(7.7), clock: degrees(180) },
  doubleFlat: { kind: "double-flat", diameter: mm(12.2), across: mm(11.2), clock: degrees(90) },
  notch: {
    kind: "notch",
    diameter: mm(22.3),
    width: mm(3.2),
    over: mm(24.1),
    clock: degrees(0),
  },
  rectangle: { kind: "rectangle", width: mm(50.3), height: mm(19), corner: mm(0.5) },
  slot: { kind: "slot", length: mm(10.3), width: mm(6.8), clock: degrees(90) },
  polygon: {
    kind: "polygon",
    points: [point(-8.2, -5.6), point(8.2, -5.6), point(10.1, 5.6), point(-10.1, 5.6)],
    corner: mm(2),
  },
};

/** Area of the piece of a circle beyond a chord: r² (θ - sin θ) / 2, any handbook of mensuration. */
const segment = (radius: number, distance: number): number => {
  const angle = 2 * Math.acos(distance / radius);
  return (radius ** 2 * (angle - Math.sin(angle))) / 2;
};

/** A notch adds a rectangle from its mouth to its bottom, less the cap of the circle that it already had. */
const notchArea = (radius: number, width: number, over: number): number => {
  const mouth = Math.sqrt(radius ** 2 - (width / 2) ** 2);
  return width * (over - radius - mouth) - segment(radius, mouth);
};

// Closed forms of plane geometry, with the runtime's own functions.
const AREAS: readonly (readonly [string, number])[] = [
  ["round", Math.PI * 3.2 ** 2],
  ["flat", Math.PI * 8.1 ** 2 - segment(8.1, 7.7)],
  ["doubleFlat", Math.PI * 6.1 ** 2 - 2 * segment(6.1, 5.6)],
  ["notch", Math.PI * 11.15 ** 2 + notchArea(11.15, 3.2, 24.1)],
  ["rectangle", 50.3 * 19 - (4 - Math.PI) * 0.5 ** 2],
  ["slot", 3.5 * 6.8 + Math.PI * 3.4 ** 2],
];

test.each(AREAS)("the area of a %s is its closed form", (name, area) => {
  expect(contourArea(shapeContour(SHAPES[name]!))).toBeCloseTo(area, 9);
});

test.each(Object.keys(SHAPES))("a %s runs counter-clockwise round its axis", (name) => {
  const contour = shapeContour(SHAPES[name]!);
  expect(contourArea(contour)).toBeGreaterThan(0);
  expect(containsPoint(contour, point(0, 0))).toBe(true);
});

test("sizes over flats, notches and ends are the datasheet's", () => {
  const flat = contourExtent(shapeContour(SHAPES["flat"]!));
  expect(flat.minY).toBeCloseTo(-7.7, 12);
  expect(flat.maxY).toBeCloseTo(8.1, 12);
  const double = contourExtent(shapeContour(SHAPES["doubleFlat"]!));
  expect(double.maxX - double.minX).toBeCloseTo(11.2, 12);
  expect(double.maxY - double.minY).toBeCloseTo(12.2, 12);
  // IEC 60947-5-1: 24.1 over the notch of a 22.3 hole.
  const notch = contourExtent(shapeContour(SHAPES["notch"]!));
  expect(notch.maxY - notch.minY).toBeCloseTo(24.1, 12);
  expect(notch.maxX - notch.minX).toBeCloseTo(22.3, 12);
  const slot = contourExtent(shapeContour(SHAPES["slot"]!));
  expect(slot.maxX - slot.minX).toBeCloseTo(10.3, 12);
  expect(slot.maxY - slot.minY).toBeCloseTo(6.8, 12);
});

test("every arc of a round shape keeps its radius", () => {
  for (const [name, radius] of [
    ["flat", 8.1],
    ["doubleFlat", 6.1],
    ["notch", 11.15],
    ["slot", 3.4],
  ] as const)
    for (const edge of edgesOf(shapeContour(SHAPES[name]!)))
      if (edge.kind === "arc") expect(edge.radius, name).toBeCloseTo(radius, 10);
});

test.each(Object.keys(SHAPES))("growing a %s moves every side by as much", (name) => {
  const before = contourExtent(shapeContour(SHAPES[name]!));
  const after = contourExtent(shapeContour(SHAPES[name]!, mm(0.125)));
  if (name !== "polygon") {
    expect(before.minX - after.minX).toBeCloseTo(0.125, 9);
    expect(after.maxX - before.maxX).toBeCloseTo(0.125, 9);
  }
  expect(before.minY - after.minY).toBeCloseTo(0.125, 9);
  expect(after.maxY - before.maxY).toBeCloseTo(0.125, 9);
});

// The general offset of the geometry is another way to the same shape wherever corners are kept sharp.
test.each(["round", "flat", "doubleFlat", "rectangle", "slot"])(
  "growing a %s is its offset",
  (name) => {
    const grown = shapeContour(SHAPES[name]!, mm(0.1));
    const offset = offsetContour(shapeContour(SHAPES[name]!), 0.1, "miter");
    expect(offset.kind).toBe("offset");
    if (offset.kind === "offset")
      expect(contourArea(grown)).toBeCloseTo(contourArea(offset.contour), 2);
  },
);

test("turning by the clock keeps the area and moves the flat", () => {
  const areas = [0, 30, 90, 137, 270].map((clock) =>
    contourArea(
      shapeContour({ kind: "flat", diameter: mm(12), flat: mm(5), clock: degrees(clock) }),
    ),
  );
  for (const area of areas) expect(area).toBeCloseTo(areas[0]!, 10);
  const right = contourExtent(
    shapeContour({ kind: "flat", diameter: mm(12), flat: mm(5), clock: degrees(90) }),
  );
  expect(right.maxX).toBeCloseTo(5, 12);
  expect(right.minX).toBeCloseTo(-6, 12);
});

test("a gauge compares diameters, and least widths of what is not round", () => {
  expect(shapeSize(SHAPES["notch"]!)).toBe(22.3);
  expect(shapeSize(SHAPES["rectangle"]!)).toBe(19);
  expect(shapeSize(SHAPES["slot"]!)).toBe(6.8);
  expect(shapeSize(SHAPES["polygon"]!)).toBeCloseTo(11.2, 12);
});

test("a shape that its own sizes forbid is a bug of the program, not a picture", () => {
  expect(() =>
    shapeContour({ kind: "flat", diameter: mm(10), flat: mm(6), clock: degrees(0) }),
  ).toThrow();
  expect(() => shapeContour({ kind: "round", diameter: mm(1) }, mm(-1))).toThrow();
});

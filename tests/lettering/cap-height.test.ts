// A legend's height is the height of its capitals: what a builder measures with a rule across an E.

import { describe, expect, it } from "vitest";
import { mm } from "../../src/geometry/quantity.ts";
import { setText } from "../../src/lettering/set-text.ts";
import { faceNamed, outlineFaces } from "./faces.ts";

const HEIGHTS = [2.5, 3, 3.054, 3.5, 4, 4.072, 4.1, 4.48, 5, 8, 9.525, 12.7, 40, 150];

describe.each(outlineFaces.map((face) => [face.id, face] as const))("%s", (_, face) => {
  it.each(HEIGHTS)("sets E exactly %f mm tall, standing on the baseline", (capHeight) => {
    const { box } = setText(face, "E", { capHeight: mm(capHeight), align: "start" });
    // Two faces round E's corners: the foot of an arc is out by the last bit of a double.
    expect(box.minY).toBeCloseTo(0, 12);
    expect(box.maxY).toBeCloseTo(capHeight, 12);
  });
});

it.each(HEIGHTS)("single-line sets H exactly %f mm tall on its centre lines", (capHeight) => {
  const face = faceNamed("single-line");
  const { box, strokes } = setText(face, "H", { capHeight: mm(capHeight), align: "start" });
  expect(strokes.length).toBeGreaterThan(0);
  expect(box.minY).toBe(0);
  expect(box.maxY).toBe(capHeight);
});

it("does not take the height of H, which is 1.3 % taller in B612", () => {
  const face = faceNamed("b612");
  const { box } = setText(face, "H", { capHeight: mm(4), align: "start" });
  expect(box.maxY / 4).toBeCloseTo(1520 / 1500, 12);
});

// Legends of several lines: NUREG-0700 Rev. 3, 11.4.1.5-7 asks for half a character height between lines.

import { expect, it } from "vitest";
import { mm } from "../../src/geometry/quantity.ts";
import { setText } from "../../src/lettering/set-text.ts";
import { faceNamed } from "./faces.ts";

const face = faceNamed("overpass");
const SET = { capHeight: mm(4), align: "middle" } as const;

it.each(["\n", "\r\n", "\r"])("sets lines half a height apart, however %j breaks them", (mark) => {
  const { box, missing, advance } = setText(face, `EE${mark}E`, SET);
  expect(missing).toEqual([]);
  expect(box.maxY).toBe(4);
  expect(box.minY).toBe(-6);
  expect(advance).toBe(setText(face, "EE", SET).advance);
});

it("takes another gap between lines", () => {
  const { box } = setText(face, "E\nE\nE", { ...SET, lineGap: mm(3) });
  expect(box.minY).toBe(-14);
});

it("aligns each line by itself", () => {
  const one = setText(face, "EE", SET);
  const other = setText(face, "E", SET);
  const both = setText(face, "EE\nE", SET);
  expect(both.box.minX).toBe(one.box.minX);
  expect(both.fills.length).toBe(one.fills.length + other.fills.length);
  expect(both.box.maxX).toBe(one.box.maxX);
});

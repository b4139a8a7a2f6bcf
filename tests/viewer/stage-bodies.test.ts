// What the page draws of a file with bodies in it: which of its edges are lines, and how its faces look. Counts and ways are those
// of the solids, by hand.

import { expect, test } from "vitest";
import type { ReadSolids } from "../../viewer/job-pack/read-solids.ts";
import { stageBodies } from "../../viewer/job-pack/stage-bodies.ts";

const UNTOLD = (): void => undefined;

/** Round a circle, each face with corners of its own, as a model has them that states how each face looks. */
const prism = (sides: number): ReadSolids => {
  const corner = (index: number, z: number): readonly number[] => [
    // The last lies where the first does.
    10 * Math.cos((2 * Math.PI * (index % sides)) / sides),
    10 * Math.sin((2 * Math.PI * (index % sides)) / sides),
    z,
  ];
  const corners = Array.from({ length: sides }, (_, index) => [
    ...[corner(index, 0), corner(index + 1, 0), corner(index + 1, 5), corner(index, 5)],
    ...[corner(index + 1, 0), corner(index, 0), [0, 0, 0]],
    ...[corner(index, 5), corner(index + 1, 5), [0, 0, 5]],
  ]).flat(2);
  const triangles = Array.from({ length: sides }, (_, index) =>
    [0, 1, 2, 0, 2, 3, 4, 5, 6, 7, 8, 9].map((at) => 10 * index + at),
  ).flat();
  return {
    kind: "meshes",
    bodies: [{ name: "prism", corners, triangles, turnedNormals: 0 }],
    words: [],
  };
};

const lineCount = (read: ReadSolids): number => stageBodies(read, UNTOLD).lines.length / 6;

test("a prism of six sides has eighteen edges, though each face has corners of its own", () => {
  expect(lineCount(prism(6))).toBe(18);
});

test("of one with sides that turn by less than 30 degrees the two rims alone are lines", () => {
  // 360/24 is 15.
  expect(lineCount(prism(24))).toBe(48);
});

test("every triangle looks out of its body, by one", () => {
  const { corners, normals } = stageBodies(prism(6), UNTOLD);
  expect(normals).toHaveLength(corners.length);
  const middle = [0, 0, 2.5];
  for (let at = 0; at < corners.length; at += 9) {
    const way = [0, 1, 2].map((axis) => normals[at + axis]!);
    expect(Math.hypot(...way)).toBeCloseTo(1, 6);
    const out = way.reduce(
      (sum, one, axis) => sum + one * (corners[at + axis]! - middle[axis]!),
      0,
    );
    expect(out).toBeGreaterThan(0);
  }
});

test("the bodies are counted as their edges are found", () => {
  const told: (readonly [number, number])[] = [];
  const two = prism(6);
  if (two.kind !== "meshes") throw new Error("no meshes");
  stageBodies({ ...two, bodies: [...two.bodies, ...two.bodies] }, (done, of) =>
    told.push([done, of]),
  );
  expect(told).toEqual([
    [0, 2],
    [1, 2],
  ]);
});

// Obstacles at their places, and the files that give the shape of some.

import { describe, expect, test } from "vitest";
import { meshVolume } from "../../src/geometry/solid/mesh.ts";
import { importedStl } from "../../src/inspection/imported-stl.ts";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

/** A tetrahedron with three edges of `a` at right angles: its volume is a³ / 6. */
const TETRAHEDRON = [
  [
    [0, 0, 0],
    [0, 1, 0],
    [1, 0, 0],
  ],
  [
    [0, 0, 0],
    [1, 0, 0],
    [0, 0, 1],
  ],
  [
    [0, 0, 0],
    [0, 0, 1],
    [0, 1, 0],
  ],
  [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
] as const;

const textFile = (
  a: number,
  triangles: readonly (readonly (readonly number[])[])[] = TETRAHEDRON,
): Uint8Array =>
  new TextEncoder().encode(
    `solid t\n${triangles
      .map(
        (corners) =>
          `facet normal 0 0 0\nouter loop\n${corners.map((corner) => `vertex ${corner.map((value) => value * a).join(" ")}\n`).join("")}endloop\nendfacet\n`,
      )
      .join("")}endsolid t\n`,
  );

/** After the format's own table: 80 bytes, a count, 50 bytes a triangle, little-endian. */
const binaryFile = (a: number): Uint8Array => {
  const bytes = new Uint8Array(84 + 50 * TETRAHEDRON.length);
  const view = new DataView(bytes.buffer);
  view.setUint32(80, TETRAHEDRON.length, true);
  TETRAHEDRON.forEach((corners, triangle) => {
    corners.flat().forEach((value, index) => {
      view.setFloat32(84 + 50 * triangle + 12 + 4 * index, value * a, true);
    });
  });
  return bytes;
};

describe("an STL file of somebody else", () => {
  test.each([
    ["text", textFile(30)],
    ["binary", binaryFile(30)],
  ])("is taken as a solid: %s", (_, bytes) => {
    const read = importedStl(bytes);
    expect(read.kind === "solid" ? meshVolume(read.mesh) : read.why).toBeCloseTo(4500, 6);
  });

  test.each([
    [
      "with a gap",
      textFile(30, TETRAHEDRON.slice(1)),
      "its surface has gaps or edges that more than two triangles share",
    ],
    [
      "that looks inward",
      textFile(
        30,
        TETRAHEDRON.map((corners) => corners.toReversed()),
      ),
      "its triangles look inward",
    ],
    ["without a triangle", textFile(30, []), "it holds no triangle"],
    [
      "with words for numbers",
      new TextEncoder().encode("solid x\nvertex 1 2 east\n"),
      "a corner is no number",
    ],
    ["of another planet", binaryFile(1e30), "a corner stands more than 100 m from its origin"],
    ["cut short", binaryFile(30).subarray(0, 200), "it is no STL file: 200 bytes for 4 triangles"],
    ["that is empty", new Uint8Array(0), "it is no STL file: 0 bytes for 0 triangles"],
  ])("%s is refused", (_, bytes, why) => {
    expect(importedStl(bytes)).toEqual({ kind: "refused", why });
  });
});

test("a console's obstacles stand where they are written, turned about the vertical", () => {
  const files = new Map([
    [
      "console.yaml",
      `consolewright: 1
kind: console
name: c
obstacles:
  - { name: seat, stl: shapes/seat.stl, at: [100, 0, 0] }
  - { name: post, cylinder: [40 mm, 900 mm], at: [300, 0, 0] }
  - { name: bracket, box: [40, 120, 90], at: [300, -360, 500], turn: 90 deg }
  - { name: wedge, prism: [[0, 0], [0, 50], [80, 0]], height: 20 mm, at: [0, 0, 0] }
`,
    ],
  ]);
  const binaries = new Map([["shapes/seat.stl", binaryFile(60)]]);
  const project = compile({ entry: "console.yaml", files, binaries }, testLibrary());
  expect(project.findings).toEqual([]);
  const obstacles = project.console?.layout.obstacles ?? [];
  expect(obstacles.map(({ name, shape }) => [name, shape.kind])).toEqual([
    ["seat", "mesh"],
    ["post", "recipe"],
    ["bracket", "recipe"],
    ["wedge", "recipe"],
  ]);
  // Turned a quarter to the left, what ran forward runs to the left.
  expect(obstacles[2]?.frame.x).toEqual({ x: 0, y: 1, z: 0 });
  const missing = compile({ entry: "console.yaml", files }, testLibrary());
  expect(missing.findings.map(({ code }) => code)).toEqual(["design/file-missing"]);
});

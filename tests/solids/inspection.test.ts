// The product's own readers of its print files: every row passes for a sound file, and each kind of damage fails the row
// that it belongs to, and says so in numbers.

import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, test } from "vitest";
import { stlFile } from "../../src/export/stl.ts";
import { threeMfFile } from "../../src/export/three-mf.ts";
import { extent } from "../../src/geometry/extent.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import type { Mesh } from "../../src/geometry/solid/mesh.ts";
import { meshSolid } from "../../src/geometry/solid/mesh-solid.ts";
import { placed, type Solid } from "../../src/geometry/solid/solid.ts";
import { inspectSolid, type SolidInspection } from "../../src/inspection/inspect-solid.ts";
import type { InspectionRow } from "../../src/inspection/row.ts";
import { openKernel } from "../support/kernel.ts";
import {
  assembledBracket,
  bevelledRing,
  countersunkBlock,
  drilledPlate,
  plainBlock,
} from "./sample-solids.ts";

let kernel: Kernel;
let plate: Mesh;
beforeAll(async () => {
  kernel = await openKernel();
  plate = meshSolid(drilledPlate, kernel);
});

const bodyOf = (name: string, solid: Solid) => ({ name, solid, box: null, shells: 1 });

const asked = (format: "stl" | "3mf", of: Partial<SolidInspection> = {}): SolidInspection => ({
  file: `part.${format}`,
  format,
  title: "part",
  bodies: [bodyOf("plate", drilledPlate)],
  bed: [180, 180, 180],
  ...of,
});

const packed = (mesh: Mesh): Uint8Array =>
  threeMfFile({
    title: "part",
    bodies: [{ name: "plate", material: "black", colour: "#000000", mesh }],
  });

const failed = (rows: readonly InspectionRow[]): readonly string[] => [
  ...new Set(rows.filter(({ passed }) => !passed).map(({ what }) => what)),
];

describe("a sound file passes every row", () => {
  test.each<readonly [string, Solid]>([
    ["plate", drilledPlate],
    ["countersunk block", countersunkBlock],
    ["ring", bevelledRing],
    ["bracket", assembledBracket],
  ])("%s", (name, solid) => {
    const mesh = meshSolid(solid, kernel);
    const bodies = [bodyOf(name, solid)];
    const stl = inspectSolid(stlFile(mesh), asked("stl", { bodies }));
    expect(stl.map(({ what }) => what)).toEqual(
      "content closed outward shells triangles volume box box box bed".split(" "),
    );
    expect(failed(stl)).toEqual([]);
    const file = threeMfFile({
      title: "part",
      bodies: [{ name, material: "black", colour: "#000000", mesh }],
    });
    const rows = inspectSolid(file, asked("3mf", { bodies }));
    expect(rows.map(({ what }) => what)).toEqual(
      "content units part count closed outward shells triangles volume box box box bed".split(" "),
    );
    expect(failed(rows)).toEqual([]);
    expect(new Set(rows.map(({ file: name }) => name))).toEqual(new Set(["part.3mf"]));
  });

  test("of several bodies", () => {
    const [low, high] = [
      plainBlock(extent(0, 0, 10, 10), 0, 2),
      plainBlock(extent(0, 0, 10, 10), 2, 3),
    ];
    const file = threeMfFile({
      title: "part",
      bodies: [low, high].map((solid, index) => ({
        name: `body ${index}`,
        material: "black",
        colour: "#000000",
        mesh: meshSolid(solid, kernel),
      })),
    });
    const bodies = [bodyOf("body 0", low), bodyOf("body 1", high)];
    expect(failed(inspectSolid(file, asked("3mf", { bodies })))).toEqual([]);
    expect(failed(inspectSolid(file, asked("3mf", { bodies: bodies.toReversed() })))).toEqual([
      "count",
      "volume",
      "box",
    ]);
  });
});

const rowsOf = (mesh: Mesh): readonly (readonly string[])[] => [
  failed(inspectSolid(stlFile(mesh), asked("stl"))),
  failed(inspectSolid(packed(mesh), asked("3mf"))),
];

describe("a wrong triangle fails its row", () => {
  test("a triangle turned over", () => {
    const triangles = plate.triangles.slice();
    triangles.set([triangles[1]!, triangles[0]!], 0);
    for (const rows of rowsOf({ ...plate, triangles })) expect(rows).toContain("closed");
  });

  test("a triangle left out", () => {
    const triangles = plate.triangles.slice(3);
    for (const rows of rowsOf({ ...plate, triangles })) expect(rows).toContain("closed");
    const row = inspectSolid(stlFile({ ...plate, triangles }), asked("stl")).find(
      ({ what }) => what === "closed",
    );
    expect(row?.measured).toBe("3 edges open, 0 used twice one way");
  });

  test("a flat triangle", () => {
    const triangles = plate.triangles.slice();
    triangles[1] = triangles[0]!;
    for (const rows of rowsOf({ ...plate, triangles })) expect(rows).toContain("triangles");
  });

  test("a number that is none", () => {
    const positions = plate.positions.slice();
    positions[4] = Number.NaN;
    const [stl] = [failed(inspectSolid(stlFile({ ...plate, positions }), asked("stl")))];
    expect(stl).toEqual(expect.arrayContaining(["content", "triangles", "volume"]));
  });

  test("a number beyond all measure", () => {
    const positions = plate.positions.slice();
    positions[4] = 3e38;
    expect(failed(inspectSolid(stlFile({ ...plate, positions }), asked("stl")))).toContain("box");
  });
});

describe("a wrong part fails its row", () => {
  test("a part inside out", () => {
    const triangles = plate.triangles.toReversed();
    for (const rows of rowsOf({ ...plate, triangles })) expect(rows).toEqual(["outward", "volume"]);
  });

  test("a second shell", () => {
    const count = plate.positions.length / 3;
    const far = plate.positions.map((value, index) => (index % 3 === 2 ? value + 10 : value));
    const twice = {
      positions: Float32Array.from([...plate.positions, ...far]),
      triangles: Uint32Array.from([
        ...plate.triangles,
        ...plate.triangles.map((corner) => corner + count),
      ]),
    };
    for (const rows of rowsOf(twice)) expect(rows).toEqual(["shells", "volume", "box"]);
  });

  test("a part in inches", () => {
    const small = { ...plate, positions: plate.positions.map((value) => value / 25.4) };
    for (const rows of rowsOf(small)) expect(rows).toEqual(["volume", "box"]);
  });

  test("a hole that is a tenth too wide", () => {
    // 28 mm³ a hole in 24630: 4 x 0.1 mm on the diameter is more than a thousandth of the plate.
    const wide = plate.positions.slice();
    for (let at = 0; at < wide.length; at += 3)
      for (const [x, y] of [
        [5, 5],
        [141.05, 5],
        [5, 52.15],
        [141.05, 52.15],
      ] as const)
        if (Math.hypot(wide[at]! - x, wide[at + 1]! - y) < 4) {
          wide[at] = x + (wide[at]! - x) * 1.1;
          wide[at + 1] = y + (wide[at + 1]! - y) * 1.1;
        }
    for (const rows of rowsOf({ ...plate, positions: wide })) expect(rows).toEqual(["volume"]);
  });

  test("a part that lies elsewhere", () => {
    const moved = meshSolid(placed(drilledPlate, { x: 1, y: 0, z: 0 }), kernel);
    for (const rows of rowsOf(moved)) expect(rows).toEqual(["box"]);
  });

  test("a part larger than the bed, unless it fits turned by a quarter", () => {
    const bedRow = (bed: readonly [number, number, number]): readonly string[] =>
      failed(inspectSolid(stlFile(plate), asked("stl", { bed })));
    expect(bedRow([150, 60, 10])).toEqual([]);
    expect(bedRow([60, 150, 10])).toEqual([]);
    expect(bedRow([140, 140, 10])).toEqual(["bed"]);
    expect(bedRow([150, 60, 2])).toEqual(["bed"]);
  });
});

describe("a wrong file fails its row", () => {
  test("normals that look the other way", () => {
    const file = stlFile(plate).slice();
    const view = new DataView(file.buffer, file.byteOffset);
    for (let place = 84; place < 96; place += 4)
      view.setFloat32(place, -view.getFloat32(place, true), true);
    const rows = inspectSolid(file, asked("stl"));
    expect(failed(rows)).toEqual(["outward"]);
    expect(rows.find(({ what }) => what === "outward")?.measured).toContain("1 normals");
  });

  test("a file that is cut off, or that is no such file", () => {
    expect(failed(inspectSolid(stlFile(plate).slice(0, 3000), asked("stl")))).toContain("content");
    expect(failed(inspectSolid(new Uint8Array(3), asked("stl")))).toContain("content");
    const rows = inspectSolid(packed(plate).slice(0, 3000), asked("3mf"));
    expect(failed(rows)).toEqual(["content", "units", "part", "count"]);
  });

  const edited = (edit: (model: string) => string): Uint8Array => {
    const entries = unzipSync(packed(plate));
    const path = "3D/3dmodel.model";
    return zipSync({ ...entries, [path]: strToU8(edit(strFromU8(entries[path]!))) });
  };

  test.each<readonly [string, (model: string) => string, readonly string[]]>([
    ["another unit", (model) => model.replace('"millimeter"', '"inch"'), ["units"]],
    ["another title", (model) => model.replace(">part<", ">other<"), ["part"]],
    ["another body's name", (model) => model.replace('name="plate"', 'name="p"'), ["count"]],
    [
      "a transform",
      (model) =>
        model.replace(
          '<item objectid="2"',
          '<item objectid="2" transform="2 0 0 0 2 0 0 0 2 0 0 0"',
        ),
      ["content"],
    ],
    ["nothing built", (model) => model.replace(/<item.*\/>/, ""), ["count"]],
    ["a corner that is not there", (model) => model.replace('v1="0"', 'v1="99999"'), ["content"]],
  ])("%s", (_what, edit, expected) => {
    expect(failed(inspectSolid(edited(edit), asked("3mf")))).toEqual(
      expect.arrayContaining([...expected]),
    );
  });
});

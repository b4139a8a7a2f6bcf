// A console's glTF file, judged by the validator of those who wrote the format (Khronos glTF-Validator, Apache-2.0) and
// measured by the program's own reader. Volumes and places are hand arithmetic.

import { validateBytes } from "gltf-validator";
import { describe, expect, test } from "vitest";
import { type GlbBody, type GlbScene, glbFile } from "../../src/export/glb.ts";
import { linearColour } from "../../src/export/linear-colour.ts";
import { circle, point } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { degrees } from "../../src/geometry/quantity.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import { meshSolid } from "../../src/geometry/solid/mesh-solid.ts";
import { prism, solidRegion } from "../../src/geometry/solid/solid.ts";
import { turnedFrame, WORLD } from "../../src/geometry/space/frame.ts";
import { vector } from "../../src/geometry/space/vector.ts";
import { readGlb } from "../../src/inspection/glb-reader.ts";
import { inspectGlb } from "../../src/inspection/inspect-glb.ts";
import { openKernel } from "../support/kernel.ts";
import { HOSTILE_NAMES } from "./bureau-plate.ts";

const kernel = await openKernel();
const plate = meshSolid(
  prism(
    0,
    3,
    solidRegion({
      outline: rectangle(extent(0, 0, 146, 57)),
      holes: [circle(point(40, 20), 6.1)],
    }),
  ),
  kernel,
);
const knob = meshSolid(
  prism(0, 15, solidRegion({ outline: circle(point(0, 0), 11), holes: [] })),
  kernel,
);
/** Raised by 20 degrees about its lower edge, half a metre forward and 700 mm up. */
const desk = turnedFrame(
  { x: vector(0, -1, 0), y: vector(1, 0, 0), z: vector(0, 0, 1), origin: vector(500, 73, 700) },
  { about: vector(0, -1, 0), through: vector(500, 73, 700), by: degrees(20) },
);

const face: GlbBody = {
  name: "face",
  mesh: plate,
  colour: { colour: "#2a2d31", alpha: 1 },
  frame: desk,
};
const scene: GlbScene = {
  title: "Wheelhouse",
  groups: [
    {
      name: "winch",
      bodies: [
        face,
        { name: "window", mesh: plate, colour: { colour: "#ddeeff", alpha: 0.4 }, frame: desk },
        { name: "brake/knob", mesh: knob, colour: { colour: "#2a2d31", alpha: 1 }, frame: desk },
      ],
    },
    { name: "obstacles", bodies: [{ ...face, name: "bulkhead", frame: WORLD }] },
    { name: "frame", bodies: [] },
  ],
};
const bytes = glbFile(scene);

const faults = (changed: Uint8Array): readonly string[] => readGlb(changed).strangers;

test("the validator of the format finds nothing to say against it", async () => {
  const report = await validateBytes(bytes);
  expect(report.issues.messages.filter(({ severity }) => severity <= 1)).toEqual([]);
  expect(report.info.version).toBe("2.0");
  expect(report.info.extensionsUsed ?? []).toEqual([]);
  const triangles = (3 * plate.triangles.length + knob.triangles.length) / 3;
  expect(report.info.totalTriangleCount).toBe(triangles);
});

test("a scene of nothing is a file all the same", async () => {
  const report = await validateBytes(glbFile({ title: "", groups: [] }));
  expect(report.issues.messages.filter(({ severity }) => severity <= 1)).toEqual([]);
});

test("the same scene gives the same bytes; every run begins on four bytes", () => {
  expect(Buffer.from(glbFile(scene)).equals(Buffer.from(bytes))).toBe(true);
  expect(bytes.length % 4).toBe(0);
});

test("nodes are named, millimetres and the console's axes come back", () => {
  const read = readGlb(bytes);
  expect(read.strangers).toEqual([]);
  expect(read.groups.map(({ name, bodies }) => [name, bodies.map((body) => body.name)])).toEqual([
    ["winch", ["face", "window", "brake/knob"]],
    ["obstacles", ["bulkhead"]],
    ["frame", []],
  ]);
  const rows = inspectGlb(bytes, { file: "console.glb", groups: scene.groups });
  expect(rows.filter(({ passed }) => !passed)).toEqual([]);
  // By hand: the plate lies flat as the bulkhead, 146 x 57 x 3 less a hole of 12.2; 8321 x 3 - pi 6.1² 3 less facets.
  const volume = rows.find(({ feature, what }) => feature === "bulkhead" && what === "volume");
  expect(
    Math.abs(Number(volume?.measured) - (146 * 57 * 3 - Math.PI * 6.1 * 6.1 * 3)),
  ).toBeLessThan(1);
  const box = rows.find(({ feature, what }) => feature === "bulkhead" && what === "box");
  expect(box?.measured).toBe("0.0000 to 146.0000, 0.0000 to 57.0000, 0.0000 to 3.0000");
});

test("in the file: metres, x right, y up, z toward the operator", () => {
  const json = JSON.parse(
    Buffer.from(bytes).toString("utf8", 20, 20 + bytes[12]! + 256 * bytes[13]!),
  );
  const bulkhead = json.nodes.findIndex(({ name }: { name: string }) => name === "bulkhead");
  const mesh = json.meshes[json.nodes[bulkhead].mesh];
  const { min, max } = json.accessors[mesh.primitives[0].attributes.POSITION];
  // 146 forward is -z, 57 to the left is -x, 3 up is y.
  expect(min.map((value: number) => Math.round(value * 1e6))).toEqual([-57000, 0, -146000]);
  expect(max.map((value: number) => Math.round(value * 1e6))).toEqual([0, 3000, 0]);
});

test("colours are linear: the values of IEC 61966-2-1's own formula", () => {
  for (const byte of [0, 1, 10, 11, 64, 128, 188, 254, 255]) {
    const hex = byte.toString(16).padStart(2, "0");
    const share = byte / 255;
    const expected = share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    expect(linearColour(`#${hex}0000`)[0]).toBeCloseTo(expected, 12);
  }
});

describe("sabotage", () => {
  const binaryStart = 20 + new DataView(bytes.buffer).getUint32(12, true) + 8;
  const changed = (at: number, value: number): Uint8Array => {
    const copy = bytes.slice();
    copy[at] = value;
    return copy;
  };
  test.each([
    ["magic", 0],
    ["version", 4],
    ["length of the file", 8],
    ["length of the first chunk", 12],
    ["type of the first chunk", 16],
    ["type of the second chunk", binaryStart - 4],
    ["exponent of the first corner", binaryStart + 3],
  ])("a wrong byte in the %s is seen by both readers", async (_, at) => {
    const wrong = changed(at, (bytes[at] ?? 0) ^ 0x55);
    expect(faults(wrong)).not.toEqual([]);
    const seen = await validateBytes(wrong).then(
      ({ issues }) => issues.numErrors,
      () => 1,
    );
    expect(seen).toBeGreaterThan(0);
  });
  test("a corner moved within its bounds is seen by the volume", () => {
    // The last corner but one of the first body, made the first: a triangle folds over.
    const count = readGlb(bytes).groups[0]!.bodies[0]!;
    expect(count.corners.length).toBeGreaterThan(0);
    const copy = bytes.slice();
    copy.copyWithin(binaryStart, binaryStart + 12 * 40, binaryStart + 12 * 41);
    const rows = inspectGlb(copy, { file: "console.glb", groups: scene.groups });
    expect(rows.some(({ passed }) => !passed)).toBe(true);
  });
  test("half a file, and no file, give an answer and no exception", () => {
    for (const length of [0, 3, 12, 20, 200, bytes.length - 1])
      expect(faults(bytes.subarray(0, length))).not.toEqual([]);
  });
});

test("no name becomes anything but a name", async () => {
  const hostile = glbFile({
    title: HOSTILE_NAMES[0] ?? "",
    groups: HOSTILE_NAMES.map((name) => ({ name, bodies: [{ ...face, name }] })),
  });
  const report = await validateBytes(hostile);
  expect(report.issues.numErrors).toBe(0);
  expect(readGlb(hostile).groups).toHaveLength(HOSTILE_NAMES.length);
  expect(readGlb(hostile).strangers).toEqual([]);
});

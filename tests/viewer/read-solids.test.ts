// What the page says of a file with bodies in it: how many, how large, of what, and what is wrong with them. Sizes and counts are
// those of the solids, by hand.

import { expect, test } from "vitest";
import { stepFile } from "../../src/export/step.ts";
import { stlFile } from "../../src/export/stl.ts";
import { threeMfFile } from "../../src/export/three-mf.ts";
import { meshSolid } from "../../src/geometry/solid/mesh-solid.ts";
import { utf8Bytes } from "../../src/pack/utf8.ts";
import { readSolids, type SolidKind } from "../../viewer/job-pack/read-solids.ts";
import { drilledPlate } from "../solids/sample-solids.ts";
import { HAND_CYLINDER } from "../support/hand-step.ts";
import { openKernel } from "../support/kernel.ts";

const wordsOf = (kind: SolidKind, bytes: Uint8Array): readonly string[] =>
  readSolids(kind, { path: "print/part", kind, part: "part", bytes }).words;

test("a STEP by its faces and true arcs", () => {
  const file = stepFile(drilledPlate, "part");
  if (file.kind === "refused") throw new Error(file.why);
  // Two caps, four sides and eight half cylinders; each half has two arcs and shares two upright lines.
  expect(wordsOf("print-step", utf8Bytes(file.text))).toEqual([
    "One solid, 146.05 by 57.15 by 3 mm, as it stands in the file: 14 faces, 6 flat and 8 round; 36 edges, 20 straight and 16 true arcs.",
    "It lies as it is assembled, 3MF and STL as the piece lies on the bed.",
  ]);
});

test("a cylinder of another hand, with its size over its round face", () => {
  expect(wordsOf("print-step", utf8Bytes(HAND_CYLINDER))).toEqual([
    "One solid, 10 by 10 by 20 mm, as it stands in the file: 3 faces, 2 flat and 1 round; 3 edges, 1 straight and 2 true arcs.",
    "It lies as it is assembled, 3MF and STL as the piece lies on the bed.",
  ]);
});

test("a STEP in inches is not said to be as it should", () => {
  const inches = HAND_CYLINDER.replace("SI_UNIT(.MILLI.,.METRE.)", "SI_UNIT($,.METRE.)");
  expect(wordsOf("print-step", utf8Bytes(inches)).at(-1)).toBe(
    "Not as it should be: its unit is not millimetres.",
  );
});

test("bytes that are no STEP at all", () => {
  const words = wordsOf("print-step", utf8Bytes("solid part"));
  expect(words[0]).toMatch(/^0 solids, as it stands in the file: 0 faces/);
  expect(words.at(-1)).toContain("no solid in it");
});

test("an STL and a 3MF by their size and unit", async () => {
  const mesh = meshSolid(drilledPlate, await openKernel());
  expect(wordsOf("print-stl", stlFile(mesh))).toEqual([
    "One solid piece, 146.05 by 57.15 by 3 mm.",
    "An STL names no unit: it is in millimetres, as the piece lies on the bed.",
  ]);
  const body = (name: string) => ({ name, material: "pla", colour: "#808080", mesh });
  const bytes = threeMfFile({ title: "Plates", bodies: [body("face"), body("letters")] });
  expect(wordsOf("print-3mf", bytes)).toEqual([
    "2 solid pieces, 146.05 by 57.15 by 3 mm.",
    "face, letters.",
    "In millimetres, as it lies on the bed.",
  ]);
});

test("an STL that is cut short is said to be wrong", async () => {
  const bytes = stlFile(meshSolid(drilledPlate, await openKernel()));
  const words = wordsOf("print-stl", bytes.subarray(0, bytes.length - 10));
  expect(words.at(-1)).toMatch(/^Not as it should be: \d+ bytes for \d+ triangles\.$/);
});

// A STEP file as the page draws it: triangles that close round the solid's own volume, as OpenCASCADE and sums by hand have it,
// chords on true arcs, and a face that can't be drawn left to its edges and counted.

import type { OpenCascadeInstance } from "replicad-opencascadejs";
import { beforeAll, describe, expect, test } from "vitest";
import { readStepFile } from "../../src/inspection/step-reader.ts";
import { type DrawnStep, drawnStep } from "../../viewer/job-pack/step-triangles.ts";
import { randomLayeredSolid } from "../solids/random-solids.ts";
import { drilledPlate } from "../solids/sample-solids.ts";
import { HAND_CYLINDER } from "../support/hand-step.ts";
import { openStepReader, readStep } from "../support/step-reader.ts";
import { stepTextOf } from "../support/step-text.ts";

let kernel: OpenCascadeInstance;
beforeAll(async () => {
  kernel = await openStepReader();
});

const drawnOf = (text: string): DrawnStep => {
  const [solid, ...others] = readStepFile(text).solids;
  expect(others).toEqual([]);
  if (solid === undefined) throw new Error("no solid");
  return drawnStep(solid);
};

/** By the divergence theorem: only triangles that close and look outward all round give it. */
const volumeOf = ({ corners }: DrawnStep): number => {
  let sixfold = 0;
  for (let at = 0; at < corners.length; at += 9) {
    const of = (place: number): number => corners[at + place] ?? Number.NaN;
    sixfold += of(0) * (of(4) * of(8) - of(5) * of(7));
    sixfold += of(1) * (of(5) * of(6) - of(3) * of(8));
    sixfold += of(2) * (of(3) * of(7) - of(4) * of(6));
  }
  return sixfold / 6;
};

/** A circle as 72 chords, as the page draws it: n / (2 pi) sin(2 pi / n) of its area. */
const CHORDED = (72 / (2 * Math.PI)) * Math.sin((2 * Math.PI) / 72);

test("a cylinder of whole circles closes round 500 pi mm³ less what its chords leave out", () => {
  const drawn = drawnOf(HAND_CYLINDER);
  expect(drawn.undrawn).toBe(0);
  expect(volumeOf(drawn)).toBeCloseTo(500 * Math.PI * CHORDED, 2);
});

test("the drilled plate closes round its volume, its holes by chords", () => {
  const drawn = drawnOf(stepTextOf(drilledPlate));
  expect(drawn.undrawn).toBe(0);
  const holes = 4 * Math.PI * 3.3 * 3.3 * CHORDED;
  expect(volumeOf(drawn)).toBeCloseTo(3 * (146.05 * 57.15 - holes), 1);
});

/** Of the hole that is nearest. */
const middleOf = (x: number, y: number): readonly [number, number] => [
  x < 73 ? 5 : 141.05,
  y < 28 ? 5 : 52.15,
];

test("every normal within the plate's holes looks to the middle of its hole", () => {
  const { corners, normals } = drawnOf(stepTextOf(drilledPlate));
  let round = 0;
  for (let at = 0; at < corners.length; at += 3) {
    const [x = 0, y = 0] = corners.subarray(at, at + 2);
    const [nx = 0, ny = 0, nz = 0] = normals.subarray(at, at + 3);
    const [middleX, middleY] = middleOf(x, y);
    if (nz !== 0 || Math.hypot(x - middleX, y - middleY) > 3.31) continue;
    round += 1;
    expect((middleX - x) / 3.3).toBeCloseTo(nx, 4);
    expect((middleY - y) / 3.3).toBeCloseTo(ny, 4);
  }
  // Four holes of 72 strips of two triangles.
  expect(round).toBe(4 * 72 * 6);
});

describe("random layered solids close round the volume that OpenCASCADE measures", () => {
  const seeds = Array.from({ length: 8 }, (_, index) => 1 + index);
  test.each(seeds)("seed %d", (seed) => {
    const text = stepTextOf(randomLayeredSolid(seed));
    const drawn = drawnOf(text);
    expect(drawn.undrawn).toBe(0);
    // Chords of 5 degrees leave out or add a thousandth of a disc.
    expect(Math.abs(volumeOf(drawn) / readStep(text, kernel).volume - 1)).toBeLessThan(2e-3);
  });
});

test("every end of a chord of the plate's holes lies on its true circle", () => {
  const { lines } = drawnOf(stepTextOf(drilledPlate));
  let onCircle = 0;
  for (let at = 0; at < lines.length; at += 3) {
    const [x = 0, y = 0] = lines.subarray(at, at + 2);
    const [middleX, middleY] = middleOf(x, y);
    const away = Math.hypot(x - middleX, y - middleY);
    if (away > 4) continue;
    onCircle += 1;
    expect(away).toBeCloseTo(3.3, 4);
  }
  // Four holes: two circles of 72 chords and two upright lines, each with two ends.
  expect(onCircle).toBe(4 * (2 * 72 + 2) * 2);
});

test("a face whose bound is spoiled is left to its edges and counted", () => {
  const text = stepTextOf(drilledPlate);
  // A half cylinder's bound without its second arc: nothing says how far up it reaches.
  const [, bound] = /CYLINDRICAL_SURFACE[\s\S]*?EDGE_LOOP\('',\((#\d+,#\d+,#\d+,#\d+)\)/.exec(
    text,
  )!;
  const [first, second, , fourth] = bound!.split(",");
  const spoiled = text.replace(bound!, [first, second, fourth].join(","));
  expect(drawnOf(spoiled).undrawn).toBe(1);
});

// Bodies for the tests of fit: boxes and cylinders at any place, and numbers that come out alike in every run.

import type { ConsoleBody } from "../../src/fit/console-body.ts";
import { circle, point } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { degrees } from "../../src/geometry/quantity.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import { prism, type Solid, solidRegion } from "../../src/geometry/solid/solid.ts";
import { type Frame, turnedFrame, WORLD } from "../../src/geometry/space/frame.ts";
import { boxInFrame } from "../../src/geometry/space/space-box.ts";
import { unitVector, type Vector, vector } from "../../src/geometry/space/vector.ts";

export type Random = () => number;

/** Mulberry32: 0 <= value < 1. */
export const seeded = (seed: number): Random => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let value = Math.imul(state ^ (state >>> 15), 1 | state);
    value = (value + Math.imul(value ^ (value >>> 7), 61 | value)) ^ value;
    return ((value ^ (value >>> 14)) >>> 0) / 4294967296;
  };
};

export const between = (random: Random, low: number, high: number): number =>
  low + (high - low) * random();

export const anyVector = (random: Random, size: number): Vector =>
  vector(between(random, -size, size), between(random, -size, size), between(random, -size, size));

export const anyFrame = (random: Random, reach: number): Frame =>
  turnedFrame(
    { ...WORLD, origin: anyVector(random, reach) },
    {
      about: unitVector(vector(between(random, 0.1, 1), random(), random())),
      through: vector(0, 0, 0),
      by: degrees(between(random, -180, 180)),
    },
  );

/** From the frame's origin along its three axes. */
export const boxSolid = (size: Vector): Solid =>
  prism(0, size.z, solidRegion({ outline: rectangle(extent(0, 0, size.x, size.y)), holes: [] }));

/** Standing on the frame's origin. */
export const cylinderSolid = (radius: number, height: number): Solid =>
  prism(0, height, solidRegion({ outline: circle(point(0, 0), radius), holes: [] }));

export const madeBody = (
  id: string,
  solid: Solid,
  of: Partial<Pick<ConsoleBody, "panel" | "role" | "frame">> = {},
): ConsoleBody => {
  const frame = of.frame ?? WORLD;
  return {
    id,
    role: of.role ?? "rear",
    panel: of.panel === undefined ? id : of.panel,
    bay: null,
    thing: id,
    what: "case",
    shape: { kind: "recipe", solid },
    frame,
    box: boxInFrame(solid, frame),
    span: { file: "console.yaml", start: 0, end: 0 },
  };
};

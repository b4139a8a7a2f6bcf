// Two hundred random pairs of boxes and cylinders: what they share and how far apart they lie, against closed forms of plane
// and solid geometry. Each pair stands in a console that is turned at random, so that no axis is a friend.

import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { PairRelation } from "../../src/fit/fit-facts.ts";
import { searchLength } from "../../src/fit/fit-tolerance.ts";
import { hullRelation } from "../../src/fit/hull-relation.ts";
import { type KernelShapes, kernelFrame, kernelShapes } from "../../src/fit/kernel-shapes.ts";
import { pairRelation } from "../../src/fit/pair-relation.ts";
import {
  type Frame,
  frameWithin,
  pointIn,
  pointOut,
  WORLD,
} from "../../src/geometry/space/frame.ts";
import {
  minus,
  spaceDistance,
  type Vector,
  vector,
  vectorLength,
} from "../../src/geometry/space/vector.ts";
import { openKernel } from "../support/kernel.ts";
import {
  anyFrame,
  anyVector,
  between,
  boxSolid,
  cylinderSolid,
  madeBody,
  type Random,
  seeded,
} from "./made-bodies.ts";

let shapes: KernelShapes;
beforeAll(async () => {
  shapes = kernelShapes(await openKernel());
});
afterAll(() => shapes.delete());

interface Block {
  readonly size: Vector;
  readonly frame: Frame;
}

const anySize = (random: Random): Vector =>
  vector(between(random, 4, 40), between(random, 4, 40), between(random, 4, 40));

const relationOf = (a: Block, b: Block): PairRelation | null =>
  pairRelation(
    madeBody("a", boxSolid(a.size), { frame: a.frame }),
    madeBody("b", boxSolid(b.size), { frame: b.frame }),
    { shapes, within: searchLength },
  );

/** What two stretches share; negative: the gap between them. */
const shared = (from: number, length: number, other: number, otherLength: number): number =>
  Math.min(from + length, other + otherLength) - Math.max(from, other);

describe("eighty pairs of parallel boxes", () => {
  const random = seeded(11);
  const kinds = { clash: 0, apart: 0, far: 0 };

  test.each(Array.from({ length: 80 }, (_, index) => index))("pair %i", () => {
    const console = anyFrame(random, 2000);
    const [sizeA, sizeB] = [anySize(random), anySize(random)];
    const at = anyVector(random, 32);
    const a = { size: sizeA, frame: console };
    const b = { size: sizeB, frame: frameWithin(console, { ...WORLD, origin: at }) };
    const overlaps = [
      shared(0, sizeA.x, at.x, sizeB.x),
      shared(0, sizeA.y, at.y, sizeB.y),
      shared(0, sizeA.z, at.z, sizeB.z),
    ];
    const found = relationOf(a, b);
    if (overlaps.every((one) => one > 0)) {
      kinds.clash += 1;
      const volume = overlaps.reduce((product, one) => product * one, 1);
      if (found?.kind !== "clash") throw new Error(`no clash of ${volume} mm³`);
      expect(found.volume / volume).toBeCloseTo(1, 9);
      expect(found.depth).toBeCloseTo(Math.min(...overlaps), 8);
      const middle = pointIn(console, found.at);
      expect(middle.x).toBeCloseTo((Math.max(0, at.x) + Math.min(sizeA.x, at.x + sizeB.x)) / 2, 8);
      return;
    }
    const gap = vectorLength(
      vector(...(overlaps.map((one) => Math.max(0, -one)) as [number, number, number])),
    );
    if (gap >= searchLength) {
      kinds.far += 1;
      expect(found).toBeNull();
      return;
    }
    kinds.apart += 1;
    if (found?.kind !== "apart") throw new Error(`not ${gap} mm apart`);
    expect(found.gap).toBeCloseTo(gap, 8);
  });

  test("are of every kind", () => {
    for (const count of Object.values(kinds)) expect(count).toBeGreaterThan(5);
  });
});

/** Closed form: the distance of a point from a box. */
const toBlock = (at: Vector, { size, frame }: Block): number => {
  const { x, y, z } = pointIn(frame, at);
  return vectorLength(
    vector(Math.max(0, -x, x - size.x), Math.max(0, -y, y - size.y), Math.max(0, -z, z - size.z)),
  );
};

const corners = ({ size, frame }: Block): readonly Vector[] =>
  [0, 1].flatMap((x) =>
    [0, 1].flatMap((y) =>
      [0, 1].map((z) => pointOut(frame, vector(x * size.x, y * size.y, z * size.z))),
    ),
  );

const edges = (block: Block): readonly (readonly [Vector, Vector])[] => {
  const all = corners(block);
  return all.flatMap((from, index) =>
    [1, 2, 4]
      .filter((bit) => (index & bit) === 0)
      .map((bit): readonly [Vector, Vector] => [from, all[index | bit]!]),
  );
};

/**
 * The distance from a convex set is a convex function along an edge: three points narrow its least value down. Two boxes
 * that lie apart are nearest where one of the two has an edge.
 */
const edgeGap = ([from, to]: readonly [Vector, Vector], block: Block): number => {
  let [low, high] = [0, 1];
  const at = (share: number): number =>
    toBlock(
      vector(
        from.x + (to.x - from.x) * share,
        from.y + (to.y - from.y) * share,
        from.z + (to.z - from.z) * share,
      ),
      block,
    );
  for (let step = 0; step < 80; step += 1) {
    const [first, second] = [low + (high - low) / 3, high - (high - low) / 3];
    if (at(first) <= at(second)) high = second;
    else low = first;
  }
  return Math.min(at(low), at(0), at(1));
};

const blocksGap = (a: Block, b: Block): number =>
  Math.min(
    ...edges(a).map((edge) => edgeGap(edge, b)),
    ...edges(b).map((edge) => edgeGap(edge, a)),
  );

const CELLS = 40;

/** Cells of a that have their middle in b. */
const sampledVolume = (a: Block, b: Block): number => {
  let inside = 0;
  for (let x = 0; x < CELLS; x += 1)
    for (let y = 0; y < CELLS; y += 1)
      for (let z = 0; z < CELLS; z += 1) {
        const at = vector(
          ((x + 0.5) / CELLS) * a.size.x,
          ((y + 0.5) / CELLS) * a.size.y,
          ((z + 0.5) / CELLS) * a.size.z,
        );
        if (toBlock(pointOut(a.frame, at), b) === 0) inside += 1;
      }
  return (inside / CELLS ** 3) * a.size.x * a.size.y * a.size.z;
};

describe("sixty pairs of boxes turned at random", () => {
  const random = seeded(23);
  const kinds = { clash: 0, grazing: 0, apart: 0, far: 0 };

  test.each(Array.from({ length: 60 }, (_, index) => index))("pair %i", () => {
    const a = { size: anySize(random), frame: anyFrame(random, 14) };
    const b = { size: anySize(random), frame: anyFrame(random, 14) };
    const found = relationOf(a, b);
    const gap = blocksGap(a, b);
    if (gap >= searchLength) {
      kinds.far += 1;
      expect(found).toBeNull();
    } else if (gap > 1e-6) {
      kinds.apart += 1;
      if (found?.kind !== "apart") throw new Error(`not ${gap} mm apart`);
      expect(found.gap).toBeCloseTo(gap, 6);
      // The middle of the shortest line is as far from either.
      expect(toBlock(found.at, a)).toBeCloseTo(gap / 2, 6);
      expect(toBlock(found.at, b)).toBeCloseTo(gap / 2, 6);
    } else {
      const cell = (a.size.x * a.size.y * a.size.z) / CELLS ** 3;
      if (found?.kind === "touching") {
        // A corner that shares less than 0.01 mm³ only touches, by its definition: no more than a cell can be seen of it.
        kinds.grazing += 1;
        expect(sampledVolume(a, b)).toBeLessThan(0.01 + 2 * cell);
        return;
      }
      kinds.clash += 1;
      if (found?.kind !== "clash") throw new Error("no clash");
      // Cells on the border count wholly or not at all: 1 % of the box is four of its outer layers' twentieths.
      const whole = a.size.x * a.size.y * a.size.z;
      expect(Math.abs(found.volume - sampledVolume(a, b))).toBeLessThan(0.01 * whole);
    }
  });

  test("are of every kind", () => {
    const { grazing, ...others } = kinds;
    for (const count of Object.values(others)) expect(count).toBeGreaterThan(5);
    expect(grazing).toBeLessThan(3);
  });
});

/** The lens that two circles share: two segments (any table of plane figures). */
const lensArea = (r: number, s: number, apart: number): number => {
  if (apart >= r + s) return 0;
  if (apart <= Math.abs(r - s)) return Math.PI * Math.min(r, s) ** 2;
  const alpha = Math.acos((apart ** 2 + r ** 2 - s ** 2) / (2 * apart * r));
  const beta = Math.acos((apart ** 2 + s ** 2 - r ** 2) / (2 * apart * s));
  return r ** 2 * (alpha - Math.sin(2 * alpha) / 2) + s ** 2 * (beta - Math.sin(2 * beta) / 2);
};

describe("sixty pairs of parallel cylinders", () => {
  const random = seeded(37);
  const kinds = { clash: 0, apart: 0, far: 0 };

  test.each(Array.from({ length: 60 }, (_, index) => index))("pair %i", () => {
    const console = anyFrame(random, 2000);
    const [r, s] = [between(random, 2, 20), between(random, 2, 20)];
    const [height, other] = [between(random, 5, 40), between(random, 5, 40)];
    const at = anyVector(random, 22);
    const apart = spaceDistance(vector(0, 0, 0), vector(at.x, at.y, 0));
    const overlap = shared(0, height, at.z, other);
    const found = pairRelation(
      madeBody("a", cylinderSolid(r, height), { frame: console }),
      madeBody("b", cylinderSolid(s, other), {
        frame: frameWithin(console, { ...WORLD, origin: at }),
      }),
      { shapes, within: searchLength },
    );
    const radial = apart - r - s;
    if (radial < -0.05 && overlap > 0.05) {
      kinds.clash += 1;
      if (found?.kind !== "clash") throw new Error("no clash");
      const volume = lensArea(r, s, apart) * overlap;
      // Chords of 0.004 mm height take so much off the rim that bounds the lens, and a hundredth of a mm³ counts for nothing.
      const rim = 2 * Math.PI * Math.min(r, s) * 0.004 * overlap;
      expect(Math.abs(found.volume - volume)).toBeLessThan(rim + 0.01);
      return;
    }
    const gap = vectorLength(vector(Math.max(0, radial), 0, Math.max(0, -overlap)));
    if (gap >= searchLength) {
      kinds.far += 1;
      expect(found).toBeNull();
      return;
    }
    kinds.apart += 1;
    if (found?.kind !== "apart") throw new Error(`not ${gap} mm apart`);
    expect(found.gap).toBeGreaterThan(gap - 1e-6);
    // A chord's height on each of the two.
    expect(found.gap).toBeLessThan(gap + 2 * 0.004 + 1e-6);
  });

  test("are of every kind", () => {
    for (const count of Object.values(kinds)) expect(count).toBeGreaterThan(5);
  });
});

describe("the grade for a drag", () => {
  const random = seeded(41);

  test("says of convex bodies what the kernel says", () => {
    let grazing = 0;
    for (let round = 0; round < 200; round += 1) {
      const a = madeBody("a", boxSolid(anySize(random)), { frame: anyFrame(random, 14) });
      const radius = between(random, 2, 20);
      const b = madeBody("b", cylinderSolid(radius, between(random, 4, 40)), {
        frame: anyFrame(random, 14),
      });
      const coarse = hullRelation(a, b, searchLength);
      const fine = pairRelation(a, b, { shapes, within: searchLength });
      if (coarse?.kind === "meet" && fine?.kind === "touching") grazing += 1;
      else expect(coarse?.kind === "meet" ? "clash" : coarse?.kind).toBe(fine?.kind);
      if (coarse?.kind !== "apart" || fine?.kind !== "apart") continue;
      // A second opinion: the kernel's own search over triangles.
      const [first, second] = [a, b].map((body) =>
        shapes.of(body.shape).transform(kernelFrame(body.frame)),
      );
      expect(first!.minGap(second!, searchLength)).toBeCloseTo(coarse.gap, 6);
      expect(vectorLength(minus(coarse.at, fine.at))).toBeLessThan(1e-6);
      first!.delete();
      second!.delete();
    }
    // Meets by a corner, and shares less than 0.01 mm³.
    expect(grazing).toBeLessThan(5);
  });
});

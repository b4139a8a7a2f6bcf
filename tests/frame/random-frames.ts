// Frames of random bays: one to three in a row, each at its own slope, tilt, length and depth; two rows that stand anyhow on
// the floor, or are told how far to move. The gate takes a few of them, the long runs many.

import "../support/property-seed.ts";
import fc from "fast-check";
import { expect } from "vitest";
import { type Kernel, withKept } from "../../src/geometry/solid/kernel.ts";
import type { ConsoleFrame } from "../../src/parts/frame/frame-part.ts";
import { framed } from "./framed.ts";
import { clashes, looseSlots, piecesOf, standing } from "./put-together.ts";

interface RandomBay {
  readonly slope: number;
  readonly cant: number;
  readonly modules: number;
  readonly depth: number;
  readonly gap: number;
  readonly step: number;
}

const RANDOM_BAY: fc.Arbitrary<RandomBay> = fc.record({
  slope: fc.integer({ min: -15, max: 30 }),
  cant: fc.integer({ min: -20, max: 20 }),
  modules: fc.integer({ min: 12, max: 40 }),
  depth: fc.integer({ min: 60, max: 160 }),
  gap: fc.integer({ min: 0, max: 120 }),
  step: fc.integer({ min: -20, max: 20 }),
});

const sine = (angle: number): number => Math.sin((angle * Math.PI) / 180);
const cosine = (angle: number): number => Math.cos((angle * Math.PI) / 180);

/** How far below its rails a bay's ribs reach, at most: room and tilt (63.5 mm half clear), and 60 mm of rib. */
const reach = ({ depth, cant }: RandomBay): number => depth + 63.5 * Math.abs(sine(cant)) + 60;

/** In a row, each clear of the one before: below where it rises less than that, and above where it rises more. */
const rowOf = (bays: readonly RandomBay[]): readonly string[] => {
  let [forward, up] = [0, 700];
  return bays.map((bay, index) => {
    const before = bays[index - 1];
    if (before !== undefined) {
      const below = Math.max(0, reach(before) * sine(before.slope) - reach(bay) * sine(bay.slope));
      const above = 60 * Math.max(0, sine(bay.slope) - sine(before.slope));
      forward += below + above + bay.gap + 25;
      up += bay.step;
    }
    const at = `[${forward.toFixed(3)}, -400, ${up.toFixed(3)}]`;
    const length = bay.modules * 9.525;
    forward += length * cosine(bay.slope);
    up += length * sine(bay.slope);
    return `bay-${index + 1}: { mount: console-rail, at: ${at}, along: [1, 0, 0], slope: ${bay.slope}, cant: ${bay.cant}, length: ${bay.modules} modules, depth: ${bay.depth} mm }`;
  });
};

/** What meets, and what stands loose, once the frame is put together. */
export const trouble = (frame: ConsoleFrame, kernel: Kernel): readonly string[] =>
  withKept((keep) => {
    const bench = { kernel, keep };
    const all = standing(piecesOf(frame), bench);
    return [...clashes(all, bench), ...looseSlots(frame, all, bench)];
  });

export const randomBaysGoTogether = (kernel: Kernel, runs: number): void => {
  let made = 0;
  fc.assert(
    fc.property(fc.array(RANDOM_BAY, { minLength: 1, maxLength: 3 }), (bays) => {
      const { frame, findings } = framed({ bays: rowOf(bays), bed: "[4000, 4000]" });
      expect(findings.filter(({ severity }) => severity === "fault")).toEqual([]);
      if (frame === null) throw new Error("a frame without a fault is made");
      expect(trouble(frame, kernel)).toEqual([]);
      made += 1;
    }),
    { numRuns: runs, endOnFailure: true },
  );
  expect(made).toBe(runs);
};

/** Where a row stands on the floor, and which way it runs: at right angles and in Pythagorean ones, so that text says it exactly. */
const STANDING = fc.record({
  x: fc.integer({ min: -300, max: 300 }),
  y: fc.integer({ min: -300, max: 300 }),
  along: fc.constantFrom([1, 0], [-1, 0], [0, 1], [0, -1], [0.6, 0.8], [0.8, -0.6], [-0.28, 0.96]),
});

const UNIT_BAY = fc.record({
  modules: fc.integer({ min: 12, max: 30 }),
  slope: fc.integer({ min: -10, max: 30 }),
  cant: fc.integer({ min: -15, max: 15 }),
});

type Row = readonly [
  { readonly x: number; readonly y: number; readonly along: readonly number[] },
  { readonly modules: number; readonly slope: number; readonly cant: number },
];

const rowText = (id: string, [at, bay]: Row, place = `[${at.x}, ${at.y}, 700]`): string =>
  `${id}: { mount: console-rail, at: ${place}, along: [${at.along.join()}, 0], slope: ${bay.slope}, cant: ${bay.cant}, length: ${bay.modules} modules, depth: 90 mm }`;

const rowsMade = (bays: readonly string[]): ReturnType<typeof framed> =>
  framed({ bays, frame: "{ type: side-console, sheet: birch-ply-12, hatch: none }" });

/** As they stand, or as the fault of their room says that they should. */
const madeFree = (one: Row, other: Row): ReturnType<typeof framed> => {
  const result = rowsMade([rowText("one", one), rowText("other", other)]);
  const fault = result.findings.find(({ code }) => code === "checks/frame-units");
  if (fault === undefined) return result;
  const [, id, place] = /Move (one|other) to at: (\[[^\]]*\])/.exec(fault.message) ?? [];
  if (place === undefined) throw new Error(fault.message);
  const placeOf = (row: string): string | undefined => (row === id ? place : undefined);
  return rowsMade([rowText("one", one, placeOf("one")), rowText("other", other, placeOf("other"))]);
};

export const randomRowsStandFree = (kernel: Kernel, runs: number): void => {
  let made = 0;
  fc.assert(
    fc.property(fc.tuple(STANDING, UNIT_BAY), fc.tuple(STANDING, UNIT_BAY), (one, other) => {
      const { frame, findings } = madeFree(one, other);
      // Rows that run the same way across one stretch are one unit: what crosses there is no matter of units.
      fc.pre(findings.every(({ code }) => code !== "parts/frame-bays-cross"));
      expect(findings.filter(({ severity }) => severity === "fault")).toEqual([]);
      if (frame === null) throw new Error("a frame without a fault is made");
      expect(trouble(frame, kernel)).toEqual([]);
      made += 1;
    }),
    { numRuns: runs, endOnFailure: true },
  );
  expect(made).toBe(runs);
};

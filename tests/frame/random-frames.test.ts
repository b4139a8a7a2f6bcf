// Frames of random bays go together as well: one to three in a row, each at its own slope, tilt, length and depth; two rows
// that stand anyhow on the floor, or are told how far to move; and a frame that is parted for a small bed, whose sections
// meet bolt on bolt.

import "../support/property-seed.ts";
import fc from "fast-check";
import { expect, test } from "vitest";
import { withKept } from "../../src/geometry/solid/kernel.ts";
import { pointOut } from "../../src/geometry/space/frame.ts";
import { spaceDistance, type Vector, vector } from "../../src/geometry/space/vector.ts";
import type { ConsoleFrame } from "../../src/parts/frame/frame-part.ts";
import { openKernel } from "../support/kernel.ts";
import { framed, soundFrame } from "./framed.ts";
import { blockedSteps, clashes, looseSlots, piecesOf, standing } from "./put-together.ts";

const kernel = await openKernel();

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

const trouble = (frame: ConsoleFrame): readonly string[] =>
  withKept((keep) => {
    const bench = { kernel, keep };
    const all = standing(piecesOf(frame), bench);
    return [...clashes(all, bench), ...looseSlots(frame, all, bench)];
  });

test("frames of random bays go together", () => {
  let made = 0;
  fc.assert(
    fc.property(fc.array(RANDOM_BAY, { minLength: 1, maxLength: 3 }), (bays) => {
      const { frame, findings } = framed({ bays: rowOf(bays), bed: "[4000, 4000]" });
      expect(findings.filter(({ severity }) => severity === "fault")).toEqual([]);
      if (frame === null) throw new Error("a frame without a fault is made");
      expect(trouble(frame)).toEqual([]);
      made += 1;
    }),
    { numRuns: 15, endOnFailure: true },
  );
  expect(made).toBe(15);
});

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

test("two rows anywhere stand free of one another, or where they are told to", () => {
  fc.assert(
    fc.property(fc.tuple(STANDING, UNIT_BAY), fc.tuple(STANDING, UNIT_BAY), (one, other) => {
      const { frame, findings } = madeFree(one, other);
      // Rows that run the same way across one stretch are one unit: what crosses there is no matter of units.
      if (findings.some(({ code }) => code === "parts/frame-bays-cross")) return;
      expect(findings.filter(({ severity }) => severity === "fault")).toEqual([]);
      if (frame === null) throw new Error("a frame without a fault is made");
      expect(trouble(frame)).toEqual([]);
    }),
    { numRuns: 6, endOnFailure: true },
  );
});

test.each([-420, 0])(
  "a frame parted for its bed, %d mm to the left, goes together, bolt on bolt",
  (left) => {
    const frame = soundFrame({
      bays: [
        `aft: { mount: console-rail, at: [0, ${left}, 620], along: [1, 0, 0], cant: 8 deg, length: 60 modules, depth: 180 mm }`,
        `forward: { mount: console-rail, at: [640, ${left}, 640], along: [1, 0, 0], slope: 12 deg, cant: 8 deg, length: 40 modules, depth: 150 mm }`,
      ],
      bed: "[900, 800]",
    });
    expect([...new Set(frame.parts.map(({ section }) => section))]).toEqual([1, 2]);
    const blocked = withKept((keep) => {
      const bench = { kernel, keep };
      return blockedSteps(frame, standing(piecesOf(frame), bench), bench);
    });
    expect(trouble(frame)).toEqual([]);
    expect(blocked.filter((line) => !line.includes("-s1") || !line.includes("-s2"))).toEqual([]);
    const [front, back] = [bolts(frame, "front-s1"), bolts(frame, "back-s2")];
    expect(front).toHaveLength(4);
    // What the last step says in words is what lies between the good faces, hole on hole.
    const spacer = Number(/spacers ([\d.]+) mm/.exec(frame.assembly.at(-1)?.words ?? "")?.[1]);
    for (const at of front)
      expect(Math.min(...back.map((over) => spaceDistance(at, over)))).toBeCloseTo(spacer, 1);
  },
);

const bolts = (frame: ConsoleFrame, id: string): readonly Vector[] => {
  const part = frame.parts.find((each) => each.id === id)!;
  return part.holes.flatMap(({ feature, contour }) =>
    feature.startsWith("bolt.") && contour.kind === "circle"
      ? [pointOut(part.frame, vector(contour.centre.x, contour.centre.y, 0))]
      : [],
  );
};

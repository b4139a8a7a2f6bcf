// Frames of random bays go together as well, and a frame that is parted for a small bed, whose sections meet bolt on bolt.
// More of the random ones are made in tests/long.

import { expect, test } from "vitest";
import { withKept } from "../../src/geometry/solid/kernel.ts";
import { pointOut } from "../../src/geometry/space/frame.ts";
import { spaceDistance, type Vector, vector } from "../../src/geometry/space/vector.ts";
import type { ConsoleFrame } from "../../src/parts/frame/frame-part.ts";
import { openKernel } from "../support/kernel.ts";
import { soundFrame } from "./framed.ts";
import { blockedSteps, piecesOf, standing } from "./put-together.ts";
import { randomBaysGoTogether, randomRowsStandFree, trouble } from "./random-frames.ts";

const kernel = await openKernel();

test("frames of random bays go together", () => {
  randomBaysGoTogether(kernel, 5);
});

test("two rows anywhere stand free of one another, or where they are told to", () => {
  randomRowsStandFree(kernel, 2);
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
    expect(trouble(frame, kernel)).toEqual([]);
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

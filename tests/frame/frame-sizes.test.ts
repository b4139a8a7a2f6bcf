// Sizes of a frame against hand arithmetic from the design text: slots from the sheet as measured, rails on the standard's
// pitch, and the room behind the panels left free.

import { describe, expect, test } from "vitest";
import { DEFAULT_COLOURS } from "../../src/export/process-colours.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { withKept } from "../../src/geometry/solid/kernel.ts";
import { pointOut } from "../../src/geometry/space/frame.ts";
import { spaceDistance, vector } from "../../src/geometry/space/vector.ts";
import { cutFilesTogether } from "../../src/pack/cut-files.ts";
import type { FrameHole, FramePart } from "../../src/parts/frame/frame-part.ts";
import { openKernel } from "../support/kernel.ts";
import { framed, soundFrame } from "./framed.ts";
import { inRoomOf, piecesOf, standing } from "./put-together.ts";

const kernel = await openKernel();

const partOf = (parts: readonly FramePart[], id: string): FramePart => {
  const found = parts.find((part) => part.id === id);
  if (found === undefined) throw new Error(`there is no ${id}`);
  return found;
};

const holeOf = (part: FramePart, feature: string): FrameHole => {
  const found = part.holes.find((hole) => hole.feature === feature);
  if (found === undefined) throw new Error(`${part.id} has no ${feature}`);
  return found;
};

/** Between its straight sides: the lengths of the two sides that do not carry reliefs, by the loop's own corners. */
const slotSides = ({ contour }: FrameHole): readonly number[] => {
  if (contour.kind === "circle") throw new Error("a slot has sides");
  const straight = contour.vertices.flatMap((from, index) => {
    const to = contour.vertices[(index + 1) % contour.vertices.length]!;
    return from.bulge === 0 ? [{ from, to }] : [];
  });
  const across = straight.map(({ from, to }) => {
    const opposite = straight.find(
      (other) => other.from !== from && isParallel({ from, to }, other),
    );
    if (opposite === undefined) throw new Error("a slot has opposite sides");
    return distanceToLine(from, opposite);
  });
  return [...new Set(across.map((size) => Number(size.toFixed(6))))].toSorted((a, b) => a - b);
};

interface Side {
  readonly from: { readonly x: number; readonly y: number };
  readonly to: { readonly x: number; readonly y: number };
}

const isParallel = (a: Side, b: Side): boolean =>
  Math.abs((a.to.x - a.from.x) * (b.to.y - b.from.y) - (a.to.y - a.from.y) * (b.to.x - b.from.x)) <
  1e-6;

const distanceToLine = (at: Side["from"], { from, to }: Side): number => {
  const [x, y] = [to.x - from.x, to.y - from.y];
  return Math.abs(x * (at.y - from.y) - y * (at.x - from.x)) / Math.hypot(x, y);
};

const sheet = (measured: string): string =>
  `{ material: plywood, colour: birch, light: opaque, nominal: 18 mm, ${measured} }`;

describe("slots", () => {
  test("follow a sheet of 17.4 mm with 0.2 mm to spare", () => {
    const { parts } = soundFrame({ stock: sheet("measured: 17.4 mm, dated: 2026-10-02") });
    for (const [part, feature] of [
      ["cheek-left", "slot.rib-aft-1.1"],
      ["cheek-right", "slot.rib-forward-2.1"],
      ["rail-aft-right", "slot.rib-aft-2"],
    ] as const)
      expect(slotSides(holeOf(partOf(parts, part), feature))).toContain(17.6);
  });

  test("take the clearance that is written", () => {
    const { parts } = soundFrame({
      frame: "{ type: side-console, sheet: birch-ply-12, clearance: 0.1 mm }",
    });
    expect(slotSides(holeOf(partOf(parts, "cheek-left"), "slot.floor.1"))).toEqual([11.7, 40.1]);
  });

  test("of a router have reliefs that reach their corners", () => {
    const slot = holeOf(partOf(soundFrame().parts, "cheek-left"), "slot.floor.1").contour;
    expect(slot.kind === "loop" && slot.vertices.filter(({ bulge }) => bulge !== 0)).toHaveLength(
      4,
    );
    // Overcut (√2 - 1) r = 0.6576 beyond the corner along its bisector; along the sides r - r / √2 = 0.465 (closed form).
    const box = contourExtent(slot);
    expect(box.maxX - box.minX).toBeCloseTo(40.2 + 2 * 1.5875 * (1 - Math.SQRT1_2), 6);
  });
});

describe("rails", () => {
  const { layout } = framed();
  const { parts } = soundFrame();

  // MIL-F-25173A (secondary copies): receptacles 3/8 in apart, columns 5 3/8 in.
  test.each(["aft", "forward"])(
    "of %s have holes every 9.525 mm, in columns 136.525 mm apart",
    (id) => {
      const [left, right] = [partOf(parts, `rail-${id}-left`), partOf(parts, `rail-${id}-right`)];
      const bay = layout.bays.find((each) => each.id === id)!;
      const rows = left.holes.filter(({ feature }) => feature.startsWith("rail-hole."));
      expect(rows).toHaveLength(bay.modules);
      const places = rows.map(({ feature }) =>
        [left, right].map((part) => {
          const { contour } = holeOf(part, feature);
          if (contour.kind !== "circle") throw new Error("a rail hole is round");
          expect(contour.radius).toBe(3.3);
          return pointOut(part.frame, vector(contour.centre.x, contour.centre.y, 0));
        }),
      );
      for (const [index, [at, over]] of places.entries()) {
        expect(spaceDistance(at!, over!)).toBeCloseTo(136.525, 6);
        const before = places[index - 1]?.[0];
        if (before !== undefined) expect(spaceDistance(before, at!)).toBeCloseTo(9.525, 6);
      }
      expect(
        spaceDistance(places[0]![0]!, pointOut(bay.frame, vector(-136.525 / 2, 4.7625, 0))),
      ).toBeCloseTo(0, 6);
    },
  );

  test("leave the clear width between them", () => {
    for (const bay of layout.bays) {
      const [left, right] = [
        partOf(parts, `rail-${bay.id}-left`),
        partOf(parts, `rail-${bay.id}-right`),
      ];
      const inner = pointOut(left.frame, vector(contourExtent(left.region.outline).maxX, 0, 0));
      expect(spaceDistance(inner, right.frame.origin)).toBeCloseTo(127, 6);
    }
  });
});

test.each([8, 20, -15])("nothing of the frame lies behind the panels, tilted by %d°", (cant) => {
  const said = {
    bays: [
      `aft: { mount: console-rail, at: [0, -420, 620], along: [1, 0, 0], cant: ${cant}, length: 60 modules, depth: 180 mm }`,
      `forward: { mount: console-rail, at: [640, -420, 640], along: [1, 0, 0], slope: 12, cant: ${cant}, length: 40 modules, depth: 150 mm }`,
    ],
  };
  const { layout } = framed(said);
  const found = withKept((keep) => {
    const bench = { kernel, keep };
    const all = standing(piecesOf(soundFrame(said)), bench);
    return layout.bays.flatMap((bay) => inRoomOf(bay, all, bench));
  });
  expect(found).toEqual([]);
});

test("inches give the same parts as millimetres", () => {
  // 0, 16 17/32 in, 24 13/32 in are 0, 419.89375 and 619.91875 mm; 1/2 in is 12.7.
  const bay = (at: string, depth: string): string =>
    `aft: { mount: console-rail, at: ${at}, along: [1, 0, 0], cant: 8, length: 60 modules, depth: ${depth} }`;
  const metric = soundFrame({
    bays: [bay("[0, -419.89375, 619.91875]", "177.8 mm")],
    frame:
      "{ type: side-console, sheet: birch-ply-12, toe: 63.5 mm, beyond: 15.875 mm, rails: { width: 31.75 mm } }",
  });
  const inch = soundFrame({
    bays: [bay("[0, -16 17/32 in, 24 13/32 in]", "7 in")],
    frame:
      "{ type: side-console, sheet: birch-ply-12, toe: 2 1/2 in, beyond: 5/8 in, rails: { width: 1 1/4 in } }",
  });
  const files = (frame: typeof metric): readonly string[] =>
    frame.parts.map(({ region, holes }) => JSON.stringify({ region, holes }));
  expect(files(inch)).toEqual(files(metric));
});

test("every file is read back and measured, and is right", () => {
  const { parts } = soundFrame();
  const pack = cutFilesTogether(
    parts.map(({ sheetPart }) => sheetPart),
    {
      folder: "cut",
      colours: DEFAULT_COLOURS,
      titleOf: ({ title }) => title,
      spanOf: () => ({ file: "", start: 0, end: 0 }),
    },
  );
  expect(pack.files).toHaveLength(3 * parts.length);
  expect(pack.findings).toEqual([]);
  expect(pack.inspection.filter(({ passed }) => !passed)).toEqual([]);
  expect(pack.inspection.length).toBeGreaterThan(3000);
});

test("grain runs the long way of each piece of plywood, and no way of MDF", () => {
  for (const { region, grain } of soundFrame().parts) {
    const { minX, minY, maxX, maxY } = contourExtent(region.outline);
    expect(grain).toBe(maxX - minX >= maxY - minY ? "x" : "y");
    expect([minX, minY].map(Math.abs)).toEqual([0, 0]);
  }
  const mdf = soundFrame({
    stock:
      "{ material: mdf, colour: brown, light: opaque, nominal: 12 mm, measured: 12.1 mm, dated: 2026-10-02 }",
  });
  expect(mdf.parts.every(({ grain }) => grain === null)).toBe(true);
});

test("screws pass the cheek by ISO 273's medium clearance for M4 and have a pilot in the edge", () => {
  const { parts, joints } = soundFrame({
    frame: "{ type: side-console, sheet: birch-ply-12, joints: screws }",
  });
  const cheek = partOf(parts, "cheek-right");
  const { contour } = holeOf(cheek, "slot.floor.1");
  expect(contour.kind === "circle" && 2 * contour.radius).toBe(4.5);
  const floor = partOf(parts, "floor");
  expect(floor.sheetPart.handOperations).toHaveLength(
    joints.filter(({ from }) => from === "floor").length,
  );
  const centre = contour.kind === "circle" ? contour.centre : { x: 0, y: 0 };
  const hole = pointOut(cheek.frame, vector(centre.x, centre.y, -11.6));
  const distances = floor.sheetPart.handOperations.flatMap(({ at }) =>
    at === null ? [] : [spaceDistance(hole, pointOut(floor.frame, vector(at.x, at.y, -11.6 / 2)))],
  );
  expect(Math.min(...distances)).toBeCloseTo(0, 6);
});

// A bay sloped by 40 degrees and canted by 8: a millimetre of its depth is cos 40 x cos 8 = 0.76 mm of height.
test("the depth that is said to do for a bay that lies too low does, and a millimetre more does not", () => {
  const fault = (depth: number): string | undefined =>
    framed({
      bays: [
        `aft: { mount: console-rail, at: [0, -420, 300], along: [1, 0, 0], slope: 40 deg, cant: 8 deg, length: 40 modules, depth: ${depth} mm }`,
      ],
    }).findings.find(({ code }) => code === "parts/frame-bay")?.message;
  const works = Number(/depth: (\d+) mm/.exec(fault(250) ?? "")?.[1]);
  expect(works).toBeGreaterThan(50);
  expect(fault(works)).toBeUndefined();
  expect(fault(works + 1)).toBeDefined();
});

const partedAt = (apart: number, beyond: string): ReturnType<typeof framed> =>
  framed({
    bays: [
      "aft: { mount: console-rail, at: [0, -420, 620], along: [1, 0, 0], length: 24 modules, depth: 120 mm }",
      `forward: { mount: console-rail, at: [${apart}, -420, 620], along: [1, 0, 0], length: 24 modules, depth: 120 mm }`,
    ],
    frame: `{ type: side-console, sheet: birch-ply-12, beyond: ${beyond} mm }`,
    bed: "[700, 500]",
  });
const tooClose = ({ findings }: ReturnType<typeof framed>): string | undefined =>
  findings.find(({ code }) => code === "checks/frame-sections")?.message;

// Each end stands `beyond` over: a length that both give up parts two sections by twice as much, and by no more than they have.
test("what is said to part two sections does, and nothing is said that could not", () => {
  const near = tooClose(partedAt(275.37, "11.3"));
  const works = /make beyond: ([\d.]+) mm/.exec(near ?? "")?.[1];
  expect(works).toBeDefined();
  expect(tooClose(partedAt(275.37, works!))).toBeUndefined();
  expect(tooClose(partedAt(240, "6"))).toContain("Move them apart by that.");
});

test("the tool that is said to work for the slots does", () => {
  const slots = (diameter: string): string | undefined =>
    framed({ tools: `[{ diameter: ${diameter} mm }]` }).findings.find(
      ({ code }) => code === "checks/frame-tool",
    )?.message;
  const works = /A tool of ([\d.]+) mm works/.exec(slots("12") ?? "")?.[1];
  expect(slots(works!)).toBeUndefined();
});

// Parts larger than the bed: every piece fits, joints stand clear of everything, halves meet, numbers are sunk.

import { describe, expect, test } from "vitest";
import { circle, type Point, point } from "../../src/geometry/contour.ts";
import { type Extent, extent, joinedExtent } from "../../src/geometry/extent.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { recipeExtent } from "../../src/geometry/solid/recipe-extent.ts";
import { recipeFaults } from "../../src/geometry/solid/recipe-faults.ts";
import { recipeVolume } from "../../src/geometry/solid/recipe-volume.ts";
import type { LayeredSolid } from "../../src/geometry/solid/solid.ts";
import type { PrintedPart, PrintedPiece } from "../../src/parts/printed/printed-part.ts";
import { isMaterial, layerAt, printed, soundPart, stackOf } from "./printed-panel.ts";

const bed = (width: number, depth: number): string =>
  `machines:\n  p: { type: printer, bed: [${width}, ${depth}, 200], line: 0.45 mm, layer: 0.2 mm }\n`;

const LONG = {
  height: "30 modules",
  stack: stackOf("strip-60-5v", "", 16),
  components: `
  a: { part: toggle-12, at: { left: 40 mm, top: 40 mm } }
  b: { part: led-5-bezel, at: { left: 100 mm, top: 143 mm } }
  d: { part: seven-segment-4-056, at: { x: centre, bottom: 40 mm } }`,
  fixings: "{ screws: m3, dowels: 3 mm }",
};

const solidOf = ({ bodies }: PrintedPiece): LayeredSolid => {
  const solid = bodies[0]?.solid;
  if (solid?.kind !== "layered") throw new Error("not layered");
  return solid;
};

const spot = ({ x, y }: Point): Extent => extent(x, y, x, y);

const split = (): PrintedPart => soundPart(printed(LONG, bed(180, 180)).spacer);

describe("a spacer of 286 mm on a bed of 180", () => {
  test("comes in two pieces that fit, each sound", () => {
    const part = split();
    expect(part.pieces.map(({ number }) => number)).toEqual([1, 2]);
    for (const piece of part.pieces) {
      const solid = solidOf(piece);
      expect(recipeFaults(solid)).toEqual([]);
      const box = recipeExtent(solid);
      expect(box.maxX - box.minX).toBeLessThanOrEqual(170);
      expect(box.maxY - box.minY).toBeLessThanOrEqual(170);
    }
  });

  test("is solid round its joint, which goes through no room, boss or lane", () => {
    const part = split();
    const [joint] = part.facts.joints;
    if (joint === undefined) throw new Error("no joint");
    expect(joint).toMatchObject({ across: "y", between: [1, 2], lap: 12 });
    const half = joint.lap / 2 + 1.35;
    const [low, high] = [joint.at - half, joint.at + half];
    const taken = [
      ...part.facts.collars.map(({ inner }) => contourExtent(inner)),
      ...part.facts.notches.map(({ passage }) => contourExtent(passage)),
      ...part.facts.bosses.map(({ at, outside }) => contourExtent(circle(at, outside / 2))),
      ...part.facts.channels.map(({ from, to }) => joinedExtent(spot(from), spot(to))),
    ];
    expect(taken.filter(({ minY, maxY }) => maxY > low && minY < high)).toEqual([]);
    const whole = part.bodies[0]!.solid;
    if (whole.kind !== "layered") throw new Error("not layered");
    const layer = layerAt(whole, part.facts.box.front - 2);
    const across = Array.from({ length: 120 }, (_, index) => 12.5 + index);
    const spots = [low + 0.1, joint.at, high - 0.1].flatMap((y) => across.map((x) => point(x, y)));
    expect(spots.filter((at) => !isMaterial(layer, at))).toEqual([]);
  });

  test("laps: behind the first piece reaches on, in front the second", () => {
    const part = split();
    const [first, second] = part.pieces.map(solidOf);
    const { at } = part.facts.joints[0]!;
    const rear = part.facts.box.rear + 2;
    const front = part.facts.box.front - 2;
    const has = (solid: LayeredSolid, z: number, dy: number): boolean =>
      isMaterial(layerAt(solid, z), point(50, at + dy));
    expect([has(first!, rear, 5.5), has(second!, rear, 5.5)]).toEqual([true, false]);
    expect([has(first!, rear, 6.5), has(second!, rear, 6.5)]).toEqual([false, true]);
    expect([has(first!, front, -5.5), has(second!, front, -5.5)]).toEqual([false, true]);
    expect([has(first!, front, -6.5), has(second!, front, -6.5)]).toEqual([true, false]);
  });
});

describe("its joint", () => {
  test("locates on one round and one slotted peg, with two screws beyond them", () => {
    const { locators, screws } = split().facts.joints[0]!;
    expect(locators.map(({ kind }) => kind)).toEqual(["round", "slotted"]);
    // A peg grows by about 0.1, its hole shrinks by about 0.3 (common practice): snug is 0.15 a side.
    for (const { peg, hole } of locators) {
      expect(peg).toBeCloseTo(3.9, 9);
      expect(hole).toBeCloseTo(4.3 + 0.3, 9);
    }
    expect(screws).toHaveLength(2);
    expect(screws[0]!.x).toBeLessThan(locators[0]!.at.x);
    expect(screws[1]!.x).toBeGreaterThan(locators[1]!.at.x);
  });

  test("loses the joint's gap and its holes, and gains its pegs", () => {
    const part = split();
    const sum = part.pieces.reduce((total, piece) => total + recipeVolume(solidOf(piece)), 0);
    const whole = recipeVolume(part.bodies[0]!.solid);
    const { gap } = part.facts.joints[0]!;
    const across = part.facts.box.plan.maxX - part.facts.box.plan.minX;
    // Gap 0.3 over the section; four screw holes and two pegs' rooms are under 900 mm³ together.
    expect(whole - sum).toBeGreaterThan(gap * across * 16 * 0.9);
    expect(whole - sum).toBeLessThan(gap * across * 16 + 900);
  });

  test("has a number sunk in each piece", () => {
    const part = split();
    const [first, second] = part.pieces.map(solidOf);
    const areaAt = (solid: LayeredSolid, z: number): number => {
      const layer = layerAt(solid, z);
      const own = { kind: "layered" as const, layers: [layer] };
      return recipeVolume(own) / (layer.to - layer.from);
    };
    const { rear, front } = part.facts.box;
    expect(areaAt(first!, rear + 0.7) - areaAt(first!, rear + 0.5)).toBeGreaterThan(3);
    expect(areaAt(second!, front - 0.7) - areaAt(second!, front - 0.5)).toBeGreaterThan(3);
  });
});

test("a bed that takes it leaves it whole", () => {
  const part = soundPart(printed(LONG, bed(300, 220)).spacer);
  expect(part.pieces).toHaveLength(1);
  expect(part.facts.joints).toEqual([]);
});

test("a part without a free strip is told of", () => {
  const components = `\n  a: { column: { part: toggle-12, count: 15, pitch: 17 mm }, at: { x: centre, top: 24 mm } }`;
  const { findings } = printed({ ...LONG, components }, bed(180, 180));
  expect(findings.map(({ code }) => code)).toContain("parts/no-split");
});

test("a rack panel of 482.6 mm comes in three pieces on a bed of 220", () => {
  const part = soundPart(
    printed(
      {
        mount: "rack-19",
        height: "3 U",
        stack: stackOf("strip-60-5v", "", 16),
        components:
          "\n  a: { row: { part: toggle-12, count: 6, pitch: 60 mm }, at: { left: 91 mm, y: centre } }",
      },
      bed(220, 220),
    ).spacer,
  );
  expect(part.pieces).toHaveLength(3);
  for (const piece of part.pieces) {
    expect(recipeFaults(solidOf(piece))).toEqual([]);
    const box = recipeExtent(solidOf(piece));
    expect(box.maxX - box.minX).toBeLessThanOrEqual(210);
  }
});

// ISO 4762 begins at M1.6; the table here holds M3 to M6.
test("a joint whose screws have no head in the tables is refused, not made with another's", () => {
  const made = printed({ ...LONG, fixings: "{ screws: m2, dowels: 3 mm }" }, bed(180, 180));
  const [found] = made.findings.filter(({ code }) => code === "parts/no-split");
  expect(found?.severity).toBe("fault");
  expect(found?.message).toContain("m2 screws");
});

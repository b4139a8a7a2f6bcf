// Spacers: volumes by hand, walls in whole lines, collars round holes, rooms that move with their component.

import { describe, expect, test } from "vitest";
import { intersection } from "../../src/geometry/boolean.ts";
import { type Contour, type Point, point } from "../../src/geometry/contour.ts";
import { pointToContour } from "../../src/geometry/distance.ts";
import { pointAlong } from "../../src/geometry/edge.ts";
import { edgesOf } from "../../src/geometry/edges.ts";
import { insetRegions } from "../../src/geometry/inset.ts";
import {
  contourArea,
  contourExtent,
  regionArea,
  reversedContour,
} from "../../src/geometry/measure.ts";
import { pointDistance } from "../../src/geometry/point.ts";
import { recipeVolume } from "../../src/geometry/solid/recipe-volume.ts";
import type { SolidLayer } from "../../src/geometry/solid/solid.ts";
import {
  isMaterial,
  layerAt,
  layeredBody,
  PRINTER,
  printed,
  regionsOf,
  soundPart,
  stackOf,
} from "./printed-panel.ts";

const BOX = { mount: "box-lid", width: "100 mm", height: "80 mm" };

/** Of a rounded rectangle: sides a and b, corners r. */
const rounded = (a: number, b: number, r: number): number => a * b - (4 - Math.PI) * r * r;

describe("the volume of a spacer, by hand", () => {
  // 100 x 80, walls of the box 10 wide all round, 0.4 free beside them: 79.2 x 59.2. Corners of 3 from tongues of 6.
  // Floor 7 layers of 0.2 (1.35 and up), rim 3 lines of 0.45, 14 deep.
  const floor = rounded(79.2, 59.2, 3) * 1.4;
  const rim = (rounded(79.2, 59.2, 3) - rounded(76.5, 56.5, 1.65)) * 12.6;

  test("without light: floor and rim", () => {
    const { spacer } = printed({ ...BOX, stack: stackOf("") });
    expect(recipeVolume(layeredBody(soundPart(spacer)))).toBeCloseTo(floor + rim, 3);
  });

  test("a hole in the floor for whatever stands in it", () => {
    // A 9 mm lamp bezel: spanner 14, 0.5 beside it: the largest circle of all.
    const { spacer } = printed({
      ...BOX,
      stack: stackOf(""),
      components: "{ a: { part: led-5-bezel, at: { x: centre, y: centre } } }",
    });
    const hole = Math.PI * 7.5 * 7.5 * 1.4;
    expect(recipeVolume(layeredBody(soundPart(spacer)))).toBeCloseTo(floor + rim - hole, 3);
  });

  test("with light: lanes, the foam's seat, a rim of four more lines, the cable's block", () => {
    const part = soundPart(printed({ ...BOX, stack: stackOf("strip-60-5v") }).spacer);
    const [notch] = part.facts.notches;
    if (notch === undefined) throw new Error("no notch");
    const hollow = rounded(72.9, 52.9, 1);
    const middle = layerAt(layeredBody(part), part.facts.box.front - 5);
    const blocked = regionsOf(middle).reduce((sum, region) => sum + regionArea(region), 0);
    // Whatever is not hollow at half depth: the rim, and the block less its passage.
    const block = blocked - (rounded(79.2, 59.2, 3) - hollow);
    expect(block).toBeGreaterThan(50);
    expect(block).toBeLessThan(21 * 11);
    const channels = part.facts.channels.reduce(
      (sum, channel) => sum + (channel.length + 0.8) * channel.width,
      0,
    );
    const exit = regionArea({ outline: notch.exit, holes: [] });
    const seat = rounded(79.2, 59.2, 3) - rounded(75.6, 55.6, 1.2);
    const expected = (rounded(79.2, 59.2, 3) - exit) * 2 - channels * 0.6 + blocked * 12 - seat * 1;
    expect(recipeVolume(layeredBody(part))).toBeCloseTo(expected, 2);
  });
});

const LIT = {
  height: "12 modules",
  stack: stackOf("strip-60-5v"),
  components: `
  a: { part: toggle-12, at: { left: 40 mm, top: 40 mm } }
  b: { part: led-5-bezel, at: { left: 100 mm, top: 40 mm } }
  d: { part: seven-segment-4-056, at: { x: centre, bottom: 34 mm } }`,
};

describe("walls", () => {
  test("are whole lines, at least as thick as their stock is opaque", () => {
    const { walls, floor, rim } = soundPart(printed(LIT).spacer).facts;
    expect(walls.length).toBeGreaterThan(3);
    for (const wall of walls) {
      expect(wall.thickness / wall.line).toBeCloseTo(wall.lines, 9);
      expect(wall.thickness).toBeGreaterThanOrEqual(1.35);
    }
    expect(floor).toMatchObject({ thickness: 1.4, layers: 7, layer: 0.2 });
    // 1.5 to 2 mm over the edge (common practice).
    expect(rim?.overlap).toBeCloseTo(1.8, 9);
  });

  // Multiples at 0.45 mm: 0.9, 1.35, 1.8, 2.25 (common practice).
  test.each([
    [0.9, 0.9],
    [1, 1.35],
    [1.35, 1.35],
    [1.4, 1.8],
    [2, 2.25],
  ])("opaque from %f mm: %f mm", (opaque, thickness) => {
    const { spacer } = printed(
      { ...LIT, stack: LIT.stack.replace("black-petg", "own") },
      PRINTER,
      `  own: { material: petg, colour: black, opaque-from: ${opaque} mm }`,
    );
    const collar = spacer?.facts.walls.find(({ kind }) => kind === "collar");
    expect(collar?.thickness).toBeCloseTo(thickness, 9);
  });
});

/** Places so far outside a contour, or inside it where the distance is negative. */
const around = (contour: Contour, distance: number): readonly Point[] =>
  edgesOf(contour)
    .flatMap((edge) =>
      [0.1, 0.3, 0.5, 0.7, 0.9].map((share) => {
        const at = pointAlong(edge, share);
        const ahead = pointAlong(edge, share + 0.01);
        const step = pointDistance(at, ahead);
        const away = distance / step;
        return point(at.x + (ahead.y - at.y) * away, at.y - (ahead.x - at.x) * away);
      }),
    )
    // In a concave corner a place lies nearer to the next edge.
    .filter((at) => Math.abs(pointToContour(at, contour).gap - Math.abs(distance)) < 0.01);

const counterClockwise = (contour: Contour): Contour =>
  contour.kind === "loop" && contourArea(contour) < 0 ? reversedContour(contour) : contour;

/** What stands and what does not, close to a room's wall on both sides of it. */
const wallFaults = (layer: SolidLayer, inner: Contour): readonly Point[] => {
  const room = counterClockwise(inner);
  const beyond = [0.02, 0.6, 1.33].flatMap((distance) => around(room, distance));
  const within = around(room, -0.02);
  return [
    ...beyond.filter((at) => !isMaterial(layer, at)),
    ...within.filter((at) => isMaterial(layer, at)),
  ];
};

describe("collars", () => {
  test("stand round every hole in a lit area, from the floor to the sheet in front", () => {
    const part = soundPart(printed(LIT).spacer);
    const solid = layeredBody(part);
    const { collars, box } = part.facts;
    expect(collars.flatMap(({ owners }) => owners).toSorted()).toEqual(["a", "b", "d"]);
    const heights = [box.rear + 3, (box.rear + box.front) / 2, box.front - 0.01];
    const layers = heights.map((z) => layerAt(solid, z));
    const faults = collars.flatMap(({ inner }) => layers.map((layer) => wallFaults(layer, inner)));
    expect(faults.flat()).toEqual([]);
    expect(around(counterClockwise(collars[0]!.inner), 0.6).length).toBeGreaterThan(10);
  });

  test("are exact rings where they stand alone", () => {
    const part = soundPart(printed(LIT).spacer);
    const [ring] = regionsOf(layerAt(layeredBody(part), part.facts.box.front - 2)).filter(
      ({ outline }) => outline.kind === "circle",
    );
    // led-5-bezel: spanner 14, 0.5 beside it, a wall of 1.35.
    const [hole] = ring?.holes ?? [];
    expect(ring?.outline.kind === "circle" ? ring.outline.radius : 0).toBeCloseTo(8.85, 9);
    expect(hole?.kind === "circle" ? hole.radius : 0).toBeCloseTo(7.5, 9);
  });

  test("two that would leave less than a wall between them share one dark room", () => {
    const { spacer } = printed({
      ...LIT,
      components: `
  a: { part: led-5-bezel, at: { left: 60 mm, top: 40 mm } }
  b: { part: led-5-bezel, at: { left: 76 mm, top: 40 mm } }
  c: { part: led-5-bezel, at: { left: 93 mm, top: 40 mm } }`,
    });
    // Rooms of 15: 1 mm of plastic at a pitch of 16 would leak, 2 mm at 17 does not.
    expect(soundPart(spacer).facts.collars.map(({ owners }) => owners)).toEqual([
      ["a", "b"],
      ["c"],
    ]);
  });

  test("a hole too near to the edge is told of, and its wall not thinned", () => {
    const { findings } = printed({
      ...LIT,
      components: "\n  a: { part: led-5-bezel, at: { left: 18.5 mm, top: 40 mm } }",
    });
    // 127 mm clear between rails 146.05 apart, 0.4 beside them: 18.5 - 7.5 - 9.925; the wall needs 1.35.
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({ code: "parts/no-opaque-wall", subjects: ["a"] });
    expect(findings[0]?.measured?.value).toBeCloseTo(1.075, 6);
    expect(findings[0]?.limit?.value).toBeCloseTo(1.35, 9);
  });
});

test("what moves by 3 mm takes its room and its collar 3 mm with it", () => {
  const of = (left: number): readonly Contour[] => {
    const part = soundPart(
      printed({ ...LIT, components: LIT.components.replace("left: 40 mm", `left: ${left} mm`) })
        .spacer,
    );
    const pocket = part.facts.pockets.find(({ owner }) => owner === "a")?.contours ?? [];
    const collar = part.facts.collars.find(({ owners }) => owners.includes("a"));
    return [...pocket, ...(collar === undefined ? [] : [collar.inner])];
  };
  const before = of(40).map(contourExtent);
  const after = of(43).map(contourExtent);
  expect(before.length).toBeGreaterThanOrEqual(2);
  expect(after).toHaveLength(before.length);
  for (const [index, box] of before.entries()) {
    expect(after[index]!.minX - box.minX).toBeCloseTo(3, 6);
    expect(after[index]!.maxX - box.maxX).toBeCloseTo(3, 6);
    expect(after[index]!.minY).toBeCloseTo(box.minY, 6);
    expect(after[index]!.maxY).toBeCloseTo(box.maxY, 6);
  }
});

describe("bosses", () => {
  const fixed = { ...LIT, fixings: "{ screws: m3, dowels: 3 mm }" };

  test("keep the datasheet's pilot and the printer's allowance as two numbers", () => {
    const { bosses } = soundPart(printed(fixed).spacer).facts;
    const inserts = bosses.filter(({ kind }) => kind === "insert");
    expect(inserts.length).toBeGreaterThanOrEqual(4);
    for (const { hole, depth, below, insert, outside } of inserts) {
      // M3: 4.0 by the makers' datasheets; 0.3 for holes to 6 mm by this printer.
      expect(hole).toMatchObject({ nominal: 4, allowance: 0.3, modelled: 4.3, measured: true });
      expect(insert).toBe(5.7);
      // Insert and up to 1 mm, 2 mm solid below, twice the insert's outside (common practice).
      expect(depth).toBeCloseTo(6.7, 9);
      expect(below).toBeGreaterThanOrEqual(2);
      expect(outside).toBeGreaterThanOrEqual(9.2);
      const lines = (outside - 4.3) / 2 / 0.45;
      expect(lines).toBeCloseTo(Math.round(lines), 6);
    }
  });

  test("a shallow spacer takes the shorter insert", () => {
    const { bosses } = soundPart(printed({ ...fixed, stack: stackOf("", "", 8) }).spacer).facts;
    const insert = bosses.find(({ kind }) => kind === "insert");
    expect(insert).toMatchObject({ insert: 4, depth: 5, below: 3 });
  });

  test("dowel holes are relieved on the bed side", () => {
    const part = soundPart(printed(fixed).spacer);
    const dowel = part.facts.bosses.find(({ kind }) => kind === "dowel");
    if (dowel === undefined) throw new Error("no dowel");
    const beside = point(dowel.at.x, dowel.at.y + dowel.hole.modelled / 2 + 0.3);
    const solid = layeredBody(part);
    expect(isMaterial(layerAt(solid, part.facts.box.rear + 0.1), beside)).toBe(false);
    expect(isMaterial(layerAt(solid, part.facts.box.rear + 0.6), beside)).toBe(true);
  });

  test("with a tray behind, screws pass the spacer and end in the tray", () => {
    const { parts } = printed({
      ...fixed,
      stack: stackOf("strip-60-5v", "\n  - { layer: tray, behind: 30 mm }"),
    });
    const kinds = (role: string): readonly string[] => [
      ...new Set(
        parts.find((part) => part.role === role)?.facts.bosses.map(({ kind }) => kind) ?? [],
      ),
    ];
    expect(kinds("spacer")).toEqual(["clearance", "dowel"]);
    expect(kinds("tray")).toEqual(["insert", "dowel"]);
  });
});

describe("the inside", () => {
  const white = (inside: string): string => `${PRINTER}inside: ${inside}\n`;
  const stock = "  white-petg: { material: petg, colour: white }";

  test("a white body fills what the black one leaves, and never the same place", () => {
    const part = soundPart(printed(LIT, white("white-body"), stock).spacer);
    expect(part.facts.inside).toBe("white-body");
    expect(part.bodies.length).toBeGreaterThanOrEqual(2);
    const black = layeredBody(part);
    for (let index = 1; index < part.bodies.length; index += 1)
      for (const layer of layeredBody(part, index).layers) {
        const z = (layer.from + layer.to) / 2;
        const shared = intersection(regionsOf(layerAt(black, z)), regionsOf(layer));
        expect(shared.reduce((sum, region) => sum + regionArea(region), 0)).toBeLessThan(0.05);
      }
  });

  test("a liner is a part of its own, clear of the walls by a sliding fit", () => {
    const { parts, spacer } = printed(LIT, white("liner"), stock);
    const liner = soundPart(parts.find(({ role }) => role === "liner"));
    const black = layeredBody(soundPart(spacer));
    for (const layer of layeredBody(liner).layers) {
      const free = insetRegions(regionsOf(layer), 0.01);
      expect(free.length).toBeGreaterThan(0);
      const shared = intersection(regionsOf(layerAt(black, (layer.from + layer.to) / 2)), free);
      expect(shared).toEqual([]);
    }
  });

  test("without white filament it is paint, and said", () => {
    const { findings, spacer } = printed(LIT, white("white-body"));
    expect(findings.map(({ code }) => code)).toContain("parts/no-white-stock");
    expect(spacer?.facts.inside).toBe("paint");
  });
});

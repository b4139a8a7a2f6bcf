// Trays, washers and blanking panels.

import { describe, expect, test } from "vitest";
import { circle, point } from "../../src/geometry/contour.ts";
import { extentsOverlap } from "../../src/geometry/extent.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { pointDistance } from "../../src/geometry/point.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { recipeFaults } from "../../src/geometry/solid/recipe-faults.ts";
import { recipeVolume } from "../../src/geometry/solid/recipe-volume.ts";
import { layoutPanel } from "../../src/layout/layout-panel.ts";
import { blankingDesign, printedBlanking } from "../../src/parts/printed/blanking-panel.ts";
import type { PrintedPart } from "../../src/parts/printed/printed-part.ts";
import { sheetPartsOf } from "../../src/parts/sheet-parts.ts";
import { laidPanel } from "./laid-panel.ts";
import {
  isMaterial,
  layerAt,
  layeredBody,
  PRINTER,
  printed,
  soundPart,
  stackOf,
} from "./printed-panel.ts";

const tray = (boards: string, components = "{}", behind = 40): PrintedPart => {
  const { parts } = printed({
    height: "14 modules",
    stack: stackOf("", `\n  - { layer: tray, behind: ${behind} mm, boards: [${boards}] }`),
    fixings: "{ screws: m3, dowels: 3 mm }",
    components,
  });
  return soundPart(parts.find(({ role }) => role === "tray"));
};

describe("a tray", () => {
  test("stands at the stack's depth: boards' fronts behind what the layer says, posts to the layer in front", () => {
    const part = tray("avr-328-68x53");
    const [board] = part.facts.boards;
    // Face 3, backing 2, spacer 14, 40 behind.
    expect(part.facts.box.front).toBeCloseTo(-19, 6);
    expect(board?.front).toBeCloseTo(-59, 6);
    // 1.6 thick, 4 mm of air and a plate of 2.4.
    expect(part.facts.box.rear).toBeCloseTo(-59 - 5.6 - 2.4, 6);
  });

  test("has standoffs of two lines where a board's parts leave room for exactly two", () => {
    // 3.8 round a hole of 2.1: a pilot of 2 as drawn (1.6 and the usual 0.4 for printed holes) leaves 0.9 a side, two lines of 0.45.
    const { parts } = printed(
      {
        height: "14 modules",
        stack: stackOf("", "\n  - { layer: tray, behind: 40 mm, boards: [arm-m0-51x21] }"),
        fixings: "{ screws: m3, dowels: 3 mm }",
        components: "{}",
      },
      "",
    );
    const standoffs = parts
      .flatMap(({ facts }) => facts.bosses)
      .filter(({ kind }) => kind === "thread-forming");
    expect(standoffs).toHaveLength(4);
    for (const { wall, outside, hole } of standoffs) {
      expect(hole.modelled).toBeCloseTo(2, 9);
      expect(wall).toBeCloseTo(0.9, 9);
      expect(outside).toBeCloseTo(3.8, 9);
    }
  });

  test("has a standoff under each hole of a board, no wider than its parts allow", () => {
    const part = tray("avr-328-68x53");
    const standoffs = part.facts.bosses.filter(({ kind }) => kind === "thread-forming");
    // The pattern's holes, 3.2 wide (common practice): distances between them hold however the board is turned.
    expect(standoffs).toHaveLength(4);
    const [a, b, c, d] = standoffs.map(({ at }) => at);
    expect(pointDistance(a!, b!)).toBeCloseTo(Math.sqrt(1.3 * 1.3 + 48.2 * 48.2), 6);
    expect(pointDistance(c!, d!)).toBeCloseTo(27.9, 6);
    expect(pointDistance(a!, c!)).toBeCloseTo(Math.sqrt(52.1 * 52.1 + 5.1 * 5.1), 6);
    for (const { outside, hole, thread, at, below } of standoffs) {
      expect(outside).toBeLessThanOrEqual(5.6);
      // 0.8 of M3, formed in plastic (common practice); 0.3 by this printer.
      expect(thread).toBe("m3");
      expect(hole).toMatchObject({ nominal: 2.4000000000000004, allowance: 0.3 });
      expect(below).toBeGreaterThan(0);
      const layer = layerAt(layeredBody(part), -61);
      expect(isMaterial(layer, at)).toBe(false);
      expect(isMaterial(layer, point(at.x + outside / 2 - 0.1, at.y))).toBe(true);
    }
  });

  test("leaves room for every plug: apart from other boards and from posts", () => {
    const part = tray("avr-328-45x18, lamp-driver-8x8-50x32, expander-16-50x21");
    const { boards, bosses, box } = part.facts;
    expect(boards).toHaveLength(3);
    const posts = bosses
      .filter(({ kind }) => kind !== "thread-forming")
      .map(({ at, outside }) => contourExtent(circle(at, outside / 2)));
    for (const [index, board] of boards.entries()) {
      const rooms = [board.box, ...board.connectors.flatMap(({ room }) => room ?? [])];
      for (const other of boards.slice(index + 1))
        for (const room of rooms) expect(extentsOverlap(room, other.box)).toBe(false);
      expect(posts.filter((post) => extentsOverlap(post, board.box))).toEqual([]);
      expect(board.box.minX).toBeGreaterThanOrEqual(box.plan.minX);
      expect(board.box.maxX).toBeLessThanOrEqual(box.plan.maxX);
    }
  });
});

describe("a tray besides", () => {
  test("holds a board without holes at its corners, under a lip", () => {
    const part = tray("avr-328-45x18");
    const [board] = part.facts.boards;
    expect(board?.holding).toBe("clip");
    const solid = layeredBody(part);
    const ledge = point(board!.box.minX + 1, board!.box.minY + 1);
    expect(isMaterial(layerAt(solid, board!.front - 1.6 - 0.1), ledge)).toBe(true);
    expect(isMaterial(layerAt(solid, board!.front - 0.8), ledge)).toBe(false);
    expect(part.facts.box.front).toBeGreaterThan(board!.front);
  });

  test.each([0, 90, 180, 270])("turns a board by %i degrees where the design says so", (turn) => {
    const part = tray(`{ board: arm-m0-51x21, turn: ${turn} deg }`);
    const [board] = part.facts.boards;
    expect(board?.turn).toBe(turn);
    // The record's plug leaves to the left: turned counter-clockwise it leaves below, to the right, above.
    const room = board!.connectors[0]!.room!;
    const past = [
      board!.box.minX - room.minX,
      board!.box.minY - room.minY,
      room.maxX - board!.box.maxX,
      room.maxY - board!.box.maxY,
    ];
    // Mouth 1.3 over the edge, plug 24, bend 20.
    expect(past[turn / 90]).toBeCloseTo(45.3, 6);
  });

  test("has two slots for a cable tie beyond a plug", () => {
    const part = tray("avr-328-45x18");
    const tie = part.facts.boards[0]?.connectors[0]?.tie;
    if (tie === null || tie === undefined) throw new Error("no tie");
    const plate = layerAt(layeredBody(part), part.facts.box.rear + 1);
    expect(isMaterial(plate, tie)).toBe(true);
    const slots = [
      [point(tie.x - 4, tie.y), point(tie.x + 4, tie.y)],
      [point(tie.x, tie.y - 4), point(tie.x, tie.y + 4)],
    ];
    expect(slots.some((pair) => pair.every((at) => !isMaterial(plate, at)))).toBe(true);
  });

  test("opens for a body that reaches through it", () => {
    const deep = tray(
      "avr-328-45x18",
      "{ a: { part: toggle-12, at: { left: 100 mm, top: 60 mm } } }",
      12,
    );
    expect(deep.facts.pockets.map(({ owner }) => owner)).toEqual(["a"]);
    const { layout } = laidPanel({ height: "14 modules" });
    const at = point(100, layout.nominal.maxY - 60);
    expect(isMaterial(layerAt(layeredBody(deep), deep.facts.box.rear + 1), at)).toBe(false);
  });

  test("tells of an unknown board, and of one without room", () => {
    const { findings } = printed({
      stack: stackOf(
        "",
        "\n  - { layer: tray, behind: 30 mm, boards: [avr-328-45x81, avr-2560-101x53, avr-2560-101x53] }",
      ),
    });
    const codes = findings.map(({ code }) => code);
    expect(codes).toContain("parts/unknown-board");
    expect(codes).toContain("parts/no-board-room");
  });
});

describe("a light-tight washer", () => {
  const washers = (part: string): ReturnType<typeof printed> =>
    printed({ components: `\n  a: { part: ${part}, at: centre, washer: light-tight }` });

  test("fills the opening round a nut, as thick as its stock is opaque", () => {
    const washer = soundPart(washers("toggle-12").parts.find(({ role }) => role === "washer"));
    const { catalogue } = laidPanel({}).context;
    const part = catalogue.parts.get("toggle-12")!;
    const { front } = part.openings;
    if (front?.kind !== "round" || part.hold.kind !== "bush") throw new Error("another toggle");
    const outside = front.diameter / 2 - 0.2;
    const bore = (part.hold.diameter + 0.4 + 0.25) / 2;
    const disc = Math.PI * (outside * outside - bore * bore) * 1.4;
    const rim = Math.PI * (outside * outside - (outside - 1.35) * (outside - 1.35)) * (3 - 1.4);
    const volume = recipeVolume(layeredBody(washer));
    const hasRim = washer.facts.walls.length > 0;
    expect(volume).toBeCloseTo(hasRim ? disc + rim : disc, 4);
    expect(washer.facts.floor?.thickness).toBeCloseTo(1.4, 9);
  });

  test("is refused where there is nothing to close", () => {
    expect(washers("led-5").findings.map(({ code }) => code)).toEqual(["parts/no-washer-room"]);
  });
});

describe("a blanking panel", () => {
  const { context } = laidPanel({}, PRINTER);
  const mount = context.catalogue.mounts.get("console-rail")!;
  const design = blankingDesign({
    use: {
      length: { kind: "pitches", count: 6, unit: "modules" },
      sheet: null,
      print: null,
      as: null,
      number: 1,
      bay: "aft",
      module: 0,
      after: null,
      written: { span: { file: "console.yaml", start: 0, end: 0 }, keys: {} },
    },
    name: "blank-1",
    mount,
    sheet: "metal-2",
    workshop: null,
    file: "console.yaml",
  });
  const laid = layoutPanel(design, context);

  test("is a panel of n modules, cut from sheet like any other", () => {
    expect(laid.findings).toEqual([]);
    // 6 x 9.525.
    expect(laid.layout?.nominal.maxY).toBeCloseTo(57.15, 9);
    const { parts } = sheetPartsOf(laid.layout!, context.lettering);
    expect(parts.map(({ id }) => id)).toEqual(["blank-1-blank"]);
  });

  test("is printed as a plate, its volume by hand, with a frame behind it", () => {
    const { parts, findings } = printedBlanking(laid.layout!, { ...context, stock: null });
    expect(findings).toEqual([]);
    const [part] = parts;
    expect(part?.bodies.flatMap(({ solid }) => recipeFaults(solid))).toEqual([]);
    // 146.05 x 57.15 less 0.175 a side, corners of 1; four holes of 6.6 + 0.25; 3 mm.
    const corners = (4 - Math.PI) * 1;
    const plate = (145.7 * 56.8 - corners - 4 * Math.PI * 3.425 * 3.425) * 3;
    const solid = layeredBody(part!);
    const front = layerAt(solid, -1);
    expect(recipeVolume({ kind: "layered", layers: [front] })).toBeCloseTo(plate, 4);
    // Between the rails (127 - 0.8 wide) a wall of three lines, 6 deep.
    const frame = layerAt(solid, -8.9);
    const across = (x: number): boolean => isMaterial(frame, point(x, 28));
    expect([9.8, 10, 11.2, 11.4, 73].map(across)).toEqual([false, true, true, false, false]);
    expect(part?.bedSide).toBe("front");
    expect(part?.facts.floor?.thickness).toBe(mm(3));
  });
});

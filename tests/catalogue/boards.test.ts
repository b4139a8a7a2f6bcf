// What lies behind a fascia: boards, strips, boards with LEDs, inserts, boots and plugs.

import { describe, expect, test } from "vitest";
import type { Board, BoardConnector } from "../../src/catalogue/board.ts";
import type { Boot, Plug } from "../../src/catalogue/hardware.ts";
import type { Insert } from "../../src/catalogue/insert.ts";
import { lintRecord } from "../../src/catalogue/lint.ts";
import type { Part } from "../../src/catalogue/part.ts";
import { readRecords } from "../../src/catalogue/read-records.ts";
import type { CatalogueRecord } from "../../src/catalogue/record.ts";
import type { LedBoard, Strip } from "../../src/catalogue/strip.ts";
import { point } from "../../src/geometry/contour.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { HEAT_SET_PILOTS } from "../../src/standards/heat-set.ts";
import { testLibrary } from "../support/test-library.ts";

const { catalogue } = testLibrary();
const board = (id: string): Board => catalogue.boards.get(id)!;
const strip = (id: string): Strip => catalogue.strips.get(id)!;
const holesOf = (id: string) => board(id).holes.map(({ at, diameter }) => [at.x, at.y, diameter]);

describe("boards against their patterns", () => {
  // Hole patterns of the four common boards: several makers' drawings agree, common practice.
  test("68.6 x 53.3 and 101.6 x 53.3 share four holes", () => {
    const four = [
      [14, 2.5, 3.2],
      [15.3, 50.7, 3.2],
      [66.1, 7.6, 3.2],
      [66.1, 35.5, 3.2],
    ];
    expect(holesOf("avr-328-68x53")).toEqual(four);
    expect(holesOf("avr-2560-101x53")).toEqual([...four, [90.2, 50.7, 3.2], [96.5, 2.5, 3.2]]);
  });

  test.each([
    ["arm-64-85x56", [85, 56], [58, 49], [3.5, 3.5], 2.7],
    ["arm-m0-51x21", [51, 21], [47, 11.4], [2, 4.8], 2.1],
  ] as const)("%s: four holes on a rectangle", (id, size, apart, first, diameter) => {
    const { width, height } = board(id);
    expect([width, height]).toEqual(size);
    const [x, y] = first;
    const expected = [x, x + apart[0]].flatMap((across) =>
      [y, y + apart[1]].map((up) => [across, up, diameter]),
    );
    const byPlace = (holes: readonly (readonly (number | undefined)[])[]) =>
      holes.map((hole) => hole.map((value) => value?.toFixed(3)).join(" ")).toSorted();
    expect(byPlace(holesOf(id))).toEqual(byPlace(expected));
  });

  test("a board without holes takes a clip, and has no room for a screw head", () => {
    expect(board("avr-328-45x18")).toMatchObject({
      width: 45,
      height: 18,
      holes: [],
      holding: "clip",
      headLimit: null,
    });
  });

  test("every board with holes takes a screw that the catalogue has", () => {
    const screws = [...catalogue.hardware.values()].filter(({ kind }) => kind === "screw");
    for (const { id, holes, headLimit } of catalogue.boards.values()) {
      const least = Math.min(...holes.map(({ diameter }) => diameter));
      const fits = screws.some(
        (screw) =>
          screw.kind === "screw" &&
          Number(screw.thread.slice(1)) < least &&
          screw.headDiameter > least &&
          screw.headDiameter <= (headLimit ?? 0),
      );
      expect(holes.length === 0 || fits, id).toBe(true);
    }
  });
});

describe("strips", () => {
  // Arithmetic of the roll: 60 a metre is 16.67 from LED to LED, and three of them are 50.
  test.each([
    ["strip-60-12v", 1000 / 60, 50],
    ["strip-60-12v-single", 1000 / 60, 1000 / 60],
    ["strip-96-12v", 1000 / 96, 31.25],
    ["strip-120-12v", 1000 / 120, 25],
    ["strip-144-5v-addressable", 1000 / 144, 1000 / 144],
  ])("%s: pitch and cut length", (id, pitch, cut) => {
    expect(strip(id).pitch).toBeCloseTo(pitch, 9);
    expect(strip(id).cutEvery).toBeCloseTo(cut, 9);
  });

  // Common practice: 144 addressable LEDs a metre at 60 mA are 8.6 A; 60 a metre at 12 V draws 0.4 A.
  test("current of a metre", () => {
    const amps = ({ milliampsPerCut, cutEvery }: Strip) => milliampsPerCut / cutEvery;
    expect(amps(strip("strip-144-5v-addressable"))).toBeCloseTo(8.64, 6);
    expect(amps(strip("strip-60-12v"))).toBeCloseTo(0.4, 6);
  });

  test("light is a typical figure, and says so", () => {
    for (const { id, figures } of [...catalogue.strips.values(), ...catalogue.ledBoards.values()])
      expect(figures.kind, id).toBe("memory");
  });
});

test("the LEDs of a two-LED board stand a quarter of its length from each end", () => {
  for (const id of ["led-board-2-18x12", "led-board-2-24x12"]) {
    const { width, height, leds } = catalogue.ledBoards.get(id)!;
    expect(leds).toEqual([point(width / 4, height / 2), point((3 * width) / 4, height / 2)]);
  }
});

// Pilots -0 / +0.1: makers' datasheets agree; standards/heat-set.ts.
test("inserts from M2 to M4, with the pilots of their datasheets", () => {
  const threads = new Set([...catalogue.inserts.values()].map(({ thread }) => thread));
  expect([...threads].toSorted()).toEqual(["m2", "m2.5", "m3", "m4"]);
  for (const { id, thread, pilot } of catalogue.inserts.values())
    if (thread === "m3" || thread === "m4") expect(pilot, id).toBe(HEAT_SET_PILOTS[thread]);
});

const uno = board("avr-328-68x53");
const nano = board("avr-328-45x18");
const withConnector = (of: Board, change: Partial<BoardConnector>): Board => ({
  ...of,
  connectors: of.connectors.map((connector, index) =>
    index === 0 ? { ...connector, ...change } : connector,
  ),
});
const window: LedBoard = catalogue.ledBoards.get("led-board-2-18x12")!;
const insert: Insert = catalogue.inserts.get("insert-m3")!;
const roll = strip("strip-60-12v");
const boot = catalogue.hardware.get("boot-toggle-12") as Boot;
const plug = catalogue.hardware.get("plug-dc-5-5") as Plug;
const booted: Part = catalogue.parts.get("toggle-12-booted")!;

const SABOTAGED: readonly (readonly [string, CatalogueRecord, string])[] = [
  [
    "a hole over the edge",
    { ...uno, holes: [...uno.holes, { at: point(1, 30), diameter: mm(3.2) }] },
    "holes.4",
  ],
  [
    "a hole in a hole",
    { ...uno, holes: [...uno.holes, { at: point(15, 4), diameter: mm(3.2) }] },
    "holes.4",
  ],
  ["holes that are not there", { ...uno, holes: [] }, "holding"],
  ["a board that turns about one hole", { ...uno, holes: uno.holes.slice(0, 1) }, "holding"],
  ["holes that nobody uses", { ...uno, holding: "clip" }, "holding"],
  ["holes without a limit for heads", { ...uno, headLimit: null }, "headLimit"],
  ["a limit without holes", { ...nano, headLimit: mm(4) }, "headLimit"],
  ["a head that falls through", { ...uno, headLimit: mm(3) }, "headLimit"],
  ["a connector off its edge", withConnector(uno, { at: point(3, 38.1) }), "connectors.0"],
  ["a connector beside the board", withConnector(uno, { at: point(0, 60) }), "connectors.0"],
  ["a connector on another side", withConnector(uno, { side: "right" }), "connectors.0"],
  ["a connector that looks up over an edge", withConnector(uno, { side: "up" }), "connectors.0"],
  [
    "a connector taller than the tallest part",
    withConnector(uno, { height: mm(14) }),
    "connectors.0",
  ],
  ["strip of a width that is not sold", { ...roll, width: mm(9) }, "width"],
  ["strip cut through an LED", { ...roll, cutEvery: mm(45) }, "cutEvery"],
  ["a joint that takes no room", { ...roll, joint: mm(2) }, "joint"],
  ["an LED beside its board", { ...window, leds: [point(20, 6)] }, "leds.0"],
  ["two LEDs in one place", { ...window, leds: [point(6, 6), point(6, 6)] }, "leds.1"],
  [
    "a screw hole over the edge of a board with LEDs",
    { ...window, holes: [{ at: point(0.5, 6), diameter: mm(2.2) }] },
    "holes.0",
  ],
  ["an insert that falls in", { ...insert, pilot: mm(4.8) }, "pilot"],
  ["a pilot narrower than the thread", { ...insert, pilot: mm(2.8) }, "pilot"],
  ["a pilot that no datasheet gives", { ...insert, pilot: mm(4.2) }, "pilot"],
  ["a boss that bursts", { ...insert, boss: mm(7) }, "boss"],
  ["a boot that is all foot", { ...boot, thickness: mm(40) }, "thickness"],
  [
    "a plug with impossible corners",
    { ...plug, shape: { kind: "rectangle", width: mm(10), height: mm(10), corner: mm(6) } },
    "shape",
  ],
  ["a boot of another thread", { ...booted, usual: ["boot-toggle-6"] }, "usual"],
  [
    "a boot that the lever looks out of",
    { ...booted, lever: { ...booted.lever!, length: mm(40) } },
    "usual",
  ],
  [
    "a boot that takes the grip's thread",
    {
      ...booted,
      hold:
        booted.hold.kind === "bush"
          ? { ...booted.hold, grip: { least: mm(0.8), most: mm(7.5) } }
          : booted.hold,
    },
    "usual",
  ],
  [
    "a boot that the layer in front pinches",
    {
      ...booted,
      openings: { ...booted.openings, front: { kind: "round", diameter: mm(19.5) } },
    },
    "openings.front",
  ],
];

test.each(SABOTAGED)("the linter objects to %s", (_, sabotaged, path) => {
  expect(lintRecord(sabotaged, catalogue).map((fault) => fault.path)).toContain(path);
});

const FILE = (section: string) => `consolewright: 1\nkind: parts\nname: mine\n\n${section}\n`;

test("a board of one's own is read with its connectors by name", () => {
  const { records, findings } = readRecords(
    "mine.yaml",
    FILE(`boards:
  mine-30x20:
    title: Board from the drawer
    size: [30, 20]
    thickness: 1.6
    holding: socket
    connectors:
      usb: { at: [0, 10], side: left, size: [8, 3], plug: [11, 8, 24], bend: 0 }
    tallest-front: 4
    tallest-back: 3
    lines: 12
    supply: none
    figures: { source: measured with calipers, kind: measured }`),
  );
  expect(findings).toEqual([]);
  const record = records[0]!.record;
  expect(record).toMatchObject({
    kind: "board",
    id: "mine-30x20",
    width: 30,
    height: 20,
    holes: [],
    headLimit: null,
    supply: null,
    connectors: [
      { name: "usb", side: "left", overhang: 0, plug: { width: 11, height: 8, depth: 24 } },
    ],
  });
  expect(lintRecord(record, catalogue)).toEqual([]);
});

test("a side that no board has is refused with its place", () => {
  const { findings } = readRecords(
    "mine.yaml",
    FILE(`boards:
  mine-30x20:
    connectors: { usb: { at: [0, 10], side: behind, size: [8, 3], plug: [11, 8, 24], bend: 0 } }`),
  );
  expect(findings.map(({ code }) => code)).toContain("design/unknown-word");
});

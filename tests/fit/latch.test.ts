// Room for the thumb that lets a plug go, against distances measured by hand.

import { beforeAll, describe, expect, test } from "vitest";
import { bodyGroups } from "../../src/fit/body-groups.ts";
import type { ConsoleBody } from "../../src/fit/console-body.ts";
import { dragStep } from "../../src/fit/drag-step.ts";
import type { FitFacts } from "../../src/fit/fit-facts.ts";
import { railScene } from "../../src/fit/rail-scene.ts";
import { prepareBodies, verdict } from "../../src/fit/verdict.ts";
import { degrees } from "../../src/geometry/quantity.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { movedFrame, turnedFrame, WORLD } from "../../src/geometry/space/frame.ts";
import { vector } from "../../src/geometry/space/vector.ts";
import { openKernel } from "../support/kernel.ts";
import { consoleOf, panelOf, type TestConsole } from "./console-of.ts";
import { emptyConsole } from "./empty-console.ts";
import { boxSolid, madeBody } from "./made-bodies.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await openKernel();
});

const factsOf = (
  bodies: readonly ConsoleBody[],
  layout = emptyConsole(),
): Pick<FitFacts, "latches" | "pairs" | "outside"> => {
  const prepared = prepareBodies(bodies, kernel);
  try {
    return verdict(prepared, layout);
  } finally {
    prepared.delete();
  }
};

/** 20 across, 18 outward along y, 25 along the plug. */
const thumb = madeBody("a/latch", boxSolid(vector(20, 18, 25)), { panel: "a", role: "latch" });

const block = (y: number, role: ConsoleBody["role"] = "rib"): ConsoleBody =>
  madeBody("block", boxSolid(vector(20, 30, 25)), {
    panel: null,
    role,
    frame: movedFrame(WORLD, vector(0, y, 0)),
  });

describe("a thumb's room", () => {
  test("is free up to what stands in it", () => {
    const { latches, pairs } = factsOf([thumb, block(7)]);
    expect(latches.map(({ needs, has }) => [needs, has])).toEqual([[18, expect.closeTo(7, 1)]]);
    // Nothing solid is there: no clash.
    expect(pairs).toEqual([]);
  });

  test("is not asked of what touches it, comes near it, or gives way", () => {
    expect(factsOf([thumb, block(18)]).latches).toEqual([]);
    expect(factsOf([thumb, block(19)]).latches).toEqual([]);
    expect(factsOf([thumb, block(7, "cable")]).latches).toEqual([]);
  });

  // The wall's face is the line y = 10 + x: nothing is nearer than 7.07 mm, and 10 mm straight out are free.
  test("is measured straight out where a wall stands aslant", () => {
    const wall = madeBody("wall", boxSolid(vector(40, 30, 25)), {
      panel: null,
      role: "wall",
      frame: turnedFrame(
        { ...WORLD, origin: vector(0, 10, 0) },
        { about: vector(0, 0, 1), through: vector(0, 10, 0), by: degrees(45) },
      ),
    });
    expect(factsOf([thumb, wall]).latches.map(({ has }) => has)).toEqual([expect.closeTo(10, 1)]);
  });

  test("is held against what its own panel carries beside it, not against its own plug", () => {
    const own = (thing: string): ConsoleBody => ({ ...block(7, "plug"), panel: "a", thing });
    expect(factsOf([thumb, own("other")]).latches.map(({ has }) => has)).toEqual([
      expect.closeTo(7, 1),
    ]);
    expect(factsOf([thumb, own("a/latch")]).latches).toEqual([]);
  });

  test("is met by a drag, and only met", () => {
    const rail = railScene(bodyGroups([thumb, block(60)]), WORLD);
    const dragged = (by: number): readonly string[] =>
      dragStep(rail, { panel: "a", by }).map(({ relation }) => relation.kind);
    expect(dragged(40)).toEqual([]);
    expect(dragged(45)).toEqual(["meet"]);
  });
});

const BAY =
  "bays:\n  aft: { mount: console-rail, at: [0, 0, 600], along: [1, 0, 0], length: 20 modules, depth: 180 mm }\npanels:\n  - { file: net.yaml, as: net, bay: aft, module: 0 }\n";

const latchOf = ({ bodies }: TestConsole): ConsoleBody => {
  const found = bodies.find(({ role }) => role === "latch");
  if (found === undefined) throw new Error("there is no latch");
  return found;
};

describe("the latch of a part", () => {
  const line = (turn: string): TestConsole =>
    consoleOf(BAY, {
      net: `mount: console-rail\nheight: 12 modules\ncomponents:\n  line: { part: network-jack, at: { x: centre, y: 60 mm }${turn} }\n`,
    });

  // The rear plug is 14 x 14 and ends 26 mm behind the flange; clock 0 is up the panel, which is forward here.
  test("lies on the side that the record names, from the plug's mouth on", () => {
    const console = line("");
    const { x, z } = panelOf(console, "net").frame.origin;
    const { box } = latchOf(console);
    expect(box.minX - x).toBeCloseTo(60 + 7, 6);
    expect(box.maxX - x).toBeCloseTo(60 + 7 + 18, 6);
    expect([box.maxZ - z, box.minZ - z]).toEqual([expect.closeTo(-26, 6), expect.closeTo(-51, 6)]);
    expect(box.maxY - box.minY).toBeCloseTo(20, 6);
  });

  test("turns with its part", () => {
    const console = line(", turn: 180 deg");
    const { x } = panelOf(console, "net").frame.origin;
    expect(latchOf(console).box.maxX - x).toBeCloseTo(60 - 7, 6);
  });

  // The envelope ends 75 mm along the panel: 8 mm beyond the plug's side.
  test("is barred by the edge of the console's inside, as far out as that lies", () => {
    const envelope =
      "envelope:\n  profile: [[-50, 400], [75, 400], [75, 600], [-50, 600]]\n  across: [-100, 100]\n";
    const console = consoleOf(`${BAY}${envelope}`, {
      net: "mount: console-rail\nheight: 12 modules\ncomponents:\n  line: { part: network-jack, at: { x: centre, y: 60 mm } }\n",
    });
    const { latches, outside } = factsOf(console.bodies, console.layout);
    expect(latches.map(({ other, has }) => [other, has])).toEqual([[null, expect.closeTo(8, 1)]]);
    expect(outside.filter(({ body }) => body.role === "latch")).toEqual([]);
  });
});

// Jacks stand 26 mm apart with plugs 14 wide, so that the upper plug begins 12 mm beyond the lower one's side.
test("a latch is barred by the plug of the jack above it on its own panel", () => {
  const console = consoleOf(BAY, {
    net: "mount: console-rail\nheight: 12 modules\ncomponents:\n  a: { part: network-jack, at: { x: centre, y: 40 mm } }\n  b: { part: network-jack, at: { x: centre, y: 66 mm } }\n",
  });
  const { latches } = factsOf(console.bodies, console.layout);
  expect(latches.map(({ latch, has }) => [latch.thing, has])).toContainEqual([
    "a",
    expect.closeTo(12, 1),
  ]);
  expect(latches.filter(({ latch }) => latch.thing === "b")).toEqual([]);
});

// The network plug of the board is 14 x 14 on an overhang of 2.5; its tab looks to the back of the board: the room begins
// at the board's front, where the plug does, and reaches 18 mm toward the rear.
test("the latch of a board's plug lies at its mouth, on the side of the board that the record names", () => {
  const console = consoleOf(BAY, { net: "mount: console-rail\nheight: 20 modules\n" }, [
    "{ layer: tray, behind: 60 mm, boards: [{ board: arm-64-85x56, turn: 90 deg }] }",
  ]);
  const { box } = latchOf(console);
  const plug = console.bodies.find(({ id }) => id.endsWith("network"))!;
  expect(box.maxZ).toBeCloseTo(plug.box.minZ, 6);
  expect(box.maxZ - box.minZ).toBeCloseTo(18, 6);
  // Turned by a quarter the right side of the board looks up the panel, forward: 25 mm along the plug, 20 across.
  expect(box.maxX - box.minX).toBeCloseTo(25, 6);
  expect(box.maxY - box.minY).toBeCloseTo(20, 6);
  const board = console.bodies.find(({ what }) => what === "board")!;
  expect(box.minX).toBeCloseTo(board.box.maxX + 2.5, 6);
});

// A stack that is drawn apart is seen whole, and stands before the box that its panel is the lid of. Against heights by hand and
// the pinhole camera of any textbook.

import { describe, expect, test } from "vitest";
import { WORLD } from "../../src/geometry/space/frame.ts";
import { vector } from "../../src/geometry/space/vector.ts";
import { levelOf } from "../../viewer/console/body-tone.ts";
import { isSeenWhole } from "../../viewer/console/camera-goal.ts";
import type { SceneGroup, SceneLot, ScenePanel } from "../../viewer/console/console-messages.ts";
import { faceLift, LIFT, type Look } from "../../viewer/console/look.ts";
import { stackPoints } from "../../viewer/console/stack-points.ts";
import { panelGoal } from "../../viewer/console/standing-views.ts";

const LOOK: Pick<Look, "chosen" | "turned" | "apart" | "showSweeps"> = {
  chosen: "tow",
  turned: null,
  apart: 0,
  showSweeps: false,
};

const lot = (level: number, low: number, high: number, tone: SceneLot["tone"]): SceneLot => ({
  tone,
  level,
  positions: Float32Array.from([0, 0, low, 90, 140, high]),
  triangles: new Uint32Array(0),
  edges: new Float32Array(0),
  ranges: [],
});

const PANEL: ScenePanel = {
  name: "tow",
  title: "Tow release",
  place: null,
  width: 90,
  height: 140,
  depth: 85,
  levels: ["controls", "face", "backing", "behind", "box"],
  followers: [],
};

/** A knob 60 mm before the face, a face 3 mm thick, a box 100 mm deep; a lever sweeps over 400 mm. */
const GROUP: SceneGroup = {
  key: "tow",
  frame: { ...WORLD, origin: vector(0, 0, 1000) },
  bodies: [],
  lots: [
    lot(0, 0, 60, "knob"),
    lot(1, -3, 0, "painted"),
    lot(4, -100, 0, "print"),
    lot(0, 0, 400, "sweep"),
  ],
};

const heights = (look: Partial<typeof LOOK>) => {
  const zs = stackPoints(GROUP, PANEL, { ...LOOK, ...look }).map(({ z }) => z);
  return [Math.min(...zs), Math.max(...zs)];
};

describe("what a panel is drawn as", () => {
  test("reaches from its box to its knob, and with the sweeps shown to where levers go", () => {
    expect(heights({})).toEqual([900, 1060]);
    expect(heights({ showSweeps: true })).toEqual([900, 1400]);
  });

  test("drawn apart by 60 mm has its knob four gaps before its box", () =>
    expect(heights({ apart: 60 })).toEqual([900, 1060 + 4 * 60]));

  test("turned round lies behind where it was lifted to, its knob lowest", () =>
    expect(heights({ turned: "tow" })).toEqual([1000 + LIFT - 60, 1000 + LIFT + 100]));
});

test("a view of the panel drawn apart has all of it in the picture, which one of it at rest has not", () => {
  const opening = { across: 60, upright: 38 };
  const from = { goal: { target: vector(0, 0, 0), distance: 500, side: 300, rise: 20 }, opening };
  const atRest = stackPoints(GROUP, PANEL, LOOK);
  const apart = stackPoints(GROUP, PANEL, { ...LOOK, apart: 60 });
  expect(isSeenWhole(atRest, panelGoal(atRest, from), opening)).toBe(true);
  expect(isSeenWhole(apart, panelGoal(atRest, from), opening)).toBe(false);
  expect(isSeenWhole(apart, panelGoal(apart, from), opening)).toBe(true);
});

describe("a point at the rim of the picture", () => {
  // 1 m off, half of 60 degrees across: 577.4 mm aside, of which framing leaves 6 in 100.
  const goal = { target: vector(0, 0, 0), distance: 1000, side: 0, rise: 0 };
  const isIn = (aside: number): boolean =>
    isSeenWhole([vector(0, aside, 0)], goal, { across: 60, upright: 38 });
  test("is in it before that, and out of it after", () => {
    expect(isIn(0.93 * 577.35)).toBe(true);
    expect(isIn(0.95 * 577.35)).toBe(false);
  });
});

describe("the box that a panel is the lid of", () => {
  const layout = { name: "tow", layers: [{ id: "face" }, { id: "backing" }] };
  const box = { role: "print" as const, what: "angled box" };
  test("is the rearmost level, and the face is named two levels before it", () => {
    expect(levelOf({ ...box, thing: "tow" }, layout)).toBe(4);
    expect(levelOf({ role: "layer", thing: "face", what: "" }, layout)).toBe(1);
    expect(faceLift({ chosen: "tow", turned: null, apart: 60 }, PANEL)).toBe(3 * 60);
  });
  test("is another than the box round a part, which stands before the face", () =>
    expect(levelOf({ ...box, thing: "compass" }, layout)).toBe(0));
});

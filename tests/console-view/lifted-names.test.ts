// The name of a panel that is taken out and turned round, or drawn apart, stands at the panel and not at the hole that it left.

import { expect, test } from "vitest";
import { WORLD } from "../../src/geometry/space/frame.ts";
import { type Vector, vector } from "../../src/geometry/space/vector.ts";
import type { ConsoleScene } from "../../viewer/console/console-messages.ts";
import { NONE_GATHERED } from "../../viewer/console/console-names.ts";
import { FIRST_LOOK, LIFT, type Look } from "../../viewer/console/look.ts";
import { labelsOf } from "../../viewer/console/picture-labels.ts";

const SCENE: ConsoleScene = {
  name: "bench",
  title: "Bench",
  groups: [
    { key: "winch", frame: { ...WORLD, origin: vector(0, 0, 700) }, bodies: [], lots: null },
  ],
  bays: [],
  panels: [
    {
      name: "winch",
      title: "Towing winch",
      place: null,
      width: 146,
      height: 100,
      depth: 50,
      levels: ["controls", "face", "backing", "spacer", "behind"],
      followers: [],
    },
  ],
  operator: null,
  envelope: null,
  box: { low: vector(0, 0, 0), high: vector(200, 200, 800) },
};

const VIEW = {
  eye: vector(0, 0, 5000),
  place: ({ x, y }: Vector) => ({ x, y }),
  gathered: NONE_GATHERED,
};

const heightOf = (look: Partial<Look>): number | undefined =>
  labelsOf(SCENE, { ...FIRST_LOOK, ...look }, VIEW).find(({ words }) => words === "Towing winch")
    ?.at.z;

test("in its place it is named at its face", () => expect(heightOf({})).toBe(700));

test("turned round it is named where it has been lifted to", () =>
  expect(heightOf({ chosen: "winch", turned: "winch" })).toBe(700 + LIFT));

test("drawn apart by 40 mm its face stands three gaps before what hangs behind", () =>
  expect(heightOf({ chosen: "winch", apart: 40 })).toBe(700 + 3 * 40));

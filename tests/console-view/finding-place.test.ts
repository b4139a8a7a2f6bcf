// Where the view goes for a finding: to what it names, a part, a panel or a bay. Against places written out by hand.

import { describe, expect, test } from "vitest";
import { WORLD } from "../../src/geometry/space/frame.ts";
import { vector } from "../../src/geometry/space/vector.ts";
import type { ConsoleScene, SceneBody, SceneGroup } from "../../viewer/console/console-messages.ts";
import { namedPlace } from "../../viewer/console/finding-place.ts";
import { findingWords } from "../../viewer/console/finding-words.ts";

/** Every body a triangle of 30 by 40 mm, 100 mm farther along than the one before; the last lot is where levers sweep. */
const groupOf = (key: string, along: number, ...things: readonly string[]): SceneGroup => {
  const shape = (index: number): readonly number[] => {
    const at = 100 * index;
    return [at, 0, 0, at + 30, 0, 0, at + 30, 40, 0];
  };
  const ranges = things.map((_, body) => ({
    body,
    triangles: { from: body, count: 1 },
    edges: { from: 0, count: 0 },
  }));
  const lot = {
    level: 0,
    positions: Float32Array.from(things.flatMap((_, index) => shape(index))),
    triangles: Uint32Array.from(things.flatMap((_, at) => [3 * at, 3 * at + 1, 3 * at + 2])),
    edges: new Float32Array(0),
    ranges,
  };
  const far = Float32Array.from(lot.positions, (value) => value + 5000);
  return {
    key,
    frame: { ...WORLD, origin: vector(along, 0, 700) },
    bodies: things.map(
      (thing): SceneBody => ({ id: `${key}/${thing}/rear`, role: "rear", thing, what: "" }),
    ),
    lots: [
      { ...lot, tone: "case" },
      { ...lot, tone: "sweep", positions: far },
    ],
  };
};

const panel = (name: string): ConsoleScene["panels"][number] => ({
  name,
  title: name,
  place: { bay: "aft", module: 0, modules: 10 },
  width: 120,
  height: 90,
  depth: 30,
  levels: ["controls", "face", "behind"],
  followers: [],
});

const SCENE: Pick<ConsoleScene, "bays" | "panels"> = {
  panels: [panel("winch"), panel("radio")],
  bays: [
    {
      id: "aft",
      frame: { ...WORLD, origin: vector(1000, 0, 700) },
      pitch: 10,
      length: 400,
      modules: 40,
      width: 300,
      depth: 100,
    },
  ],
};

const GROUPS = new Map([
  ["winch", groupOf("winch", 0, "brake", "speed", "speed.2")],
  ["radio", groupOf("radio", 2000, "volume")],
  ["", groupOf("", 4000, "shelf")],
]);

const placeOf = (panelName: string, ...subjects: readonly string[]) =>
  namedPlace(SCENE, GROUPS, { panel: panelName, subjects });

describe("a finding's place in the console", () => {
  test("is round a part of its panel, and marks that part alone", () => {
    expect(placeOf("winch", "speed")).toEqual({
      panel: "winch",
      bodies: [{ group: "winch", id: "winch/speed/rear" }],
      // Half the diagonal of 30 by 40.
      ball: { middle: vector(115, 20, 700), radius: 25 },
    });
  });

  test("is the whole panel where no part of it is named", () => {
    expect(placeOf("winch", "stack")).toEqual({
      panel: "winch",
      bodies: [],
      // Half the diagonal of 120 by 90.
      ball: { middle: vector(60, 45, 700), radius: 75 },
    });
  });

  test("is round everything that the console's finding names, with its panel before it or not", () => {
    const place = placeOf("trainer", "winch/brake", "radio/volume/rear");
    expect(place?.panel).toBe("winch");
    expect(place?.bodies.map(({ id }) => id)).toEqual(["winch/brake/rear", "radio/volume/rear"]);
    expect(place?.ball.middle).toEqual(vector(1015, 20, 700));
    expect(placeOf("trainer", "shelf")?.ball.middle).toEqual(vector(4015, 20, 700));
  });

  test("is the bay where a bay is named, 300 across and 400 long", () => {
    expect(placeOf("trainer", "aft")).toEqual({
      panel: null,
      bodies: [],
      ball: { middle: vector(1000, 200, 700), radius: 250 },
    });
  });

  test("is nowhere where nothing of it stands in the console", () => {
    expect(placeOf("shed", "laser")).toBeNull();
  });
});

test("what stands in the picture is words and a length with its limit, no code", () => {
  const said = { code: "fit/too-near", severity: "fault" as const };
  const mm = (value: number) => ({ value, unit: "mm" as const });
  expect(findingWords({ ...said, measured: mm(1.25), limit: mm(2) })).toBe(
    "Fault, too near: 1.25 mm, limit 2 mm",
  );
  // A body 12 mm within another: "-12 mm" is no word of the trade.
  expect(findingWords({ ...said, code: "fit/clash", measured: mm(-12), limit: mm(0) })).toBe(
    "Fault, clash",
  );
  expect(
    findingWords({
      code: "fit/legend-hidden",
      severity: "query",
      measured: { value: 3, unit: "count" },
      limit: null,
    }),
  ).toBe("Query, legend hidden");
});

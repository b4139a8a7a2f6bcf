// What service needs of a console, against arithmetic done by hand.

import { describe, expect, test } from "vitest";
import { serviceFigures } from "../../src/checks/fit/service-limits.ts";
import type { ConsoleBody } from "../../src/fit/console-body.ts";
import { columnGap } from "../../src/fit/service/column-gap.ts";
import { serviceFacts } from "../../src/fit/service/service-facts.ts";
import { circle, point } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { degrees, mm } from "../../src/geometry/quantity.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import { prism, solidRegion } from "../../src/geometry/solid/solid.ts";
import { movedFrame, turnedFrame, WORLD } from "../../src/geometry/space/frame.ts";
import { boxInFrame } from "../../src/geometry/space/space-box.ts";
import { vector } from "../../src/geometry/space/vector.ts";
import { consoleOf, panelOf, type TestConsole } from "./console-of.ts";

const USUAL = serviceFigures({ workshop: null });

const bay = (lines: string): string =>
  `bays:\n  aft: { mount: console-rail, at: [0, 0, 600], along: [1, 0, 0], length: 40 modules, depth: 180 mm }\n${lines}`;
const USES =
  "panels:\n  - { file: one.yaml, as: one, bay: aft, module: 0 }\n  - { file: two.yaml, as: two, bay: aft, module: 10 }\n";
const factsOf = ({ layout, bodies }: TestConsole): ReturnType<typeof serviceFacts> =>
  serviceFacts(layout, bodies, USUAL);

describe("columns in space", () => {
  const column = (radius: number, frame = WORLD) => ({
    outline: circle(point(0, 0), radius),
    top: mm(20),
    frame,
  });

  test("side by side in one plane: the distance of their axes less both radii", () => {
    const gap = columnGap(column(5), column(8, movedFrame(WORLD, vector(30, 0, 0))));
    expect(gap).toBeGreaterThanOrEqual(17 - 1e-9);
    expect(gap).toBeLessThan(17.02);
  });

  // A plane that rises by 90 degrees at x = 30: its column, 20 high from there toward -x and 5 + 12 up, has its nearest
  // edge 5 mm up at x = 10 .. 30; the other's side is at x = 5. So the gap is across only.
  test("on planes at right angles: from side to tip", () => {
    const upright = turnedFrame(movedFrame(WORLD, vector(30, 0, 17)), {
      about: vector(0, -1, 0),
      through: vector(30, 0, 17),
      by: degrees(90),
    });
    const square = rectangle(extent(-12, -12, 12, 12));
    const gap = columnGap(column(5), { outline: square, top: mm(20), frame: upright });
    expect(gap).toBeCloseTo(5, 1);
  });
});

describe("hands between panels of one bay", () => {
  const knobs = (first: number, second: number): TestConsole =>
    consoleOf(bay(USES), {
      one: `components:\n  a: { part: toggle-6, at: { x: centre, top: ${first} mm } }\n`,
      two: `components:\n  b: { part: toggle-6, at: { x: centre, bottom: ${second} mm } }\n`,
    });

  test("are the distance of the axes less both levers", () => {
    const console = knobs(12, 14);
    const [hand] = factsOf(console).hands;
    const grasp = panelOf(console, "one").layout.components[0]?.grasp;
    const radius = grasp?.kind === "circle" ? grasp.radius : Number.NaN;
    expect(hand?.gap).toBeCloseTo(26 - 2 * radius, 9);
    // Toggles: 19 (NUREG-0700 Rev 3, table 11.5).
    expect(hand?.needs).toBe(19);
    expect([hand?.a.component, hand?.b.component]).toEqual(["a", "b"]);
  });
});

describe("a driver before each stud", () => {
  const knob = (left: number): TestConsole =>
    consoleOf(bay(USES), {
      one: `components:\n  a: { part: pot-16, knob: knob-22-skirt, at: { left: ${left} mm, bottom: 30 mm } }\n`,
      two: "",
    });
  const blocked = (console: TestConsole): readonly string[] =>
    factsOf(console).drivers.flatMap(({ panel, fastener, met }) =>
      met === null ? [] : [`${panel} ${fastener} ${met.blocker.thing}`],
    );

  test("is free where nothing stands before it", () => {
    const facts = factsOf(knob(70)).drivers;
    expect(facts).toHaveLength(8);
    expect(facts.every(({ needs }) => needs === USUAL.driver)).toBe(true);
    expect(blocked(knob(70))).toEqual([]);
  });

  // An obstacle as a shelf of 1 mm whose edge lies 4 mm from the stud's axis leaves a driver of 8 mm just free.
  const shelf = (away: number): TestConsole => {
    // Studs of the right column stand 136.525 / 2 from the middle, toward -y.
    const edge = -136.525 / 2 - away;
    return consoleOf(
      bay(
        `${USES}obstacles:\n  - { name: shelf, box: [400, 100, 1], at: [200, ${(edge - 50).toFixed(4)}, 680] }\n`,
      ),
      { one: "", two: "" },
    );
  };
  test.each([
    { away: 4.02, free: true },
    { away: 3.9, free: false },
  ])("beside a shelf $away from its axis is free: $free", ({ away, free }) => {
    expect(blocked(shelf(away)).some((each) => each.endsWith("shelf"))).toBe(!free);
  });

  const stops = (away: number): readonly (readonly [string, number, number])[] =>
    factsOf(shelf(away)).drivers.flatMap(({ at, met }) =>
      met?.blocker.thing === "shelf" ? [[met.side, met.free, 680 - at.z] as const] : [],
    );

  test("beside a shelf is as wide as twice the way to its edge", () => {
    for (const [side, free] of stops(3.9)) {
      expect(side).toBe("diameter");
      expect(Math.abs(free - 2 * 3.9)).toBeLessThan(0.05);
    }
    expect(stops(3.9)).not.toEqual([]);
  });

  test("under a shelf is as long as the way to it", () => {
    for (const [side, free, way] of stops(-5)) {
      expect(side).toBe("length");
      expect(Math.abs(free - way)).toBeLessThan(0.05);
    }
    expect(stops(-5)).not.toEqual([]);
  });
});

describe("taking a panel out", () => {
  const lifted = (obstacles: string): ReturnType<typeof serviceFacts>["lifts"] =>
    factsOf(
      consoleOf(bay(`${USES}obstacles:\n${obstacles}`), {
        one: "components:\n  a: { part: toggle-6, at: { x: centre, y: centre } }\n",
        two: "",
      }),
    ).lifts;

  test("goes straight where nothing is in the way", () => {
    expect(
      lifted("  - { name: far, box: [10, 10, 10], at: [0, 500, 600] }\n").map(({ way }) => way),
    ).toEqual([{ kind: "straight" }, { kind: "straight" }]);
  });

  // Panel one runs from x = 0 to 95.25; a shelf lies over its first 2 mm.
  const SHELF = "  - { name: shelf, box: [60, 200, 5], at: [-28, 0, 612] }\n";
  test("goes with its free end first from under a shelf over its other end, once its screws are out", () => {
    const screwed = consoleOf(
      `bays:\n  lid: { mount: corner-screws, at: [0, 0, 600], along: [1, 0, 0], length: 95.25 mm, depth: 180 mm }\npanels:\n  - { file: one.yaml, as: one, bay: lid }\nobstacles:\n${SHELF}`,
      { one: "mount: corner-screws\nwidth: 146 mm\nheight: 95.25 mm\n" },
    );
    const [one] = factsOf(screwed).lifts;
    expect(one?.blockers.map(({ thing }) => thing)).toEqual(["shelf"]);
    expect(one?.way).toMatchObject({ kind: "tilted", first: "high-end" });
  });

  test("does not slide out from there while studs hold it", () => {
    const [one] = lifted(SHELF);
    expect(one?.blockers.map(({ thing }) => thing)).toEqual(["shelf"]);
    expect(one?.way).toBeNull();
  });

  // The rails leave 127 mm clear; what hangs 20 mm below them and is 137 mm wide does not come up between them.
  test("does not come up between rails that are closer than what hangs behind it", () => {
    const console = consoleOf(bay(USES), { one: "", two: "" });
    const hung = (from: number, to: number): ConsoleBody => {
      const solid = prism(
        -60,
        -40,
        solidRegion({ outline: rectangle(extent(from, 20, to, 60)), holes: [] }),
      );
      const { frame } = panelOf(console, "one");
      const [face] = console.bodies;
      if (face === undefined) throw new Error("there are bodies");
      const names = { id: "one/hung", role: "rear", thing: "hung", what: "case" } as const;
      const shape = { kind: "recipe", solid } as const;
      return { ...face, ...names, panel: "one", shape, frame, box: boxInFrame(solid, frame) };
    };
    const waysOf = (body: ConsoleBody): ReturnType<typeof serviceFacts>["lifts"][number] =>
      serviceFacts(console.layout, [...console.bodies, body], USUAL).lifts[0]!;
    expect(waysOf(hung(10, 136)).way).toEqual({ kind: "straight" });
    const wide = waysOf(hung(5, 142));
    expect(wide.way).toBeNull();
    expect(wide.blockers.map(({ role }) => role)).toEqual(["rail", "rail"]);
  });

  test("does not go under a board that covers it", () => {
    const [one, two] = lifted("  - { name: board, box: [90, 200, 5], at: [48, 0, 625] }\n");
    expect(one?.way).toBeNull();
    expect(one?.blockers.map(({ thing }) => thing)).toEqual(["board"]);
    expect(two?.way).toEqual({ kind: "straight" });
  });
});

describe("the loop of a loom", () => {
  // The tie lies beneath the middle, at the bay's depth; the panel, 95.25 long, turns about its far edge and its rear comes
  // to lie 2 mm and the proud levers above the edge. Both stretches lie in one plane: no unfolding.
  test("reaches from the tie over the edge to the middle of the rear, laid on its face", () => {
    const console = consoleOf(bay(USES), {
      one: "components:\n  a: { part: toggle-6, at: { x: centre, y: centre } }\n",
      two: "",
    });
    const [loop] = factsOf(console).loops;
    const panel = panelOf(console, "one");
    const proud = Math.max(...(panel.layout.components[0]?.bodies ?? []).map(({ high }) => high));
    const tie = Math.hypot(95.25 / 2, 2 + 180);
    const over = Math.hypot(95.25 / 2, 2 + proud);
    expect(loop).toMatchObject({ panel: "one", onto: "two", has: null, plug: null });
    expect(loop?.needs).toBeCloseTo(tie + over + USUAL.loopSlack, 6);
  });

  test("begins at the bay's own tie where there is one, and is not asked of a panel without wires", () => {
    const console = consoleOf(
      bay(USES).replace("depth: 180 mm", "depth: 180 mm, loom: [47.625, 73, 420]"),
      {
        one: "components:\n  a: { part: toggle-6, at: { x: centre, y: centre } }\n",
        two: "",
      },
    );
    const loops = factsOf(console).loops;
    expect(loops.map(({ panel }) => panel)).toEqual(["one"]);
    const panel = panelOf(console, "one");
    const proud = Math.max(...(panel.layout.components[0]?.bodies ?? []).map(({ high }) => high));
    const folded = Math.hypot(95.25 / 2, 182) + Math.hypot(95.25 / 2, 2 + proud);
    expect(loops[0]?.needs).toBeCloseTo(Math.hypot(73, folded) + 100, 6);
  });
});

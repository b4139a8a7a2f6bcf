// A panel that comes out with one end first, past things whose boxes would hold it: against angles by hand, seen from its side.
// y runs along the panel from the end that stays, z outward from its front.

import { expect, test } from "vitest";
import { serviceFigures } from "../../src/checks/fit/service-limits.ts";
import type { LiftFact } from "../../src/fit/fit-facts.ts";
import { runFrameOf } from "../../src/fit/service/run-frame.ts";
import { serviceFacts } from "../../src/fit/service/service-facts.ts";
import { loop, vertex } from "../../src/geometry/contour.ts";
import { prism, type Solid, solidRegion } from "../../src/geometry/solid/solid.ts";
import { type Frame, movedFrame } from "../../src/geometry/space/frame.ts";
import { boxInFrame } from "../../src/geometry/space/space-box.ts";
import { scaled } from "../../src/geometry/space/vector.ts";
import { consoleOf, panelOf } from "./console-of.ts";
import { madeBody } from "./made-bodies.ts";

// Held by screws: it slides in its own plane once they are out. One sheet of 2 mm, and nothing on it.
const made = consoleOf(
  "bays:\n  lid: { mount: corner-screws, at: [0, 0, 600], along: [1, 0, 0], length: 95.25 mm, depth: 180 mm }\npanels:\n  - { file: one.yaml, as: one, bay: lid }\n",
  { one: "mount: corner-screws\nwidth: 146 mm\nheight: 95.25 mm\n" },
);
const THICK = 2;
const panel = panelOf(made, "one");
const run = runFrameOf(panel);
const low = run.nominal.minY + panel.layout.mount.undersize;
const length = run.nominal.maxY - panel.layout.mount.undersize - low;

type Corner = readonly [y: number, z: number];
type Profile = readonly [name: string, corners: readonly Corner[]];

/** Profiles as bars over the whole width of the panel. */
const liftPast = (...profiles: readonly Profile[]): LiftFact => {
  const side: Frame = { x: run.frame.y, y: run.frame.z, z: run.frame.x, origin: run.frame.origin };
  const frame = movedFrame(side, scaled(run.frame.y, low));
  const bars = profiles.map(([name, corners]) => {
    const outline = loop(corners.map(([y, z]) => vertex(y, z)));
    const solid: Solid = prism(-10, 160, solidRegion({ outline, holes: [] }));
    const body = { ...madeBody(name, solid, { panel: null, role: "obstacle" }), frame };
    return { ...body, box: boxInFrame(solid, frame) };
  });
  const figures = serviceFigures({ workshop: null });
  return serviceFacts(made.layout, [...made.bodies, ...bars], figures).lifts[0]!;
};

const rectangle = (name: string, [y, z]: Corner, [toY, toZ]: Corner): Profile => [
  name,
  [
    [y, z],
    [toY, z],
    [toY, toZ],
    [y, toZ],
  ],
];

/** A square bar on its edge. */
const diamond = (name: string, [y, z]: Corner, half: number): Profile => [
  name,
  [
    [y - half, z],
    [y, z - half],
    [y + half, z],
    [y, z + half],
  ],
];

/** Over the end that stays, 10 mm before it, and behind that end: out it goes with its other end first, or not at all. */
const HOOK = [
  rectangle("hook", [-20, 10], [2, 15]),
  rectangle("wall", [-20, -30], [-1, 60]),
] as const;

/** The tilt at which a panel's rear passes over a point: atan2 for its front, and what its thickness takes as seen from the hinge. */
const tiltOver = ([y, z]: Corner): number =>
  ((Math.atan2(z, y) + Math.asin(THICK / Math.hypot(y, z))) * 180) / Math.PI;

const stepped = (tilt: number): number => Math.ceil(tilt * 4) / 4;

test("the figures are those of the panel", () => {
  expect(length).toBeLessThan(96);
  expect(made.bodies.filter(({ panel: on }) => on === "one")).toHaveLength(1);
});

test("with nothing but a hook over one end it slides out with the other first", () => {
  const { way, blockers } = liftPast(...HOOK);
  expect(blockers.map(({ thing }) => thing)).toEqual(["hook"]);
  expect(way).toMatchObject({ kind: "tilted", first: "high-end" });
});

// The bar begins 97 mm from the hinge, beyond the circle of the panel's free end, and its fence goes up to it from below, so
// that the panel passes over its upper edge, 130 mm away. The box round it has that edge at 97 mm. 45 degrees are tried, and
// no more: two of the bars lie a degree apart, to either side of that.
test.each([
  { middle: 70, tilt: 39.08, ofBox: 47 },
  { middle: 92, tilt: 44.51, ofBox: 52 },
  { middle: 97, tilt: 45.62, ofBox: 53 },
])("over a bar that stands on its edge, $middle up, it comes at $tilt degrees", (bar) => {
  const top: Corner = [130, bar.middle + 33];
  expect(tiltOver(top)).toBeCloseTo(bar.tilt, 2);
  expect(tiltOver([97, bar.middle + 33])).toBeGreaterThan(bar.ofBox);
  // It is slid by its own length: its free end goes past the edge.
  expect(Math.hypot(...top)).toBeLessThan(2 * length);
  const fence = rectangle("fence", [97, -30], [130, bar.middle - 33]);
  const { way, blockers } = liftPast(...HOOK, diamond("bar", [130, bar.middle], 33), fence);
  expect(blockers.length).toBeGreaterThan(0);
  expect(way).toEqual(
    bar.tilt <= 45 ? { kind: "tilted", first: "high-end", tilt: stepped(tiltOver(top)) } : null,
  );
});

/** 4 mm thick, at 45 degrees over the panel from 6 mm beside its edge. */
const leaningFrom = (name: string, edge: number, toward: 1 | -1): Profile => {
  const corners: readonly Corner[] = [
    [-36, -30],
    [54, 60],
    [51, 63],
    [-39, -27],
  ];
  const placed = corners.map(([y, z]): Corner => [edge + toward * y, z]);
  return [name, toward === 1 ? placed : placed.toReversed()];
};

// The free end rises on a circle about the other: it meets the far board where cos + sin of the tilt are 1 + 6 / length,
// at less than 4 degrees, and no way leads out of there. The boxes of both boards hold the panel's from the beginning.
test("from under a roof of two leaning boards it does not come at all", () => {
  const { way, blockers } = liftPast(leaningFrom("near", 0, 1), leaningFrom("far", length, -1));
  expect(blockers.map(({ thing }) => thing).sort()).toEqual(["far", "near"]);
  expect(way).toBeNull();
});

test("from under one of the two it comes away from that one", () => {
  expect(liftPast(leaningFrom("near", 0, 1)).way).toMatchObject({
    kind: "tilted",
    first: "high-end",
  });
  expect(liftPast(leaningFrom("far", length, -1)).way).toMatchObject({
    kind: "tilted",
    first: "low-end",
  });
});

// A panel pulled straight out past things that stand aslant: what their boxes do not know. Against geometry by hand.

import { expect, test } from "vitest";
import { serviceFigures } from "../../src/checks/fit/service-limits.ts";
import type { LiftFact } from "../../src/fit/fit-facts.ts";
import { serviceFacts } from "../../src/fit/service/service-facts.ts";
import { extent } from "../../src/geometry/extent.ts";
import { degrees } from "../../src/geometry/quantity.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import { prism, type Solid, solidRegion } from "../../src/geometry/solid/solid.ts";
import { type Frame, movedFrame, turnedFrame, WORLD } from "../../src/geometry/space/frame.ts";
import { boxInFrame } from "../../src/geometry/space/space-box.ts";
import { vector } from "../../src/geometry/space/vector.ts";
import { consoleOf, panelOf } from "./console-of.ts";
import { madeBody } from "./made-bodies.ts";

const made = consoleOf(
  "bays:\n  aft: { mount: console-rail, at: [0, 0, 600], along: [1, 0, 0], length: 40 modules, depth: 180 mm }\npanels:\n  - { file: one.yaml, as: one, bay: aft, module: 0 }\n",
  { one: "" },
);

/** A body of the console's own beside what the bay holds. */
const liftOfOne = (solid: Solid, frame: Frame): LiftFact => {
  const post = { ...madeBody("post", solid, { panel: null, role: "obstacle" }), frame };
  const bodies = [...made.bodies, { ...post, box: boxInFrame(solid, frame) }];
  return serviceFacts(made.layout, bodies, serviceFigures({ workshop: null })).lifts[0]!;
};

// A square post of 40 mm, turned by 45 degrees, stands over a corner of the panel: the flank that it turns to the corner lies
// 20 mm from its middle. The corner is rounded, so that it lies sqrt(2) - 1 radii nearer to the panel's middle. A twentieth
// of a millimetre more or less decides; its box covers the corner either way.
test.each([
  { by: 0.05, free: true },
  { by: -0.05, free: false },
])("past a turned post $by mm off the panel's corner goes straight: $free", ({ by, free }) => {
  const solid = prism(
    0,
    30,
    solidRegion({ outline: rectangle(extent(-20, -20, 20, 20)), holes: [] }),
  );
  const { undersize, corner } = panelOf(made, "one").layout.mount;
  const aside = (20 - corner * (Math.SQRT2 - 1) + by) / Math.SQRT2;
  const middle = vector(95.25 - undersize + aside, -146.05 / 2 + undersize - aside, 620);
  const frame = turnedFrame(movedFrame(WORLD, middle), {
    about: vector(0, 0, 1),
    through: middle,
    by: degrees(45),
  });
  const { way, blockers } = liftOfOne(solid, frame);
  expect(way?.kind === "straight").toBe(free);
  expect(blockers.map(({ thing }) => thing)).toEqual(free ? [] : ["post"]);
});

// A board of 4 mm that leans over the panel by 45 degrees from beside it: its box holds the panel's edge from the
// beginning, and the panel comes up against it all the same.
test("does not go straight from under a board that leans over it", () => {
  const solid = prism(0, 4, solidRegion({ outline: rectangle(extent(0, 0, 90, 200)), holes: [] }));
  const foot = vector(0, -140, 560);
  const frame = turnedFrame(movedFrame(WORLD, foot), {
    about: vector(1, 0, 0),
    through: foot,
    by: degrees(45),
  });
  const leaning = liftOfOne(solid, frame);
  expect(leaning.way?.kind).not.toBe("straight");
  expect(leaning.blockers.map(({ thing }) => thing)).toEqual(["post"]);
  // Turned away from it, the same board is in nobody's way.
  const away = turnedFrame(movedFrame(WORLD, foot), {
    about: vector(1, 0, 0),
    through: foot,
    by: degrees(135),
  });
  expect(liftOfOne(solid, away).way).toEqual({ kind: "straight" });
});

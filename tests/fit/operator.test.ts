// What the operator reaches, reads and has room for, against the standards' tables and closed forms.

import { describe, expect, test } from "vitest";
import { operatorFacts } from "../../src/fit/operator/operator-facts.ts";
import { seenFrom } from "../../src/fit/operator/sights.ts";
import { degrees, mm } from "../../src/geometry/quantity.ts";
import { vector } from "../../src/geometry/space/vector.ts";
import { direction } from "../../src/geometry/trigonometry.ts";
import { kneeHeightNeeded } from "../../src/standards/knee-height.ts";
import { consoleOf } from "./console-of.ts";

// h = 2 D tan(angle / 2) at 700 mm: exact arithmetic. 15 and 16 minutes: NUREG-0700, 20 and 22 the preferred ones.
const AT_700 = [
  { minutes: 15, height: 3.054 },
  { minutes: 16, height: 3.258 },
  { minutes: 20, height: 4.072 },
  { minutes: 22, height: 4.48 },
] as const;

const letter = { at: vector(0, 0, 0), up: vector(0, 1, 0), normal: vector(0, 0, 1) };

describe.each(AT_700)("a capital of $height mm at 700 mm", ({ minutes, height }) => {
  test(`fills ${minutes} minutes of arc square on`, () => {
    const seen = seenFrom(vector(0, 0, 700), letter, mm(height));
    expect(seen.arcMinutes).toBeCloseTo(minutes, 2);
    expect(seen.distance).toBe(700);
    expect(seen.obliquity).toBeCloseTo(0, 9);
  });

  // Seen along its up direction at an angle a from square on, what is left of a height is h cos a.
  test.each([30, 45, 60])(
    "and as much when it is taller by 1 / cos %d, seen so far from above",
    (aslant) => {
      const { x: cosine, y: sine } = direction(degrees(aslant));
      const eye = vector(0, 700 * sine, 700 * cosine);
      const seen = seenFrom(eye, letter, mm(height / cosine));
      expect(seen.arcMinutes).toBeCloseTo(minutes, 2);
      expect(seen.obliquity).toBeCloseTo(aslant, 9);
    },
  );

  test("keeps its height when it is seen from the side: only its width is foreshortened", () => {
    const { x: cosine, y: sine } = direction(degrees(60));
    const seen = seenFrom(vector(700 * sine, 0, 700 * cosine), letter, mm(height));
    expect(seen.arcMinutes).toBeCloseTo(minutes, 2);
    expect(seen.obliquity).toBeCloseTo(60, 9);
  });
});

const SEAT = "operator: { seat-height: 430 mm, at: [0, 0], hand: right }\n";
const BESIDE = `${SEAT}bays:
  aft: { mount: console-rail, at: [0, -420, 620], along: [1, 0, 0], length: 60 modules, depth: 180 mm }
panels:
  - { file: one.yaml, as: one, bay: aft, module: 0 }
  - { file: two.yaml, as: two, bay: aft, module: 50 }
`;
const TOGGLE =
  "components:\n  a: { part: toggle-6, at: { x: centre, y: centre }, important: true, legend: HAUL }\n";

describe("a console beside the seat", () => {
  const console = consoleOf(BESIDE, { one: TOGGLE, two: TOGGLE });
  const facts = operatorFacts(console.layout, console.bodies);

  // Shoulder of the 5th-percentile woman 509 above the seat (NUREG-0700 Rev 3, table 11.4), half of 325 to the right; the
  // lever's tip stands over the middle of the panel, 47.625 along it.
  test("reach is the straight way from the shoulder to the top of the lever", () => {
    const [near, far] = facts.reaches;
    expect(near?.functional).toBe(677);
    expect(near?.extended).toBe(735);
    const tip = near?.at.z ?? 0;
    expect(tip).toBeGreaterThan(630);
    expect(near?.at.x).toBeCloseTo(47.625, 6);
    expect(near?.at.y).toBeCloseTo(-420, 6);
    const [aside, down] = [420 - 162.5, 430 + 509 - tip];
    expect(near?.distance).toBeCloseTo(Math.hypot(47.625, aside, down), 6);
    expect(far?.distance).toBeCloseTo(Math.hypot(50 * 9.525 + 47.625, aside, down), 6);
  });

  test("a left hand works from the other shoulder", () => {
    const left = consoleOf(BESIDE.replace("hand: right", "hand: left"), {
      one: TOGGLE,
      two: TOGGLE,
    });
    const [near] = operatorFacts(left.layout, left.bodies).reaches;
    const tip = near?.at.z ?? 0;
    expect(near?.distance).toBeCloseTo(Math.hypot(47.625, 420 + 162.5, 939 - tip), 6);
  });

  // Two eyes; for a legend below them the higher eye is further off and sees it squarer. Both are computed by hand here.
  test("a legend is seen by the eye that sees it smaller", () => {
    const [seen] = facts.sights;
    const marking = console.layout.panels[0]?.layout.markings.find(
      ({ id }) => id === seen?.marking,
    );
    const box = marking?.box ?? { minX: 0, maxX: 0, minY: 0, maxY: 0 };
    const at = {
      x: (box.minY + box.maxY) / 2,
      y: -420 + 73.025 - (box.minX + box.maxX) / 2,
      z: 622,
    };
    const minutes = [724, 862].map((above) => {
      const [dx, dy, dz] = [180 - at.x, -at.y, 430 + above - at.z];
      const distance = Math.hypot(dx, dy, dz);
      const left = Math.sqrt(1 - (dx / distance) ** 2) * (seen?.capHeight ?? 0);
      return (2 * Math.atan(left / 2 / distance) * 180 * 60) / Math.PI;
    });
    expect(seen?.arcMinutes).toBeCloseTo(Math.min(...minutes), 6);
    expect(seen?.eye).toBe(minutes[1]! < minutes[0]! ? "large" : "small");
    expect(seen?.hiddenBy).toBeNull();
  });

  test("nobody's knees go under it, and its front edge is the long one toward the seat", () => {
    expect(facts.knees).toBeNull();
    expect(facts.frontEdges.map(({ distance }) => distance)).toEqual([
      expect.closeTo(73.025, 6),
      expect.closeTo(73.025, 6),
    ]);
  });
});

describe("a desk that is sat at", () => {
  const lines = (rib: string): string => `${SEAT}bays:
  desk: { mount: console-rail, at: [350, 0, 720], along: [1, 0, 0], length: 40 modules, depth: 60 mm }
  upright: { mount: console-rail, at: [740, 0, 760], along: [0, 0, 1], length: 20 modules, depth: 120 mm }
panels:
  - { file: one.yaml, as: one, bay: desk, module: 30 }
  - { file: two.yaml, as: two, bay: upright, module: 0 }
obstacles:
${rib}`;
  const rib = (at: number): string =>
    `  - { name: rib, box: [18, 800, 700], at: [${at}, 0, 0] }\n  - { name: side, box: [400, 18, 700], at: [500, 300, 0] }\n`;
  const facts = (at: number): ReturnType<typeof operatorFacts> => {
    const console = consoleOf(lines(rib(at)), { one: TOGGLE, two: TOGGLE });
    return operatorFacts(console.layout, console.bodies);
  };

  // The edge of the desk is 350 ahead of the seat back; the rib's near face is 9 before its middle.
  test("depth is from the desk's edge to the rib, and the sides count by themselves", () => {
    const { knees } = facts(350 + 440 + 9);
    expect(knees?.depthAtKnee.has).toBeCloseTo(440, 6);
    expect(knees?.depthAtFoot.has).toBeCloseTo(440, 6);
    // 300 less half of the side's own 18, and nothing on the other side within 600.
    expect(knees?.width.has).toBeCloseTo(600 + 291, 6);
    expect(knees?.depthAtKnee.by.map(({ thing }) => thing)).toEqual(["rib"]);
  });

  test("the front edge is the desk's near one, and the way runs over the desk and on up the upright part", () => {
    const [on, above] = facts(900).frontEdges;
    expect(on?.distance).toBeCloseTo(30 * 9.525 + 47.625, 6);
    // 40 modules of desk; from its far edge (731, 720) straight to the upright's foot (740, 760); then up.
    const gap = Math.hypot(740 - 731, 40);
    expect(above?.distance).toBeCloseTo(381 + gap + 47.625, 6);
  });
});

// NUREG-0700 Rev 3, table 11.4: knee height of the 95th-percentile man 604, thigh clearance 186.
test("knees want the knee height, or the seat and the thighs on it, whichever is higher", () => {
  expect(kneeHeightNeeded(400)).toBe(604);
  expect(kneeHeightNeeded(418)).toBe(604);
  expect(kneeHeightNeeded(430)).toBe(616);
});

describe("what stands before a legend", () => {
  // The eye is 180 before the seat back, 724 and 862 over a seat of 430; the legend lies on the panel beside.
  const screen = (height: number): string =>
    `${BESIDE}obstacles:\n  - { name: screen, box: [300, 4, ${height}], at: [50, -300, 600] }\n`;
  const hiders = (height: number): readonly (string | undefined)[] => {
    const console = consoleOf(screen(height), { one: TOGGLE, two: TOGGLE });
    return operatorFacts(console.layout, console.bodies).sights.map(
      ({ hiddenBy }) => hiddenBy?.thing,
    );
  };

  // From (180, 0, 1154) to about (50, -420, 622): at y = -300 the line is 532 * 120 / 420 = 152 over the panel.
  test("hides it when the line of sight meets it, and not when the line passes over", () => {
    expect(hiders(190)[0]).toBe("screen");
    expect(hiders(120)[0]).toBeUndefined();
  });
});

// The seat alone is 1100 high and the thighs 186 on it: nothing hangs over the lap, so that no height is too little.
test("a high seat with nothing over the lap has all the height that it wants", () => {
  const high = `operator: { seat-height: 1100 mm, at: [0, 0], hand: right }
bays:
  desk: { mount: console-rail, at: [350, 0, 700], along: [1, 0, 0], length: 40 modules, depth: 60 mm }
panels:
  - { file: one.yaml, as: one, bay: desk, module: 0 }
`;
  const console = consoleOf(high, { one: TOGGLE });
  const { knees } = operatorFacts(console.layout, console.bodies);
  expect(knees?.height.by).toEqual([]);
  expect(knees?.height.has).toBeGreaterThan(kneeHeightNeeded(1100));
});

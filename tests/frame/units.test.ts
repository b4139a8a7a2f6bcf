// Frames of several units: rows of bays side by side, facing and at an angle, each between its own cheeks. Put together from
// their written cut files by the kernel, as one unit is; and their sizes against sums over the text by hand.

import { describe, expect, test } from "vitest";
import { consoleBodies } from "../../src/fit/bodies/console-bodies.ts";
import { operatorFacts } from "../../src/fit/operator/operator-facts.ts";
import { withKept } from "../../src/geometry/solid/kernel.ts";
import { pointOut } from "../../src/geometry/space/frame.ts";
import { spaceDistance, type Vector, vector } from "../../src/geometry/space/vector.ts";
import type { ConsoleFrame } from "../../src/parts/frame/frame-part.ts";
import { openKernel } from "../support/kernel.ts";
import { type FrameText, framed, soundFrame } from "./framed.ts";
import { blockedSteps, clashes, inRoomOf, looseSlots, piecesOf, standing } from "./put-together.ts";

const kernel = await openKernel();

const trouble = (frame: ConsoleFrame): readonly string[] =>
  withKept((keep) => {
    const bench = { kernel, keep };
    const all = standing(piecesOf(frame), bench);
    return [
      ...clashes(all, bench),
      ...looseSlots(frame, all, bench),
      ...blockedSteps(frame, all, bench),
    ];
  });

/** Of 24 modules (228.6 mm), 120 deep; 211.2 wide with its cheeks: 127 clear, 2 x 30 of bar, 2 x 0.5, 2 x 11.6. */
const bay = (id: string, at: string, along = "[1, 0, 0]", more = ""): string =>
  `${id}: { mount: console-rail, at: ${at}, along: ${along}, length: 24 modules, depth: 120 mm${more} }`;

const SIDE_BY_SIDE: Partial<FrameText> = {
  bays: [
    bay("left", "[0, 110, 620]", "[1, 0, 0]", ", cant: 0"),
    bay("right", "[0, -110, 620]", "[1, 0, 0]", ", slope: 10"),
    bay("ahead", "[270, -110, 690]", "[1, 0, 0]", ", slope: 25"),
  ],
};

const L_SHAPE: Partial<FrameText> = {
  bays: [bay("aside", "[0, -420, 620]"), bay("before", "[420, 60, 620]", "[0, 1, 0]")],
};

const FACING: Partial<FrameText> = {
  bays: [bay("here", "[0, -500, 620]"), bay("there", "[228.6, 500, 620]", "[-1, 0, 0]")],
};

const ASKEW: Partial<FrameText> = {
  bays: [
    bay("middle", "[600, 0, 800]"),
    bay("port", "[520, 420, 800]", "[0.8, 0.6, 0]", ", slope: 15"),
    bay("starboard", "[520, -420, 800]", "[0.8, -0.6, 0]", ", cant: -5"),
  ],
};

const PARTED: Partial<FrameText> = {
  bays: [
    ...[0, 320].map((x) => bay(`left-${x}`, `[${x}, 106, 620]`)),
    ...[0, 320].map((x) => bay(`right-${x}`, `[${x}, -106, 620]`)),
  ],
  bed: "[700, 500]",
};

describe.each<readonly [string, Partial<FrameText>, readonly (readonly string[])[]]>([
  ["side by side", SIDE_BY_SIDE, [["left"], ["right", "ahead"]]],
  ["at an angle of 90 degrees", L_SHAPE, [["aside"], ["before"]]],
  ["facing each other", FACING, [["here"], ["there"]]],
  ["round the operator", ASKEW, [["middle"], ["port"], ["starboard"]]],
  [
    "side by side, each parted for its bed",
    PARTED,
    [
      ["left-0", "left-320"],
      ["right-0", "right-320"],
    ],
  ],
  [
    "side by side, with screws",
    { ...SIDE_BY_SIDE, frame: "{ type: side-console, sheet: birch-ply-12, joints: screws }" },
    [["left"], ["right", "ahead"]],
  ],
  [
    "side by side, half-lapped",
    { ...SIDE_BY_SIDE, frame: "{ type: side-console, sheet: birch-ply-12, joints: half-lap }" },
    [["left"], ["right", "ahead"]],
  ],
])("bays %s", (_, said, units) => {
  const frame = soundFrame(said);

  test("stand in units of one row", () => {
    expect(frame.units.map(({ bays }) => bays)).toEqual(units);
  });

  test("go together", () => {
    const blocked = trouble(frame).filter(
      (line) => !(line.includes("mm before its place") && /-s1.*-s2|-s2.*-s1/.test(line)),
    );
    expect(blocked).toEqual([]);
  });

  test("have ids and numbers of their own, in the order of assembly", () => {
    const ids = frame.parts.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(frame.parts.map(({ number }) => number)).toEqual(ids.map((_id, index) => index + 1));
    expect(frame.assembly.flatMap(({ adds }) => adds)).toEqual(ids);
    for (const { id, title, unit } of frame.parts) {
      expect(id).toMatch(new RegExp(`-u${unit}(-s\\d)?$`));
      const bays = frame.units.find(({ number }) => number === unit)!.bays;
      expect(title).toMatch(new RegExp(` of (unit ${unit}|${bays.join("|")})$`));
    }
  });

  test("keep the room behind their panels", () => {
    const { layout } = framed(said);
    withKept((keep) => {
      const bench = { kernel, keep };
      const all = standing(piecesOf(frame), bench);
      for (const each of layout.bays)
        expect([each.id, ...inRoomOf(each, all, bench)]).toEqual([each.id]);
    });
  });
});

// An upright bay turned about its length looks aside; its run still lies in the desk's profile.
test("an upright bay stands in the row that it rises behind, whichever is written first", () => {
  const wall = bay("wall", "[400, 0, 900]", "[0, 0, 1]", ", cant: 30");
  const desk = bay("desk", "[0, 0, 700]");
  for (const bays of [
    [wall, desk],
    [desk, wall],
  ])
    expect(soundFrame({ bays }).units.map((unit) => unit.bays)).toEqual([["desk", "wall"]]);
});

const holesOf = (frame: ConsoleFrame, id: string): readonly Vector[] => {
  const part = frame.parts.find((each) => each.id === id);
  if (part === undefined) throw new Error(`there is no ${id}`);
  return part.holes.flatMap(({ feature, contour }) =>
    feature.startsWith("bolt.") && contour.kind === "circle"
      ? [pointOut(part.frame, vector(contour.centre.x, contour.centre.y, 0))]
      : [],
  );
};

describe("two units side by side", () => {
  const frame = soundFrame(SIDE_BY_SIDE);

  // 220 from middle to middle, less 211.2.
  test("are bolted cheek to cheek, hole on hole, over spacers as long as the gap", () => {
    expect(frame.assembly.at(-1)?.words).toBe(
      "Stand unit 2 (right) to the right of unit 1 (left), 8.8 mm from it; bolt the two cheeks together with four M8 and spacers 8.8 mm long.",
    );
    const [one, other] = [holesOf(frame, "cheek-right-u1"), holesOf(frame, "cheek-left-u2")];
    expect(one).toHaveLength(4);
    expect(other).toHaveLength(4);
    for (const at of one)
      expect(Math.min(...other.map((over) => spaceDistance(at, over)))).toBeCloseTo(8.8, 6);
    expect(holesOf(frame, "cheek-left-u1")).toEqual([]);
    expect(holesOf(frame, "cheek-right-u2")).toEqual([]);
  });

  // In the room below the left bay, 40 from its boards: 0.5 before the bay's beginning, as much past its end; from the
  // floor board's upper face, 60 + 11.6, to the lower edge of the ribs, 620 - 120 - 60.
  test("have their bolts 40 from the boards round them", () => {
    const places = holesOf(frame, "cheek-right-u1");
    const forward = [...new Set(places.map(({ x }) => Number(x.toFixed(4))))].toSorted(
      (a, b) => a - b,
    );
    const up = [...new Set(places.map(({ z }) => Number(z.toFixed(4))))].toSorted((a, b) => a - b);
    // The right unit begins farther forward by what its ribs reach back on a slope of 10 degrees, never less than 0.5.
    expect(forward[1]).toBeCloseTo(228.6 + 0.5 - 40, 4);
    expect(up).toEqual(
      [60 + 11.6 + 40, 620 - 120 - 60 - 40].map((value) => Number(value.toFixed(4))),
    );
  });

  test("touch where they stand as far apart as each is wide", () => {
    const tight = soundFrame({
      bays: [bay("left", "[0, 105.6, 620]"), bay("right", "[0, -105.6, 620]")],
    });
    expect(tight.assembly.at(-1)?.words).toBe(
      "Stand unit 2 (right) to the right of unit 1 (left), cheek to cheek; bolt the two cheeks together with four M8.",
    );
    const one = tight.parts.find(({ id }) => id === "cheek-right-u1")!;
    const other = tight.parts.find(({ id }) => id === "cheek-left-u2")!;
    expect(one.frame.origin.y).toBeCloseTo(0, 6);
    expect(other.frame.origin.y).toBeCloseTo(0, 6);
  });

  // More than 60 apart no spacer reaches.
  test("stand by themselves where they are far apart", () => {
    const far = soundFrame({
      bays: [bay("left", "[0, 150, 620]"), bay("right", "[0, -150, 620]")],
    });
    expect(far.assembly.at(-1)?.words).toBe(
      "Stand unit 2 (right) as the plan shows it, 88.8 mm from unit 1 (left); the two are not bolted together. Fix it to the floor or a wall where it could tip.",
    );
    expect(far.parts.flatMap(({ id }) => holesOf(far, id))).toEqual([]);
  });

  test("have no hatch where the other stands", () => {
    const hatchesOf = (hatch: string): readonly string[] =>
      soundFrame({
        ...SIDE_BY_SIDE,
        frame: `{ type: side-console, sheet: birch-ply-12, hatch: ${hatch} }`,
      }).parts.flatMap(({ id, holes }) =>
        holes.some(({ feature }) => feature === "hatch-opening") ? [id] : [],
      );
    expect(hatchesOf("right")).toEqual(["cheek-left-u1", "cheek-right-u2"]);
    expect(hatchesOf("left")).toEqual(["cheek-left-u1", "cheek-right-u2"]);
    expect(hatchesOf("front")).toEqual(["front-u1", "front-u2"]);
    expect(hatchesOf("none")).toEqual([]);
  });
});

describe("units at an angle", () => {
  // The side unit ends at 228.6 + 27.1; the other begins with its cheek at 420 - 105.6: 58.7 between, and 32.9 forward of y.
  test("are not bolted, and told how far apart they stand", () => {
    const frame = soundFrame(L_SHAPE);
    const [dx, dy] = [420 - 105.6 - (228.6 + 27.1), 60 - 27.1 - (-420 + 105.6)];
    expect(frame.assembly.at(-1)?.words).toContain(
      `${Math.hypot(dx, dy).toFixed(1)} mm from unit 1 (aside); the two are not bolted together.`,
    );
    expect(frame.parts.flatMap(({ id }) => holesOf(frame, id))).toEqual([]);
  });

  const faultOf = (at: string, along: string): string | undefined =>
    framed({ bays: [bay("aside", "[0, -420, 620]"), bay("before", at, along)] }).findings.find(
      ({ code }) => code === "checks/frame-units",
    )?.message;

  // Its cheek begins at 340 - 105.6 = 234.4, and the side unit ends at 255.7: 21.3 are shared, and it must stand at 361.3.
  test("want the same room by as much as is said, and stand free where they are told to", () => {
    const fault = faultOf("[340, -420, 620]", "[0, 1, 0]");
    expect(fault).toContain("21.3 mm of it");
    expect(fault).toContain("Move before to at: [361.3, -420, 620].");
    expect(faultOf("[361.3, -420, 620]", "[0, 1, 0]")).toBeUndefined();
    expect(faultOf("[361.2, -420, 620]", "[0, 1, 0]")).toContain("0.1 mm of it");
  });

  test("askew as well", () => {
    const fault = faultOf("[240, -400, 620]", "[0.6, 0.8, 0]");
    const works = /Move before to at: (\[[^\]]*\])/.exec(fault ?? "")?.[1];
    expect(works).toBeDefined();
    expect(faultOf(works!, "[0.6, 0.8, 0]")).toBeUndefined();
  });
});

describe("a front desk of three narrow columns", () => {
  const column = (id: string, y: number): string =>
    `${id}: { mount: console-rail, at: [500, ${y}, 800], along: [1, 0, 0], length: 60 modules, depth: 80 mm }`;
  const COLUMNS = [column("left", 212), column("centre", 0), column("right", -212)];
  const FRAME = "{ type: front-desk, sheet: birch-ply-12 }";
  const seated = (seat: string): Partial<FrameText> => ({
    bays: COLUMNS,
    frame: FRAME,
    more: `operator: { seat-height: 430 mm, at: ${seat}, hand: right }\n`,
  });
  const kneesOf = (frame: ConsoleFrame): readonly string[] =>
    frame.parts.flatMap(({ id }) => (id.startsWith("knee-top") ? [id] : []));

  // OSHA workstation guidance: knees take 520, 260 to each side; a column reaches from 106.4 to 317.6 aside.
  test("has knees beneath each that is before the operator, none wider than its bay", () => {
    const frame = soundFrame(seated("[0, 0]"));
    expect(kneesOf(frame)).toEqual(["knee-top-u1", "knee-top-u2", "knee-top-u3"]);
    const widths = ["u1", "u2", "u3"].map((unit) => {
      const at = (side: string): number =>
        frame.parts.find(({ id }) => id === `cheek-${side}-${unit}`)!.frame.origin.y;
      return Math.abs(at("left") - at("right"));
    });
    for (const width of widths) expect(width).toBeCloseTo(211.2, 6);
    expect(trouble(frame)).toEqual([]);
  });

  // Knees begin at the desk's edge, 500, and cheeks are cut out 440 deep from there and 620 high: nothing
  // stands beside the knees before that. Where nothing does, 1200 are looked through. For feet the bays of 571.5 leave half a
  // millimetre, less 15 of cheek, a board of 11.6, half a millimetre on each side of it and 40 of floor: 504.4.
  test("leaves the operator the room that its cut-out cheeks leave", () => {
    const { layout, frame } = framed(seated("[0, 0]"));
    const { knees } = operatorFacts(
      layout,
      consoleBodies({ layout, frame, printedParts: new Map() }),
    );
    expect(knees?.depthAtKnee.has).toBeCloseTo(440, 6);
    expect(knees?.depthAtFoot.has).toBeCloseTo(504.4, 6);
    expect(knees?.height.has).toBeCloseTo(620, 6);
    expect(knees?.width.has).toBe(1200);
  });

  test("has none beneath the one that is past his knees", () => {
    // He sits 200 to the left: from -60 to 460 across, and the right one begins at -106.4.
    expect(kneesOf(soundFrame(seated("[0, 200]")))).toEqual(["knee-top-u1", "knee-top-u2"]);
  });

  test("has them beneath all where nobody is written", () => {
    expect(kneesOf(soundFrame({ bays: COLUMNS, frame: FRAME }))).toHaveLength(3);
  });

  test("says so where none of its units stands before the operator", () => {
    const said = (x: number): readonly string[] =>
      framed(seated(`[${x}, 0]`)).findings.flatMap(({ code, message }) =>
        code === "checks/frame-no-knees" ? [message] : [],
      );
    expect(said(0)).toEqual([]);
    expect(said(1200)).toHaveLength(1);
  });

  test("alone is as wide as knees take", () => {
    const frame = soundFrame({
      bays: [column("centre", 0), bay("aside", "[0, -900, 620]")],
      frame: FRAME,
      more: "operator: { seat-height: 430 mm, at: [0, 0], hand: right }\n",
    });
    expect(kneesOf(frame)).toEqual(["knee-top-u1"]);
    const at = (side: string): number =>
      frame.parts.find(({ id }) => id === `cheek-${side}-u1`)!.frame.origin.y;
    expect(at("left") - at("right")).toBeCloseTo(520 + 2 * 11.6, 6);
  });
});

// STEP files read back by the program's own reader: a cylinder written by hand from ISO 10303-42, and solids that OpenCASCADE reads
// beside it. Then the reader is shown files that are not sound.

import type { OpenCascadeInstance } from "replicad-opencascadejs";
import { beforeAll, describe, expect, test } from "vitest";
import type { LayeredSolid } from "../../src/geometry/solid/solid.ts";
import { readStepFile } from "../../src/inspection/step-reader.ts";
import { randomLayeredSolid } from "../solids/random-solids.ts";
import { drilledPlate } from "../solids/sample-solids.ts";
import { HAND_CYLINDER } from "../support/hand-step.ts";
import { openStepReader, readStep } from "../support/step-reader.ts";
import { stepTextOf } from "../support/step-text.ts";

let kernel: OpenCascadeInstance;
beforeAll(async () => {
  kernel = await openStepReader();
});

describe("a cylinder written by hand", () => {
  test("is one valid solid of 500 pi mm³ to OpenCASCADE", () => {
    const read = readStep(HAND_CYLINDER, kernel);
    expect([read.solids, read.isValid, read.faces, read.cylinders]).toEqual([1, true, 3, 1]);
    expect(read.volume).toBeCloseTo(500 * Math.PI, 6);
  });

  test("is read with its two whole circles and its seam", () => {
    const { title, solids, strangers } = readStepFile(HAND_CYLINDER);
    expect(strangers).toEqual([]);
    expect(title).toBe("Hülse 'a'");
    const [solid] = solids;
    expect(solid?.faces.map(({ surface }) => surface.kind)).toEqual(["plane", "plane", "cylinder"]);
    const arcs = (solid?.edges ?? []).filter((edge) => edge.kind === "arc");
    expect(arcs.map(({ radius, sweep }) => [radius, sweep])).toEqual([
      [5, 2 * Math.PI],
      [5, 2 * Math.PI],
    ]);
    expect(solid?.edges).toHaveLength(3);
  });
});

describe("as many solids, faces and cylinders as OpenCASCADE finds", () => {
  const seeds = Array.from({ length: 6 }, (_, index) => 1 + index);
  const solids: readonly (readonly [string, LayeredSolid])[] = [
    ["the drilled plate", drilledPlate],
    ...seeds.map((seed) => [`random solid ${seed}`, randomLayeredSolid(seed)] as const),
  ];
  test.each(solids)("%s", (_name, solid) => {
    const text = stepTextOf(solid);
    const [theirs, ours] = [readStep(text, kernel), readStepFile(text)];
    const faces = ours.solids.flatMap((each) => each.faces);
    const cylinders = faces.filter(({ surface }) => surface.kind === "cylinder");
    expect(ours.strangers).toEqual([]);
    expect([ours.solids.length, faces.length, cylinders.length]).toEqual([
      theirs.solids,
      theirs.faces,
      theirs.cylinders,
    ]);
  });
});

test("a name with an apostrophe, a backslash and letters beyond ASCII is read as it was given", () => {
  const name = "winch's Ø 12 \\ spacer 𝄞";
  expect(readStepFile(stepTextOf(drilledPlate, name)).title).toBe(name);
});

const sound = stepTextOf(drilledPlate);

const strangersOf = (from: string | RegExp, to: string): readonly string[] => {
  const spoiled = sound.replace(from, to);
  expect(spoiled).not.toBe(sound);
  return readStepFile(spoiled).strangers;
};

describe("the reader objects where only the way between two sound corners is wrong:", () => {
  test("to half circles that stand upright on their face, corners and all", () => {
    const upright = "#32=CIRCLE('',#9999,3.3);\n#9999=AXIS2_PLACEMENT_3D('',#29,#17,#21);";
    const words = strangersOf("#32=CIRCLE('',#31,3.3);", upright);
    // The plane, and the two halves of the hole.
    expect(words).toEqual(["part: 3 faces do not lie in their bounds"]);
  });

  test("to a straight edge where the half circle between two corners belongs", () => {
    // From the corner -3.3 beside the hole's middle to the one 3.3 beside it.
    const words = strangersOf(/(#33=EDGE_CURVE\('',#26,#28,)#32,\.F\./, "$1#23,.T.");
    expect(words).toContain("part: a face does not lie in its bounds");
  });

  test("to a half circle that is run round the other half", () => {
    const words = strangersOf(/(EDGE_CURVE\('',#26,#28,#32,)\.F\./, "$1.T.");
    expect(words).toEqual(["part: a face does not lie in its bounds"]);
  });

  test("to a whole circle that is run the other way round", () => {
    const turned = HAND_CYLINDER.replace("#42,#42,#81,.T.", "#42,#42,#81,.F.");
    expect(turned).not.toBe(HAND_CYLINDER);
    expect(readStepFile(turned).strangers.join()).toContain("a face does not lie in its bounds");
  });
});

describe("the reader objects", () => {
  test("to nothing in a sound file", () => expect(readStepFile(sound).strangers).toEqual([]));

  test("to a corner that is moved by a micrometre", () => {
    const words = strangersOf("(146.05,57.15,3.)", "(146.051,57.151,3.001)");
    expect(words).toEqual([
      "part: 3 edges do not lie between their corners",
      "part: 3 faces do not lie in their bounds",
    ]);
  });

  test("to a circle that is a micrometre too wide", () => {
    const words = strangersOf(/(CIRCLE\('',#\d+),3\.3\)/, "$1,3.301)");
    expect(words).toEqual([
      "part: 2 edges do not lie between their corners",
      "part: 2 faces do not lie in their bounds",
    ]);
  });

  test("to a cylinder that is a micrometre too wide", () => {
    const words = strangersOf(/(CYLINDRICAL_SURFACE\('',#\d+),3\.3\)/, "$1,3.301)");
    expect(words).toEqual(["part: 2 faces do not lie in their bounds"]);
  });

  test("to a face that is left out", () => {
    const words = strangersOf(/(CLOSED_SHELL\('',\()#\d+,/, "$1");
    // The outline of four edges and four holes of two.
    expect(words).toEqual(["part: 12 edges have not two faces"]);
  });

  test("to an edge that is left out of its loop", () => {
    const words = strangersOf(/(EDGE_LOOP\('',\()#\d+,/, "$1");
    expect(words).toEqual(["part: the bound of a face is open", "part: an edge has not two faces"]);
  });

  test("to an edge that is run the wrong way", () => {
    const words = strangersOf(/(ORIENTED_EDGE\('',\*,\*,#\d+),\.T\./, "$1,.F.");
    expect(words.join()).toContain("the bound of a face is open");
  });

  test("to inches", () => {
    const words = strangersOf("SI_UNIT(.MILLI.,.METRE.)", "CONVERSION_BASED_UNIT('INCH',#1)");
    expect(words).toEqual(["its unit is not millimetres"]);
  });

  test("to a surface that it does not know, by its name", () => {
    const words = strangersOf(/CYLINDRICAL_SURFACE\(('',#\d+,3\.3)\)/, "CONICAL_SURFACE($1,0.1)");
    expect(words.join()).toContain("CONICAL_SURFACE where PLANE was looked for");
  });

  test("to an instance that is not there", () => {
    const [, number] = /CLOSED_SHELL\('',\((#\d+),/.exec(sound) ?? [];
    const words = strangersOf(new RegExp(`\n${number}=.*`), "");
    expect(words[0]).toBe(`instance ${number} is not there`);
  });

  test("to a number that is none", () => {
    expect(strangersOf("(146.05,57.15,3.)", "(146.05,5x.15,3.)")[0]).toMatch(/can't be read/);
  });

  test.each([
    ["nothing at all", ""],
    ["words", "ein Brief; mit 'Worten"],
    ["brackets without an end", `ISO-10303-21;DATA;#1=A(${"(".repeat(2000)};END-ISO-10303-21;`],
    [
      "brackets without an end by the hundred thousand",
      `ISO-10303-21;DATA;#1=A(${"(".repeat(1e5)};`,
    ],
    ["entities in entities by the hundred thousand", `ISO-10303-21;DATA;#1=${"A(".repeat(1e5)};`],
    ["a name of twenty million letters without an end", `ISO-10303-21;#1=A('${"x".repeat(2e7)}`],
    ["half a file", stepTextOf(drilledPlate).slice(0, 9000)],
  ])("to %s, and does not throw", (_what, text) => {
    expect(readStepFile(text).strangers.length).toBeGreaterThan(0);
  });
});

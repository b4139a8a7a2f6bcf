// What a frame's cheeks enclose, and what hangs out of it, against sums over the text by hand. Volumes by hand arithmetic.

import { describe, expect, test } from "vitest";
import type { OutsideFact } from "../../src/fit/fit-facts.ts";
import { prepareBodies, verdict } from "../../src/fit/verdict.ts";
import { extent } from "../../src/geometry/extent.ts";
import { contourArea } from "../../src/geometry/measure.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import { prism, type Solid, solidRegion } from "../../src/geometry/solid/solid.ts";
import { compile, fitOfProject } from "../../src/project.ts";
import { exampleTexts } from "../examples/example-projects.ts";
import { madeBody } from "../fit/made-bodies.ts";
import { openKernel } from "../support/kernel.ts";
import { testLibrary } from "../support/test-library.ts";
import { type FrameText, soundFrame } from "./framed.ts";

const kernel = await openKernel();

const volumeInside = (said: Partial<FrameText>): number => {
  const [unit, ...others] = soundFrame(said).units;
  expect(others).toEqual([]);
  if (unit === undefined) throw new Error("a frame has a unit");
  return volumeOf(unit.inside.solid);
};

/** Areas times how far it reaches across. */
const volumeOf = (solid: Solid): number => {
  if (solid.kind !== "layered") throw new Error("what the cheeks enclose is a prism");
  return solid.layers
    .flatMap(({ from, to, regions }) =>
      regions.map(({ outline }) => contourArea(outline.contour) * (to - from)),
    )
    .reduce((sum, volume) => sum + volume, 0);
};

const LEVEL =
  "aft: { mount: console-rail, at: [0, -420, 620], along: [1, 0, 0], length: 24 modules, depth: 120 mm }";

describe("what the cheeks enclose", () => {
  // Along: 24 x 9.525 and on both sides 0.5 of gap, a sheet of 11.6 and 15 beyond. Up: 620 and 15 beyond. Across: 127 clear
  // and 30 of bar and half a millimetre on both sides.
  test("of a level bay is a block", () => {
    const along = 24 * 9.525 + 2 * (0.5 + 11.6 + 15);
    expect(volumeInside({ bays: [LEVEL] })).toBeCloseTo(along * 635 * 188, 3);
  });

  test("of two sections leaves out what lies between them", () => {
    const apart =
      "forward: { mount: console-rail, at: [320, -420, 620], along: [1, 0, 0], length: 24 modules, depth: 120 mm }";
    const along = 24 * 9.525 + 2 * (0.5 + 11.6 + 15);
    const parted = volumeInside({ bays: [LEVEL, apart], bed: "[700, 500]" });
    expect(parted).toBeCloseTo(2 * along * 635 * 188, 3);
  });

  // Knees of 122.9 from the bay's beginning, 150 from the desk's own, by 620 are taken off its block, 520 wide: along 20 x 9.525 +
  // 54.2, up 800 + 15.
  test("of a desk leaves out the knees", () => {
    const near =
      "near: { mount: console-rail, at: [480, 0, 800], along: [1, 0, 0], length: 20 modules, depth: 80 mm }";
    const frame = "{ type: front-desk, sheet: birch-ply-12, knees: [122.9, 620] }";
    const side = (20 * 9.525 + 54.2) * 815 - 150 * 620;
    expect(volumeInside({ bays: [near], frame })).toBeCloseTo(side * 520, 3);
  });
});

// Each unit is its own inside: two columns 220 apart, of 188 between their cheeks each.
test("of two units is what each encloses, and not what lies between them", () => {
  const { units } = soundFrame({
    bays: [LEVEL, LEVEL.replace("aft:", "abreast:").replace("-420", "-200")],
  });
  const along = 24 * 9.525 + 2 * (0.5 + 11.6 + 15);
  expect(units.map(({ bays }) => bays)).toEqual([["aft"], ["abreast"]]);
  for (const { inside } of units) expect(volumeOf(inside.solid)).toBeCloseTo(along * 635 * 188, 3);
  // The origin lies at the right cheek's inner face, 94 to the right of the middle.
  expect(units.map(({ inside }) => inside.frame.origin.y)).toEqual([-514, -294]);
});

const TEXTS = (frame: string, more = ""): ReadonlyMap<string, string> =>
  new Map([
    [
      "console.yaml",
      `consolewright: 1
kind: console
name: stand
workshop: shed.yaml
bays:
  near: { mount: console-rail, at: [480, 0, 800], along: [1, 0, 0], length: 20 modules, depth: 80 mm }
panels:
  - { file: a.yaml, as: a, bay: near, module: 0 }
frame: ${frame}
${more}`,
    ],
    [
      "shed.yaml",
      `consolewright: 1
kind: workshop
name: shed
stock:
  plate: { material: aluminium, nominal: 2 mm, measured: 2 mm, dated: 2026-01-31 }
  ply: { material: plywood, nominal: 12 mm, measured: 11.6 mm, dated: 2026-01-31 }
`,
    ],
    [
      "a.yaml",
      "consolewright: 1\nkind: panel\nname: a\nworkshop: shed.yaml\nmount: console-rail\nheight: 10 modules\nstack: [{ layer: face, sheet: plate }]\n",
    ],
  ]);

/** Of a post that stands from the console's floor up, `low` and `high` its corners in console coordinates. */
const outsideOf = (
  texts: ReadonlyMap<string, string>,
  post: { readonly low: readonly number[]; readonly high: readonly number[] },
): readonly OutsideFact[] => {
  const { console, findings } = compile({ entry: "console.yaml", files: texts }, testLibrary());
  if (console?.frame === null || console === null)
    throw new Error(findings.map(({ message }) => message).join("\n"));
  const { low, high } = post;
  const solid: Solid = prism(
    low[2]!,
    high[2]!,
    solidRegion({
      outline: rectangle(extent(low[0]!, low[1]!, high[0]!, high[1]!)),
      holes: [],
    }),
  );
  const prepared = prepareBodies([madeBody("a/post", solid, { panel: "a" })], kernel);
  const { outside } = verdict(prepared, console.layout, { frame: console.frame });
  prepared.delete();
  return outside;
};

describe("what hangs out of a frame", () => {
  const OPEN = "{ type: front-desk, sheet: ply, knees: [122.9, 620], panels: [top] }";

  // The desk begins 27.1 before its bay, at 452.9; the knees go 122.9 in from the bay, to 602.9, and 620 up.
  test("into its knee space", () => {
    const [fact, ...others] = outsideOf(TEXTS(OPEN), { low: [520, -5, 600], high: [530, 5, 760] });
    expect(others).toEqual([]);
    expect(fact?.of).toBe("frame");
    expect(fact?.volume).toBeCloseTo(10 * 10 * 20, 3);
    expect(fact?.depth).toBeCloseTo(20, 3);
    expect(fact?.at.z).toBeCloseTo(610, 3);
  });

  // 4 mm wide, and 12.9 long past the cheeks' ends: the length counts, not the width. Corners lie on a grid of 2^-10 mm.
  test("past its open back", () => {
    const [fact] = outsideOf(TEXTS(OPEN), { low: [440, -2, 700], high: [500, 2, 704] });
    expect(fact?.volume).toBeCloseTo(12.9 * 4 * 4, 1);
    expect(fact?.depth).toBeCloseTo(12.9, 3);
  });

  test("between its cheeks nothing does", () => {
    expect(outsideOf(TEXTS(OPEN), { low: [452.9, -260, 620], high: [500, 260, 760] })).toEqual([]);
  });

  test("is held against a written envelope instead, where there is one", () => {
    const roomy =
      "envelope: { profile: [[300, 0], [900, 0], [900, 900], [300, 900]], across: [-300, 300] }\n";
    const tight = roomy.replace("[300, 0]", "[300, 710]").replace("[900, 0]", "[900, 710]");
    const post = { low: [440, -2, 700], high: [500, 2, 730] };
    expect(outsideOf(TEXTS(OPEN, roomy), post)).toEqual([]);
    const [fact] = outsideOf(TEXTS(OPEN, tight), post);
    expect(fact?.of).toBe("envelope");
    expect(fact?.depth).toBeCloseTo(10, 3);
  });

  test("is not asked where the envelope that is written goes round no surface", () => {
    const bad = "envelope: { profile: [[0, 0], [10, 10], [20, 20]], across: [-300, 300] }\n";
    expect(outsideOf(TEXTS(OPEN, bad), { low: [440, -2, 700], high: [500, 2, 730] })).toEqual([]);
  });

  // The neighbour's cheeks begin 8.8 beyond its own: what reaches into its room is out of the unit that carries the bay.
  test("into the unit beside it", () => {
    const texts = new Map(TEXTS(OPEN.replace("front-desk", "side-console")));
    const text = texts.get("console.yaml")!;
    const near = /^ {2}near: .*$/m.exec(text)![0];
    const abreast = near.replace("near:", "abreast:").replace("[480, 0, 800]", "[480, -220, 800]");
    texts.set("console.yaml", text.replace(near, `${near}\n${abreast}`));
    // From the middle to 150 to the right; the inside ends at 94.
    const [fact] = outsideOf(texts, { low: [520, -150, 700], high: [530, 0, 710] });
    expect(fact?.of).toBe("frame");
    expect(fact?.volume).toBeCloseTo(10 * 10 * 56, 3);
    expect(fact?.depth).toBeCloseTo(56, 3);
  });

  // At a frame turned to the left the profile turns with it.
  test("of a bay that runs to the left", () => {
    const turned = new Map(TEXTS(OPEN));
    const text = turned.get("console.yaml")!;
    turned.set(
      "console.yaml",
      text.replace("at: [480, 0, 800], along: [1, 0, 0]", "at: [0, 480, 800], along: [0, 1, 0]"),
    );
    const [fact] = outsideOf(turned, { low: [-2, 440, 700], high: [2, 500, 704] });
    expect(fact?.volume).toBeCloseTo(12.9 * 4 * 4, 1);
    expect(fact?.at.y).toBeCloseTo(446.45, 2);
  });
});

// The variant of the tug trainer whose plug hangs out of the frame's open back, with the back closed.
test("what stands in a board and on through it is told of once, where it meets the board", () => {
  const texts = new Map(Object.entries(exampleTexts("tug-trainer")));
  const entry = "variants/past-the-frame.yaml";
  const codesOf = (panels: string): readonly string[] => {
    const text = texts.get(entry)!.replace("panels: [top, floor]", `panels: ${panels}`);
    const files = new Map([...texts, [entry, text]]);
    const project = compile({ entry, files }, testLibrary());
    const { findings } = fitOfProject(project, project.console!, kernel);
    return findings.filter(({ severity }) => severity !== "note").map(({ code }) => code);
  };
  expect(codesOf("[top, floor]")).toEqual(["fit/outside-envelope"]);
  expect(codesOf("[top, floor, back]")).toEqual(["fit/plug-room"]);
});

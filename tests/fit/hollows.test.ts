// What stands in a hollow of a sheet or a printed wall, by the grade of a drag: against closed forms, and against the solid
// kernel, whose clashes it must never call free and whose gaps it must never call larger.

import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { exampleFiles } from "../../scripts/example-files.ts";
import { consoleBodies } from "../../src/fit/bodies/console-bodies.ts";
import { bodyGroups } from "../../src/fit/body-groups.ts";
import type { ConsoleBody } from "../../src/fit/console-body.ts";
import { dragStep } from "../../src/fit/drag-step.ts";
import { touchDepth } from "../../src/fit/fit-tolerance.ts";
import { hullRelation, pieceRelation } from "../../src/fit/hull-relation.ts";
import { kernelShapes } from "../../src/fit/kernel-shapes.ts";
import { pairRelation } from "../../src/fit/pair-relation.ts";
import { railScene } from "../../src/fit/rail-scene.ts";
import { circle, loop, point, vertex } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import {
  layered,
  prism,
  type Solid,
  solidLayer,
  solidRegion,
} from "../../src/geometry/solid/solid.ts";
import { frameWithin, WORLD } from "../../src/geometry/space/frame.ts";
import { vector } from "../../src/geometry/space/vector.ts";
import { compile } from "../../src/project.ts";
import { openKernel } from "../support/kernel.ts";
import { testLibrary } from "../support/test-library.ts";
import {
  anyFrame,
  between,
  boxSolid,
  cylinderSolid,
  madeBody,
  type Random,
  seeded,
} from "./made-bodies.ts";

/** 100 by 80, 14 deep, walls of 4 round one opening, and a round one of 30 in its middle web. */
const TRAY: Solid = prism(
  0,
  14,
  solidRegion({
    outline: rectangle(extent(0, 0, 100, 80)),
    holes: [rectangle(extent(4, 4, 50, 76)), circle(point(75, 40), 15)],
  }),
);

const boxAt = (x: number, y: number, size: readonly [number, number, number]): ConsoleBody =>
  madeBody("box", boxSolid(vector(...size)), {
    frame: { ...WORLD, origin: vector(x, y, -5) },
  });

const tray = madeBody("tray", TRAY);
const byDrag = (body: ConsoleBody, within = 5) => pieceRelation(tray, body, within);

describe("a box in the opening of a tray", () => {
  test("lies as far from its walls as the nearest of them", () => {
    // 7 - 4 on the left, more all round.
    const found = byDrag(boxAt(7, 20, [20, 20, 30]));
    expect(found).toMatchObject({ kind: "apart" });
    expect(found?.kind === "apart" && found.gap).toBeCloseTo(3, 9);
    expect(byDrag(boxAt(7, 20, [20, 20, 30]), 2)).toBeNull();
  });

  test("lies in the round one by the corner that comes nearest to it", () => {
    // Corners at 5√2 from the middle of a hole of radius 15.
    const found = byDrag(boxAt(70, 35, [10, 10, 30]), 10);
    expect(found?.kind === "apart" && found.gap).toBeCloseTo(15 - 5 * Math.SQRT2, 9);
  });

  test("meets it where it reaches into a wall, or stands in the web", () => {
    expect(byDrag(boxAt(2, 20, [20, 20, 30]))?.kind).toBe("meet");
    expect(byDrag(boxAt(40, 20, [30, 20, 30]))?.kind).toBe("meet");
    expect(byDrag(boxAt(53, 20, [4, 4, 30]))?.kind).toBe("meet");
  });

  test("is as far from its walls where it is named first", () => {
    const found = pieceRelation(boxAt(7, 20, [20, 20, 30]), tray, 5);
    expect(found?.kind === "apart" && found.gap).toBeCloseTo(3, 9);
  });

  test("meets the inner corner of an opening that comes in between its own corners", () => {
    const angle = loop([
      vertex(4, 4),
      vertex(96, 4),
      vertex(96, 40),
      vertex(50, 40),
      vertex(50, 76),
      vertex(4, 76),
    ]);
    const outline = rectangle(extent(0, 0, 100, 80));
    const bent = madeBody("tray", prism(0, 14, solidRegion({ outline, holes: [angle] })));
    // A square on its point: its corners are at 46, 15; 67.2, 36.2; 46, 57.4 and 24.8, 36.2, all in the opening. Its side from
    // the second to the third runs where x + y = 103.4, past the inner corner at 50, 40.
    const half = Math.SQRT1_2;
    const frame = {
      ...WORLD,
      x: vector(half, half, 0),
      y: vector(-half, half, 0),
      origin: vector(46, 15, -5),
    };
    const large = madeBody("box", boxSolid(vector(30, 30, 30)), { frame });
    expect(pieceRelation(bent, large, 30)?.kind).toBe("meet");
    // A smaller one stands clear, its lowest corner 11 above the wall.
    const small = madeBody("box", boxSolid(vector(10, 10, 30)), { frame });
    const found = pieceRelation(bent, small, 30);
    expect(found?.kind === "apart" && found.gap).toBeCloseTo(11, 9);
  });

  test("meets what else stands in the opening", () => {
    const full = madeBody(
      "tray",
      layered([
        solidLayer(mm(0), mm(14), [
          solidRegion({
            outline: rectangle(extent(0, 0, 100, 80)),
            holes: [rectangle(extent(4, 4, 96, 76))],
          }),
          solidRegion({ outline: rectangle(extent(40, 30, 60, 50)), holes: [] }),
        ]),
      ]),
    );
    expect(pieceRelation(full, boxAt(45, 35, [5, 5, 30]), 5)?.kind).toBe("meet");
  });
});

/** A cylinder or a box about in the tray, upright in it or askew. */
const anyTwo = (random: Random, round: number): readonly [ConsoleBody, ConsoleBody] => {
  const frame = anyFrame(random, 200);
  const stands = {
    ...(round % 2 === 0 ? WORLD : anyFrame(random, 1)),
    origin: vector(between(random, 0, 100), between(random, 0, 80), between(random, -10, 10)),
  };
  const size = (): number => between(random, 2, 30);
  const solid =
    round % 3 === 0 ? cylinderSolid(size() / 2, size()) : boxSolid(vector(size(), size(), size()));
  const two = [
    madeBody("a", TRAY, { frame }),
    madeBody("b", solid, { frame: frameWithin(frame, stands) }),
  ] as const;
  return round % 5 === 0 ? [two[1], two[0]] : two;
};

test("what is called free or apart is so for the kernel, wherever the two lie", async () => {
  const random = seeded(20_261_127);
  const shapes = kernelShapes(await openKernel());
  const found = Array.from({ length: 300 }, (_, round) => {
    const [a, b] = anyTwo(random, round);
    return {
      coarse: pieceRelation(a, b, 20),
      hulls: hullRelation(a, b, 20),
      fine: pairRelation(a, b, { shapes, within: 20 }),
    };
  });
  shapes.delete();
  const clashes = found.filter(({ fine }) => fine?.kind === "clash");
  expect(clashes.length).toBeGreaterThan(50);
  expect(clashes.filter(({ coarse }) => coarse?.kind !== "meet")).toEqual([]);
  const gaps = found.flatMap(({ coarse, hulls, fine }) =>
    coarse?.kind === "apart" && hulls?.kind === "meet" && fine?.kind === "apart"
      ? [coarse.gap - fine.gap]
      : [],
  );
  expect(gaps.length).toBeGreaterThan(20);
  expect(Math.max(...gaps)).toBeLessThanOrEqual(touchDepth);
});

/** Of the trainer the two whose spacers are open behind the components of the other. */
const twoOfTrainer = () => {
  const files = new Map(
    Object.entries(exampleFiles(resolve(import.meta.dirname, "../.."))["tug-trainer"] ?? {}),
  );
  const bay = (files.get("console.yaml") ?? "")
    .split("\n")
    .filter((line) => !/frame:|- \{ name: seat|obstacles:|as: (?!alarms|radio)/.test(line))
    .join("\n")
    .replace("after: winch", "module: 31");
  const project = compile(
    { entry: "console.yaml", files: files.set("console.yaml", bay) },
    testLibrary(),
  );
  const { layout } = project.console!;
  const printedParts = new Map(project.panels.map((panel) => [panel.name, panel.printedParts]));
  return { layout, bodies: consoleBodies({ layout, printedParts, frame: null }) };
};

test("a panel dragged over another's printed spacer clashes with what the kernel says, and with nothing else", async () => {
  const { layout, bodies } = twoOfTrainer();
  const dragged = dragStep(
    railScene(bodyGroups(bodies), layout.bays[0]!.frame),
    { panel: "radio", by: -3 * 9.525 },
    (panel) => (panel === "alarms" ? 0 : null),
  );
  const shapes = kernelShapes(await openKernel());
  const met = dragged.filter(
    ({ a, b, relation }) => relation.kind === "meet" && [a.role, b.role].includes("print"),
  );
  const hollow = met.filter(
    ({ a, b }) => pairRelation(a, b, { shapes, within: 0 })?.kind !== "clash",
  );
  shapes.delete();
  // Nine more were counted while hollows were taken for full: keys of the one within the spacer of the other.
  expect(met.length).toBeGreaterThan(20);
  expect(hollow.map(({ a, b }) => `${a.id} and ${b.id}`)).toEqual([]);
});

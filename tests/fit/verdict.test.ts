// What a verdict says of planted bodies, and what must not change it: the order in which they come, where the console stands,
// how often it is asked.

import { beforeAll, describe, expect, test } from "vitest";
import type { ConsoleBody } from "../../src/fit/console-body.ts";
import type { FitFacts } from "../../src/fit/fit-facts.ts";
import { prepareBodies, type Verdict, verdict } from "../../src/fit/verdict.ts";
import { circle, point } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { layered, prism, solidLayer, solidRegion } from "../../src/geometry/solid/solid.ts";
import { type Frame, frameWithin, pointOut, WORLD } from "../../src/geometry/space/frame.ts";
import { boxInFrame } from "../../src/geometry/space/space-box.ts";
import { minus, vector, vectorLength } from "../../src/geometry/space/vector.ts";
import { openGaugedKernel } from "../support/kernel.ts";
import { emptyConsole } from "./empty-console.ts";
import {
  anyFrame,
  anyVector,
  between,
  boxSolid,
  cylinderSolid,
  madeBody,
  seeded,
} from "./made-bodies.ts";

let kernel: Kernel;
let memorySize: () => number;
beforeAll(async () => {
  ({ kernel, memorySize } = await openGaugedKernel());
});

const verdictOf = (bodies: readonly ConsoleBody[]): Verdict => {
  const prepared = prepareBodies(bodies, kernel);
  try {
    return verdict(prepared, emptyConsole());
  } finally {
    prepared.delete();
  }
};

const at = (x: number, y = 0, z = 0): { readonly frame: Frame } => ({
  frame: { ...WORLD, origin: vector(x, y, z) },
});

const cube = boxSolid(vector(10, 10, 10));

const kinds = ({ pairs }: Pick<FitFacts, "pairs">): readonly string[] =>
  pairs.map(({ a, b, relation }) => `${a.id} ${b.id} ${relation.kind}`);

describe("two planted bodies", () => {
  test("one wholly within the other: it shares all of itself", () => {
    const small = boxSolid(vector(2, 3, 4));
    const { pairs } = verdictOf([madeBody("a", cube), madeBody("b", small, at(3, 3, 3))]);
    expect(pairs).toHaveLength(1);
    expect(pairs[0]!.relation).toMatchObject({ kind: "clash", isWithin: true });
    const { relation } = pairs[0]!;
    if (relation.kind !== "clash") throw new Error(relation.kind);
    expect(relation.volume).toBeCloseTo(24, 9);
    expect(relation.depth).toBeCloseTo(2, 9);
    expect(vectorLength(minus(relation.at, vector(4, 4.5, 5)))).toBeLessThan(1e-9);
  });

  test.each([
    ["face to face", at(10)],
    ["edge to edge", at(10, 10)],
    ["corner to corner", at(10, 10, 10)],
    ["face to face in part", at(4, 10, 3)],
    ["half a thousandth apart", at(10.0005)],
    ["half a thousandth in", at(9.9995)],
  ])("touch: %s", (_how, place) => {
    expect(kinds(verdictOf([madeBody("a", cube), madeBody("b", cube, place)]))).toEqual([
      "a b touching",
    ]);
  });

  test("a cylinder on a face of its own height touches at each quarter", () => {
    const post = cylinderSolid(7.3, 10);
    for (const place of [at(-7.3, 5), at(17.3, 5), at(5, -7.3), at(5, 17.3)])
      expect(kinds(verdictOf([madeBody("a", cube), madeBody("b", post, place)]))).toEqual([
        "a b touching",
      ]);
  });

  test("two hundredths apart are apart, two hundredths in clash", () => {
    expect(kinds(verdictOf([madeBody("a", cube), madeBody("b", cube, at(10.02))]))).toEqual([
      "a b apart",
    ]);
    expect(kinds(verdictOf([madeBody("a", cube), madeBody("b", cube, at(9.98))]))).toEqual([
      "a b clash",
    ]);
  });

  test("bodies of one panel, and two of the console's own, are not held against one another", () => {
    const same = [
      madeBody("a", cube, { panel: "winch" }),
      madeBody("b", cube, { panel: "winch" }),
      madeBody("c", cube, { panel: null, ...at(100) }),
      madeBody("d", cube, { panel: null, ...at(101) }),
    ];
    expect(verdictOf(same).pairs).toEqual([]);
  });
});

describe("hollow bodies", () => {
  const ring = (hole: number) =>
    prism(
      0,
      5,
      solidRegion({
        outline: rectangle(extent(-20, -20, 20, 20)),
        holes: [circle(point(0, 0), hole)],
      }),
    );

  test("a peg in a hole is as far from it as the two radii differ", () => {
    const { pairs } = verdictOf([
      madeBody("a", ring(6)),
      madeBody("b", cylinderSolid(4, 20), at(0, 0, -5)),
    ]);
    const relation = pairs[0]?.relation;
    if (relation?.kind !== "apart") throw new Error("not apart");
    // Facets of the hole stand 0.005 mm off at most, those of the peg 0.004.
    expect(Math.abs(relation.gap - 2)).toBeLessThan(0.01);
  });

  test("a peg too thick for its hole shares the ring round it", () => {
    const { pairs } = verdictOf([
      madeBody("a", ring(6)),
      madeBody("b", cylinderSolid(8, 20), at(0, 0, -5)),
    ]);
    const relation = pairs[0]?.relation;
    if (relation?.kind !== "clash") throw new Error("no clash");
    expect(relation.volume / (Math.PI * (64 - 36) * 5)).toBeCloseTo(1, 2);
  });

  test("what stands in the corner of an L is not in it", () => {
    const corner = layered([
      solidLayer(0, 10, [
        solidRegion({
          outline: {
            kind: "loop",
            vertices: [
              [0, 0],
              [40, 0],
              [40, 10],
              [10, 10],
              [10, 40],
              [0, 40],
            ].map(([x, y]) => ({ ...point(x!, y!), bulge: 0 })),
          },
          holes: [],
        }),
      ]),
    ]);
    const { pairs } = verdictOf([madeBody("a", corner), madeBody("b", cube, at(13, 14, 0))]);
    const relation = pairs[0]?.relation;
    if (relation?.kind !== "apart") throw new Error("not apart");
    expect(relation.gap).toBeCloseTo(3, 3);
  });
});

describe("a crowd of bodies", () => {
  const random = seeded(5);
  const crowd = Array.from({ length: 120 }, (_, index): ConsoleBody => {
    const size = vector(between(random, 3, 12), between(random, 3, 12), between(random, 3, 12));
    const solid = index % 3 === 0 ? cylinderSolid(size.x / 2, size.y) : boxSolid(size);
    const panel = index % 10 === 0 ? null : `panel-${index % 7}`;
    return madeBody(`body-${String(index).padStart(3, "0")}`, solid, {
      panel,
      frame: { ...anyFrame(random, 0), origin: anyVector(random, 45) },
    });
  });

  test("is judged alike in whatever order it comes", () => {
    const plain = verdictOf(crowd);
    expect(plain.pairs.length).toBeGreaterThan(50);
    expect(verdictOf(crowd.toReversed())).toEqual(plain);
    const shuffled = crowd.toSorted((a, b) => (a.box.minY < b.box.minY ? -1 : 1));
    expect(verdictOf(shuffled)).toEqual(plain);
  });

  test("is judged alike wherever the console stands", () => {
    const console = anyFrame(random, 3000);
    const moved = crowd.map((body): ConsoleBody => {
      const frame = frameWithin(console, body.frame);
      if (body.shape.kind !== "recipe") throw new Error("a recipe");
      return { ...body, frame, box: boxInFrame(body.shape.solid, frame) };
    });
    const [here, there] = [verdictOf(crowd), verdictOf(moved)];
    expect(kinds(there)).toEqual(kinds(here));
    for (const [index, { relation }] of here.pairs.entries()) {
      const other = there.pairs[index]!.relation;
      if (relation.kind === "clash" && other.kind === "clash")
        expect(other.volume).toBeCloseTo(relation.volume, 6);
      if (relation.kind === "apart" && other.kind === "apart")
        expect(other.gap).toBeCloseTo(relation.gap, 7);
      // The middle of a shortest line is one of many between parallel faces; of what is shared there is one.
      if (relation.kind === "clash")
        expect(vectorLength(minus(pointOut(console, relation.at), other.at))).toBeLessThan(1e-6);
    }
  });

  test("leaves nothing behind in the kernel, however often it is judged", () => {
    const few = crowd.slice(0, 40);
    const once = (): void => {
      verdictOf(few);
    };
    expect(kinds(verdictOf(few)).some((kind) => kind.endsWith("clash"))).toBe(true);
    for (let round = 0; round < 20; round += 1) once();
    const before = memorySize();
    for (let round = 0; round < 200; round += 1) once();
    expect(memorySize()).toBe(before);
  });

  test("holds one shape for each recipe that was asked for, and none when it is deleted", () => {
    const prepared = prepareBodies(crowd, kernel);
    verdict(prepared, emptyConsole());
    verdict(prepared, emptyConsole());
    expect(prepared.shapes.count()).toBeGreaterThan(10);
    expect(prepared.shapes.count()).toBeLessThanOrEqual(crowd.length);
    prepared.delete();
    expect(prepared.shapes.count()).toBe(0);
  });
});

describe("a panel's sheet and a rib", () => {
  const slab = boxSolid(vector(10, 10, 2));
  const kindsOf = (up: number, role: ConsoleBody["role"]): readonly string[] =>
    kinds(
      verdictOf([
        madeBody("rib", cube, { role: "rib", panel: null }),
        madeBody("sheet", slab, { role, ...at(0, 0, up) }),
      ]),
    );

  test("that lies on the rib's tab is borne by it, as by a rail: no fact", () => {
    expect(kindsOf(10, "layer")).toEqual([]);
  });

  test("that reaches into it, or stands off it, is one; so is a case that touches it", () => {
    expect(kindsOf(9, "layer")).toEqual(["rib sheet clash"]);
    expect(kindsOf(10.2, "layer")).toEqual(["rib sheet apart"]);
    expect(kindsOf(10, "rear")).toEqual(["rib sheet touching"]);
  });
});

// Planted cases, each of which must give exactly its finding: a body within another, two that touch, a plug at a rib, a panel
// that is too wide. And what levers and boards become as bodies.

import { beforeAll, describe, expect, test } from "vitest";
import type { Lever } from "../../src/catalogue/part.ts";
import { nearLimit } from "../../src/checks/fit/near-limits.ts";
import { judgeFit } from "../../src/checks/fit/rules.ts";
import type { Finding } from "../../src/diagnostics/finding.ts";
import type { ConsoleBody } from "../../src/fit/console-body.ts";
import type { FitFacts } from "../../src/fit/fit-facts.ts";
import { prepareBodies, verdict } from "../../src/fit/verdict.ts";
import { extent } from "../../src/geometry/extent.ts";
import { degrees, mm } from "../../src/geometry/quantity.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { prism, type Solid, solidRegion } from "../../src/geometry/solid/solid.ts";
import { pointIn, turnedFrame, WORLD } from "../../src/geometry/space/frame.ts";
import { vector } from "../../src/geometry/space/vector.ts";
import { toRadians } from "../../src/geometry/trigonometry.ts";
import type { ConsoleLayout } from "../../src/layout/console/console-layout.ts";
import { openKernel } from "../support/kernel.ts";
import { testLibrary } from "../support/test-library.ts";
import { consoleOf, panelOf } from "./console-of.ts";
import { emptyConsole } from "./empty-console.ts";
import { boxSolid, cylinderSolid, madeBody } from "./made-bodies.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await openKernel();
});

const NOTHING: Omit<FitFacts, "bodies" | "pairs" | "outside" | "latches" | "depths"> = {
  lifts: [],
  drivers: [],
  loops: [],
  hands: [],
  reaches: [],
  sights: [],
  knees: null,
  frontEdges: [],
  tolerances: [],
};

const judged = (
  bodies: readonly ConsoleBody[],
  layout: ConsoleLayout = emptyConsole(),
): readonly Finding[] => {
  const prepared = prepareBodies(bodies, kernel);
  try {
    return judgeFit({
      layout,
      frame: null,
      workshop: null,
      catalogue: testLibrary().catalogue,
      fit: { ...NOTHING, bodies, ...verdict(prepared, layout) },
      edit: (span, text) => ({ ...span, baseHash: "", text }),
      texts: new Map(),
    });
  } finally {
    prepared.delete();
  }
};

const said = (findings: readonly Finding[]): readonly string[] =>
  findings.map(
    ({ severity, code, measured, limit }) =>
      `${severity} ${code} ${measured?.value ?? ""} ${limit?.value ?? ""}`,
  );

const at = (x: number, y = 0, z = 0): Pick<ConsoleBody, "frame"> => ({
  frame: { ...WORLD, origin: vector(x, y, z) },
});

const block = (sizeX: number, sizeY: number, sizeZ: number): Solid =>
  boxSolid(vector(sizeX, sizeY, sizeZ));

describe("planted bodies", () => {
  test("a body wholly within another is one fault, and says so", () => {
    const findings = judged([
      madeBody("a", block(30, 30, 30)),
      madeBody("b", cylinderSolid(3, 10), at(15, 15, 10)),
    ]);
    expect(said(findings)).toEqual(["fault fit/clash -6 0"]);
    expect(findings[0]!.message).toContain("one stands wholly within the other");
  });

  test("two that touch are one query", () => {
    const findings = judged([
      madeBody("a", block(30, 30, 30)),
      madeBody("b", block(5, 5, 5), at(30, 10, 10)),
    ]);
    expect(said(findings)).toEqual(["query fit/touching 0 0"]);
  });

  test("ten things of one panel in one rib are one fault", () => {
    const rib = madeBody("rib 1", block(100, 100, 18), { panel: null, role: "rib" });
    const cases = Array.from({ length: 10 }, (_, index) =>
      madeBody(`winch/${index}/case`, block(5, 5, 30), {
        panel: "winch",
        ...at(9 * index, 20, -6),
      }),
    );
    const findings = judged([rib, ...cases]);
    expect(said(findings)).toEqual(["fault fit/clash -5 0"]);
    expect(findings[0]!.suppressed).toBe(9);
  });

  test("a plug 18 mm from a rib with a 25 mm bend is one fault with both numbers", () => {
    // The board ends at x = 0; its plug with the bend needs 25 mm before it, the rib stands at 18.
    const board = madeBody("winch/tray/board", block(40, 20, 2), { panel: "winch", ...at(-40, 0) });
    const plug = madeBody("winch/tray/board/usb", block(25, 10, 8), {
      panel: "winch",
      role: "plug",
      ...at(0, 5),
    });
    const own = [board, plug].map((body, index) => ({
      ...body,
      thing: "board",
      what: index === 0 ? "board" : "plug of usb",
      span: board.span,
    }));
    const rib = madeBody("rib 1", block(18, 80, 80), {
      panel: null,
      role: "rib",
      ...at(18, -30, -30),
    });
    const findings = judged([...own, rib]);
    expect(said(findings)).toEqual(["fault fit/plug-room 18 25"]);
    expect(findings[0]!.message).toContain("7 mm too little");
    // Turned by a half it looks the other way.
    const turned = own.map((body) => ({
      ...body,
      frame: turnedFrame(body.frame, {
        about: WORLD.z,
        through: vector(-20, 10, 0),
        by: degrees(180),
      }),
    }));
    expect(judged([...turned.map(boxed), rib])).toEqual([]);
  });

  test("half a plug's width aside of the rib is room enough", () => {
    const plug = madeBody("winch/tray/board/usb", block(25, 10, 8), {
      panel: "winch",
      role: "plug",
    });
    const rib = madeBody("rib 1", block(18, 80, 80), { panel: null, role: "rib", ...at(18, 10.5) });
    expect(judged([plug, rib])).toEqual([]);
  });
});

/** The box anew, for a body whose frame was turned. */
const boxed = (body: ConsoleBody): ConsoleBody =>
  body.shape.kind === "recipe"
    ? {
        ...madeBody(body.id, body.shape.solid, body),
        thing: body.thing,
        what: body.what,
        span: body.span,
      }
    : body;

const TWO_WIDTHS = (clear: string): string => `bays:
  aft: { mount: corner-screws, at: [0, 0, 600], along: [1, 0, 0], length: 80.4 mm, depth: 60 mm, clear-width: ${clear} }
panels:
  - { file: lid.yaml, as: lid, bay: aft, module: 0 }
`;
const LID = "mount: corner-screws\nwidth: 120 mm\nheight: 80 mm\n";

describe("a panel in its bay", () => {
  test.each([
    ["0.4 mm too wide", "119.6 mm", ["fault fit/panel-too-wide 120 119.6"]],
    ["just as wide", "120 mm", []],
    ["narrower", "120.4 mm", []],
  ])("%s", (_what, clear, expected) => {
    const { layout, bodies } = consoleOf(TWO_WIDTHS(clear), { lid: LID });
    expect(said(judged(bodies, layout))).toEqual(expected);
  });

  test("lies on its rails, beside its neighbour at the mount's own pitch, and nothing is said of it", () => {
    const { layout, bodies } = consoleOf(
      `bays:
  aft: { mount: console-rail, at: [0, 0, 600], along: [1, 0, 0], length: 20 modules, depth: 60 mm, slope: 17, cant: 8 }
panels:
  - { file: a.yaml, as: a, bay: aft, module: 0 }
  - { file: b.yaml, as: b, bay: aft, module: 10 }
`,
      { a: "", b: "" },
    );
    const prepared = prepareBodies(bodies, kernel);
    const { pairs } = verdict(prepared, layout);
    prepared.delete();
    // 0.175 a side (the mount's undersize): 0.35 from sheet to sheet, and no word of the rails.
    expect(pairs.map(({ a, b, relation }) => [a.id, b.id, relation.kind])).toEqual([
      ["a/face", "b/face", "apart"],
    ]);
    const relation = pairs[0]!.relation;
    expect(relation.kind === "apart" ? relation.gap : 0).toBeCloseTo(0.35, 6);
    expect(judged(bodies, layout)).toEqual([]);
  });
});

/** Points of the upright lever's wall, leaning about the seat by every twentieth of its throw. */
const leaningWall = (lever: Lever): readonly { readonly x: number; readonly y: number }[] =>
  Array.from({ length: 41 }, (_, step) =>
    toRadians(degrees(lever.throw * (step / 20 - 1))),
  ).flatMap((lean) =>
    [-1, 1].flatMap((side) =>
      [8.3, 12, 16, lever.length].map((height) => {
        const half = (side * lever.tip) / 2;
        return {
          x: half * Math.cos(lean) + height * Math.sin(lean),
          y: height * Math.cos(lean) - half * Math.sin(lean),
        };
      }),
    ),
  );

describe("bodies of a panel", () => {
  const made = consoleOf(
    `bays:
  aft: { mount: console-rail, at: [0, 0, 600], along: [1, 0, 0], length: 20 modules, depth: 60 mm }
panels:
  - { file: a.yaml, as: a, bay: aft, module: 0 }
`,
    { a: "components:\n  main: { part: toggle-6, at: { x: 60 mm, y: 40 mm }, turn: 30 deg }\n" },
  );

  test("a lever's sweep holds the lever at every lean", () => {
    const sweep = made.bodies.find(({ role }) => role === "sweep");
    const panel = panelOf(made, "a");
    const component = panel.layout.components[0]!;
    const lever = component.part.lever!;
    if (sweep?.shape.kind !== "recipe" || sweep.shape.solid.kind !== "layered")
      throw new Error("no sweep");
    const [layer] = sweep.shape.solid.layers;
    const fan = layer!.regions[0]!.outline.contour;
    if (fan.kind !== "loop") throw new Error("no fan");
    expect(layer!.to).toBeCloseTo(lever.tip / 2, 9);
    expect(layer!.from).toBeCloseTo(-lever.tip / 2, 9);
    for (const { x, y } of leaningWall(lever))
      for (const [index, from] of fan.vertices.entries()) {
        const to = fan.vertices[(index + 1) % fan.vertices.length]!;
        const turn = (to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x);
        expect(turn).toBeGreaterThan(-1e-9);
      }
    // No more than a tenth of a millimetre over the circle of its tip.
    const reach = Math.sqrt(lever.length ** 2 + (lever.tip / 2) ** 2);
    for (const { x, y } of fan.vertices) expect(Math.sqrt(x * x + y * y)).toBeLessThan(reach + 0.1);
  });

  test("the sweep leans along the throw, turned with its part", () => {
    const sweep = made.bodies.find(({ role }) => role === "sweep")!;
    const panel = panelOf(made, "a");
    const along = pointIn({ ...panel.frame, origin: vector(0, 0, 0) }, sweep.frame.x);
    // The throw runs up and down (clock 0); turned by 30 degrees counter-clockwise it runs along (-1/2, sqrt(3)/2).
    expect(along.x).toBeCloseTo(-0.5, 12);
    expect(along.y).toBeCloseTo(Math.sqrt(0.75), 12);
    expect(along.z).toBeCloseTo(0, 12);
  });
});

describe("the table of room", () => {
  const rear = madeBody("a", block(1, 1, 1), { panel: "a" });
  const of = (role: ConsoleBody["role"], panel: string | null = "b"): ConsoleBody =>
    madeBody("b", block(1, 1, 1), { role, panel });
  const room = (one: ConsoleBody, other: ConsoleBody): number | null =>
    nearLimit(one, other, { layout: emptyConsole(), workshop: null })?.room ?? null;

  test("asks the same whichever comes first", () => {
    expect(room(rear, of("rib", null))).toBe(2);
    expect(room(of("rib", null), rear)).toBe(2);
    expect(room(rear, of("rear"))).toBe(1);
    expect(room(rear, of("sweep"))).toBe(3);
    expect(room(of("sweep"), of("layer"))).toBe(3);
    expect(room(rear, of("cable"))).toBeNull();
  });

  test("has a row for a sheet at a wall", () => {
    expect(room(of("layer"), of("wall", null))).toBe(mm(0));
  });
});

test("a body of the rail's own depth below a bay is no part of the envelope's outside", () => {
  const { layout, bodies } = consoleOf(
    `bays:
  aft: { mount: console-rail, at: [0, 0, 600], along: [1, 0, 0], length: 20 modules, depth: 60 mm }
panels:
  - { file: a.yaml, as: a, bay: aft, module: 0 }
envelope:
  profile: [[0, 560], [200, 560], [200, 600], [0, 600]]
  across: [-80, 80]
`,
    { a: "components:\n  main: { part: push-button-16, at: centre }\n" },
  );
  // Its cable ends 40 mm behind the seat: on the floor of the envelope, which is inside.
  const prepared = prepareBodies(bodies, kernel);
  const { outside, depths } = verdict(prepared, layout);
  prepared.delete();
  expect(outside).toEqual([]);
  expect(depths.map(({ takes }) => takes)).toEqual([expect.closeTo(40, 6)]);
});

const rectangleSolid = (box: ReturnType<typeof extent>, from: number, to: number): Solid =>
  prism(from, to, solidRegion({ outline: rectangle(box), holes: [] }));

test("what stands out of the envelope is measured behind the seat alone", () => {
  const { layout } = consoleOf(
    `bays:
  aft: { mount: console-rail, at: [0, 0, 600], along: [1, 0, 0], length: 20 modules, depth: 60 mm }
panels:
  - { file: a.yaml, as: a, bay: aft, module: 0 }
envelope:
  profile: [[0, 560], [200, 560], [200, 600], [0, 600]]
  across: [-80, 80]
`,
    { a: "" },
  );
  const panel = panelOf({ layout, bodies: [], texts: new Map() }, "a");
  // From 20 mm before the face to 45 mm behind the seat, which is 2 mm behind it: 5 mm of 4 x 6 stand through the floor.
  const post = madeBody("a/post", rectangleSolid(extent(50, 50, 54, 56), -47, 20), {
    panel: "a",
    frame: panel.frame,
  });
  const prepared = prepareBodies([post], kernel);
  const { outside } = verdict(prepared, layout);
  prepared.delete();
  expect(outside).toHaveLength(1);
  expect(outside[0]!.volume).toBeCloseTo(5 * 4 * 6, 6);
  expect(outside[0]!.depth).toBeCloseTo(5, 3);
});

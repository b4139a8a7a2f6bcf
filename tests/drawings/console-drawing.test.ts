// Drawings of a console against hand arithmetic: what dimensions say, where a cut runs, which scale is taken.

import { describe, expect, test } from "vitest";
import { visibleAnchors } from "../../src/drawings/console-anchors.ts";
import { bodyCut } from "../../src/drawings/console-cut.ts";
import { viewDimensions } from "../../src/drawings/console-dimensions.ts";
import { consoleSheets } from "../../src/drawings/console-drawing.ts";
import { operatorView } from "../../src/drawings/console-operator.ts";
import { isFitting, possibleScales } from "../../src/drawings/console-scale.ts";
import { FRONT, onSheet, PLAN, SIDE } from "../../src/drawings/console-view.ts";
import { svgDrawing } from "../../src/export/svg-drawing.ts";
import type { ConsoleBody } from "../../src/fit/console-body.ts";
import { circle, point } from "../../src/geometry/contour.ts";
import { convexHull } from "../../src/geometry/convex-hull.ts";
import { extent, extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import { contourExtent, pathExtent, pathLength, regionArea } from "../../src/geometry/measure.ts";
import { degrees, mm } from "../../src/geometry/quantity.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import type { Mesh } from "../../src/geometry/solid/mesh.ts";
import { meshSolid } from "../../src/geometry/solid/mesh-solid.ts";
import {
  composed,
  placed,
  prism,
  type Solid,
  solidRegion,
} from "../../src/geometry/solid/solid.ts";
import { turnedFrame, WORLD } from "../../src/geometry/space/frame.ts";
import { boxInFrame } from "../../src/geometry/space/space-box.ts";
import { vector } from "../../src/geometry/space/vector.ts";
import { deskProject, sceneOf } from "../pack/desk-console.ts";
import { openKernel } from "../support/kernel.ts";

const project = deskProject();
const scene = sceneOf(project);
const options = {
  findings: project.findings,
  lettering: project.lettering,
  room: { width: 182, height: 260 },
};
const sheets = consoleSheets(scene, options);
const sheet = (id: string) => {
  const found = sheets.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no sheet ${id}`);
  return found;
};
const said = (id: string, what: string): number | undefined =>
  sheet(id).said.find((each) => each.what === what)?.value;

test("the design of these tests has no fault", () => {
  expect(project.findings.filter(({ severity }) => severity === "fault")).toEqual([]);
});

test("a plan, two elevations and a section a bay, each on one page", () => {
  expect(sheets.map(({ id }) => id)).toEqual([
    "plan",
    "side",
    "front",
    "section-level",
    "section-raised",
  ]);
  for (const { drawing } of sheets)
    expect(
      isFitting(
        { width: extentWidth(drawing.box), height: extentHeight(drawing.box) },
        options.room,
      ),
    ).toBe(true);
});

test("dimensions of a plan stand outside what is drawn and the operator", () => {
  const plan = { ...PLAN, scale: 10 };
  // A bay of 190.5 to the front, 73.025 to the left of its middle; an obstacle and the operator reach 400 to the left.
  const drawn = extent(-10, 0, 10, 20);
  const clear = extent(-40, -5, 10, 20);
  const { items } = viewDimensions(null, scene.layout, {
    view: plan,
    drawn,
    round: clear,
    clear,
    cut: null,
  });
  const strokes = items.flatMap((item) => (item.kind === "stroke" ? item.paths : []));
  // The lines of dimensions are the long ones; what leads to them runs square to them.
  const upright = strokes.map(pathExtent).filter(({ minX, maxX }) => maxX - minX < 1e-6);
  const lengths = upright.filter(({ minY, maxY }) => Math.abs(maxY - minY - 19.05) < 1e-6);
  expect(lengths.length).toBeGreaterThan(0);
  for (const { minX } of lengths) expect(minX).toBeLessThan(-40);
});

/** Bays side by side, or over one another: each as wide and long as the level one, its middle line through its own origin. */
const planOf = (
  origins: readonly (readonly [number, number, number])[],
  along: readonly [number, number],
) => {
  const level = scene.layout.bays.find(({ id }) => id === "level");
  if (level === undefined) throw new Error("the level bay is laid out");
  const [forward, left] = along;
  const bays = origins.map(([x, y, z], index) => ({
    ...level,
    id: `wing-${index + 1}`,
    frame: {
      x: vector(left, -forward, 0),
      y: vector(forward, left, 0),
      z: vector(0, 0, 1),
      origin: vector(x, y, z),
    },
  }));
  const drawn = extent(-60, -60, 60, 60);
  return viewDimensions(
    null,
    { ...scene.layout, bays, operator: null },
    { view: { ...PLAN, scale: 10 }, drawn, round: drawn, clear: drawn, cut: null },
  );
};

/** The long strokes: lines of lengths, 190.5 mm at 1:10, as their ends. */
const lengthLines = ({ items }: ReturnType<typeof planOf>) =>
  items
    .flatMap((item) => (item.kind === "stroke" ? item.paths : []))
    .filter((path) => Math.abs(pathLength(path) - 19.05) < 1e-6)
    .map(({ vertices }) => [vertices[0]!, vertices.at(-1)!] as const);

test("dimensions of two wing bays that run side by side, askew in plan, stand beside each", () => {
  // Along 0.8 forward and 0.6 to the left; 150 mm apart, square to that.
  const plan = planOf(
    [
      [0, 0, 700],
      [90, -120, 700],
    ],
    [0.8, 0.6],
  );
  expect(
    plan.said.filter(({ what }) => what.startsWith("length of")).map(({ value }) => value),
  ).toEqual([190.5, 190.5].map((value) => expect.closeTo(value, 9)));
  expect(lengthLines(plan)).toHaveLength(2);
});

test("lines of two bays askew in plan that would meet stand a row apart", () => {
  // One over the other: seen from above they are one place.
  const [one, other] = lengthLines(
    planOf(
      [
        [0, 0, 700],
        [0, 0, 900],
      ],
      [0.8, 0.6],
    ),
  );
  if (one === undefined || other === undefined) throw new Error("each bay has its length");
  const [[a, b], [c]] = [one, other];
  const across = ((c.x - a.x) * (b.y - a.y) - (c.y - a.y) * (b.x - a.x)) / 19.05;
  // 6 mm on the paper, as between two lines along the edges.
  expect(Math.abs(across)).toBeCloseTo(6, 6);
});

test("sections are cut where a bay's text asks for them, each place once", () => {
  const bays = scene.layout.bays.map((bay) =>
    bay.id === "level"
      ? { ...bay, design: { ...bay.design, sections: [20, 150, 20].map(mm) } }
      : bay,
  );
  const asked = consoleSheets({ ...scene, layout: { ...scene.layout, bays } }, options);
  const ids = asked.map(({ id }) => id).filter((id) => id.startsWith("section-"));
  expect(ids).toEqual(["section-level-20", "section-level-150", "section-raised"]);
  // Each shows what stands there: a cut through another place has other areas.
  const [first, second] = asked.filter(({ id }) => id.startsWith("section-level"));
  expect(JSON.stringify(first?.drawing.items)).not.toBe(JSON.stringify(second?.drawing.items));
  expect(first?.said.find(({ what }) => what === "width of level")?.value).toBeCloseTo(146.05, 9);
});

test("dimensions say the design's own figures, and only where the view shows them true", () => {
  // 20 and 10 modules of 9.525 mm (MIL-F-25173A); a rail's panels are 146.05 wide.
  expect(said("plan", "length of level")).toBeCloseTo(190.5, 9);
  expect(said("plan", "length of raised")).toBeUndefined();
  expect(said("side", "length of raised")).toBeCloseTo(95.25, 9);
  expect(said("plan", "width of level")).toBeCloseTo(146.05, 9);
  expect(said("side", "beginning of level above the floor")).toBeCloseTo(700, 9);
  // 700 and 95.25 sin 30°.
  expect(said("side", "end of raised above the floor")).toBeCloseTo(747.625, 9);
  expect(said("side", "seat above the floor")).toBeCloseTo(430, 9);
  expect(said("section-raised", "depth of raised")).toBeCloseTo(120, 9);
  expect(said("section-level", "width of level")).toBeCloseTo(146.05, 9);
});

test("views: the operator's right is right in plan and in front, forward is right in the side view", () => {
  const at = vector(30, 20, 10);
  expect(onSheet(PLAN, at)).toEqual({ x: -20, y: 30 });
  expect(onSheet(SIDE, at)).toEqual({ x: 30, y: 10 });
  expect(onSheet({ ...FRONT, scale: 10 }, at)).toEqual({ x: -2, y: 1 });
});

test("scales are those of ISO 5455, the largest that fits first", () => {
  const room = { width: 182, height: 260 };
  expect(possibleScales({ width: 900, height: 1200 }, room)[0]).toBe(5);
  expect(possibleScales({ width: 1200, height: 900 }, room)[0]).toBe(5);
  expect(possibleScales({ width: 1400, height: 900 }, room)[0]).toBe(10);
  expect(possibleScales({ width: 1e9, height: 1 }, room)).toEqual([500]);
});

test("the same console gives the same drawings", () => {
  const again = consoleSheets(sceneOf(deskProject()), options);
  expect(again.map(({ drawing }) => svgDrawing(drawing))).toEqual(
    sheets.map(({ drawing }) => svgDrawing(drawing)),
  );
});

const body = (solid: Solid, frame = WORLD): ConsoleBody => ({
  id: "block",
  role: "obstacle",
  panel: null,
  bay: null,
  thing: "block",
  what: "block",
  shape: { kind: "recipe", solid },
  frame,
  box: boxInFrame(solid, frame),
  span: { file: "", start: 0, end: 0 },
});
const block = prism(0, 30, solidRegion({ outline: rectangle(extent(0, 0, 40, 20)), holes: [] }));
const area = (of: ConsoleBody, x = 10): number =>
  bodyCut(of, { view: FRONT, through: vector(x, 0, 0) }).regions.reduce(
    (sum, region) => sum + regionArea(region),
    0,
  );

test("a cut across a block is its cross section, wherever the block's own upright points", () => {
  // 20 x 30, standing and lying; leaning by 30 degrees about y the plane x = 10 meets the 40 x 30 face in a longer line.
  expect(area(body(block))).toBeCloseTo(600, 6);
  const lying = turnedFrame(WORLD, {
    about: vector(1, 0, 0),
    through: vector(0, 0, 0),
    by: degrees(90),
  });
  expect(area(body(block, lying))).toBeCloseTo(600, 3);
  const leaning = turnedFrame(WORLD, {
    about: vector(0, 1, 0),
    through: vector(0, 0, 0),
    by: degrees(-30),
  });
  // In the block's own plane the line x cos 30 - z sin 30 = 10 runs from (11.547, 0) to (28.868, 30): 34.641 long.
  expect(area(body(block, leaning))).toBeCloseTo(34.641016 * 20, 2);
  expect(area(body(block), 41)).toBe(0);
});

test("a cut leaves out what is taken from a piece, and what is placed is cut where it stands", () => {
  const hole = prism(0, 30, solidRegion({ outline: circle(point(10, 10), 4), holes: [] }));
  // Through the middle of the hole: 20 - 8 wide, 30 high.
  expect(area(body(composed([block], [hole])))).toBeCloseTo(12 * 30, 6);
  // A quarter turn brings its 40 across: it stands from x = -15 to 5.
  expect(area(body(placed(block, { x: 5, y: 0, z: 0 }, { z: 90 })), 6)).toBeCloseTo(0, 6);
  expect(area(body(placed(block, { x: 5, y: 0, z: 0 }, { z: 90 })), 4)).toBeCloseTo(1200, 6);
});

test("a piece that lies turned within another is cut aslant, the other upright", () => {
  const wedge = placed(block, { x: 0, y: 40, z: 0 }, { y: -30 });
  // As the leaning block above, beside the upright one.
  expect(area(body(composed([block, wedge])))).toBeCloseTo(600 + 34.641016 * 20, 2);
});

test("a turned piece of a whole is cut aslant where the plane is upright in the whole", () => {
  // The block leans by 30 degrees about y within a composed solid whose own frame stands upright: as the leaning block above.
  const leaning = composed([
    placed(block, { x: 0, y: 0, z: 0 }, { y: -30 }),
    prism(-5, 0, solidRegion({ outline: rectangle(extent(0, 100, 40, 120)), holes: [] })),
  ]);
  expect(area(body(leaning))).toBeCloseTo(34.641016 * 20 + 5 * 20, 2);
});

describe("a mesh cut by a plane", () => {
  const cutOf = (mesh: Mesh, x = 10) =>
    bodyCut(
      { ...body(block), shape: { kind: "mesh", mesh } },
      { view: FRONT, through: vector(x, 0, 0) },
    );
  const areaOf = (mesh: Mesh, x = 10): number =>
    cutOf(mesh, x).regions.reduce((sum, region) => sum + regionArea(region), 0);

  test("is the area of its cross section: 20 x 30", async () => {
    const mesh = meshSolid(block, await openKernel());
    expect(cutOf(mesh).lines).toEqual([]);
    expect(areaOf(mesh)).toBeCloseTo(600, 2);
    expect(areaOf(mesh, 41)).toBe(0);
  });

  test("at its own corners it is its face, and beyond them nothing", async () => {
    const mesh = meshSolid(block, await openKernel());
    expect(areaOf(mesh, 0) + areaOf(mesh, 40)).toBeCloseTo(600, 2);
  });

  // A box of 20 x 30 with a cavity of 10 x 10 in it, in which a block of 4 x 4 lies free.
  test("leaves cavities open, and fills what lies in them", async () => {
    const part = (from: number, to: number, low: number, high: number): Solid =>
      prism(low, high, solidRegion({ outline: rectangle(extent(2, from, 38, to)), holes: [] }));
    const kernel = await openKernel();
    const hollow = meshSolid(composed([block], [part(5, 15, 10, 20)]), kernel);
    expect(areaOf(hollow)).toBeCloseTo(600 - 100, 2);
    const [region] = cutOf(hollow).regions;
    expect(region?.holes).toHaveLength(1);
    const filled = joinedMeshes(hollow, meshSolid(part(8, 12, 13, 17), kernel));
    expect(areaOf(filled)).toBeCloseTo(600 - 100 + 16, 2);
    // A second shell within the material is material still.
    const within = joinedMeshes(meshSolid(block, kernel), meshSolid(part(5, 15, 10, 20), kernel));
    expect(areaOf(within)).toBeCloseTo(600, 2);
  });

  test("stays lines where its surface is open", async () => {
    const mesh = meshSolid(block, await openKernel());
    // Without the triangles of its top, at z = 30.
    const kept = Array.from({ length: mesh.triangles.length / 3 }, (_, index) =>
      Array.from(mesh.triangles.subarray(3 * index, 3 * index + 3)),
    ).filter((corners) => corners.some((corner) => mesh.positions[3 * corner + 2]! < 29));
    const open = { ...mesh, triangles: Uint32Array.from(kept.flat()) };
    const { regions, lines } = cutOf(open);
    expect(regions).toEqual([]);
    // Two sides of 30 and the floor of 20.
    expect(lines.reduce((sum, line) => sum + pathLength(line), 0)).toBeCloseTo(80, 3);
  });
});

const joinedMeshes = (a: Mesh, b: Mesh): Mesh => ({
  ...a,
  positions: Float32Array.from([...a.positions, ...b.positions]),
  triangles: Uint32Array.from([
    ...a.triangles,
    ...Array.from(b.triangles, (corner) => corner + a.positions.length / 3),
  ]),
});

test("a hull is the outline round its points", () => {
  const points = [0, 1, 2, 3].flatMap((x) => [0, 1, 2].map((y) => point(x, y)));
  expect(convexHull(points)).toEqual([point(0, 0), point(3, 0), point(3, 2), point(0, 2)]);
  expect(convexHull([point(0, 0), point(1, 1), point(2, 2)]).length).toBeLessThan(3);
});

test("what stands in the section of the level bay lies where the design says", () => {
  // The duct is 60 wide and 40 high at 520 above the floor, and the section at 95.25 cuts it.
  const duct = scene.bodies.find(({ thing }) => thing === "duct");
  if (duct === undefined) throw new Error("the duct is a body");
  const [region] = bodyCut(duct, { view: FRONT, through: vector(95.25, 0, 0) }).regions;
  const box = region === undefined ? null : contourExtent(region.outline);
  expect(box).toEqual({ minX: -30, minY: 520, maxX: 30, maxY: 560 });
});

test("a name points to what is seen of its thing, and nothing points to what is hidden", () => {
  const area = (name: string, box: ReturnType<typeof extent>, isFilled = true) => ({
    name,
    regions: [{ outline: rectangle(box), holes: [] }],
    isFilled,
  });
  const anchors = visibleAnchors([
    area("hidden", extent(2, 2, 4, 4)),
    area("half", extent(0, 0, 20, 10)),
    area("lid", extent(0, 0, 12, 10)),
    area("glass", extent(0, 0, 20, 10), false),
  ]);
  expect(anchors.has("hidden")).toBe(false);
  expect(anchors.get("half")?.x).toBeGreaterThan(12);
  expect(anchors.get("lid")).toEqual(point(6, 5));
  expect(anchors.get("glass")).toEqual(point(10, 5));
});

test("reach is drawn as the circle that a ball round the working shoulder has where the panels are", () => {
  const { operator } = scene.layout;
  if (operator === null) throw new Error("an operator is written");
  const view = { ...PLAN, scale: 1 };
  const { items } = operatorView(null, scene.layout, view) ?? { items: [] };
  const arcs = items.flatMap((item) =>
    item.kind === "stroke" ? item.paths.filter(({ vertices }) => vertices[0]?.bulge !== 0) : [],
  );
  // Faces lie 2 mm (the sheet) over the rails: 702, 702, and on the raised bay 47.625 up a slope of 30 degrees, 700 + 23.8125
  // + 1.732; mean 709.8482. The shoulder of a 5th-percentile woman is 509 over the seat of 430: 939. Reach 677 (NUREG-0700).
  const radius = Math.sqrt(677 ** 2 - (939 - 709.8482) ** 2);
  const [first, last] = arcs[0]?.vertices ?? [];
  // An arc of 120 degrees: its chord is the radius times root three.
  const chord = first && last ? Math.hypot(first.x - last.x, first.y - last.y) : 0;
  expect(chord).toBeCloseTo(radius * Math.sqrt(3), 2);
});

// A plate for the tests of the inspection: the part as the program knows it, and beside it the lines of its cut file, worked
// out by hand from its dimensions. The two meet nowhere but in the numbers of the drawing in this comment.
//
// Plate 100 x 60, corners 2; sheet 10 larger all round. At cut size: two mount holes 6.6 at (5, 5) and (95, 55); dowels,
// a round one 3.0 at (10, 30) and a slot 4 x 3 at (90, 32); brake, a hole 6.4 at (20, 40); speed, a D hole 12 with its flat
// 5 above the axis at (70, 20); a sharp window 20 x 10 about (40, 15). Engraved: a ring 6/4 about (20, 50) and a bar 6 x 1.

import type { LaserDesign } from "../../src/design/workshop-design.ts";
import type { Written } from "../../src/design/written.ts";
import { circle, loop, path, point, vertex } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { mm } from "../../src/geometry/quantity.ts";
import type { Operation, SetUp, SheetPart } from "../../src/parts/sheet-part.ts";
import type { HandShape, Run } from "./hand-files.ts";

const written: Written = { span: { file: "workshop.yaml", start: 0, end: 0 }, keys: {} };

const laser: LaserDesign = {
  kind: "co2-laser",
  id: "laser",
  bed: [mm(600), mm(400)],
  spot: mm(0.15),
  kerf: "in-file",
  measured: [],
  written,
};

/** tan(90 / 4 degrees): a quarter turn. */
const QUARTER = Math.SQRT2 - 1;

const roundedRun = (box: readonly [number, number, number, number], corner: number): Run => {
  const [left, bottom, right, top] = box;
  return [
    [left + corner, bottom, 0],
    [right - corner, bottom, QUARTER],
    [right, bottom + corner, 0],
    [right, top - corner, QUARTER],
    [right - corner, top, 0],
    [left + corner, top, QUARTER],
    [left, top - corner, 0],
    [left, bottom + corner, QUARTER],
  ];
};

const boxRun = (left: number, bottom: number, right: number, top: number): Run => [
  [left, bottom, 0],
  [right, bottom, 0],
  [right, top, 0],
  [left, top, 0],
];

/** D hole about (70, 20): radius, and flat above the axis. */
const flatRun = (radius: number, flat: number): Run => {
  const half = Math.sqrt(radius * radius - flat * flat);
  const turn = 2 * Math.PI - 2 * Math.acos(flat / radius);
  return [
    [70 + half, 20 + flat, 0],
    [70 - half, 20 + flat, Math.tan(turn / 4)],
  ];
};

/** Slot 4 x 3 about (90, 32), along x. */
const slotRun = (radius: number): Run => [
  [89.5, 32 - radius, 0],
  [90.5, 32 - radius, 1],
  [90.5, 32 + radius, 0],
  [89.5, 32 + radius, 1],
];

const loopOf = (run: Run): ReturnType<typeof loop> =>
  loop(run.map(([x, y, bulge]) => vertex(x, y, bulge)));

const FRAME: Run = [
  [60, 40, 0],
  [60, 45, -QUARTER],
  [62, 47, 0],
  [80, 47, 0],
];
const WITNESS: Run = [
  [2, -4, 0],
  [2, -8, 0],
  [4, -8, 0],
];

const cut = (
  process: "cut-inner" | "cut-outer",
  feature: string,
  of: { readonly at: readonly [number, number]; readonly round?: number; readonly run?: Run },
): Operation => {
  const centre = point(of.at[0], of.at[1]);
  const contour = of.run === undefined ? circle(centre, of.round ?? 0) : loopOf(of.run);
  return { kind: "cut", process, feature, centre, contour };
};

const cutsOf = (layer: string): readonly Operation[] => [
  cut("cut-outer", `outline@${layer}`, { at: [50, 30], run: roundedRun([0, 0, 100, 60], 2) }),
  cut("cut-inner", `mount.1/mount@${layer}`, { at: [5, 5], round: 3.3 }),
  cut("cut-inner", `mount.2/mount@${layer}`, { at: [95, 55], round: 3.3 }),
  cut("cut-inner", `dowel.1/dowel@${layer}`, { at: [10, 30], round: 1.5 }),
  cut("cut-inner", `dowel.2/dowel@${layer}`, { at: [90, 32], run: slotRun(1.5) }),
  cut("cut-inner", `brake/clamp@${layer}`, { at: [20, 40], round: 3.2 }),
  cut("cut-inner", `speed/clamp@${layer}`, { at: [70, 20], run: flatRun(6, 5) }),
  cut("cut-inner", `meter/window@${layer}`, { at: [40, 15], run: boxRun(30, 10, 50, 20) }),
];

const marks: readonly Operation[] = [
  {
    kind: "fill",
    process: "engrave",
    feature: "brake/legend",
    regions: [
      { outline: circle(point(20, 50), 3), holes: [circle(point(20, 50), 2)] },
      { outline: loopOf(boxRun(30, 49, 36, 50)), holes: [] },
    ],
  },
  {
    kind: "stroke",
    process: "score",
    feature: "frame",
    paths: [path(loopOf(FRAME).vertices)],
    width: mm(0.15),
  },
  {
    kind: "stroke",
    process: "witness",
    feature: "witness",
    paths: [path(loopOf(WITNESS).vertices)],
    width: mm(0.15),
  },
];

const setUp = (faceUp: "front" | "rear", operations: readonly Operation[]): SetUp => ({
  id: "1-engrave-and-cut",
  machine: laser,
  faceUp,
  instructions: [],
  operations,
  sheet: extent(-10, -10, 110, 70),
  kerf: { kind: "in-file", kerf: mm(0.2), x: mm(0.2), y: mm(0.2), measured: true },
});

export const FACE_SET_UP: SetUp = setUp("front", [...cutsOf("face"), ...marks]);

/** Cut face down. */
export const BACKING_SET_UP: SetUp = setUp("rear", cutsOf("backing"));

const sheetPart = (layer: string, only: SetUp): SheetPart => ({
  kind: "sheet-part",
  id: `plate-${layer}`,
  panel: "plate",
  layer,
  title: `Plate, ${layer}`,
  revision: "B",
  stock: {
    id: "opal-acrylic-3",
    material: "acrylic-cast",
    colour: "opal",
    light: "translucent",
    nominal: mm(3),
    measured: null,
    dated: null,
    cap: null,
    opaqueFrom: null,
    written,
  },
  thickness: mm(3),
  setUps: [only],
  handOperations: [],
});

export const FACE: SheetPart = sheetPart("face", FACE_SET_UP);

export const BACKING: SheetPart = sheetPart("backing", BACKING_SET_UP);

/** The cuts as lines of the beam's middle, small openings first, `kerf` wide: half of it inside a hole, outside the plate. */
export const handCuts = (layer: string, kerf = 0.2): readonly HandShape[] => {
  const side = kerf / 2;
  const inner = (id: string, shape: Partial<HandShape>): HandShape => ({
    process: "cut-inner",
    id: `${id}@${layer}`,
    runs: [],
    closed: true,
    ...shape,
  });
  return [
    inner("dowel.1/dowel", { circle: [10, 30, 1.5 - side] }),
    inner("dowel.2/dowel", { runs: [slotRun(1.5 - side)] }),
    inner("brake/clamp", { circle: [20, 40, 3.2 - side] }),
    inner("mount.1/mount", { circle: [5, 5, 3.3 - side] }),
    inner("mount.2/mount", { circle: [95, 55, 3.3 - side] }),
    inner("speed/clamp", { runs: [flatRun(6 - side, 5 - side)] }),
    inner("meter/window", { runs: [boxRun(30 + side, 10 + side, 50 - side, 20 - side)] }),
    {
      process: "cut-outer",
      id: `outline@${layer}`,
      runs: [roundedRun([-side, -side, 100 + side, 60 + side], 2 + side)],
      closed: true,
    },
  ];
};

/** The markings, areas drawn in by half the spot. */
export const handMarks = (inset = 0.075): readonly HandShape[] => [
  { process: "witness", id: "witness.2", runs: [WITNESS], closed: false },
  {
    process: "engrave",
    id: "brake/legend",
    runs: [roundedRun([17 + inset, 47 + inset, 23 - inset, 53 - inset], 3 - inset)],
    holes: [roundedRun([18 - inset, 48 - inset, 22 + inset, 52 + inset], 2 + inset)],
    closed: true,
    filled: true,
  },
  {
    process: "engrave",
    id: "brake/legend.2",
    runs: [boxRun(30 + inset, 49 + inset, 36 - inset, 50 - inset)],
    closed: true,
    filled: true,
  },
  { process: "score", id: "frame", runs: [FRAME], closed: false },
];

export const FACE_SHAPES: readonly HandShape[] = [...handMarks(), ...handCuts("face")];

// The part that the tests of the cut files write: a plate of 146.05 x 57.15 with openings of every kind, a piece beside it in
// the waste, an engraved ring, a scored bracket and a witness. Built by hand from the types, without any other floor.

import type { LaserDesign } from "../../src/design/workshop-design.ts";
import type { Written } from "../../src/design/written.ts";
import {
  circle,
  type Loop,
  loop,
  type Path,
  path,
  point,
  type Region,
  vertex,
} from "../../src/geometry/contour.ts";
import { extent, extentCentre } from "../../src/geometry/extent.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { mm } from "../../src/geometry/quantity.ts";
import type { KerfSetting, Operation, SetUp, SheetPart } from "../../src/parts/sheet-part.ts";

const written: Written = { span: { file: "workshop.yaml", start: 0, end: 0 }, keys: {} };

const LASER: LaserDesign = {
  kind: "co2-laser",
  id: "laser",
  bed: [mm(600), mm(400)],
  spot: mm(0.15),
  kerf: "in-file",
  measured: [],
  written,
};

export const KERF: KerfSetting = {
  kind: "in-file",
  kerf: mm(0.2),
  x: mm(0.21),
  y: mm(0.19),
  measured: true,
};

const box = (left: number, bottom: number, size: readonly [number, number]): Loop =>
  loop([
    vertex(left, bottom),
    vertex(left + size[0], bottom),
    vertex(left + size[0], bottom + size[1]),
    vertex(left, bottom + size[1]),
  ]);

/** The four stud holes of a console panel: 136.525 apart, half a module from the ends (MS25212, MIL-F-25173A). */
const STUDS = [
  [4.7625, 4.7625],
  [141.2875, 4.7625],
  [4.7625, 52.3875],
  [141.2875, 52.3875],
] as const;

/** A slot 12 x 5 turned by 30 degrees about (40, 30): its ends are half turns at places that no decimal hits. */
export const TURNED_SLOT: Loop = ((): Loop => {
  const along = { x: Math.sqrt(3) / 2, y: 0.5 };
  const at = (forward: number, left: number, bulge: number): ReturnType<typeof vertex> =>
    vertex(40 + forward * along.x - left * along.y, 30 + forward * along.y + left * along.x, bulge);
  return loop([at(-3.5, -2.5, 0), at(3.5, -2.5, 1), at(3.5, 2.5, 0), at(-3.5, 2.5, 1)]);
})();

/** A D hole: diameter 12, flat 5 above the axis, so that its arc turns more than half way round. */
export const D_HOLE: Loop = ((): Loop => {
  const half = Math.sqrt(36 - 25);
  const arc = 2 * Math.PI - 2 * Math.acos(5 / 6);
  return loop([vertex(100 + half, 35), vertex(100 - half, 35, Math.tan(arc / 4))]);
})();

const RING: Region = { outline: circle(point(70, 40), 3), holes: [circle(point(70, 40), 2)] };
const BAR: Region = { outline: box(80, 45, [6, 1]), holes: [] };
const BRACKET: Path = path([
  vertex(60, 10),
  vertex(60, 12, -0.41421356237309503),
  vertex(62, 14),
  vertex(80, 14),
]);
const WITNESS: Path = path([vertex(2, -8), vertex(2, -4), vertex(4, -4)]);

const cut = (
  process: "cut-inner" | "cut-outer" | "drill",
  feature: string,
  contour: Loop | ReturnType<typeof circle>,
): Operation => ({
  kind: "cut",
  process,
  feature,
  centre: contour.kind === "circle" ? contour.centre : extentCentre(contourExtent(contour)),
  contour,
});

export const OPERATIONS: readonly Operation[] = [
  cut("cut-outer", "outline", box(0, 0, [146.05, 57.15])),
  cut("cut-outer", "piece", box(72, -7, [2, 4])),
  ...STUDS.map(([x, y], index) => cut("cut-inner", `stud-${index + 1}`, circle(point(x, y), 3.3))),
  cut("cut-inner", "opening", box(50, 20, [2, 4])),
  cut("cut-inner", "brake/clamp@backing", TURNED_SLOT),
  cut("cut-inner", "speed/clamp@backing", D_HOLE),
  cut("drill", "pilot", circle(point(120, 30), 1.25)),
  { kind: "fill", process: "engrave", feature: "legend", regions: [RING, BAR] },
  { kind: "stroke", process: "score", feature: "bracket", paths: [BRACKET], width: mm(0.15) },
  { kind: "stroke", process: "witness", feature: "witness", paths: [WITNESS], width: mm(0.15) },
];

export const FRONT_UP: SetUp = {
  id: "1-engrave-and-cut",
  machine: LASER,
  faceUp: "front",
  instructions: ["Paper mask on, front up."],
  operations: OPERATIONS,
  sheet: extent(-10, -10, 156.05, 67.15),
  kerf: KERF,
};

export const REAR_UP: SetUp = { ...FRONT_UP, id: "2-cut-from-behind", faceUp: "rear" };

export const PLATE: SheetPart = {
  kind: "sheet-part",
  id: "plate-face",
  panel: "plate",
  layer: "face",
  title: "Plate, face",
  revision: "B",
  stock: {
    id: "opal-acrylic-3",
    material: "acrylic-cast",
    colour: "opal",
    light: "translucent",
    nominal: mm(3),
    measured: mm(2.86),
    dated: "2026-10-02",
    cap: null,
    opaqueFrom: null,
    written,
  },
  thickness: mm(2.86),
  setUps: [FRONT_UP],
  handOperations: [
    {
      feature: "pilot",
      what: "tap",
      tool: "M3 tap",
      side: "rear",
      depth: mm(6),
      at: point(120, 30),
    },
    {
      feature: "edge",
      what: "deburr",
      tool: "scraper",
      side: "front",
      depth: null,
      at: null,
    },
  ],
};

/** The same plate with another name for everything that the design's author writes. */
export const plateNamed = (name: string): { readonly part: SheetPart; readonly setUp: SetUp } => {
  const setUp: SetUp = {
    ...FRONT_UP,
    id: name,
    machine: { ...LASER, id: name },
    instructions: [name],
    operations: OPERATIONS.map((operation) => ({
      ...operation,
      feature: `${name}${operation.feature}`,
    })),
  };
  return {
    setUp,
    part: {
      ...PLATE,
      id: name,
      panel: name,
      layer: name,
      title: name,
      revision: name,
      stock: { ...PLATE.stock, id: name },
      setUps: [setUp],
    },
  };
};

/** Names that a file format could choke on. */
export const HOSTILE_NAMES: readonly string[] = [
  "</svg><script>alert(1)</script>",
  `"onload="alert(1)`,
  "]]><!-- ' & &lt;",
  "a\u0000b\u0007\u001b[31m",
  "line\n0\nEOF\n0\nCIRCLE\r\n  8\nother",
  "\u202eevil\u2066 \u05d0\u05d1\u05d2 \u0645\u0631\u062d\u0628\u0627",
  "\ud800 lone \udc00 \uffff",
  "(\\) Tj ET >> endobj",
  'transform="scale(2)" <text>',
  "x".repeat(10_000),
  "",
];

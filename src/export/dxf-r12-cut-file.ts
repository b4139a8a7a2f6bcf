// One set-up as a DXF of the oldest kind that every machine reads (R12, AC1009): CIRCLE, and POLYLINE with VERTEX and bulge,
// on a layer a process. Takes part, set-up and title; gives ASCII text in millimetres with y up.
// $INSUNITS is younger than R12; readers that know it place the file in mm, others skip it (from memory, unverified).

import type { Circle, Contour, Loop, Path, Vertex } from "../geometry/contour.ts";
import { invariant } from "../geometry/invariant.ts";
import { decimal } from "../geometry/number.ts";
import type { Process, SetUp, SheetPart } from "../parts/sheet-part.ts";
import { BULGE_PLACES, DXF_PLACES, LAYER_COLOURS, shapeOutlines } from "./dxf-layers.ts";
import { fileNotes } from "./file-notes.ts";
import { type MachinePaths, machinePaths } from "./machine-paths.ts";
import { asciiText } from "./plain-text.ts";

/** A group code and its value. */
type Tag = readonly [code: number, value: string | number];

const MILLIMETRES = 4;

export const dxfR12CutFile = (
  part: SheetPart,
  setUp: SetUp,
  options: { readonly title: string },
): string => {
  const paths = machinePaths(setUp);
  invariant(paths.kind === "machine-paths", "a set-up that is written has no refusals");
  const tags: readonly Tag[] = [
    ...[options.title, ...fileNotes(part, setUp)].map((line): Tag => [999, asciiText(line)]),
    ...section("HEADER", header(paths)),
    ...section("TABLES", [...lineTypes, ...layers(paths)]),
    ...section("ENTITIES", entities(paths)),
    [0, "EOF"],
  ];
  return tags.map(([code, value]) => `${code}\n${value}\n`).join("");
};

const section = (name: string, content: readonly Tag[]): readonly Tag[] => [
  [0, "SECTION"],
  [2, name],
  ...content,
  [0, "ENDSEC"],
];

const header = (paths: MachinePaths): readonly Tag[] => [
  [9, "$ACADVER"],
  [1, "AC1009"],
  [9, "$INSUNITS"],
  [70, MILLIMETRES],
  [9, "$EXTMIN"],
  ...place(0, 0),
  [9, "$EXTMAX"],
  ...place(paths.width, paths.height),
];

const lineTypes: readonly Tag[] = [
  [0, "TABLE"],
  [2, "LTYPE"],
  [70, 1],
  [0, "LTYPE"],
  [2, "CONTINUOUS"],
  [70, 0],
  [3, "Solid line"],
  [72, 65],
  [73, 0],
  [40, "0"],
  [0, "ENDTAB"],
];

const layers = (paths: MachinePaths): readonly Tag[] => [
  [0, "TABLE"],
  [2, "LAYER"],
  [70, paths.groups.length],
  ...paths.groups.flatMap(({ process }): readonly Tag[] => [
    [0, "LAYER"],
    [2, process],
    [70, 0],
    [62, LAYER_COLOURS[process]],
    [6, "CONTINUOUS"],
  ]),
  [0, "ENDTAB"],
];

const entities = (paths: MachinePaths): readonly Tag[] =>
  paths.groups.flatMap(({ process, shapes }) =>
    shapes.flatMap(shapeOutlines).flatMap((outline) => entity(outline, process)),
  );

const entity = (outline: Contour | Path, process: Process): readonly Tag[] =>
  outline.kind === "circle" ? circleEntity(outline, process) : polyline(outline, process);

const circleEntity = (circle: Circle, process: Process): readonly Tag[] => [
  [0, "CIRCLE"],
  [8, process],
  ...place(circle.centre.x, circle.centre.y),
  [40, decimal(circle.radius, DXF_PLACES)],
];

const polyline = (run: Loop | Path, process: Process): readonly Tag[] => [
  [0, "POLYLINE"],
  [8, process],
  [66, 1],
  ...place(0, 0),
  [70, run.kind === "loop" ? 1 : 0],
  ...run.vertices.flatMap((corner) => vertexEntity(corner, process)),
  [0, "SEQEND"],
  [8, process],
];

const vertexEntity = (corner: Vertex, process: Process): readonly Tag[] => [
  [0, "VERTEX"],
  [8, process],
  ...place(corner.x, corner.y),
  ...(corner.bulge === 0 ? [] : [[42, decimal(corner.bulge, BULGE_PLACES)] as const]),
];

const place = (x: number, y: number): readonly Tag[] => [
  [10, decimal(x, DXF_PLACES)],
  [20, decimal(y, DXF_PLACES)],
  [30, "0"],
];

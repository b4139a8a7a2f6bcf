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

/** Group codes and values, a line each. */
type Tags = string;

const MILLIMETRES = 4;

export const dxfR12CutFile = (
  part: SheetPart,
  setUp: SetUp,
  options: { readonly title: string },
): string => {
  const paths = machinePaths(setUp);
  invariant(paths.kind === "machine-paths", "a set-up that is written has no refusals");
  const comments = [options.title, ...fileNotes(part, setUp)];
  return [
    ...comments.map((line) => tag(999, asciiText(line))),
    section("HEADER", header(paths)),
    section("TABLES", `${LINE_TYPES}${layers(paths)}`),
    section("ENTITIES", entities(paths)),
    tag(0, "EOF"),
  ].join("");
};

const tag = (code: number, value: string | number): Tags => `${code}\n${value}\n`;

const section = (name: string, content: Tags): Tags =>
  `${tag(0, "SECTION")}${tag(2, name)}${content}${tag(0, "ENDSEC")}`;

const header = (paths: MachinePaths): Tags =>
  [
    tag(9, "$ACADVER"),
    tag(1, "AC1009"),
    tag(9, "$INSUNITS"),
    tag(70, MILLIMETRES),
    tag(9, "$EXTMIN"),
    place(0, 0),
    tag(9, "$EXTMAX"),
    place(paths.width, paths.height),
  ].join("");

const LINE_TYPES: Tags = [
  tag(0, "TABLE"),
  tag(2, "LTYPE"),
  tag(70, 1),
  tag(0, "LTYPE"),
  tag(2, "CONTINUOUS"),
  tag(70, 0),
  tag(3, "Solid line"),
  tag(72, 65),
  tag(73, 0),
  tag(40, 0),
  tag(0, "ENDTAB"),
].join("");

const layers = (paths: MachinePaths): Tags => {
  const rows = paths.groups.map(({ process }) =>
    [
      tag(0, "LAYER"),
      tag(2, process),
      tag(70, 0),
      tag(62, LAYER_COLOURS[process]),
      tag(6, "CONTINUOUS"),
    ].join(""),
  );
  const heading = `${tag(0, "TABLE")}${tag(2, "LAYER")}${tag(70, rows.length)}`;
  return `${heading}${rows.join("")}${tag(0, "ENDTAB")}`;
};

const entities = (paths: MachinePaths): Tags =>
  paths.groups
    .flatMap(({ process, shapes }) =>
      shapes.flatMap(shapeOutlines).map((outline) => entity(outline, process)),
    )
    .join("");

const entity = (outline: Contour | Path, process: Process): Tags =>
  outline.kind === "circle" ? circleEntity(outline, process) : polyline(outline, process);

const circleEntity = (circle: Circle, process: Process): Tags =>
  `${named("CIRCLE", process)}${place(circle.centre.x, circle.centre.y)}${tag(40, decimal(circle.radius, DXF_PLACES))}`;

const polyline = (run: Loop | Path, process: Process): Tags => {
  const flags = run.kind === "loop" ? 1 : 0;
  const corner = named("VERTEX", process);
  const corners = run.vertices.map((at) => `${corner}${place(at.x, at.y)}${bulgeOf(at)}`).join("");
  const heading = `${named("POLYLINE", process)}${tag(66, 1)}${place(0, 0)}${tag(70, flags)}`;
  return `${heading}${corners}${named("SEQEND", process)}`;
};

const named = (entityName: string, process: Process): Tags =>
  `${tag(0, entityName)}${tag(8, process)}`;

const bulgeOf = ({ bulge }: Vertex): Tags =>
  bulge === 0 ? "" : tag(42, decimal(bulge, BULGE_PLACES));

const place = (x: number, y: number): Tags =>
  `${tag(10, decimal(x, DXF_PLACES))}${tag(20, decimal(y, DXF_PLACES))}${tag(30, 0)}`;

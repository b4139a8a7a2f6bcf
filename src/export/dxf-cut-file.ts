// One set-up as a DXF of 2007 (AC1021): CIRCLE and bulged LWPOLYLINE on a layer a process, $INSUNITS 4, y up.
// Takes part, set-up, colours and title; gives text in UTF-8, the same bytes on every run: handles are counted from the
// start of each file and nothing in it knows a date or a random number.

import { DxfWriter, LWPolylineFlags, point3d, Units } from "@tarikjabiri/dxf";
import type { Contour, Path } from "../geometry/contour.ts";
import { invariant } from "../geometry/invariant.ts";
import { decimal } from "../geometry/number.ts";
import type { Process, SetUp, SheetPart } from "../parts/sheet-part.ts";
import { BULGE_PLACES, LAYER_COLOURS, shapeOutlines } from "./dxf-layers.ts";
import { fileNotes } from "./file-notes.ts";
import { type MachinePaths, machinePaths } from "./machine-paths.ts";
import { plainText } from "./plain-text.ts";
import { isColour } from "./process-colours.ts";
import type { CutFileOptions } from "./svg-cut-file.ts";

/** $MEASUREMENT 1: metric. */
const METRIC = 1;

export const dxfCutFile = (part: SheetPart, setUp: SetUp, options: CutFileOptions): string => {
  const paths = machinePaths(setUp);
  invariant(paths.kind === "machine-paths", "a set-up that is written has no refusals");
  const writer = new DxfWriter();
  writeHeader(writer, paths);
  for (const { process, shapes } of paths.groups) {
    writer.addLayer(process, LAYER_COLOURS[process], "Continuous").trueColor = trueColour(
      options.colours[process],
    );
    for (const outline of shapes.flatMap(shapeOutlines)) addOutline(writer, outline, process);
  }
  const comments = [options.title, ...fileNotes(part, setUp)];
  const heading = comments.map((line) => `999\n${plainText(line)}\n`).join("");
  return `${heading}${withoutExponents(writer.stringify())}\n`;
};

const writeHeader = (writer: DxfWriter, paths: MachinePaths): void => {
  writer.setUnits(Units.Millimeters);
  // The library signs with its own name otherwise.
  writer.setVariable("$LASTSAVEDBY", { 1: "Consolewright" });
  writer.setVariable("$MEASUREMENT", { 70: METRIC });
  writer.setVariable("$EXTMIN", { 10: 0, 20: 0, 30: 0 });
  writer.setVariable("$EXTMAX", { 10: rounded(paths.width), 20: rounded(paths.height), 30: 0 });
};

const addOutline = (writer: DxfWriter, outline: Contour | Path, process: Process): void => {
  if (outline.kind === "circle") {
    const centre = point3d(rounded(outline.centre.x), rounded(outline.centre.y));
    writer.addCircle(centre, rounded(outline.radius), { layerName: process });
    return;
  }
  const corners = outline.vertices.map((corner) => ({
    point: { x: rounded(corner.x), y: rounded(corner.y) },
    ...(corner.bulge === 0 ? {} : { bulge: roundedBulge(corner.bulge) }),
  }));
  const flags = outline.kind === "loop" ? LWPolylineFlags.Closed : LWPolylineFlags.None;
  writer.addLWPolyline(corners, { flags, layerName: process });
};

/** Nearest multiple of the last digit; prints as that digit, because the library writes numbers as the language does. */
const rounded = (value: number): number => Math.round(value * PLACE_STEPS) / PLACE_STEPS + 0;
const roundedBulge = (bulge: number): number => Math.round(bulge * BULGE_STEPS) / BULGE_STEPS + 0;

/** DXF_PLACES and BULGE_PLACES as steps in one. */
const PLACE_STEPS = 1e6;
const BULGE_STEPS = 1e12;

/** 0x00rrggbb (DXF reference, group code 420). */
const trueColour = (colour: string): number => {
  invariant(isColour(colour), "a process colour is #rrggbb");
  return Number.parseInt(colour.slice(1), 16);
};

/** The library writes numbers as the language prints them, and some readers don't know `1e-7`. */
const withoutExponents = (text: string): string =>
  text.replaceAll(/^-?\d+(?:\.\d+)?e-\d+$/gm, (value) => decimal(Number(value), BULGE_PLACES));

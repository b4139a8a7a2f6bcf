// One set-up of a sheet part as an SVG for the machine: millimetres throughout, no transforms, arcs as arcs, one closed path a
// loop, groups in the order of work. Takes the part, its set-up and the colours; gives the file's text.
// The caller asks `machinePaths` for refusals first: a set-up with one is a fault and is never written.

import type { Contour, Region } from "../geometry/contour.ts";
import { invariant } from "../geometry/invariant.ts";
import { decimal } from "../geometry/number.ts";
import type { Process, SetUp, SheetPart } from "../parts/sheet-part.ts";
import { elementIds } from "./element-ids.ts";
import { fileNotes } from "./file-notes.ts";
import { type MachineShape, machinePaths } from "./machine-paths.ts";
import { isColour, type ProcessColours } from "./process-colours.ts";
import { PROCESS_ORDER } from "./process-order.ts";
import { contourPathData, openPathData, type SvgFrame, svgNumber } from "./svg-path.ts";
import { xmlText } from "./xml-text.ts";

export interface CutFileOptions {
  readonly colours: ProcessColours;
  readonly title: string;
}

/**
 * Width of every line in mm, about a thousandth of an inch: printer drivers of lasers take lines up to that for cuts
 * and engrave wider ones (common practice).
 */
const HAIRLINE = 0.025;

export const svgCutFile = (part: SheetPart, setUp: SetUp, options: CutFileOptions): string => {
  const paths = machinePaths(setUp);
  invariant(paths.kind === "machine-paths", "a set-up that is written has no refusals");
  const width = svgNumber(paths.width);
  const height = svgNumber(paths.height);
  const frame: SvgFrame = { left: 0, top: paths.height };
  const nextId = elementIds(PROCESS_ORDER);
  const groups = paths.groups.map(({ process, shapes }) => {
    const elements = shapes.map(
      (shape) =>
        `<path id="${nextId(shape.feature)}" ${look(shape, process, options)} d="${pathData(shape, frame)}"/>\n`,
    );
    return `<g id="${process}">\n${elements.join("")}</g>\n`;
  });
  const description = [...fileNotes(part, setUp), `Lines are ${decimal(HAIRLINE, 3)} mm wide.`];
  return [
    `<?xml version="1.0" encoding="UTF-8"?>\n`,
    `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">\n`,
    `<title>${xmlText(options.title)}</title>\n`,
    `<desc>${description.map((line) => xmlText(line)).join("\n")}</desc>\n`,
    ...groups,
    "</svg>\n",
  ].join("");
};

const look = (shape: MachineShape, process: Process, options: CutFileOptions): string => {
  const colour = options.colours[process];
  invariant(isColour(colour), "a process colour is #rrggbb");
  return shape.kind === "fill"
    ? `fill="${colour}" fill-rule="evenodd" stroke="none"`
    : `fill="none" stroke="${colour}" stroke-width="${decimal(HAIRLINE, 3)}"`;
};

const pathData = (shape: MachineShape, frame: SvgFrame): string => {
  switch (shape.kind) {
    case "cut":
      return contourPathData(shape.contour, frame);
    case "fill":
      return regionContours(shape.region)
        .map((contour) => contourPathData(contour, frame))
        .join("");
    case "stroke":
      return openPathData(shape.path, frame);
  }
};

const regionContours = (region: Region): readonly Contour[] => [region.outline, ...region.holes];

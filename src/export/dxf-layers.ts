// Layers of the DXF files: one a process, in the order of work, with the nearest colour number of the old palette.
// R12 knows only these numbers; newer files carry the true colour beside them.

import type { Contour, Path, Region } from "../geometry/contour.ts";
import type { Process } from "../parts/sheet-part.ts";
import type { MachineShape } from "./machine-paths.ts";

/** AutoCAD colour index: 1 red, 3 green, 5 blue, 6 magenta, 7 black or white, 30 orange (DXF reference, group code 62). */
export const LAYER_COLOURS: Readonly<Record<Process, number>> = {
  engrave: 7,
  score: 3,
  "cut-inner": 5,
  "cut-outer": 1,
  witness: 6,
  drill: 30,
};

/** Decimals of a coordinate, 1 nm as the design is read, and of a bulge: 1e-12 of a 500 mm chord is nothing. */
export const DXF_PLACES = 6;
export const BULGE_PLACES = 12;

/** A shape as the entities that stand for it, one a loop. */
export const shapeOutlines = (shape: MachineShape): readonly (Contour | Path)[] => {
  switch (shape.kind) {
    case "cut":
      return [shape.contour];
    case "fill":
      return regionOutlines(shape.region);
    case "stroke":
      return [shape.path];
  }
};

const regionOutlines = (region: Region): readonly Contour[] => [region.outline, ...region.holes];

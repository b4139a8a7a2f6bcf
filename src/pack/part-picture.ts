// The picture of a printed part as a PNG: shaded, all its bodies, each in a colour that shows its shape.

import type { Rgb } from "../drawings/raster.ts";
import { solidPicture } from "../drawings/solid-picture.ts";
import { pngFile } from "../export/png.ts";
import type { Kernel } from "../geometry/solid/kernel.ts";
import { meshSolid } from "../geometry/solid/mesh-solid.ts";
import type { PrintedBody, PrintedPart } from "../parts/printed/printed-part.ts";

export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

const USUAL_SIZE: PictureSize = { width: 840, height: 600 };

export const partPicture = (
  part: PrintedPart,
  kernel: Kernel,
  size: PictureSize = USUAL_SIZE,
): Uint8Array => {
  const meshes = part.bodies.map((body) => ({
    mesh: meshSolid(body.solid, kernel),
    colour: colourOf(body),
  }));
  // A spacer or box is seen into; a tray shows what is screwed to it from behind.
  const side = part.role === "tray" ? "rear" : "front";
  return pngFile(solidPicture(meshes, { side, ...size }));
};

/** Light enough for black plastic to show its shape. */
const COLOURS: Readonly<Record<string, Rgb>> = {
  black: [88, 92, 100],
  white: [236, 236, 232],
  grey: [150, 154, 160],
  natural: [222, 214, 196],
  red: [190, 60, 52],
};

export const colourOf = ({ colour }: PrintedBody): Rgb => COLOURS[colour] ?? [120, 130, 142];

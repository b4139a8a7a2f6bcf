// The shipped faces, opened once for a test file.

import type { Face } from "../../src/lettering/face.ts";
import { openLettering } from "../../src/lettering/lettering.ts";
import { outlineFonts, packedFonts } from "./packed-fonts.ts";

const { faces } = openLettering(packedFonts);

export const faceNamed = (id: string): Face => {
  const face = faces.get(id);
  if (face === undefined) throw new Error(`no face is called ${id}`);
  return face;
};

export const everyFace: readonly Face[] = [...faces.values()];

export const outlineFaces: readonly Face[] = outlineFonts.map((record) => faceNamed(record.id));

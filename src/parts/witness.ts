// The witness in the waste: which face looks up, and which part it is. Cut off with the frame, so that it never shows.

import type { Path } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import { extentCentre } from "../geometry/extent.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { mirroredPath, placedPath, placement } from "../geometry/transform.ts";
import type { Lettering } from "../lettering/lettering.ts";
import { setText } from "../lettering/set-text.ts";
import type { Operation } from "./sheet-part.ts";

/** Cap height of the witness, and its distance below the outline. */
const WITNESS_HEIGHT = mm(3.5);
const WITNESS_DROP = 6.5;

/** Null where the library holds no single-line face to write it with. */
export const witness = (
  options: {
    readonly faceUp: "front" | "rear";
    /** What it says besides, the longest first: the first that the sheet has room for is written. */
    readonly labels: readonly string[];
    readonly width: Mm;
  },
  outline: Extent,
  lettering: Lettering,
): Operation | null => {
  const face = [...lettering.faces.values()].find(({ kind }) => kind === "single-line");
  if (face === undefined) return null;
  const word = options.faceUp === "front" ? "FRONT" : "BACK";
  const texts = [...options.labels.map((label) => `${word} ${label}`), word];
  const sets = texts.map((text) =>
    setText(face, text, { capHeight: WITNESS_HEIGHT, align: "start" }),
  );
  const room = outline.maxX - outline.minX;
  const set = sets.find(({ advance }) => advance <= room) ?? sets.at(-1);
  if (set === undefined) return null;
  const at = placement(outline.minX, outline.minY - WITNESS_DROP);
  const paths = set.strokes.map((path) => placedPath(path, at));
  return {
    kind: "stroke",
    process: "witness",
    feature: "witness",
    paths: options.faceUp === "front" ? paths : readableFromBehind(paths, outline),
    width: options.width,
  };
};

/** The file of a set-up worked from behind is mirrored once; the word is turned beforehand so that it reads at the machine. */
const readableFromBehind = (paths: readonly Path[], outline: Extent): readonly Path[] =>
  paths.map((path) => mirroredPath(path, extentCentre(outline).x));

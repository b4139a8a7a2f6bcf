// Key `photo` of a panel: a photograph under its drawing. Marks that say no place are told, and the photograph stays: what
// was marked can be mended in the page.

import { finding } from "../diagnostics/finding.ts";
import type { PlanePoint } from "../geometry/homography-pair.ts";
import { degrees } from "../geometry/quantity.ts";
import { byKey } from "./choice-fields.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import { type Field, mapped, read, refined } from "./field.ts";
import { list, record, required, tuple, usual } from "./fields.ts";
import { filePath } from "./file-field.ts";
import { millimetres } from "./length-fields.ts";
import { angle, number } from "./number-fields.ts";
import {
  type PhotoDesign,
  type PhotoPoint,
  type PhotoSheet,
  SHEET_SIZES,
  type SheetSize,
} from "./photo-design.ts";
import { photoPlane } from "./photo-plane.ts";
import { photoTroubleWords } from "./photo-words.ts";
import { oneOf } from "./text-fields.ts";
import { about } from "./text-node.ts";
import { spanOf } from "./written.ts";

/** As large as a picture may be, so that a slip of the pen is told. */
const MOST_PIXELS = 100_000;

const IN_PICTURE: Field<PlanePoint> = mapped(
  tuple("a place in the picture", number("pixels", { least: 0, most: MOST_PIXELS }), [
    "across",
    "down",
  ]),
  ([x, y]) => ({ x, y }),
);

const ON_PANEL: Field<PlanePoint> = mapped(
  tuple("a place on the panel", millimetres("a length"), ["across", "up"]),
  ([x, y]) => ({ x, y }),
);

const POINT: Field<PhotoPoint> = mapped(
  record("a point", {
    "in-picture": required(IN_PICTURE, "Pixels from the upper left corner, across and down"),
    "on-panel": required(ON_PANEL, "From the lower left corner, across and up"),
  }),
  ({ "in-picture": inPicture, "on-panel": onPanel, written }) => ({ inPicture, onPanel, written }),
);

/** Marks beyond these tell nothing more, and every four of them are looked at. */
const MOST_POINTS = 40;

const isSheetSize = (word: string): word is SheetSize => Object.hasOwn(SHEET_SIZES, word);

const SIZES: readonly SheetSize[] = Object.keys(SHEET_SIZES).filter(isSheetSize);

const SHEET: Field<PhotoSheet> = record("a sheet of paper", {
  size: required(oneOf(`one of ${SIZES.join(", ")}`, SIZES), "What paper it is"),
  corners: required(
    tuple("corners in the picture", IN_PICTURE, [
      "lower left",
      "lower right",
      "upper right",
      "upper left",
    ]),
    "The four corners of the sheet set upright, as they lie in the picture",
  ),
  at: required(ON_PANEL, "Where its lower left corner lay on the panel"),
  turn: usual(angle("an angle"), {
    value: degrees(0),
    about: "How it lay, counter-clockwise about that corner",
  }),
});

const FILE = required(filePath("the path of a file"), "The picture: JPEG, PNG or WebP");

const OF_POINTS: Field<PhotoDesign> = mapped(
  record("a photograph", {
    file: FILE,
    points: required(
      list("points", POINT, { least: 4, most: MOST_POINTS }),
      "Four or more spots, in the picture and on the panel",
    ),
  }),
  ({ file, points, written }) => ({ file, marks: { kind: "points", points }, written }),
);

const OF_SHEET: Field<PhotoDesign> = mapped(
  record("a photograph", {
    file: FILE,
    sheet: required(SHEET, "A sheet of paper that lay flat on the panel"),
  }),
  ({ file, sheet, written }) => ({ file, marks: { kind: "sheet", sheet }, written }),
);

export const PHOTO: Field<PhotoDesign> = refined(
  byKey("a photograph", { points: OF_POINTS, sheet: OF_SHEET }),
  (photo, node) => {
    const plane = photoPlane(photo.marks);
    if (plane.kind === "plane") return read(photo, node);
    return read(photo, node, [
      finding(MEANING_CODES.photoMarks, {
        message: `${about(node)}${photoTroubleWords(plane.trouble, photo.marks.kind)}`,
        span: spanOf(photo.written, photo.marks.kind),
      }),
    ]);
  },
);

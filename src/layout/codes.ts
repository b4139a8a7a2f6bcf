// The table of what layout can't place or look up. Each says what was asked for and the nearest things there are.

import type { CodeEntry } from "../diagnostics/finding.ts";

/** `lacking`: what lacks it, with its verb. */
const unknown = (what: string, key: string, lacking: string): CodeEntry => ({
  code: `layout/unknown-${what}`,
  severity: "fault",
  title: `a ${what} that ${lacking}`,
  why: `The design names a ${what} by its id. Without its record the program knows neither its size nor its depth, so whatever depends on it is left out and everything else is still judged. \`consolewright list\` prints the ids.`,
  example: `${key}: no-such-${what}`,
});

export const UNKNOWN_PART = unknown("part", "part", "the catalogue does not hold");
export const UNKNOWN_HARDWARE = unknown("hardware", "knob", "the catalogue does not hold");
export const UNKNOWN_MOUNT = unknown("mount", "mount", "the catalogue does not hold");
export const UNKNOWN_STOCK = unknown(
  "stock",
  "sheet",
  "neither the workshop nor the catalogue holds",
);
export const UNKNOWN_FINISH = unknown(
  "finish",
  "finish",
  "neither the workshop nor the catalogue holds",
);
export const UNKNOWN_MACHINE = unknown(
  "machine",
  "use",
  "neither the workshop nor the catalogue holds",
);
export const UNKNOWN_LAYER = unknown("layer", "clamps", "the stack does not hold");
export const UNKNOWN_FONT = unknown("font", "font", "the library does not hold");
export const UNKNOWN_NEIGHBOUR = unknown("neighbour", "right-of", "the panel does not hold");

export const CIRCULAR_PLACE: CodeEntry = {
  code: "layout/circular-place",
  severity: "fault",
  title: "places that wait for each other",
  why: "Each of these components takes its place from the next, and the last one from the first, so that none has a place. Give one of them a distance from an edge.",
  example:
    "components:\n  a: { part: toggle-12, at: { right-of: b, centres: 20 mm } }\n  b: { part: toggle-12, at: { right-of: a, centres: 20 mm } }",
};

export const SIZE_UNIT: CodeEntry = {
  code: "layout/size-unit",
  severity: "fault",
  title: "a size counted in another mount's pitch",
  why: "Modules belong to console rails, U and HP to racks and subracks. A length in mm or inches always works.",
  example: "mount: console-rail\nheight: 3 U",
};

export const SIZE_FIXED: CodeEntry = {
  code: "layout/size-fixed",
  severity: "fault",
  title: "a size that the mount has settled otherwise",
  why: "A rail or a rack has one width, a subrack one height. A design that asks for another would not fit, and is not quietly given the mount's.",
  example: "mount: rack-19\nwidth: 300 mm\nheight: 2 U",
};

export const SIZE_MISSING: CodeEntry = {
  code: "layout/size-missing",
  severity: "fault",
  title: "a size that this mount leaves to the design",
  why: "A rail or a rack fixes the panel's width. A box lid or four corner screws don't: the design gives it.",
  example: "mount: box-lid\nheight: 100 mm",
};

export const SIZE_TOO_LARGE: CodeEntry = {
  code: "layout/size-too-large",
  severity: "fault",
  title: "a panel longer than any sheet",
  why: "Ten metres are more than any sheet that is sold. A size like that is most often a slip of the unit or of the decimal point.",
  example: "mount: console-rail\nheight: 57 m",
};

export const SIZE_TOO_SMALL: CodeEntry = {
  code: "layout/size-too-small",
  severity: "fault",
  title: "a panel that is all edge",
  why: "The finished outline is the nominal size less what the mount keeps free, with rounded corners. Where nothing is left between the corners there is no panel.",
  example: "mount: console-rail\nheight: 0.3 mm",
};

export const TOO_MANY: CodeEntry = {
  code: "layout/too-many",
  severity: "fault",
  title: "more components than any panel holds",
  why: "Every component is judged against every other. Six hundred are twice what the fullest annunciator holds; more are most often a slip in the count of a grid.",
  example:
    "components:\n  keys: { grid: { part: tactile-12-cap, columns: 40, rows: 40, pitch: 19 mm, left: 20 mm, top: 20 mm } }",
};

export const TOO_CROWDED: CodeEntry = {
  code: "layout/too-crowded",
  severity: "fault",
  title: "hundreds of things on top of each other",
  why: "A slip in one pitch puts a few components on each other, and each is told. Where hundreds lie on each other the slip is larger, and listing every pair would bury it.",
  example:
    "components:\n  keys: { grid: { part: tactile-12-cap, columns: 12, rows: 10, pitch: 1 mm, left: 20 mm, top: 20 mm } }",
};

export const NO_SHEET: CodeEntry = {
  code: "layout/no-sheet",
  severity: "fault",
  title: "a stack without a sheet",
  why: "Components clamp to a sheet and legends stand on one. A stack needs at least one layer with `sheet`.",
  example: "stack:\n  - { layer: back, behind: 18 mm }",
};

export const CLAMPS_APART: CodeEntry = {
  code: "layout/clamps-apart",
  severity: "fault",
  title: "clamped layers that don't touch",
  why: "A nut holds together layers that lie on each other. Name neighbours, front to back.",
  example: "clamps: [face, spacer-sheet]",
};

export const FIXING_PLACES: CodeEntry = {
  code: "layout/fixing-places",
  severity: "note",
  title: "fixings placed by the house rule",
  why: "The design asks for fixings and gives no places, so that the program set them round the edge, clear of rails and cut-outs. Write them down with `at:` once you are content, so that they stay.",
  example: "fixings: { screws: m3, dowels: 3 mm }",
};

export const FIXING_ROOM: CodeEntry = {
  code: "layout/fixing-room",
  severity: "query",
  title: "no free spot for a fixing",
  why: "The house rule sets fixings round the edge and moves each along it, clear of holes, bodies, letters and the mount's strip. Where everything within reach is taken it sets none: make room, or give the places yourself with `at:` and `dowels-at:`.",
  example: "fixings: { screws: m3, dowels: 3 mm }",
};

export const UNKNOWN_POSITION: CodeEntry = {
  code: "layout/unknown-position",
  severity: "fault",
  title: "words for a position that the part does not have",
  why: "Words stand at positions of a lever (up, down, left, right, centre) or at the numbered stops of a selector (1, 2, ...). A word for any other position would not be on the panel.",
  example: "positions: { sideways: OFF }",
};

export const WINDOW_CORNER: CodeEntry = {
  code: "layout/window-corner",
  severity: "fault",
  title: "a window whose corners are rounder than it is wide",
  why: "A corner's radius is at most half the window's shorter side; at half of it the end is a half circle. The window is left out until it is mended.",
  example:
    "markings:\n  - window: { at: centre, width: 20 mm, height: 4 mm, corner: 3 mm, layers: [face] }",
};

export const MEASURED_SHAPE: CodeEntry = {
  code: "layout/measured-shape",
  severity: "fault",
  title: "a measured size that no shape can have",
  why: "Sizes under `measured` go over the record's own. Together they must still be a shape: diameters above zero, flats inside their circle, corners no rounder than their sides.",
  example: "measured: { openings.clamp.diameter: -3 mm, dated: 2026-01-31 }",
};

export const HOLE_SIZE: CodeEntry = {
  code: "layout/hole-size",
  severity: "fault",
  title: "a hole too small for its own shape",
  why: "`hole` moves every side of the part's clamp hole alike, flats and notches with the rest. At this size a side would vanish.",
  example:
    "components:\n  fuse: { part: fuse-holder-5x20, hole: 0.5 mm, at: { x: centre, y: centre } }",
};

export const WINDOW_NOWHERE: CodeEntry = {
  code: "layout/window-nowhere",
  severity: "fault",
  title: "a window that opens no layer",
  why: "A window opens the sheets that it names. Air, a tray or a printed spacer has nothing to open. Name the sheets that it goes through: `layers: [face]`.",
  example: "markings:\n  - window: { at: centre, width: 20 mm, height: 8 mm, layers: [spacer] }",
};

export const SCALE_TOO_FINE: CodeEntry = {
  code: "layout/scale-too-fine",
  severity: "fault",
  title: "more marks than a circle has degrees, or more figures than a clock has seconds",
  why: "A scale counts from `from` to `to` in steps of `major` and `minor`. A step that is too small, or none at all, is most often a slip of the pen.",
  example: "scale: { from: 0, to: 10, major: 0.001 }",
};

export const SCALE_LABELS: CodeEntry = {
  code: "layout/scale-labels",
  severity: "fault",
  title: "labels that do not go up with the figures of a scale",
  why: "Labels take the place of figures, one for one from the first mark to the last. With one too many or too few a word stands at the wrong mark, or nowhere.",
  example: "scale: { from: 1, to: 4, major: 1, labels: [OFF, LOW, HIGH] }",
};

export const NO_LENGTH: CodeEntry = {
  code: "layout/no-length",
  severity: "fault",
  title: "an arrow that ends where it begins",
  why: "An arrow needs two places that are apart: without a direction it can't be drawn.",
  example: "markings:\n  - arrow: { from: { x: 20 mm, y: 20 mm }, to: { x: 20 mm, y: 20 mm } }",
};

export const PHOTO_MISSING: CodeEntry = {
  code: "layout/photo-missing",
  severity: "note",
  title: "a photograph that is not there",
  why: "A photograph lies under the drawing while a panel is laid out. The places that were taken from it stand in the text, so that the panel is whole without it.",
  example:
    "photo: { file: lost.jpg, sheet: { size: a4, corners: [[90, 800], [700, 810], [690, 90], [100, 80]], at: [0, 0] } }",
};

export const PHOTO_PICTURE: CodeEntry = {
  code: "layout/photo-picture",
  severity: "query",
  title: "a photograph that is no picture, or not the one that was marked",
  why: "The marks are pixels of one picture. In a copy of another size they mean other spots, and every place that is taken from it is off. JPEG, PNG and WebP are read.",
  example:
    "photo: { file: panel.yaml, sheet: { size: a4, corners: [[90, 800], [700, 810], [690, 90], [100, 80]], at: [0, 0] } }",
};

export const LAYOUT_CODES: readonly CodeEntry[] = [
  UNKNOWN_PART,
  UNKNOWN_HARDWARE,
  UNKNOWN_MOUNT,
  UNKNOWN_STOCK,
  UNKNOWN_FINISH,
  UNKNOWN_MACHINE,
  UNKNOWN_LAYER,
  UNKNOWN_FONT,
  UNKNOWN_NEIGHBOUR,
  CIRCULAR_PLACE,
  SIZE_UNIT,
  SIZE_MISSING,
  NO_SHEET,
  TOO_MANY,
  TOO_CROWDED,
  CLAMPS_APART,
  FIXING_PLACES,
  SCALE_TOO_FINE,
  SCALE_LABELS,
  NO_LENGTH,
  WINDOW_CORNER,
  WINDOW_NOWHERE,
  MEASURED_SHAPE,
  HOLE_SIZE,
  SIZE_FIXED,
  SIZE_TOO_SMALL,
  SIZE_TOO_LARGE,
  FIXING_ROOM,
  UNKNOWN_POSITION,
  PHOTO_MISSING,
  PHOTO_PICTURE,
];

// What every page of a true-size print carries beside the drawing: two bars of 100 mm to measure, crop marks round the
// window, registration marks in the shared strips, and a caption. Takes a page of a tiling, gives items in page coordinates.

import type { DrawingItem } from "../drawings/drawing.ts";
import { circle, type Path, type Point, path, point, vertex } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import { type Degrees, degrees, type Mm, mm } from "../geometry/quantity.ts";
import { rectangle } from "../geometry/shapes.ts";
import {
  type Placement,
  placedContour,
  placedPath,
  placedPoint,
  placement,
} from "../geometry/transform.ts";
import type { Face } from "../lettering/face.ts";
import type { Tile, Tiling } from "./tile.ts";
import { wordItems, wordsWidth } from "./words.ts";

export interface PageCaption {
  /** First line, in larger letters. */
  readonly heading: string;
  /** FRONT or BACK, in large letters; empty where a drawing has no side. */
  readonly side: string;
  /** Second line. */
  readonly note: string;
}

/** Length of the bars; what a ruler reads off them tells the scale of the print. */
export const BAR_LENGTH = 100;

const HAIR = mm(0.1);
const PEN = mm(0.25);
const SMALL = mm(2);
const HEADING = mm(3);
const SIDE = mm(6);
/** Distance of bars and caption from the paper's edge. */
const EDGE = 8;

export const pageMarks = (
  tile: Tile,
  tiling: Tiling,
  options: { readonly face: Face; readonly caption: PageCaption },
): readonly DrawingItem[] => {
  const { face, caption } = options;
  const { left, bottom } = { left: tile.onPage.minX, bottom: tile.onPage.minY };
  return [
    penStroke(cropMarks(tile.onPage), HAIR),
    ...registrationItems(tile),
    ...barItems(face, placement(left, EDGE)),
    ...barItems(face, placement(EDGE, bottom, quarterTurn)),
    ...captionItems(face, caption, { tile, tiling }),
  ];
};

const quarterTurn: Degrees = degrees(90);

const penStroke = (paths: readonly Path[], width: Mm): DrawingItem => ({
  kind: "stroke",
  paths,
  ink: "line",
  width,
  dashed: false,
});

const lineOf = (
  fromX: number,
  fromY: number,
  to: { readonly x: number; readonly y: number },
): Path => path([vertex(fromX, fromY), vertex(to.x, to.y)]);

/** Clear of the window, so that they are cut off with the margin. */
const CROP = { from: 1.5, to: 6 } as const;

const cropMarks = (window: Extent): readonly Path[] =>
  ([-1, 1] as const).flatMap((sideX) =>
    ([-1, 1] as const).flatMap((sideY) => {
      const x = sideX < 0 ? window.minX : window.maxX;
      const y = sideY < 0 ? window.minY : window.maxY;
      return [
        lineOf(x + sideX * CROP.from, y, { x: x + sideX * CROP.to, y }),
        lineOf(x, y + sideY * CROP.from, { x, y: y + sideY * CROP.to }),
      ];
    }),
  );

const MARK = { radius: 2, arm: 4 } as const;

const registrationItems = (tile: Tile): readonly DrawingItem[] => {
  if (tile.registration.length === 0) return [];
  const places = tile.registration.map((at) =>
    placedPoint(at, placement(tile.shift.x, tile.shift.y)),
  );
  const rings = places.map((at) => circle(at, MARK.radius));
  return [
    { kind: "outline", contours: rings, ink: "line", width: HAIR, dashed: false },
    penStroke(
      places.flatMap((at) => crossAt(at, MARK.arm)),
      HAIR,
    ),
  ];
};

/** Two strokes through a point, `arm` long to each side. */
export const crossAt = (at: Point, arm: number): readonly Path[] => [
  lineOf(at.x - arm, at.y, { x: at.x + arm, y: at.y }),
  lineOf(at.x, at.y - arm, { x: at.x, y: at.y + arm }),
];

const BOX = { width: 18, height: 5.5 } as const;
const WORD_GAP = 2;

/** A bar along x from the placement's origin, and behind it the words and the box to write the reading in. */
const barItems = (face: Face, at: Placement): readonly DrawingItem[] => {
  const ticks = Array.from({ length: 11 }, (_, index) =>
    lineOf(index * 10, 0, { x: index * 10, y: index % 5 === 0 ? 3 : 1.5 }),
  );
  const bar = [lineOf(0, 0, { x: BAR_LENGTH, y: 0 }), ...ticks];
  const before = "100 mm, measured";
  const boxAt = BAR_LENGTH + 2 * WORD_GAP + wordsWidth(face, before, SMALL) + WORD_GAP;
  const box = rectangle({
    minX: mm(boxAt),
    minY: mm(-1.5),
    maxX: mm(boxAt + BOX.width),
    maxY: mm(BOX.height - 1.5),
  });
  const wordsAt = (x: number): Placement => {
    const place: Point = placedPoint(point(x, 0), at);
    return { ...at, x: place.x, y: place.y };
  };
  const words = { capHeight: SMALL, align: "start", ink: "line" } as const;
  return [
    penStroke(
      bar.map((line) => placedPath(line, at)),
      PEN,
    ),
    { kind: "outline", contours: [placedContour(box, at)], ink: "line", width: PEN, dashed: false },
    ...wordItems(face, before, { ...words, at: wordsAt(BAR_LENGTH + 2 * WORD_GAP) }),
    ...wordItems(face, "of 100", { ...words, at: wordsAt(boxAt + BOX.width + WORD_GAP) }),
  ];
};

/** The crop marks of the upper corners stand beside the caption. */
const CAPTION_INSET = 2;

const captionItems = (
  face: Face,
  caption: PageCaption,
  { tile, tiling }: { readonly tile: Tile; readonly tiling: Tiling },
): readonly DrawingItem[] => {
  const left = tile.onPage.minX + CAPTION_INSET;
  const right = tile.onPage.maxX - CAPTION_INSET;
  const top = tiling.pageHeight - EDGE;
  const sheet = `Sheet ${(tile.row - 1) * tiling.columns + tile.column} of ${tiling.tiles.length} (column ${tile.column}, row ${tile.row}).`;
  const room = right - left - (caption.side === "" ? 0 : wordsWidth(face, caption.side, SIDE) + 4);
  const line = (text: string, capHeight: Mm, y: number): readonly DrawingItem[] =>
    wordItems(face, text, {
      capHeight: fittingHeight(face, text, { capHeight, room }),
      align: "start",
      ink: "line",
      at: placement(left, y),
    });
  return [
    ...line(caption.heading, HEADING, top - HEADING),
    ...line(`${caption.note} ${sheet}`, SMALL, top - HEADING - 4.5),
    ...wordItems(face, caption.side, {
      capHeight: SIDE,
      align: "end",
      ink: "line",
      at: placement(right, top - SIDE),
    }),
  ];
};

/** The cap height at which the line fits its room. */
const fittingHeight = (
  face: Face,
  text: string,
  { capHeight, room }: { readonly capHeight: Mm; readonly room: number },
): Mm => {
  const width = wordsWidth(face, text, capHeight);
  return width <= room ? capHeight : mm((capHeight * room) / width);
};

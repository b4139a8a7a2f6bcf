// What every page of a true-size print carries beside the drawing: two bars of 100 mm to measure, crop marks round the
// window, registration marks in the shared strips, and a caption. Takes a page of a tiling, gives items in page coordinates.

import type { DrawingItem } from "../drawings/drawing.ts";
import { outlined, segment, stroked } from "../drawings/items.ts";
import { type WordLook, words, wordsWidth } from "../drawings/words.ts";
import { circle, type Path, type Point, point } from "../geometry/contour.ts";
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
import { plainText } from "./plain-text.ts";
import type { Tile, Tiling } from "./tile.ts";

export interface PageCaption {
  /** First line, in larger letters. */
  readonly heading: string;
  /** FRONT or BACK, in large letters; empty where a drawing has no side. */
  readonly side: string;
  /** Second line. */
  readonly note: string;
}

/** Length of the bars; what a ruler reads off them tells the scale of the print. */
const BAR_LENGTH = 100;

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

const penStroke = (paths: readonly Path[], width: Mm): DrawingItem =>
  stroked(paths, { ink: "line", width });

/** Clear of the window, so that they are cut off with the margin. */
const CROP = { from: 1.5, to: 6 } as const;

const cropMarks = (window: Extent): readonly Path[] =>
  ([-1, 1] as const).flatMap((sideX) =>
    ([-1, 1] as const).flatMap((sideY) => {
      const x = sideX < 0 ? window.minX : window.maxX;
      const y = sideY < 0 ? window.minY : window.maxY;
      return [
        segment(x + sideX * CROP.from, y, x + sideX * CROP.to, y),
        segment(x, y + sideY * CROP.from, x, y + sideY * CROP.to),
      ];
    }),
  );

/** Rings with a slanting cross: nobody takes one for the upright cross of a hole. */
const MARK = { radius: 2.5, arm: 2.5 } as const;

const registrationItems = (tile: Tile): readonly DrawingItem[] => {
  if (tile.registration.length === 0) return [];
  const places = tile.registration.map((at) =>
    placedPoint(at, placement(tile.shift.x, tile.shift.y)),
  );
  const rings = places.map((at) => circle(at, MARK.radius));
  return [
    outlined(rings, { ink: "line", width: HAIR }),
    penStroke(
      places.flatMap((at) => slantingCrossAt(at, MARK.arm)),
      HAIR,
    ),
  ];
};

const slantingCrossAt = (at: Point, arm: number): readonly Path[] => [
  segment(at.x - arm, at.y - arm, at.x + arm, at.y + arm),
  segment(at.x - arm, at.y + arm, at.x + arm, at.y - arm),
];

/** Two strokes through a point, `arm` long to each side. */
export const crossAt = (at: Point, arm: number): readonly Path[] => [
  segment(at.x - arm, at.y, at.x + arm, at.y),
  segment(at.x, at.y - arm, at.x, at.y + arm),
];

const BOX = { width: 18, height: 5.5 } as const;
const WORD_GAP = 2;

/** A bar along x from the placement's origin, and behind it the words and the box to write the reading in. */
const barItems = (face: Face, at: Placement): readonly DrawingItem[] => {
  const ticks = Array.from({ length: 11 }, (_, index) =>
    segment(index * 10, 0, index * 10, index % 5 === 0 ? 3 : 1.5),
  );
  const bar = [segment(0, 0, BAR_LENGTH, 0), ...ticks];
  const before = "100 mm, measured";
  const boxAt = BAR_LENGTH + 2 * WORD_GAP + wordsWidth(face, before, SMALL) + WORD_GAP;
  const box = rectangle({
    minX: mm(boxAt),
    minY: mm(-1.5),
    maxX: mm(boxAt + BOX.width),
    maxY: mm(BOX.height - 1.5),
  });
  const look = { capHeight: SMALL, align: "start", ink: "line", turn: at.turn } as const;
  const wordsFrom = (x: number, text: string): readonly DrawingItem[] =>
    words(face, text, placedPoint(point(x, 0), at), look).items;
  return [
    penStroke(
      bar.map((line) => placedPath(line, at)),
      PEN,
    ),
    outlined([placedContour(box, at)], { ink: "line", width: PEN }),
    ...wordsFrom(BAR_LENGTH + 2 * WORD_GAP, before),
    ...wordsFrom(boxAt + BOX.width + WORD_GAP, "of 100"),
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
  const joining = tile.registration.length === 0 ? "" : " Join pages ring on ring.";
  const room = right - left - (caption.side === "" ? 0 : wordsWidth(face, caption.side, SIDE) + 4);
  const line = (written: string, capHeight: Mm, y: number): readonly DrawingItem[] => {
    const text = plainText(written);
    const look: WordLook = {
      capHeight: fittingHeight(face, text, { capHeight, room }),
      align: "start",
      ink: "line",
    };
    return words(face, text, point(left, y), look).items;
  };
  const side: WordLook = { capHeight: SIDE, align: "end", ink: "line" };
  return [
    ...line(caption.heading, HEADING, top - HEADING),
    ...line(`${caption.note} ${sheet}${joining}`, SMALL, top - HEADING - 4.5),
    ...words(face, caption.side, point(right, top - SIDE), side).items,
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

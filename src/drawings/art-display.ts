// Displays: glass in its window, the active area, and a hint of what it shows. Digits are a likeness of segments.

import { type Contour, type Point, point } from "../geometry/contour.ts";
import { type Extent, extent, extentHeight, extentWidth } from "../geometry/extent.ts";
import { polygon, rectangle } from "../geometry/shapes.ts";
import { placedContour, placement } from "../geometry/transform.ts";
import { area, type Scene } from "./art-scene.ts";
import type { ArtPiece } from "./tone.ts";

export const displayArt = (scene: Scene): readonly ArtPiece[] => {
  const { component, openings } = scene;
  const { display, title } = component.part;
  const seen = openings[0] ?? component.face.at(-1);
  if (seen === undefined) return [];
  const glass = area("glass", seen);
  if (display === null) return [glass];
  const { active } = display;
  const { width, height } = active;
  const upright = extent(
    active.at.x - width / 2,
    active.at.y - height / 2,
    active.at.x + width / 2,
    active.at.y + height / 2,
  );
  const place = placement(component.at.x, component.at.y, component.turn);
  const shown = contentOf(title, upright);
  const placed = (contours: readonly Contour[]) =>
    contours.map((each) => placedContour(each, place));
  return [glass, area("unlit", ...placed(shown.unlit)), area("lit", ...placed(shown.lit))];
};

interface Shown {
  readonly lit: readonly Contour[];
  readonly unlit: readonly Contour[];
}

const contentOf = (title: string, box: Extent): Shown => {
  if (/segment/i.test(title)) return digits(box);
  const cells = /(\d{1,2}) x (\d{1,2})\b/.exec(title);
  const columns = Number(cells?.[1] ?? 0);
  const rows = Number(cells?.[2] ?? 0);
  return columns > 0 && columns <= 40 && rows > 0 && rows <= 8
    ? characterCells(box, columns, rows)
    : graph(box);
};

/** Advance of a digit over its height: common practice for 0.3 to 0.8 in digits. */
const DIGIT_ADVANCE = 0.82;

const digits = (box: Extent): Shown => {
  const height = extentHeight(box);
  const count = Math.max(1, Math.round(extentWidth(box) / (height * DIGIT_ADVANCE)));
  const pitch = extentWidth(box) / count;
  const all = Array.from({ length: count }, (_, index) =>
    digit(
      extent(
        box.minX + (index + 0.2) * pitch,
        box.minY,
        box.minX + (index + 0.8) * pitch,
        box.maxY,
      ),
      index,
    ),
  );
  return { lit: all.flatMap(({ lit }) => lit), unlit: all.flatMap(({ unlit }) => unlit) };
};

/** Which of the seven bars (top, right pair, bottom, left pair, middle) make 1, 2, 3 ... 0. */
const BARS = [
  "0110000",
  "1101101",
  "1111001",
  "0110011",
  "1011011",
  "1011111",
  "1110000",
  "1111111",
  "1111011",
  "1111110",
];

const digit = (cell: Extent, index: number): Shown => {
  const lit: Contour[] = [];
  const unlit: Contour[] = [];
  const pattern = BARS[index % BARS.length] ?? "";
  for (const [segment, shape] of sevenBars(cell).entries())
    (pattern[segment] === "1" ? lit : unlit).push(shape);
  return { lit, unlit };
};

/** Clockwise from the top, then the middle. */
const sevenBars = (cell: Extent): readonly Contour[] => {
  const half = extentHeight(cell) * 0.055;
  const gap = half * 0.35;
  const left = cell.minX + half;
  const right = cell.maxX - half;
  const top = cell.maxY - half;
  const foot = cell.minY + half;
  const middle = (top + foot) / 2;
  const level = (y: number) => segmentBar(point(left + gap, y), point(right - gap, y), half);
  const upright = (x: number, from: number, to: number) =>
    segmentBar(point(x, from + gap), point(x, to - gap), half);
  return [
    level(top),
    upright(right, middle, top),
    upright(right, foot, middle),
    level(foot),
    upright(left, foot, middle),
    upright(left, middle, top),
    level(middle),
  ];
};

/** A bar with pointed ends, level or upright. */
const segmentBar = (from: Point, to: Point, half: number): Contour =>
  from.y === to.y
    ? polygon([
        from,
        point(from.x + half, from.y - half),
        point(to.x - half, to.y - half),
        to,
        point(to.x - half, to.y + half),
        point(from.x + half, from.y + half),
      ])
    : polygon([
        from,
        point(from.x + half, from.y + half),
        point(to.x + half, to.y - half),
        to,
        point(to.x - half, to.y - half),
        point(from.x - half, from.y + half),
      ]);

const characterCells = (box: Extent, columns: number, rows: number): Shown => {
  const across = extentWidth(box) / columns;
  const up = extentHeight(box) / rows;
  const lit: Contour[] = [];
  const unlit: Contour[] = [];
  for (let index = 0; index < columns * rows; index += 1) {
    const x = box.minX + (index % columns) * across;
    const y = box.minY + Math.floor(index / columns) * up;
    const cell = rectangle(
      extent(x + 0.1 * across, y + 0.08 * up, x + 0.9 * across, y + 0.92 * up),
    );
    // Words of five with a space between them: enough to be read as text.
    if (index % columns < columns * 0.8 && index % 6 !== 5) lit.push(cell);
    else unlit.push(cell);
  }
  return { lit, unlit };
};

/** A bar chart: a graphic display shows what it likes. */
const HEIGHTS = [0.35, 0.6, 0.45, 0.8, 0.55, 0.7, 0.3, 0.5];

const graph = (box: Extent): Shown => {
  const pitch = extentWidth(box) / HEIGHTS.length;
  const lit = HEIGHTS.map((height, index) => {
    const x = box.minX + index * pitch;
    return rectangle(
      extent(x + 0.2 * pitch, box.minY, x + 0.8 * pitch, box.minY + extentHeight(box) * height),
    );
  });
  return { lit, unlit: [] };
};

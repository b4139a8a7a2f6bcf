// Names of components on the front drawing: each in the nearest free place beside its component, joined by a line where
// that is not touching; where all is taken, on the component itself. Marks say what was measured and what is fitted later.

import { type Point, point } from "../geometry/contour.ts";
import {
  type Extent,
  extent,
  extentCentre,
  extentsOverlap,
  extentWidth,
  grownExtent,
} from "../geometry/extent.ts";
import { rectangle } from "../geometry/shapes.ts";
import type { Face } from "../lettering/face.ts";
import type { DrawingItem } from "./drawing.ts";
import { filledBox, HAIR, outlined, run, stroked } from "./items.ts";
import { words, wordsWidth } from "./words.ts";

export interface Tagged {
  readonly id: string;
  readonly at: Point;
  /** What is seen of it. */
  readonly seen: Extent;
  /** "M", "LATER". */
  readonly marks: readonly string[];
}

export interface Tag {
  readonly id: string;
  readonly box: Extent;
  /** Set on its own component, because nothing was free beside it. */
  readonly isOnComponent: boolean;
  readonly items: readonly DrawingItem[];
}

const HEIGHT = 1.6;
const MARGIN = 0.35;
const MARK_GAP = 0.7;
/** Rings of places to try, from the edge of what is seen. */
const DISTANCES = [0.5, 2.2, 4.5, 7.5, 11, 15];
/** A name this near needs no line. */
const BESIDE = 1;

export const componentTags = (
  face: Face | null,
  things: readonly Tagged[],
  room: { readonly within: Extent; readonly taken: readonly Extent[] },
): readonly Tag[] => {
  const taken = [...room.taken, ...things.map(({ seen }) => seen)];
  return things.map((thing) => {
    const width = tagWidth(face, thing);
    const place = freePlace(thing, width, { within: room.within, taken });
    const box = place?.box ?? boxAt(thing.at, width);
    taken.push(box);
    const isOnComponent = place === null;
    return {
      id: thing.id,
      box,
      isOnComponent,
      items: tagItems(face, thing, { box, isOnComponent }),
    };
  });
};

const tagWidth = (face: Face | null, { id, marks }: Tagged): number =>
  wordsWidth(face, id, HEIGHT) +
  marks.reduce((sum, mark) => sum + MARK_GAP + markWidth(face, mark), 0) +
  2 * MARGIN;

const markWidth = (face: Face | null, mark: string): number =>
  wordsWidth(face, mark, HEIGHT * 0.8) + 2 * MARGIN;

const boxAt = (centre: Point, width: number): Extent => {
  const halfHeight = HEIGHT / 2 + MARGIN;
  return extent(
    centre.x - width / 2,
    centre.y - halfHeight,
    centre.x + width / 2,
    centre.y + halfHeight,
  );
};

const freePlace = (
  thing: Tagged,
  width: number,
  room: { readonly within: Extent; readonly taken: readonly Extent[] },
): { readonly box: Extent } | null => {
  for (const distance of DISTANCES)
    for (const centre of ring(thing.seen, width, distance)) {
      const box = boxAt(centre, width);
      if (isInside(box, room.within) && !room.taken.some((other) => extentsOverlap(other, box)))
        return { box };
    }
  return null;
};

/** Centres of a tag round a box: lower right first, where legends seldom stand, then clockwise. */
const ring = (seen: Extent, width: number, distance: number): readonly Point[] => {
  const middle = extentCentre(seen);
  const height = HEIGHT + 2 * MARGIN;
  const left = seen.minX - distance - width / 2;
  const right = seen.maxX + distance + width / 2;
  const low = seen.minY - distance - height / 2;
  const high = seen.maxY + distance + height / 2;
  return [
    point(right, seen.minY + height / 2),
    point(left, seen.minY + height / 2),
    point(middle.x, low),
    point(right, seen.maxY - height / 2),
    point(left, seen.maxY - height / 2),
    point(middle.x, high),
    point(right, middle.y),
    point(left, middle.y),
    point(right, low),
    point(left, low),
    point(right, high),
    point(left, high),
  ];
};

const isInside = (box: Extent, within: Extent): boolean =>
  box.minX >= within.minX &&
  box.minY >= within.minY &&
  box.maxX <= within.maxX &&
  box.maxY <= within.maxY;

const tagItems = (
  face: Face | null,
  thing: Tagged,
  { box, isOnComponent }: { readonly box: Extent; readonly isOnComponent: boolean },
): readonly DrawingItem[] => {
  const baseline = box.minY + MARGIN;
  const name = words(face, thing.id, point(box.minX + MARGIN, baseline), {
    capHeight: HEIGHT,
    align: "start",
    ink: "dimension",
  });
  let left = box.minX + MARGIN + extentWidth(name.box);
  const marks = thing.marks.flatMap((mark) => {
    left += MARK_GAP;
    const width = markWidth(face, mark);
    const said = words(face, mark, point(left + width / 2, baseline + HEIGHT * 0.1), {
      capHeight: HEIGHT * 0.8,
      align: "middle",
      ink: "hold",
    });
    const frame = rectangle(extent(left, box.minY + 0.1, left + width, box.maxY - 0.1));
    left += width;
    return [outlined([frame], { ink: "hold", width: HAIR }), ...said.items];
  });
  const plate = isOnComponent ? [filledBox(box, "paper")] : [];
  return [...plate, ...(isOnComponent ? [] : leader(box, thing.seen)), ...name.items, ...marks];
};

const leader = (box: Extent, seen: Extent): readonly DrawingItem[] => {
  if (gapBetween(box, seen) <= BESIDE) return [];
  const from = nearestOn(box, extentCentre(seen));
  const to = nearestOn(grownExtent(seen, -0.3), from);
  return [stroked([run(from, to)], { ink: "dimension", width: HAIR })];
};

const gapBetween = (a: Extent, b: Extent): number =>
  Math.max(a.minX - b.maxX, b.minX - a.maxX, a.minY - b.maxY, b.minY - a.maxY);

const nearestOn = (box: Extent, to: Point): Point =>
  point(Math.min(Math.max(to.x, box.minX), box.maxX), Math.min(Math.max(to.y, box.minY), box.maxY));

// Names beside a view of a console: in a column at its right, each at the height of its thing where there is room, joined to
// it by a thin line. Takes the things with their places; gives what is painted and the box round it.

import { circle, type Point, point } from "../geometry/contour.ts";
import { type Extent, extent, joinedExtent } from "../geometry/extent.ts";
import type { Face } from "../lettering/face.ts";
import type { DrawingItem } from "./drawing.ts";
import { filled, HAIR, outlined, run, stroked } from "./items.ts";
import { spread } from "./spread.ts";
import { shortened, type Words, words } from "./words.ts";

export interface LabelledThing {
  readonly text: string;
  /** Where its line ends. */
  readonly at: Point;
}

const CAP = 1.8;
const PITCH = 3;
const GAP = 6;
/** A name runs on no further than this: it must leave the page to the view. */
const LONGEST = 48;
const DOT = 0.3;

export const labelColumn = (
  face: Face | null,
  things: readonly LabelledThing[],
  drawn: Extent,
): Words => {
  const sorted = things.toSorted(
    (a, b) => a.at.y - b.at.y || b.at.x - a.at.x || (a.text < b.text ? -1 : 1),
  );
  const heights = spread(
    sorted.map(({ at }) => at.y),
    PITCH,
  );
  const left = drawn.maxX + GAP;
  const items: DrawingItem[] = [];
  let box = extent(left, drawn.minY, left, drawn.minY);
  for (const [index, { text, at }] of sorted.entries()) {
    const y = heights[index] ?? 0;
    const short = shortened(face, text, { capHeight: CAP, width: LONGEST });
    const said = words(face, short, point(left, y - CAP / 2), {
      capHeight: CAP,
      align: "start",
      ink: "line",
    });
    items.push(
      stroked([run(at, point(left - 3.5, y), point(left - 0.8, y))], {
        ink: "dimension",
        width: HAIR,
      }),
      filled([circle(at, DOT)], "dimension"),
      ...said.items,
    );
    box = index === 0 ? said.box : joinedExtent(box, said.box);
  }
  return { items, box };
};

/** A number in a ring on the thing itself: for boards that a list names. Rings on one place stand side by side. */
export const numberTags = (
  face: Face | null,
  things: readonly LabelledThing[],
): readonly DrawingItem[] => {
  const taken: Point[] = [];
  return things.flatMap(({ text, at }) => {
    let free = at;
    while (taken.some((other) => isOver(other, free))) free = point(free.x + 2 * RING, free.y);
    taken.push(free);
    const ring = [circle(free, RING)];
    const said = words(face, text, point(free.x, free.y - FIGURE / 2), {
      capHeight: FIGURE,
      align: "middle",
      ink: "line",
    });
    return [filled(ring, "paper"), outlined(ring, { ink: "line", width: HAIR }), ...said.items];
  });
};

const RING = 1.7;
const FIGURE = 1.5;

const isOver = (a: Point, b: Point): boolean =>
  Math.abs(a.x - b.x) < 1.9 * RING && Math.abs(a.y - b.y) < 1.9 * RING;

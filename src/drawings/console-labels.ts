// Names beside a view of a console: in a column at its right, each at the height of its thing where there is room, joined to
// it by a thin line. Takes the things with their places; gives what is painted and the box round it.

import { circle, point } from "../geometry/contour.ts";
import { type Extent, extent, extentCentre, joinedExtent } from "../geometry/extent.ts";
import type { Face } from "../lettering/face.ts";
import type { DrawingItem } from "./drawing.ts";
import { filled, HAIR, run, stroked } from "./items.ts";
import { spread } from "./spread.ts";
import { shortened, type Words, words } from "./words.ts";

export interface LabelledThing {
  readonly text: string;
  readonly place: Extent;
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
    (a, b) =>
      extentCentre(a.place).y - extentCentre(b.place).y ||
      extentCentre(a.place).x - extentCentre(b.place).x ||
      (a.text < b.text ? -1 : 1),
  );
  const heights = spread(
    sorted.map(({ place }) => extentCentre(place).y),
    PITCH,
  );
  const left = drawn.maxX + GAP;
  const items: DrawingItem[] = [];
  let box = extent(left, drawn.minY, left, drawn.minY);
  for (const [index, { text, place }] of sorted.entries()) {
    const y = heights[index] ?? 0;
    const middle = extentCentre(place);
    const short = shortened(face, text, { capHeight: CAP, width: LONGEST });
    const said = words(face, short, point(left, y - CAP / 2), {
      capHeight: CAP,
      align: "start",
      ink: "line",
    });
    items.push(
      stroked([run(middle, point(left - 3.5, y), point(left - 0.8, y))], {
        ink: "dimension",
        width: HAIR,
      }),
      filled([circle(middle, DOT)], "dimension"),
      ...said.items,
    );
    box = index === 0 ? said.box : joinedExtent(box, said.box);
  }
  return { items, box };
};

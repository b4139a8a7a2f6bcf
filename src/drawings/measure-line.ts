// A dimension: witness lines, a line with arrow heads, and the number that it prints. The number comes back with it,
// so that a reader of the drawing's data can hold it against the geometry.

import type { Contour } from "../geometry/contour.ts";
import { point } from "../geometry/contour.ts";
import { type Extent, extent, joinedExtent } from "../geometry/extent.ts";
import { decimal } from "../geometry/number.ts";
import { degrees } from "../geometry/quantity.ts";
import { polygon } from "../geometry/shapes.ts";
import type { Face } from "../lettering/face.ts";
import type { DrawingItem } from "./drawing.ts";
import { filled, HAIR, segment, stroked } from "./items.ts";
import { words } from "./words.ts";

export interface Dimension {
  readonly items: readonly DrawingItem[];
  readonly box: Extent;
  /** The distance between the two places in mm of the thing that is drawn, and the text that says it. */
  readonly value: number;
  readonly text: string;
}

export interface DimensionPlace {
  /** `across`: between two x; `up`: between two y. */
  readonly axis: "across" | "up";
  readonly from: number;
  readonly to: number;
  /** Where its line lies on the other axis, and where the witness lines begin. */
  readonly line: number;
  readonly witness: number;
  /** 10 on a drawing at 1:10: the number said is that many times what lies on the paper. */
  readonly scale?: number;
}

/** A rule on paper reads no more than a hundredth. */
export const PLACES = 2;
const DIMENSION_HEIGHT = 2.2;
const ARROW = 2;
const ARROW_HALF = 0.35;
const BEYOND = 1;
const TEXT_GAP = 0.8;

/** `says` puts words before and after the number. */
export const dimension = (
  face: Face | null,
  place: DimensionPlace,
  says: { readonly before: string; readonly after: string } = { before: "", after: "" },
): Dimension => {
  const value = Math.abs(place.to - place.from) * (place.scale ?? 1);
  const text = `${says.before}${decimal(value, PLACES)}${says.after}`;
  const low = Math.min(place.from, place.to);
  const high = Math.max(place.from, place.to);
  const beyond = place.line > place.witness ? BEYOND : -BEYOND;
  const isNarrow = high - low < 3 * ARROW;
  const reach = isNarrow ? 2 * ARROW : 0;
  const at = axisPoint(place.axis);
  const strokes = [
    at.segment(low, place.witness, low, place.line + beyond),
    at.segment(high, place.witness, high, place.line + beyond),
    at.segment(low - reach, place.line, high + reach, place.line),
  ];
  const heads = [
    at.head(low, place.line, isNarrow ? -1 : 1),
    at.head(high, place.line, isNarrow ? 1 : -1),
  ];
  const middle = at.point(
    (low + high) / 2,
    place.line + (place.axis === "across" ? TEXT_GAP : -TEXT_GAP),
  );
  const said = words(face, text, middle, {
    capHeight: DIMENSION_HEIGHT,
    align: "middle",
    ink: "dimension",
    turn: degrees(place.axis === "across" ? 0 : 90),
  });
  const corner = at.point(low - reach, Math.min(place.witness, place.line + beyond));
  const other = at.point(high + reach, Math.max(place.witness, place.line + beyond));
  return {
    items: [
      stroked(strokes, { ink: "dimension", width: HAIR }),
      filled(heads, "dimension"),
      ...said.items,
    ],
    box: joinedExtent(extent(corner.x, corner.y, other.x, other.y), said.box),
    value,
    text,
  };
};

interface AxisPoint {
  readonly point: (along: number, across: number) => ReturnType<typeof point>;
  readonly segment: (
    ...numbers: readonly [number, number, number, number]
  ) => ReturnType<typeof segment>;
  /** An arrow head whose tip lies at `along`; `inward` 1 runs to higher values. */
  readonly head: (along: number, across: number, inward: number) => Contour;
}

const axisPoint = (axis: DimensionPlace["axis"]): AxisPoint => {
  const make = (along: number, across: number) =>
    axis === "across" ? point(along, across) : point(across, along);
  return {
    point: make,
    segment: (a, b, c, d) => (axis === "across" ? segment(a, b, c, d) : segment(b, a, d, c)),
    head: (along, across, inward) =>
      polygon([
        make(along, across),
        make(along + inward * ARROW, across - ARROW_HALF),
        make(along + inward * ARROW, across + ARROW_HALF),
      ]),
  };
};

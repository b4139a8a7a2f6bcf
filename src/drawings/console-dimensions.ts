// Dimensions of a view of a console: lengths and widths of bays where the view shows them true, heights above the floor, and
// the whole. What a view shows shortened has no line in it; its number stands in the table of bays.

import type { Contour, Point } from "../geometry/contour.ts";
import { contoursOverlap } from "../geometry/distance.ts";
import {
  type Extent,
  extent,
  extentHeight,
  extentWidth,
  joinedExtent,
} from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { degrees } from "../geometry/quantity.ts";
import { rectangle } from "../geometry/shapes.ts";
import { pointOut } from "../geometry/space/frame.ts";
import { dot, plus, scaled, type Vector, vector } from "../geometry/space/vector.ts";
import { placedContour, placement } from "../geometry/transform.ts";
import { arcTangent2, toDegrees } from "../geometry/trigonometry.ts";
import type { BayLayout, ConsoleLayout } from "../layout/console/console-layout.ts";
import type { Face } from "../lettering/face.ts";
import type { BayCut } from "./console-section.ts";
import { type ConsoleView, nearness, onSheet } from "./console-view.ts";
import type { DrawingItem } from "./drawing.ts";
import { type Dimension, dimension } from "./measure-line.ts";
import { placedItems } from "./placed-items.ts";

export interface ViewDimensions {
  readonly items: readonly DrawingItem[];
  readonly box: Extent;
  /** What they say, for whoever holds them against the layout. */
  readonly said: readonly { readonly what: string; readonly value: number }[];
}

const FIRST = 6;
const PITCH = 6;
/** A line that leaves the sheet by less than this share of its length is shown true. */
const IN_PLANE = 1e-6;
/** Shorter than this on the paper a dimension's figures would run into each other. */
const SHORTEST = 4;

export const viewDimensions = (
  face: Face | null,
  layout: ConsoleLayout,
  of: {
    readonly view: ConsoleView;
    /** What bodies fill, and the operator with them. */
    readonly drawn: Extent;
    readonly round: Extent;
    /** What is drawn, and the operator without the arcs of reach: dimensions of a plan stand outside it. */
    readonly clear: Extent;
    /** What a section cuts. */
    readonly cut: BayCut | null;
  },
): ViewDimensions => {
  const { view, drawn, cut } = of;
  const found =
    cut === null
      ? [
          ...besideOneAnother(
            layout.bays.flatMap((each) => bayLines(each, view)),
            { face, view, clear: view.kind === "plan" ? of.clear : null },
          ),
          ...(view.kind === "plan" ? [] : heights(face, layout, of)),
        ]
      : sectionLines(face, cut, view);
  const all = [...found, ...(cut === null ? wholeSizes(face, found, of) : [])];
  return {
    items: all.flatMap(({ items }) => items),
    box: all.map(({ box }) => box).reduce(joinedExtent, drawn),
    said: all.map(({ what, value }) => ({ what, value })),
  };
};

interface Line {
  readonly what: string;
  readonly value: number;
  readonly items: readonly DrawingItem[];
  readonly box: Extent;
  /** What the line itself and its figures take, without what leads to it. */
  readonly band: Contour;
}

const placeIn =
  ({ frame }: BayLayout) =>
  (x: number, y: number, z: number): Vector =>
    pointOut(frame, vector(x, y, z));

/** A line from place to place, with the directions that lead away from what it says. */
interface Asked {
  readonly line: { readonly what: string; readonly from: Vector; readonly to: Vector };
  readonly away: readonly Vector[];
}

/**
 * Beside its bay, or, where `clear` is given and it runs along the sheet's edges, outside that, so that it runs over nothing:
 * rows farther off only where it would meet one that stands there.
 */
const besideOneAnother = (
  asked: readonly Asked[],
  { face, view, clear }: Pick<LinePlace, "face" | "view"> & { readonly clear: Extent | null },
): readonly Line[] => {
  const placed: Line[] = [];
  for (const { line, away } of asked) {
    const inRow = (row: number): readonly Line[] =>
      trueLine(line, { face, view, away, clear, row });
    const [first] = inRow(0);
    if (first !== undefined)
      placed.push(...(clear === null ? [first] : inRow(freeRow(first, { inRow, placed }))));
  }
  return placed;
};

/** The first row in which a line meets none that is placed: there are no more to try than it takes to leave all of them behind. */
const freeRow = (
  first: Line,
  {
    inRow,
    placed,
  }: { readonly inRow: (row: number) => readonly Line[]; readonly placed: readonly Line[] },
): number => {
  const last = rowsPast(first, placed);
  for (let row = 0; row < last; row += 1)
    if (!inRow(row).some((line) => meets(line, placed))) return row;
  return last;
};

/** Witness lines of one may cross another's line, figures may not: what counts is where each line runs with its figures. */
const meets = ({ band }: Line, placed: readonly Line[]): boolean =>
  placed.some((other) => contoursOverlap(band, other.band));

/** A row takes a line off by a pitch, square to itself: by at least 0.7 of that along one of the sheet's edges. */
const rowsPast = (first: Line, placed: readonly Line[]): number => {
  const all = [first, ...placed].map(({ band }) => contourExtent(band)).reduce(joinedExtent);
  return Math.ceil(Math.max(extentWidth(all), extentHeight(all)) / (PITCH * Math.SQRT1_2)) + 1;
};

/** Along the bay's left edge and across its beginning, as they lie on the sheet. */
const bayLines = (bay: BayLayout, view: ConsoleView): readonly Asked[] => {
  const { id, frame, length, width } = bay;
  const at = placeIn(bay);
  const half = width / 2;
  return [
    {
      line: { what: `length of ${id}`, from: at(-half, 0, 0), to: at(-half, length, 0) },
      away: [scaled(frame.x, -1), frame.z],
    },
    // From the front one bay's width would lie over the next bay; plan and sections say it.
    ...(view.kind === "front"
      ? []
      : [
          {
            line: { what: `width of ${id}`, from: at(-half, 0, 0), to: at(half, 0, 0) },
            away: [scaled(frame.y, -1), frame.z],
          },
        ]),
  ];
};

/** Across the rails and down to where the bay's depth ends. */
const sectionLines = (
  face: Face | null,
  { bay, at: along }: BayCut,
  view: ConsoleView,
): readonly Line[] => {
  const { id, frame, width, clearWidth, depth } = bay;
  const at = placeIn(bay);
  const half = width / 2;
  const below = scaled(frame.z, -1);
  const across = (what: string, size: number): readonly Line[] =>
    trueLine(
      { what, from: at(-size / 2, along, -depth), to: at(size / 2, along, -depth) },
      { face, view, away: [below], offset: what.startsWith("width") ? FIRST + PITCH : FIRST },
    );
  return [
    ...(clearWidth > 0 ? across(`clear width of ${id}`, clearWidth) : []),
    ...across(`width of ${id}`, width),
    ...trueLine(
      { what: `depth of ${id}`, from: at(half, along, 0), to: at(half, along, -depth) },
      { face, view, away: [frame.x] },
    ),
  ];
};

/** Which way the dimension stands off: the first direction that is seen on the sheet. */
interface LinePlace {
  readonly face: Face | null;
  readonly view: ConsoleView;
  readonly away: readonly Vector[];
  readonly offset?: number;
  readonly clear?: Extent | null;
  /** So many rows farther off than the first. */
  readonly row?: number;
}

const trueLine = (
  line: { readonly what: string; readonly from: Vector; readonly to: Vector },
  { face, view, away, offset = FIRST, clear = null, row = 0 }: LinePlace,
): readonly Line[] => {
  const ends = [onSheet(view, line.from), onSheet(view, line.to)];
  const [start, end] = ends.toSorted((a, b) => a.x - b.x || a.y - b.y);
  if (start === undefined || end === undefined) return [];
  const isUpright = end.x - start.x < IN_PLANE * Math.abs(end.y - start.y);
  // Words are read from below and from the right.
  const [low, high] = isUpright && start.y > end.y ? [end, start] : [start, end];
  const [dx, dy] = [high.x - low.x, high.y - low.y];
  const seen = Math.sqrt(dx * dx + dy * dy);
  const depth = Math.abs(nearness(view, line.to) - nearness(view, line.from)) / view.scale;
  if (seen < SHORTEST || depth > IN_PLANE * seen) return [];
  const side = sideOf(view, away, { x: -dy / seen, y: dx / seen });
  const run = { from: low, to: high, side };
  const near = clear === null ? offset : Math.max(offset, offsetOutside(run, clear));
  const off = near + row * PITCH;
  const made = dimension(face, {
    axis: "across",
    from: 0,
    to: seen,
    line: side * off,
    witness: side,
    scale: view.scale,
  });
  const turned = placement(low.x, low.y, degrees(toDegrees(arcTangent2(dy, dx))));
  return [
    {
      what: line.what,
      value: made.value,
      items: placedItems(made.items, turned),
      box: contourExtent(placedContour(rectangle(made.box), turned)),
      band: placedContour(
        rectangle(extent(0, side * off - PITCH / 2, seen, side * off + PITCH / 2)),
        turned,
      ),
    },
  ];
};

/** How far off a line stands outside what it is to keep clear of; 0 where it runs askew to the sheet, beside its own bay. */
const offsetOutside = (
  { from, to, side }: { readonly from: Point; readonly to: Point; readonly side: number },
  { minX, minY, maxX, maxY }: Extent,
): number => {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  if (dx <= IN_PLANE * Math.abs(dy)) return FIRST + (side > 0 ? from.x - minX : maxX - from.x);
  if (Math.abs(dy) <= IN_PLANE * dx) return FIRST + (side > 0 ? maxY - from.y : from.y - minY);
  return 0;
};

/** 1 to the line's left, -1 to its right. */
const sideOf = (
  view: ConsoleView,
  away: readonly Vector[],
  left: { readonly x: number; readonly y: number },
): number => {
  for (const direction of away) {
    const seen = dot(view.right, direction) * left.x + dot(view.up, direction) * left.y;
    if (Math.abs(seen) > SIDEWAYS) return seen > 0 ? 1 : -1;
  }
  return 1;
};

/** Less than this share of a direction's length can't tell a side. */
const SIDEWAYS = 0.5;

/** Of each bay's beginning and end, in the middle of its width, from the floor; equal ones once. */
const heights = (
  face: Face | null,
  { bays, operator }: ConsoleLayout,
  of: { readonly view: ConsoleView; readonly drawn: Extent; readonly round: Extent },
): readonly Line[] => {
  const { view, drawn, round } = of;
  const places = bays.flatMap(({ id, frame, length }) => [
    { what: `beginning of ${id} above the floor`, at: frame.origin },
    { what: `end of ${id} above the floor`, at: plus(frame.origin, scaled(frame.y, length)) },
  ]);
  const seated = operator === null ? [] : [{ what: "seat above the floor", at: operator.seat }];
  const all = [...places, ...seated].filter(
    ({ at }, index, list) =>
      at.z > 0 && list.findIndex((other) => Math.abs(other.at.z - at.z) < SAME_HEIGHT) === index,
  );
  return all
    .toSorted((a, b) => a.at.z - b.at.z)
    .map(({ what, at }, index) =>
      named(
        what,
        dimension(face, {
          axis: "up",
          from: 0,
          to: at.z / view.scale,
          line: round.minX - FIRST - index * PITCH,
          witness: drawn.minX - 1,
          scale: view.scale,
        }),
      ),
    );
};

/** Two heights that a rule can't tell apart are said once. */
const SAME_HEIGHT = 0.05;

const named = (what: string, { value, items, box }: Dimension): Line => ({
  what,
  value,
  items,
  box,
  band: rectangle(box),
});

/** Of all bodies: below them, and in plan beside them too, where no height above the floor is. */
const wholeSizes = (
  face: Face | null,
  found: readonly Line[],
  {
    view,
    drawn,
    round,
  }: { readonly view: ConsoleView; readonly drawn: Extent; readonly round: Extent },
): readonly Line[] => {
  const start = view.kind === "plan" ? { ...drawn, minX: round.minX } : drawn;
  const taken = found.map(({ box }) => box).reduce(joinedExtent, start);
  const { scale } = view;
  const says = { before: "", after: " over all" };
  const width = dimension(
    face,
    {
      axis: "across",
      from: drawn.minX,
      to: drawn.maxX,
      line: taken.minY - FIRST,
      witness: drawn.minY - 1,
      scale,
    },
    says,
  );
  const depth = dimension(
    face,
    {
      axis: "up",
      from: drawn.minY,
      to: drawn.maxY,
      line: taken.minX - FIRST,
      witness: drawn.minX - 1,
      scale,
    },
    says,
  );
  return [
    ...(drawn.maxX - drawn.minX < SHORTEST ? [] : [named("width over all bodies", width)]),
    ...(view.kind !== "plan" || drawn.maxY - drawn.minY < SHORTEST
      ? []
      : [named("depth over all bodies", depth)]),
  ];
};

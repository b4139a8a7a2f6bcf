// Where each of several things on the sheet is to go so that they stand in order: edges on one line, centres on one line, even
// centres, equal gaps, a row, a column, a ring. Pure: their centres and boxes in, a shift for each out, in mm.

import { type Extent, extentCentre, joinedExtent } from "../../src/geometry/extent.ts";
import type { Shift } from "../../src/layout/separate-moves.ts";
import { type PatternKind, regularPlaces } from "./regular-places.ts";
import type { SheetThing } from "./sheet-things.ts";

/** What is moved as one: a row's members are one thing. */
export interface ArrangedThing {
  readonly entry: string;
  readonly at: Shift;
  readonly box: Extent;
}

export interface Arrangement {
  readonly shifts: ReadonlyMap<string, Shift>;
  /** The number that they share: a coordinate in the drawing, a pitch, a gap. */
  readonly measure: number;
  readonly axis: "x" | "y";
}

/** As they are given, each entry once. */
export function arrangedThings(things: readonly SheetThing[]): readonly ArrangedThing[] {
  return [...new Set(things.map(({ entry }) => entry))].map((entry) => {
    const own = things.filter((thing) => thing.entry === entry);
    const box = own.map((thing) => thing.box).reduce(joinedExtent);
    const middle = (values: readonly number[]): number =>
      (Math.min(...values) + Math.max(...values)) / 2;
    const centres = own.map(centreOf);
    const at = { x: middle(centres.map(({ x }) => x)), y: middle(centres.map(({ y }) => y)) };
    return { entry, at, box };
  });
}

/** A legend may stand by its end: what is lined up is its middle. */
const centreOf = ({ kind, at, box }: SheetThing): Shift =>
  kind === "legend" ? extentCentre(box) : at;

export type LineUp = "left" | "right" | "top" | "bottom" | "level" | "in-line";

const LINES: Readonly<
  Record<LineUp, { readonly axis: "x" | "y"; readonly side: "low" | "high" | "centre" }>
> = {
  left: { axis: "x", side: "low" },
  right: { axis: "x", side: "high" },
  bottom: { axis: "y", side: "low" },
  top: { axis: "y", side: "high" },
  level: { axis: "y", side: "centre" },
  "in-line": { axis: "x", side: "centre" },
};

/** Edges on the outermost one's, centres on the line of the first. Null for fewer than two. */
export function linedUp(things: readonly ArrangedThing[], how: LineUp): Arrangement | null {
  const [first] = things;
  if (first === undefined || things.length < 2) return null;
  const { axis, side } = LINES[how];
  const place = (thing: ArrangedThing): number =>
    side === "centre" ? thing.at[axis] : sidesOf(thing, axis)[side];
  const all = things.map(place);
  const measure =
    side === "low" ? Math.min(...all) : side === "high" ? Math.max(...all) : place(first);
  return { axis, measure, shifts: shiftsTo(things, axis, (thing) => measure - place(thing)) };
}

/** Centre to centre, between the outermost two. Null for fewer than three. */
export function evenlySpaced(things: readonly ArrangedThing[]): Arrangement | null {
  if (things.length < 3) return null;
  const axis = widerAxis(things);
  const sorted = inOrder(things, axis);
  const low = sorted[0]!.at[axis];
  const pitch = (sorted.at(-1)!.at[axis] - low) / (sorted.length - 1);
  const shifts = shiftsTo(
    sorted,
    axis,
    (thing) => low + sorted.indexOf(thing) * pitch - thing.at[axis],
  );
  return { axis, measure: pitch, shifts };
}

/** Edge to edge, between the outermost two. The gap is less than nothing where they have no room. Null for fewer than three. */
export function equallyGapped(things: readonly ArrangedThing[]): Arrangement | null {
  if (things.length < 3) return null;
  const axis = widerAxis(things);
  const sorted = inOrder(things, axis);
  const sizes = sorted.map((thing) => sidesOf(thing, axis)).map(({ low, high }) => high - low);
  const { low } = sidesOf(sorted[0]!, axis);
  const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);
  const room = sidesOf(sorted.at(-1)!, axis).high - low;
  const gap = (room - sum(sizes)) / (sorted.length - 1);
  const shifts = shiftsTo(sorted, axis, (thing) => {
    const index = sorted.indexOf(thing);
    return low + sum(sizes.slice(0, index)) + index * gap - sidesOf(thing, axis).low;
  });
  return { axis, measure: gap, shifts };
}

export type SetOut =
  | ({ readonly kind: "set" } & Pick<Arrangement, "shifts" | "measure">)
  | { readonly kind: "refused"; readonly why: string };

/** A row or column at one pitch, or a ring: `measure` is the pitch or the radius. */
export function setOut(things: readonly ArrangedThing[], kind: PatternKind): SetOut {
  const regular = regularPlaces(things, kind);
  if (regular.kind === "refused") return regular;
  const { order, places } = regular;
  const shifts = new Map(
    order.map(({ entry, at }, index): readonly [string, Shift] => {
      const place = places[index]!;
      return [entry, { x: place.x - at.x, y: place.y - at.y }];
    }),
  );
  return {
    kind: "set",
    measure: regular.kind === "ring" ? regular.radius : regular.pitch,
    shifts,
  };
}

const sidesOf = (
  { box }: ArrangedThing,
  axis: "x" | "y",
): { readonly low: number; readonly high: number } =>
  axis === "x" ? { low: box.minX, high: box.maxX } : { low: box.minY, high: box.maxY };

const inOrder = (things: readonly ArrangedThing[], axis: "x" | "y"): readonly ArrangedThing[] =>
  things.toSorted((a, b) => a.at[axis] - b.at[axis]);

function widerAxis(things: readonly ArrangedThing[]): "x" | "y" {
  const spread = (axis: "x" | "y"): number => {
    const all = things.map(({ at }) => at[axis]);
    return Math.max(...all) - Math.min(...all);
  };
  return spread("x") >= spread("y") ? "x" : "y";
}

const shiftsTo = (
  things: readonly ArrangedThing[],
  axis: "x" | "y",
  by: (thing: ArrangedThing) => number,
): ReadonlyMap<string, Shift> =>
  new Map(
    things.map((thing): readonly [string, Shift] => {
      const shift = by(thing);
      return [thing.entry, axis === "x" ? { x: shift, y: 0 } : { x: 0, y: shift }];
    }),
  );

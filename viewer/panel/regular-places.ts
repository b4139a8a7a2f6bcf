// The places of several things in a row, a column or a ring: at one pitch on the middle of their lines, or evenly about their
// middle from the first one clockwise. Pure: whatever has a place goes in; the order, the places and the number of it come out.

import { figureIn } from "../../src/design/length-text.ts";
import { point } from "../../src/geometry/contour.ts";
import { pointDistance } from "../../src/geometry/point.ts";
import { degrees } from "../../src/geometry/quantity.ts";
import { clockDirection } from "../../src/geometry/trigonometry.ts";
import type { Shift } from "../../src/layout/separate-moves.ts";
import { clockAngle, FULL_TURN } from "./clock-angle.ts";

export type PatternKind = "row" | "column" | "ring";

interface Placed {
  readonly at: Shift;
}

export type RegularPlaces<Thing> =
  | {
      readonly kind: "line";
      /** From the left, or from the top. */
      readonly order: readonly Thing[];
      /** Of each in that order. */
      readonly places: readonly Shift[];
      readonly pitch: number;
    }
  | {
      readonly kind: "ring";
      readonly order: readonly Thing[];
      readonly places: readonly Shift[];
      readonly radius: number;
      /** Of the first one, degrees clockwise from twelve. */
      readonly from: number;
    }
  | { readonly kind: "refused"; readonly why: string };

/** `angle`: of a ring's first one, as it will be written. */
export const regularPlaces = <Thing extends Placed>(
  things: readonly Thing[],
  kind: PatternKind,
  angle: (value: number) => number = (value) => value,
): RegularPlaces<Thing> => (kind === "ring" ? ring(things, angle) : line(things, kind));

const refused = (why: string): RegularPlaces<never> => ({ kind: "refused", why });

function line<Thing extends Placed>(
  things: readonly Thing[],
  kind: "row" | "column",
): RegularPlaces<Thing> {
  const isRow = kind === "row";
  const along = ({ at }: Placed): number => (isRow ? at.x : -at.y);
  const order = things.toSorted((a, b) => along(a) - along(b));
  const [first, last] = [order[0], order.at(-1)];
  if (first === undefined || last === undefined || order.length < 2)
    return refused(`a ${kind} takes two things or more`);
  const pitch = (along(last) - along(first)) / (order.length - 1);
  if (isNothing(pitch))
    return refused(
      isRow
        ? "all of them have one x, and a row of them would lie on one spot; make a column, or draw one aside"
        : "all of them have one y, and a column of them would lie on one spot; make a row, or draw one up or down",
    );
  const across = mean(things.map(({ at }) => (isRow ? at.y : at.x)));
  const places = order.map((_, index): Shift => {
    const reached = along(first) + index * pitch;
    return isRow ? { x: reached, y: across } : { x: across, y: -reached };
  });
  return { kind: "line", order, places, pitch };
}

function ring<Thing extends Placed>(
  things: readonly Thing[],
  angle: (value: number) => number,
): RegularPlaces<Thing> {
  const [first, ...others] = things;
  if (first === undefined || things.length < 3) return refused("a ring takes three things or more");
  const centre = point(mean(things.map(({ at }) => at.x)), mean(things.map(({ at }) => at.y)));
  const radius = mean(things.map(({ at }) => pointDistance(point(at.x, at.y), centre)));
  if (isNothing(radius))
    return refused(
      "all of them have one middle, and a ring of them would lie on one spot; draw one aside",
    );
  const start = clockAngle(first.at, centre);
  const turned = ({ at }: Placed): number =>
    (clockAngle(at, centre) - start + FULL_TURN) % FULL_TURN;
  const order = [first, ...others.toSorted((a, b) => turned(a) - turned(b))];
  const from = angle(start);
  const places = order.map((_, index): Shift => {
    const toward = clockDirection(degrees(from + (index * FULL_TURN) / order.length));
    return { x: centre.x + radius * toward.x, y: centre.y + radius * toward.y };
  });
  return { kind: "ring", order, places, radius, from };
}

/** It would be written as nothing. */
const isNothing = (length: number): boolean => Number(figureIn("mm", length)) === 0;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

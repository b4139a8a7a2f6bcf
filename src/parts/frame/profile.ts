// The console seen from its right side: x forward, y up, and the third axis across, to the right. All boards but the cheeks
// stand square to this plane, so that joints are drawn in it. Brings its points and directions into the console.

import { type Point, point } from "../../geometry/contour.ts";
import type { Frame } from "../../geometry/space/frame.ts";
import {
  cross,
  dot,
  minus,
  plus,
  scaled,
  type Vector,
  vector,
} from "../../geometry/space/vector.ts";
import type { Direction } from "../../geometry/trigonometry.ts";
import { offPlane, upright } from "./frame-tolerance.ts";

export interface Profile {
  readonly forward: Vector;
  readonly up: Vector;
  readonly right: Vector;
}

const UP = vector(0, 0, 1);

/** The plane in which a bay runs; one that runs straight up shows it by what is to its right. */
export const profileOf = (bay: Frame): Profile => {
  const across = cross(bay.y, UP);
  const size = Math.sqrt(dot(across, across));
  const level = size > upright ? scaled(across, 1 / size) : bay.x;
  const right = dot(level, bay.x) < 0 ? scaled(level, -1) : level;
  return { forward: cross(UP, right), up: UP, right };
};

export const isUpright = (bay: Frame): boolean => {
  const across = cross(bay.y, UP);
  return dot(across, across) <= upright * upright;
};

/** Parallel, and looked at from the same side. */
export const isSameWay = (one: Profile, other: Profile): boolean =>
  dot(one.right, other.right) > 0 && Math.abs(dot(one.right, other.forward)) <= offPlane;

export const inProfile = ({ forward, up }: Profile, place: Vector): Point =>
  point(dot(place, forward), dot(place, up));

export const acrossOf = ({ right }: Profile, place: Vector): number => dot(place, right);

export const outOfProfile = (profile: Profile, at: Point, across: number): Vector =>
  plus(
    plus(scaled(profile.forward, at.x), scaled(profile.up, at.y)),
    scaled(profile.right, across),
  );

export const directionOutOf = (profile: Profile, along: Direction): Vector =>
  plus(scaled(profile.forward, along.x), scaled(profile.up, along.y));

/** A quarter turn to the left: of a bay's run, toward the operator. */
export const leftOf = ({ x, y }: Direction): Direction => ({ x: -y, y: x });

export const stepped = (from: Point, along: Direction, by: number): Point =>
  point(from.x + along.x * by, from.y + along.y * by);

export const between = (
  from: Point,
  to: Point,
): { readonly along: Direction; readonly length: number } => {
  const gone = minus(vector(to.x, to.y, 0), vector(from.x, from.y, 0));
  const length = Math.sqrt(dot(gone, gone));
  return { along: { x: gone.x / length, y: gone.y / length }, length };
};

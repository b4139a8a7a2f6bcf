// A place in space with its own axes: three unit vectors at right angles (right-handed) and an origin, all seen from
// outside. Brings points and directions from within to outside and back.

import type { Degrees } from "../quantity.ts";
import { direction } from "../trigonometry.ts";
import { cross, dot, minus, plus, scaled, type Vector, vector } from "./vector.ts";

export interface Frame {
  readonly x: Vector;
  readonly y: Vector;
  readonly z: Vector;
  readonly origin: Vector;
}

/** Axes and origin of the outside itself. */
export const WORLD: Frame = {
  x: vector(1, 0, 0),
  y: vector(0, 1, 0),
  z: vector(0, 0, 1),
  origin: vector(0, 0, 0),
};

/** A direction of the frame, seen from outside. */
export const directionOut = (frame: Frame, within: Vector): Vector =>
  plus(plus(scaled(frame.x, within.x), scaled(frame.y, within.y)), scaled(frame.z, within.z));

/** A point of the frame, seen from outside. */
export const pointOut = (frame: Frame, within: Vector): Vector =>
  plus(frame.origin, directionOut(frame, within));

/** A direction outside, seen from within. */
export const directionIn = (frame: Frame, outside: Vector): Vector =>
  vector(dot(frame.x, outside), dot(frame.y, outside), dot(frame.z, outside));

/** A point outside, seen from within. */
export const pointIn = (frame: Frame, outside: Vector): Vector =>
  directionIn(frame, minus(outside, frame.origin));

/** The frame whose place within `outer` is `inner`, seen from outside. */
export const frameWithin = (outer: Frame, inner: Frame): Frame => ({
  x: directionOut(outer, inner.x),
  y: directionOut(outer, inner.y),
  z: directionOut(outer, inner.z),
  origin: pointOut(outer, inner.origin),
});

/** The frame moved by a vector seen from outside. */
export const movedFrame = (frame: Frame, by: Vector): Frame => ({
  ...frame,
  origin: plus(frame.origin, by),
});

/** The frame turned about an axis (a unit vector) through a point, counter-clockwise seen against the axis. */
export const turnedFrame = (
  frame: Frame,
  turn: { readonly about: Vector; readonly through: Vector; readonly by: Degrees },
): Frame => {
  const { about, through, by } = turn;
  const { x: cosine, y: sine } = direction(by);
  const turned = (a: Vector): Vector =>
    plus(
      plus(scaled(a, cosine), scaled(cross(about, a), sine)),
      scaled(about, dot(about, a) * (1 - cosine)),
    );
  return {
    x: turned(frame.x),
    y: turned(frame.y),
    z: turned(frame.z),
    origin: plus(through, turned(minus(frame.origin, through))),
  };
};

// The axes of a bay, or of a panel on its own feet: x to the right across it, y along it, z toward the operator.
// Unturned, z looks straight up, made square to where it runs; where it runs straight up or down, z looks backward (the
// operator faces forward). Then slope turns it about its x, and cant about its length.

import type { SpacePoint } from "../../design/console-design.ts";
import { type Degrees, degrees } from "../../geometry/quantity.ts";
import { type Frame, turnedFrame } from "../../geometry/space/frame.ts";
import {
  cross,
  dot,
  minus,
  scaled,
  unitVector,
  type Vector,
  vector,
} from "../../geometry/space/vector.ts";

export interface BayPose {
  readonly at: SpacePoint;
  readonly along: readonly [number, number, number];
  readonly slope: Degrees;
  readonly cant: Degrees;
}

export const bayFrame = ({ at, along, slope, cant }: BayPose): Frame => {
  const y = unitVector(vector(...along));
  const z = normalOf(y);
  const origin = vector(...at);
  const level: Frame = { x: cross(y, z), y, z, origin };
  const sloped = turnedFrame(level, { about: level.x, through: origin, by: slope });
  return turnedFrame(sloped, { about: sloped.y, through: origin, by: degrees(-cant) });
};

const UP = vector(0, 0, 1);
const BACKWARD = vector(-1, 0, 0);

/** Nearer to upright than this (8 degrees) a bay is a front, not a desk: its faces look backward, not up. */
const UPRIGHT = 0.99;

const normalOf = (along: Vector): Vector =>
  squareTo(along, Math.abs(dot(along, UP)) > UPRIGHT ? BACKWARD : UP);

const squareTo = (along: Vector, wanted: Vector): Vector =>
  unitVector(minus(wanted, scaled(along, dot(along, wanted))));

// Where a lever moves, with what rides on it: a fan in the plane of its throw, as thick all over as the lever is at its
// tip. Never smaller than what it sweeps: the pivot is taken at the seat, lower than any, and the arc of the tip is faceted
// from outside.

import { type Point, point } from "../../geometry/contour.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { degrees, type Radians, radians } from "../../geometry/quantity.ts";
import { polygon } from "../../geometry/shapes.ts";
import type { Frame } from "../../geometry/space/frame.ts";
import { vector } from "../../geometry/space/vector.ts";
import { placedContour, placement } from "../../geometry/transform.ts";
import {
  arcTangent,
  clockDirection,
  cosine,
  sine,
  toRadians,
} from "../../geometry/trigonometry.ts";
import type { PlacedBody, PlacedComponent } from "../../layout/panel-layout.ts";
import { type BodyNames, prismBody, type StandingBody } from "./standing-body.ts";

/** null for a part without a lever, and for a body that stands no higher than the pivot. */
export const leverSweep = (
  names: BodyNames,
  component: PlacedComponent,
  body: PlacedBody,
): StandingBody | null => {
  const { lever } = component.part;
  const high = body.high - component.seat;
  if (lever === null || high <= 0) return null;
  const line = degrees(lever.line - component.turn);
  const about = placedContour(body.footprint, placement(-component.at.x, -component.at.y));
  // The line of the throw lies along x: so far does the body reach along it and across it.
  const { minX, minY, maxX, maxY } = contourExtent(
    placedContour(about, placement(0, 0, degrees(line - UPRIGHT))),
  );
  const fan = fanCorners({
    half: Math.max(-minX, maxX),
    low: Math.max(0, body.low - component.seat),
    high,
    lean: toRadians(lever.throw),
  });
  const across = Math.max(-minY, maxY);
  return prismBody(names, polygon(fan), {
    low: -across,
    high: across,
    frame: fanFrame(component, clockDirection(line)),
  });
};

const UPRIGHT = 90;

/** x along the throw, y away from the panel. */
const fanFrame = (
  { at, seat }: PlacedComponent,
  along: { readonly x: number; readonly y: number },
): Frame => ({
  x: vector(along.x, along.y, 0),
  y: vector(0, 0, 1),
  z: vector(along.y, -along.x, 0),
  origin: vector(at.x, at.y, seat),
});

interface Fan {
  /** Half its width along the throw, its foot and its tip over the pivot. */
  readonly half: number;
  readonly low: number;
  readonly high: number;
  readonly lean: Radians;
}

/** Facets of the tip's arc: a lever of 30 mm thrown by 25 degrees then stands 0.03 mm proud of its own. */
const FACETS = 12;

const fanCorners = ({ half, low, high, lean }: Fan): readonly Point[] => {
  const radius = Math.sqrt(high * high + half * half);
  const most = radians(lean + arcTangent(half / high));
  const step = (2 * most) / FACETS;
  const outside = radius / cosine(radians(step / 2));
  const arc = Array.from({ length: FACETS }, (_, index) =>
    leaning(outside, radians(most - (index + 1 / 2) * step)),
  );
  const foot = point(
    half * cosine(lean) + low * sine(lean),
    low * cosine(lean) - half * sine(lean),
  );
  return [
    point(-foot.x, foot.y),
    foot,
    leaning(radius, most),
    ...arc,
    leaning(radius, radians(-most)),
  ];
};

const leaning = (radius: number, lean: Radians): Point =>
  point(radius * sine(lean), radius * cosine(lean));

// Room for the thumb that presses a plug's latch, as a body of its own role: nothing solid, and nothing solid may stand there.

import type { LatchRoom } from "../../catalogue/latch.ts";
import { extent } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { degrees, mm } from "../../geometry/quantity.ts";
import { rectangle } from "../../geometry/shapes.ts";
import { cross, type Vector, vector } from "../../geometry/space/vector.ts";
import { placedContour, placement } from "../../geometry/transform.ts";
import { clockDirection } from "../../geometry/trigonometry.ts";
import type { PlacedBody, PlacedComponent } from "../../layout/panel-layout.ts";
import { type BodyNames, prismBody, type StandingBody } from "./standing-body.ts";

/** What a thumb comes to: the middle of the latched side at the mouth, along the plug, and away from that side. */
export interface LatchPlace {
  readonly mouth: Vector;
  readonly along: Vector;
  readonly away: Vector;
  readonly room: LatchRoom;
}

/** Its own y is outward from the plug's side, its z along the plug. */
export const latchBody = (names: BodyNames, place: LatchPlace): StandingBody => {
  const { mouth, along, away, room } = place;
  const { width, out, length } = room;
  return prismBody(
    { ...names, id: `${names.id}/latch`, role: "latch", what: `latch room of ${names.what}` },
    rectangle(extent(-width / 2, 0, width / 2, out)),
    {
      low: 0,
      high: length,
      frame: { x: cross(away, along), y: away, z: along, origin: mouth },
    },
  );
};

/** Of a plug behind its panel; the room ends with the plug. */
export const partLatch = (
  names: BodyNames,
  component: PlacedComponent,
  plug: PlacedBody,
): readonly StandingBody[] => {
  const { latch } = component.part;
  if (latch === null || plug.role !== "plug" || plug.high > component.seat) return [];
  const { clock, ...room } = latch;
  const line = degrees(clock - component.turn);
  const { x, y } = clockDirection(line);
  const { at } = component;
  // The latched side lies up: so far does the plug reach to it, and so far aside does its middle lie.
  const side = contourExtent(
    placedContour(placedContour(plug.footprint, placement(-at.x, -at.y)), placement(0, 0, line)),
  );
  const aside = (side.minX + side.maxX) / 2;
  return [
    latchBody(names, {
      mouth: vector(at.x + x * side.maxY + y * aside, at.y + y * side.maxY - x * aside, plug.high),
      along: vector(0, 0, -1),
      away: vector(x, y, 0),
      room: { ...room, length: mm(Math.min(room.length, plug.high - plug.low)) },
    }),
  ];
};

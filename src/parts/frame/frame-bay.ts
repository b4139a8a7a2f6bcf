// A bay as the frame carries it: its run in the profile, its tilt across, the room behind its panels, and its rails' holes.
// Takes a bay of the layout; gives it in these terms, or says why the frame can't carry it.

import { type Point, point } from "../../geometry/contour.ts";
import { dot } from "../../geometry/space/vector.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import { arcSine, type Direction, toDegrees } from "../../geometry/trigonometry.ts";
import type { BayLayout } from "../../layout/console/console-layout.ts";
import type { BayFault } from "./bay-faults.ts";
import { LEAST_CLEAR, RAIL_LIP } from "./frame-practice.ts";
import { offPlane } from "./frame-tolerance.ts";
import { acrossOf, inProfile, leftOf, type Profile, stepped } from "./profile.ts";
import { type RailHoles, railHoles } from "./rail-holes.ts";

export interface FrameBay {
  readonly id: string;
  readonly layout: BayLayout;
  /** Where its usable length begins, on the rails' faces, in the profile; and how far it lies to the right. */
  readonly start: Point;
  readonly centre: number;
  readonly along: Direction;
  /** Square to `along`, toward the operator. */
  readonly up: Direction;
  /** Its own x, seen along it: x to the right, y along `up`. */
  readonly tilt: Direction;
  readonly length: number;
  /** Half of what its panels are wide, and half of what is open between its rails. */
  readonly halfWidth: number;
  readonly halfClear: number;
  readonly railHoles: RailHoles;
  readonly depth: number;
  /** Lowest corner of the room behind the panels, along `up` from the rails' faces. */
  readonly lowest: number;
}

export type CarriedBay =
  | { readonly kind: "carried"; readonly bay: FrameBay }
  | { readonly kind: "refused"; readonly fault: BayFault };

export const frameBay = (layout: BayLayout, profile: Profile): CarriedBay => {
  const { x, y } = layout.frame;
  const off = dot(y, profile.right);
  const along: Direction = { x: dot(y, profile.forward), y: dot(y, profile.up) };
  const up = leftOf(along);
  const tilt: Direction = {
    x: dot(x, profile.right),
    y: dot(x, profile.forward) * up.x + dot(x, profile.up) * up.y,
  };
  if (Math.abs(off) > offPlane)
    return refused({ kind: "off-plane", angle: toDegrees(arcSine(Math.min(1, Math.abs(off)))) });
  if (tilt.x < offPlane) return refused({ kind: "looks-down" });
  const holes = railHoles(layout);
  const halfClear = Math.min(layout.clearWidth / 2, insideScrews(layout, holes));
  if (layout.clearWidth <= 0 && layout.screws.length === 0) return refused({ kind: "no-width" });
  if (2 * halfClear < LEAST_CLEAR - samePlace) return refused(tooNarrow(layout, holes));
  return {
    kind: "carried",
    bay: {
      id: layout.id,
      layout,
      start: inProfile(profile, layout.frame.origin),
      centre: acrossOf(profile, layout.frame.origin),
      along,
      up,
      tilt,
      length: layout.length,
      halfWidth: layout.width / 2,
      halfClear,
      railHoles: holes,
      depth: layout.depth,
      lowest: -halfClear * Math.abs(tilt.y) - layout.depth * tilt.x,
    },
  };
};

const refused = (fault: BayFault): CarriedBay => ({ kind: "refused", fault });

/**
 * Half of what may be open so that rails lie under every screw. A mount whose rails are made to it has its own clear width; of
 * screws near a panel's edges what was measured is the room that the panels go into.
 */
const insideScrews = ({ mount }: BayLayout, { reach, size }: RailHoles): number =>
  reach === null || mount.holes.kind === "columns" || mount.holes.kind === "units"
    ? Number.POSITIVE_INFINITY
    : reach.inner - size / 2 - RAIL_LIP;

/** Farther in than a screw a rail reaches as far as round its hole, and as what panels of this mount lie on. */
const tooNarrow = (
  { mount: { holes, seat }, clearWidth, screws }: BayLayout,
  { reach, size }: RailHoles,
): BayFault => {
  if (reach === null || screws.length === 0 || holes.kind === "columns" || holes.kind === "units")
    return { kind: "clear-too-narrow", clear: clearWidth, least: LEAST_CLEAR };
  const inset = holes.kind === "corners" ? holes.inset : 0;
  const lies = seat > 0 ? seat - inset : inset;
  const least = Math.max(size / 2 + RAIL_LIP, lies) + LEAST_CLEAR / 2;
  return { kind: "screws-meet", from: reach.inner, least };
};

/** A place along the bay and above its rails' faces (below: negative), in the profile. */
export const inBay = (bay: FrameBay, along: number, up: number): Point =>
  stepped(stepped(bay.start, bay.along, along), bay.up, up);

/** How high the plane of the rails' faces, moved by `z`, stands over the bay's middle at a place across. */
export const faceHeight = (bay: FrameBay, across: number, z = 0): number =>
  ((across - bay.centre) * bay.tilt.y + z) / bay.tilt.x;

/** Where the bay's own x and z lie across, and along `up`. */
export const acrossBay = ({ centre, tilt }: FrameBay, x: number, z: number): Point =>
  point(centre + x * tilt.x - z * tilt.y, x * tilt.y + z * tilt.x);

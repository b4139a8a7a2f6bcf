// A bay as the frame carries it: its run in the profile, its tilt across, the room behind its panels, and its rails' holes.
// Takes a bay of the layout; gives it in these terms, or says why the frame can't carry it.

import type { Measure } from "../../diagnostics/finding.ts";
import { type Point, point } from "../../geometry/contour.ts";
import { decimal } from "../../geometry/number.ts";
import { dot } from "../../geometry/space/vector.ts";
import { arcSine, type Direction, toDegrees } from "../../geometry/trigonometry.ts";
import type { BayLayout } from "../../layout/console/console-layout.ts";
import { offPlane, wholePitch } from "./frame-tolerance.ts";
import { acrossOf, inProfile, leftOf, type Profile, stepped } from "./profile.ts";

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
  /** Half the clear width, and half of what parts the columns of holes. */
  readonly halfClear: number;
  readonly halfColumns: number;
  readonly firstHole: number;
  readonly pitch: number;
  readonly holes: number;
  readonly depth: number;
  /** Lowest corner of the room behind the panels, along `up` from the rails' faces. */
  readonly lowest: number;
}

export type CarriedBay =
  | { readonly kind: "carried"; readonly bay: FrameBay }
  | { readonly kind: "refused"; readonly fault: BayFault };

/** What is wrong with a bay, and both numbers where there are two. */
export interface BayFault {
  readonly why: string;
  readonly measured: Measure | null;
  readonly limit: Measure | null;
}

export const frameBay = (layout: BayLayout, profile: Profile): CarriedBay => {
  const { x, y } = layout.frame;
  const { holes } = layout.mount;
  if (holes.kind !== "columns")
    return refused(`${layout.mount.id} has no columns of holes for rail bars; console-rail has`);
  const off = dot(y, profile.right);
  const along: Direction = { x: dot(y, profile.forward), y: dot(y, profile.up) };
  const up = leftOf(along);
  const tilt: Direction = {
    x: dot(x, profile.right),
    y: dot(x, profile.forward) * up.x + dot(x, profile.up) * up.y,
  };
  if (Math.abs(off) > offPlane) return outOfPlane(toDegrees(arcSine(Math.min(1, Math.abs(off)))));
  if (tilt.x < offPlane) return refused("its panels look down, or along its own cheeks");
  const halfClear = layout.clearWidth / 2;
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
      halfClear,
      halfColumns: holes.apart / 2,
      firstHole: holes.first,
      pitch: holes.pitch,
      holes: Math.floor((layout.length - 2 * holes.first) / holes.pitch + wholePitch) + 1,
      depth: layout.depth,
      lowest: -halfClear * Math.abs(tilt.y) - layout.depth * tilt.x,
    },
  };
};

const refused = (why: string): CarriedBay => ({
  kind: "refused",
  fault: { why, measured: null, limit: null },
});

const outOfPlane = (angle: number): CarriedBay => ({
  kind: "refused",
  fault: {
    why: `it runs ${decimal(angle, 2)}° out of the plane of the first bay, and cheeks are flat: 0° can be carried`,
    measured: { value: Number(decimal(angle, 6)), unit: "deg" },
    limit: { value: 0, unit: "deg" },
  },
});

/** A place along the bay and above its rails' faces (below: negative), in the profile. */
export const inBay = (bay: FrameBay, along: number, up: number): Point =>
  stepped(stepped(bay.start, bay.along, along), bay.up, up);

/** How high the plane of the rails' faces, moved by `z`, stands over the bay's middle at a place across. */
export const faceHeight = (bay: FrameBay, across: number, z = 0): number =>
  ((across - bay.centre) * bay.tilt.y + z) / bay.tilt.x;

/** Where the bay's own x and z lie across, and along `up`. */
export const acrossBay = ({ centre, tilt }: FrameBay, x: number, z: number): Point =>
  point(centre + x * tilt.x - z * tilt.y, x * tilt.y + z * tilt.x);

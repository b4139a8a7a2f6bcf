// The outline of each layer: the panel's own, with notches where a fastener's head must reach the sheet behind it.

import type { Mount } from "../catalogue/mount.ts";
import { difference } from "../geometry/boolean.ts";
import { containsContour } from "../geometry/containment.ts";
import { type Contour, circle, type Point } from "../geometry/contour.ts";
import { type Extent, extent } from "../geometry/extent.ts";
import { rectangle } from "../geometry/shapes.ts";
import { isHeadRoom } from "./holes.ts";
import type { MountHole } from "./panel-layout.ts";
import { type BareLayer, lastRigidSheet } from "./stack.ts";

/**
 * A layer's outline. Where a head's room reaches the edge it is a notch, open to the edge: a circle there would leave
 * slivers at the corners.
 */
export const layerOutline = (
  layer: BareLayer,
  holes: readonly MountHole[],
  options: {
    readonly mount: Mount;
    readonly layers: readonly BareLayer[];
    readonly outline: Contour;
    readonly nominal: Extent;
  },
): Contour => {
  const { mount, layers, outline, nominal } = options;
  if (layer.kind !== "sheet" || !isHeadRoom(layer, mount, lastRigidSheet(layers))) return outline;
  const kept = keptFor(mount);
  const key = `${nominal.maxX} ${nominal.maxY}`;
  const known = kept.get(key);
  if (known !== undefined) return known;
  const notched = notchedOutline(holes, { radius: mount.headClearance / 2, outline, nominal });
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(key, notched);
  return notched;
};

/** A mount and a nominal size settle outline and holes: the panels of a console share a few. */
const KEPT = new WeakMap<Mount, Map<string, Contour>>();
const MOST_KEPT = 50;

const keptFor = (mount: Mount): Map<string, Contour> => {
  const known = KEPT.get(mount);
  if (known !== undefined) return known;
  const fresh = new Map<string, Contour>();
  KEPT.set(mount, fresh);
  return fresh;
};

const notchedOutline = (
  holes: readonly MountHole[],
  on: { readonly radius: number; readonly outline: Contour; readonly nominal: Extent },
): Contour => {
  const { radius, outline, nominal } = on;
  const notches = holes
    .map(({ at }) => ({ at, room: circle(at, radius) }))
    .filter(({ room }) => !containsContour(outline, room))
    .flatMap(({ at, room }) => [room, ...openToEdge(at, radius, nominal)]);
  if (notches.length === 0) return outline;
  const left = difference([{ outline, holes: [] }], notches);
  return left[0]?.outline ?? outline;
};

/** Rectangles that open a round room to each edge that it crosses, and to the corner between two such edges. */
const openToEdge = (at: Point, radius: number, nominal: Extent): readonly Contour[] => {
  const west = at.x - radius < nominal.minX + EDGE_BEYOND ? nominal.minX - EDGE_BEYOND : null;
  const east = at.x + radius > nominal.maxX - EDGE_BEYOND ? nominal.maxX + EDGE_BEYOND : null;
  const south = at.y - radius < nominal.minY + EDGE_BEYOND ? nominal.minY - EDGE_BEYOND : null;
  const north = at.y + radius > nominal.maxY - EDGE_BEYOND ? nominal.maxY + EDGE_BEYOND : null;
  const side = west ?? east;
  const end = south ?? north;
  const across =
    side === null
      ? []
      : [rectangle(ordered(at.x, side, { low: at.y - radius, high: at.y + radius }))];
  const along =
    end === null
      ? []
      : [rectangle(ordered(at.x - radius, at.x + radius, { low: at.y, high: end }))];
  const corner =
    side === null || end === null ? [] : [rectangle(ordered(at.x, side, { low: at.y, high: end }))];
  return [...across, ...along, ...corner];
};

/** A notch runs this far past the nominal edge: more than any undersize. */
const EDGE_BEYOND = 1;

const ordered = (
  from: number,
  to: number,
  along: { readonly low: number; readonly high: number },
): Extent =>
  extent(
    Math.min(from, to),
    Math.min(along.low, along.high),
    Math.max(from, to),
    Math.max(along.low, along.high),
  );

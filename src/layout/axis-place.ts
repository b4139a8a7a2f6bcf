// One statement of a place turned into a coordinate: from an edge, from the middle, or from a neighbour that stands already.

import type { AxisPlace, PlaceDesign } from "../design/panel-design.ts";
import { type Point, point } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";

/** Where a placed thing stands, and how far it reaches round that place on the face. */
export interface Landmark {
  readonly at: Point;
  /** Box round the centres of its members: the place itself where there is only one. */
  readonly centres: Extent;
  /** Reach on the face in panel coordinates. */
  readonly reach: Extent;
}

export interface PlaceFrame {
  readonly nominal: Extent;
  /** Width of the strip that components leave free, for `x: left` and `x: right`, and for `y: bottom` and `y: top`. */
  readonly edge: { readonly x: number; readonly y: number };
}

export interface Block {
  readonly place: PlaceDesign;
  /** Offsets of the members' centres from the block's datum. */
  readonly centres: Extent;
  /** Reach of one member round its own centre. */
  readonly reach: Extent;
}

export interface PlaceScene {
  readonly frame: PlaceFrame;
  readonly landmarks: ReadonlyMap<string, Landmark>;
}

/** The datum's place; null while a neighbour is still missing. */
export const blockPlace = (block: Block, scene: PlaceScene): Point | null => {
  const { centres, reach, place } = block;
  const { nominal, edge } = scene.frame;
  const x = axisPlace(place.across, {
    axis: "x",
    scene,
    size: { low: nominal.minX, high: nominal.maxX, edge: edge.x },
    block: { low: centres.minX, high: centres.maxX, reachLow: reach.minX, reachHigh: reach.maxX },
  });
  const y = axisPlace(place.along, {
    axis: "y",
    scene,
    size: { low: nominal.minY, high: nominal.maxY, edge: edge.y },
    block: { low: centres.minY, high: centres.maxY, reachLow: reach.minY, reachHigh: reach.maxY },
  });
  return x === null || y === null ? null : point(x, y);
};

/** The neighbours that a place leans on, with the key that names each. */
export const neighboursOf = (
  place: PlaceDesign,
): readonly { readonly id: string; readonly key: string }[] => [
  ...neighbourOf(place.across, "in-line-with"),
  ...neighbourOf(place.along, "level-with"),
];

const neighbourOf = (
  axis: AxisPlace,
  inLineKey: string,
): readonly { readonly id: string; readonly key: string }[] => {
  if (axis.kind === "beside") return [{ id: axis.neighbour, key: axis.key }];
  return axis.kind === "in-line" ? [{ id: axis.neighbour, key: inLineKey }] : [];
};

interface AxisScene {
  readonly axis: "x" | "y";
  readonly scene: PlaceScene;
  readonly size: { readonly low: number; readonly high: number; readonly edge: number };
  readonly block: {
    readonly low: number;
    readonly high: number;
    readonly reachLow: number;
    readonly reachHigh: number;
  };
}

const axisPlace = (place: AxisPlace, at: AxisScene): number | null => {
  const { size, block } = at;
  switch (place.kind) {
    case "from-low":
      return size.low + place.distance - block.low;
    case "from-high":
      return size.high - place.distance - block.high;
    case "centre":
      return (size.low + size.high) / 2 - (block.low + block.high) / 2;
    case "low-edge":
      return size.low + size.edge - block.reachLow - block.low;
    case "high-edge":
      return size.high - size.edge - block.reachHigh - block.high;
    case "in-line":
      return at.scene.landmarks.get(place.neighbour)?.at[at.axis] ?? null;
    case "beside":
      return beside(place, at);
  }
};

/** Of a pattern, the member that lies nearest in the direction asked for is the neighbour. */
const beside = (place: AxisPlace & { readonly kind: "beside" }, at: AxisScene): number | null => {
  const landmark = at.scene.landmarks.get(place.neighbour);
  if (landmark === undefined) return null;
  const { block, axis } = at;
  const from = place.measure === "centres" ? landmark.centres : landmark.reach;
  const [low, high] = axis === "x" ? [from.minX, from.maxX] : [from.minY, from.maxY];
  const [reachLow, reachHigh] =
    place.measure === "centres" ? [0, 0] : [block.reachLow, block.reachHigh];
  return place.toward === "high"
    ? high + place.distance - reachLow - block.low
    : low - place.distance - reachHigh - block.high;
};

// Boards of a frame seen from above one corner, in parallel projection: each a face, its edges that look this way, and
// outlines over them. Boards are painted from the furthest to the nearest; which of two is nearer is settled by the plane
// of one that leaves the other on one side. Takes parts with a shift each; gives drawing items about the console's origin.

import type { Contour, Point, Region } from "../geometry/contour.ts";
import { loop, point, vertex } from "../geometry/contour.ts";
import { type Extent, extentsOverlap } from "../geometry/extent.ts";
import { flattened } from "../geometry/flatten.ts";
import { contourExtent } from "../geometry/measure.ts";
import { pointOut } from "../geometry/space/frame.ts";
import {
  cross,
  dot,
  plus,
  scaled,
  unitVector,
  type Vector,
  vector,
} from "../geometry/space/vector.ts";
import type { DrawingItem, Ink } from "./drawing.ts";
import { areas, filled, HAIR, outlined } from "./items.ts";
import { paintOrder } from "./paint-order.ts";
import type { ShownBoard } from "./shown-board.ts";

export interface FrameView {
  readonly items: readonly DrawingItem[];
  /** Middle of each board's face in the picture, by its id. */
  readonly middles: ReadonlyMap<string, Point>;
}

/** Chords of reliefs and holes, in mm of the board: finer is not seen. */
const CHORD = 0.2;

export interface FrameViewOptions {
  readonly scale: number;
  /** The side of the console that looks at the viewer. */
  readonly side: "left" | "right";
}

export const frameView = (boards: readonly ShownBoard[], options: FrameViewOptions): FrameView => {
  const scene: Scene = { scale: options.scale, ...axesOf(options.side) };
  const ordered = paintOrder(boards, scene.toward);
  return {
    items: ordered.flatMap((board) => boardItems(board, scene)),
    middles: new Map(boards.map((board) => [board.part.id, middleOf(board, scene)])),
  };
};

/** Toward the viewer, who looks from behind, above and one side. */
export const towardViewer = (side: FrameViewOptions["side"]): Vector =>
  unitVector(vector(-0.8, side === "left" ? 1 : -1, 0.75));

interface Scene {
  readonly scale: number;
  readonly toward: Vector;
  readonly right: Vector;
  readonly up: Vector;
}

const axesOf = (side: FrameViewOptions["side"]): Omit<Scene, "scale"> => {
  const toward = towardViewer(side);
  const right = unitVector(cross(vector(0, 0, 1), toward));
  return { toward, right, up: cross(toward, right) };
};

const inPicture =
  (
    { part, shift }: ShownBoard,
    { scale, right, up }: Scene,
  ): ((x: number, y: number, z: number) => Point) =>
  (x, y, z) => {
    const place = plus(pointOut(part.frame, vector(x, y, z)), shift);
    return point(dot(place, right) * scale, dot(place, up) * scale);
  };

const boardItems = (board: ShownBoard, scene: Scene): readonly DrawingItem[] => {
  const { part, look } = board;
  const facing = dot(part.frame.z, scene.toward);
  const seen = inPicture(board, scene);
  const near = facing >= 0 ? 0 : -part.thickness;
  const onFace = (contour: Contour): Contour =>
    loop(
      flattened(contour, CHORD).map(({ x, y }) => {
        const at = seen(x, y, near);
        return vertex(at.x, at.y);
      }),
    );
  const region: Region = {
    outline: onFace(part.region.outline),
    holes: part.region.holes.map(onFace),
  };
  return [
    ...coats(edgesSeen(board, scene)).flatMap((edges) => [
      filled(edges, EDGE[look]),
      outlined(edges, { ink: "line", width: HAIR }),
    ]),
    areas([region], FACE[look]),
    outlined([region.outline, ...region.holes], { ink: "line", width: HAIR }),
  ];
};

/** What is painted in order, put into as few coats as leave whatever overlaps in that order. */
const coats = (strips: readonly Contour[]): readonly (readonly Contour[])[] => {
  const made: { readonly strips: Contour[]; readonly boxes: Extent[] }[] = [];
  for (const strip of strips) {
    const box = contourExtent(strip);
    const under = made.findLastIndex(({ boxes }) =>
      boxes.some((other) => extentsOverlap(box, other)),
    );
    const coat = made[under + 1] ?? { strips: [], boxes: [] };
    if (coat.strips.length === 0) made.push(coat);
    coat.strips.push(strip);
    coat.boxes.push(box);
  }
  return made.map(({ strips: each }) => each);
};

const FACE: Readonly<Record<ShownBoard["look"], Ink>> = { there: "paper", new: "rail" };
const EDGE: Readonly<Record<ShownBoard["look"], Ink>> = { there: "backdrop", new: "shadow" };

/**
 * The strips of the board's rim that look toward the viewer, from the furthest to the nearest, so that a tab's end covers what is
 * behind it; of its outline alone, which runs counter-clockwise.
 */
const edgesSeen = (board: ShownBoard, scene: Scene): readonly Contour[] => {
  const { part } = board;
  const seen = inPicture(board, scene);
  const corners = flattened(part.region.outline, CHORD);
  const strips = corners.flatMap((from, index) => {
    const to = corners[(index + 1) % corners.length]!;
    const outward = plus(scaled(part.frame.x, to.y - from.y), scaled(part.frame.y, from.x - to.x));
    if (dot(outward, scene.toward) <= 0) return [];
    const strip = [
      seen(from.x, from.y, 0),
      seen(to.x, to.y, 0),
      seen(to.x, to.y, -part.thickness),
      seen(from.x, from.y, -part.thickness),
    ];
    const middle = vector((from.x + to.x) / 2, (from.y + to.y) / 2, -part.thickness / 2);
    const depth = dot(pointOut(part.frame, middle), scene.toward);
    return [{ depth, contour: loop(strip.map(({ x, y }) => vertex(x, y))) }];
  });
  return strips.toSorted((a, b) => a.depth - b.depth).map(({ contour }) => contour);
};

/** Of its box; of a rib the middle of what stands below the panels' room, which is cut out of the rest. */
const middleOf = (board: ShownBoard, scene: Scene): Point => {
  const { part } = board;
  const { minX, minY, maxX, maxY } = contourExtent(part.region.outline);
  const share = part.role === "rib" ? RIB_SHARE : HALF;
  const z = dot(part.frame.z, scene.toward) >= 0 ? 0 : -part.thickness;
  return inPicture(board, scene)((minX + maxX) / 2, minY + share * (maxY - minY), z);
};

const HALF = 0.5;
const RIB_SHARE = 0.12;

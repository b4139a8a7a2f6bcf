// Where boards lie on a tray: flat, their plugs and the bends of their cables beside them, clear of posts and of bodies that
// stand through. Turned by quarters, from below and then from the left, in the order in which the design names them.

import type { Board, BoardConnector } from "../../catalogue/board.ts";
import { type Point, point, type Region } from "../../geometry/contour.ts";
import { type Extent, extent, grownExtent, joinedExtent } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { type Degrees, degrees } from "../../geometry/quantity.ts";
import { rectangle } from "../../geometry/shapes.ts";
import { type Placement, placedContour, placedPoint, placement } from "../../geometry/transform.ts";
import { bandArea, freeStretches } from "./free-bands.ts";
import { plainRegion } from "./grown-regions.ts";
import { subtracted } from "./region-sums.ts";

export interface PlacedBoard {
  readonly board: Board;
  readonly at: Placement;
  readonly box: Extent;
  /** Board, plugs and bends. */
  readonly room: Extent;
}

/** Between boards, and from a board to whatever stands beside it: common practice. */
const APART = 2;
const STEP = 1;

/** null where no place is free. `turn`: as the design turns it; null where any quarter will do. */
export const placedBoard = (
  board: Board,
  free: readonly Region[],
  turn: Degrees | null,
): PlacedBoard | null => {
  const turns = turn === null ? QUARTERS : [turn];
  const wholly = bestPlace(board, free, { turns, reach: "with-bend" });
  // A cable may also bend away from the tray, where the board looks to a wall.
  return wholly ?? bestPlace(board, free, { turns, reach: "plug-alone" });
};

/** What is still free once a board lies there. */
export const withoutBoard = (free: readonly Region[], { room }: PlacedBoard): readonly Region[] =>
  subtracted(free, [plainRegion(rectangle(grownExtent(room, APART)))]);

type Reach = "with-bend" | "plug-alone";

const QUARTERS: readonly Degrees[] = [degrees(0), degrees(90), degrees(180), degrees(270)];

const bestPlace = (
  board: Board,
  free: readonly Region[],
  how: { readonly turns: readonly Degrees[]; readonly reach: Reach },
): PlacedBoard | null => {
  const { turns, reach } = how;
  const found = turns.flatMap((turn) =>
    free.flatMap((region) => firstPlace(board, region, { turn, reach })),
  );
  return (
    found.toSorted((a, b) => a.room.minY - b.room.minY || a.room.minX - b.room.minX)[0] ?? null
  );
};

const firstPlace = (
  board: Board,
  region: Region,
  how: { readonly turn: Degrees; readonly reach: Reach },
): readonly PlacedBoard[] => {
  const own = contourExtent(
    placedContour(rectangle(roomOf(board, how.reach)), placement(0, 0, how.turn)),
  );
  const length = own.maxX - own.minX;
  const breadth = own.maxY - own.minY;
  const area = bandArea(region, "x");
  for (let low = Math.ceil(area.low / STEP) * STEP; low + breadth < area.high; low += STEP) {
    const stretch = freeStretches(area, low, low + breadth).find(
      ({ from, to }) => to - from >= length,
    );
    if (stretch === undefined) continue;
    const at = placement(stretch.from - own.minX, low - own.minY, how.turn);
    const bare = rectangle(extent(0, 0, board.width, board.height));
    const room = extent(stretch.from, low, stretch.from + length, low + breadth);
    return [{ board, at, box: contourExtent(placedContour(bare, at)), room }];
  }
  return [];
};

/** Over the board's own corner. */
const roomOf = (board: Board, reach: Reach): Extent =>
  board.connectors
    .flatMap((connector) => plugRoom(connector, reach) ?? [])
    .reduce(joinedExtent, extent(0, 0, board.width, board.height));

/** The plug in the plane of the board; null for a connector that looks up. */
export const plugRoom = (connector: BoardConnector, reach: Reach): Extent | null => {
  const { at, side, overhang, plug, bend } = connector;
  const half = Math.max(connector.width, plug.width) / 2;
  const out = overhang + plug.depth + (reach === "with-bend" ? bend : 0);
  switch (side) {
    case "left":
      return extent(at.x - out, at.y - half, at.x, at.y + half);
    case "right":
      return extent(at.x, at.y - half, at.x + out, at.y + half);
    case "bottom":
      return extent(at.x - half, at.y - out, at.x + half, at.y);
    case "top":
      return extent(at.x - half, at.y, at.x + half, at.y + out);
    case "up":
      return null;
  }
};

/** Which way its plug comes, as a step of 1 mm on the board. */
export const outward = ({ side }: BoardConnector): Point | null => {
  switch (side) {
    case "left":
      return point(-1, 0);
    case "right":
      return point(1, 0);
    case "bottom":
      return point(0, -1);
    case "top":
      return point(0, 1);
    case "up":
      return null;
  }
};

export const onTray = (at: Point, { at: place }: PlacedBoard): Point => placedPoint(at, place);

// The latch of a board's plug where the board lies on its tray: where its thumb presses, and which way that comes from.

import type { BoardConnector } from "../../catalogue/board.ts";
import { type Point, point } from "../../geometry/contour.ts";
import type { Mm } from "../../geometry/quantity.ts";
import { minus, vector } from "../../geometry/space/vector.ts";
import { onTray, outward, type PlacedBoard } from "./board-places.ts";
import type { LatchFact } from "./printed-facts.ts";

/** `front`: z of the board's front. null where the plug has no latch, or looks up. */
export const latchFact = (
  connector: BoardConnector,
  placed: PlacedBoard,
  front: Mm,
): LatchFact | null => {
  const { at, latch, overhang, height, plug } = connector;
  const out = outward(connector);
  if (latch === null || out === null) return null;
  const { side, ...room } = latch;
  const level = side === "front" ? front + Math.max(height, plug.height) : front;
  const spot = (away: number): ReturnType<typeof vector> => {
    const { x, y } = onTray(stepped(at, out, away), placed);
    return vector(x, y, level);
  };
  return {
    mouth: spot(overhang),
    along: minus(spot(1), spot(0)),
    away: vector(0, 0, side === "front" ? 1 : -1),
    room,
  };
};

const stepped = ({ x, y }: Point, out: Point, by: number): Point =>
  point(x + out.x * by, y + out.y * by);

// A bought circuit board on a tray: controllers, drivers, converters. Lengths count from the lower left corner of the
// board, seen from the side that carries its parts; that side is its front.

import type { Point } from "../geometry/contour.ts";
import type { Mm } from "../geometry/quantity.ts";
import type { BoardLatch } from "./latch.ts";
import type { Figures, Supply } from "./part.ts";

export interface Board {
  readonly kind: "board";
  readonly id: string;
  readonly title: string;
  readonly width: Mm;
  readonly height: Mm;
  readonly thickness: Mm;
  readonly holes: readonly BoardHole[];
  /** Largest screw head or standoff over a hole that clears the parts beside it; null where there are no holes. */
  readonly headLimit: Mm | null;
  readonly holding: BoardHolding;
  readonly connectors: readonly BoardConnector[];
  /** Tallest part above the front of the board, connectors too; without a plug. */
  readonly tallestFront: Mm;
  /** Longest lead or part behind it. */
  readonly tallestBack: Mm;
  /** Lines that may serve as inputs or outputs of a panel. */
  readonly lines: number;
  /** What the board itself draws, with nothing connected to its lines. */
  readonly supply: Supply | null;
  readonly figures: Figures;
}

/** By its holes, by a clip over its edges, or by its pins in a socket. */
export type BoardHolding = "holes" | "clip" | "socket";

export interface BoardHole {
  readonly at: Point;
  readonly diameter: Mm;
}

export type BoardSide = "left" | "right" | "top" | "bottom" | "up";

export interface BoardConnector {
  readonly name: string;
  /** Middle of its mouth along the edge, or of its footprint where it looks up. */
  readonly at: Point;
  /** Where its plug comes from; `up` is away from the board. */
  readonly side: BoardSide;
  /** How far its mouth stands out over the board's edge; 0 where it looks up. */
  readonly overhang: Mm;
  /** Along the edge, and above the board; of one that looks up the footprint. */
  readonly width: Mm;
  readonly height: Mm;
  readonly plug: PlugRoom;
  /** Room for the bend of its cable behind the plug. */
  readonly bend: Mm;
  /** null where the plug is only pulled. */
  readonly latch: BoardLatch | null;
}

/** Width along the edge, height, and how far the mated plug stands out from the mouth. */
export interface PlugRoom {
  readonly width: Mm;
  readonly height: Mm;
  readonly depth: Mm;
}

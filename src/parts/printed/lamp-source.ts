// A strip or a board of LEDs as a lane sees it: how wide, in which lengths it comes, where its LEDs are. A strip is cut at
// its marks only; boards stand end to end with room for a wire between.

import type { LedBoard, Strip } from "../../catalogue/strip.ts";
import { type Point, point } from "../../geometry/contour.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import type { PrintedContext } from "./printed-context.ts";

export interface LampSource {
  readonly id: string;
  readonly width: Mm;
  /** One cut length, or one board. */
  readonly length: Mm;
  /** From the end of one to the start of the next. */
  readonly between: Mm;
  /** Length that the wires at a lane's end cost. */
  readonly joint: Mm;
  /** LEDs of one length: along it from its start, across it from its middle. */
  readonly leds: readonly Point[];
  readonly pitch: Mm;
  /** From what it lies on to the top of its LEDs. */
  readonly height: Mm;
  /** Solder and leads under a board. */
  readonly below: Mm;
}

/** A wire bridge between two boards: common practice. */
const BOARD_GAP = mm(2);
const BOARD_JOINT = mm(8);

export const lampSource = (id: string, { catalogue }: PrintedContext): LampSource | null => {
  const strip = catalogue.strips.get(id);
  if (strip !== undefined) return stripSource(strip);
  const board = catalogue.ledBoards.get(id);
  return board === undefined ? null : boardSource(board);
};

const stripSource = (strip: Strip): LampSource => ({
  id: strip.id,
  width: strip.width,
  length: strip.cutEvery,
  between: mm(0),
  joint: strip.joint,
  leds: Array.from({ length: strip.ledsPerCut }, (_, index) =>
    point((index + 1 / 2) * strip.pitch, 0),
  ),
  pitch: strip.pitch,
  height: strip.height,
  below: mm(0),
});

const boardSource = (board: LedBoard): LampSource => ({
  id: board.id,
  width: board.height,
  length: board.width,
  between: BOARD_GAP,
  joint: BOARD_JOINT,
  leds: board.leds.map((at) => point(at.x, at.y - board.height / 2)),
  pitch: boardPitch(board),
  height: mm(board.tallestBack + board.thickness + board.ledHeight),
  below: board.tallestBack,
});

/** Along the board: its columns of LEDs share its length. */
const boardPitch = (board: LedBoard): Mm => {
  const columns = new Set(board.leds.map(({ x }) => x)).size;
  return mm((board.width + BOARD_GAP) / Math.max(1, columns));
};

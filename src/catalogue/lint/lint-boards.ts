// Boards, strips, boards with LEDs and inserts against themselves: what must lie on a board lies on it, what is cut is
// cut between LEDs, and an insert bites into its boss.

import { containsContour } from "../../geometry/containment.ts";
import { type Contour, circle, type Point } from "../../geometry/contour.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { extent } from "../../geometry/extent.ts";
import { rectangle } from "../../geometry/shapes.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import { HEAT_SET_BOSS, HEAT_SET_PILOTS } from "../../standards/heat-set.ts";
import { THREAD_DIAMETER } from "../../standards/metric-fasteners.ts";
import type { Board, BoardConnector, BoardHole } from "../board.ts";
import type { Insert } from "../insert.ts";
import type { LedBoard, Strip } from "../strip.ts";
import { type LintFault, unless } from "./lint-fault.ts";

export function boardFaults(board: Board): readonly LintFault[] {
  return [
    ...holeFaults(board),
    ...unless(
      (board.holding === "holes") === board.holes.length >= LEAST_HOLES,
      "holding",
      `${board.holes.length} holes do not hold a board by ${board.holding}`,
    ),
    ...unless(
      (board.headLimit === null) === (board.holes.length === 0),
      "headLimit",
      "holes and the room for a screw head go together",
    ),
    ...unless(
      board.holes.every(({ diameter }) => board.headLimit === null || board.headLimit > diameter),
      "headLimit",
      "a head that small falls through its hole",
    ),
    ...board.connectors.flatMap((connector, index) => connectorFaults(board, connector, index)),
  ];
}

/** Two keep a board from turning. */
const LEAST_HOLES = 2;

type Sheet = Pick<Board, "width" | "height" | "holes">;

const outlineOf = ({ width, height }: Sheet): Contour => rectangle(extent(0, 0, width, height));

function holeFaults(board: Sheet): readonly LintFault[] {
  const outline = outlineOf(board);
  return board.holes.flatMap((hole, index) => [
    ...unless(
      containsContour(outline, holeContour(hole)),
      `holes.${index}`,
      "the hole runs over the edge of the board",
    ),
    ...unless(
      board.holes.slice(0, index).every((other) => isApart(hole, other)),
      `holes.${index}`,
      "the hole runs into another",
    ),
  ]);
}

const holeContour = ({ at, diameter }: BoardHole): Contour => circle(at, diameter / 2);

const isApart = (one: BoardHole, other: BoardHole): boolean => {
  const { overlaps, gap } = contourDistance(holeContour(one), holeContour(other));
  return !overlaps && gap > 0;
};

function connectorFaults(
  board: Board,
  connector: BoardConnector,
  index: number,
): readonly LintFault[] {
  const path = `connectors.${index}`;
  return [
    ...unless(
      isWithin(board, connector.at) && isOnItsSide(board, connector),
      path,
      `${connector.name} does not lie on the ${connector.side} of the board`,
    ),
    ...unless(
      connector.side !== "up" || connector.overhang === 0,
      path,
      `${connector.name} looks up and stands out over an edge`,
    ),
    ...unless(
      connector.side === "up" || connector.height <= board.tallestFront,
      path,
      `${connector.name} is taller than the tallest part`,
    ),
    ...unless(
      connector.side !== "up" || connector.latch === null,
      path,
      `${connector.name} looks up: on which side of the board its latch is can't be said`,
    ),
  ];
}

const isWithin = (board: Sheet, { x, y }: Point): boolean =>
  x >= 0 && x <= board.width && y >= 0 && y <= board.height;

function isOnItsSide(board: Board, { at, side }: BoardConnector): boolean {
  switch (side) {
    case "left":
      return at.x === 0;
    case "right":
      return at.x === board.width;
    case "bottom":
      return at.y === 0;
    case "top":
      return at.y === board.height;
    case "up":
      return true;
  }
}

export const stripFaults = (strip: Strip): readonly LintFault[] => [
  ...unless(WIDTHS.includes(strip.width), "width", "strip is 8, 10 or 12 wide"),
  ...unless(
    Math.abs(strip.cutEvery - strip.pitch * strip.ledsPerCut) < samePlace,
    "cutEvery",
    `${strip.ledsPerCut} LEDs of this pitch make another length`,
  ),
  ...unless(
    strip.joint >= JOINT.least && strip.joint <= JOINT.most,
    "joint",
    "a joint costs 10 to 15",
  ),
];

/** Common practice: the widths that are sold. */
const WIDTHS: readonly number[] = [8, 10, 12];
/** Common practice: bared pads, solder, the bend of the wires. */
const JOINT = { least: 10, most: 15 } as const;

export const ledBoardFaults = (board: LedBoard): readonly LintFault[] => [
  ...holeFaults(board),
  ...board.leds.flatMap((led, index) => [
    ...unless(isWithin(board, led), `leds.${index}`, "the LED does not lie on the board"),
    ...unless(
      board.leds.slice(0, index).every(({ x, y }) => x !== led.x || y !== led.y),
      `leds.${index}`,
      "two LEDs lie in one place",
    ),
  ]),
];

export const insertFaults = (insert: Insert): readonly LintFault[] => {
  const published = Object.entries(HEAT_SET_PILOTS).find(
    ([thread]) => thread === insert.thread,
  )?.[1];
  return [
    ...unless(
      insert.pilot < insert.outside,
      "pilot",
      "the insert falls into its hole without biting",
    ),
    ...unless(
      insert.pilot > THREAD_DIAMETER[insert.thread],
      "pilot",
      "the hole is narrower than the thread",
    ),
    ...unless(
      published === undefined || insert.pilot === published,
      "pilot",
      `makers ask for a hole of ${published}`,
    ),
    ...unless(
      insert.boss >= HEAT_SET_BOSS.outsideOverInsert * insert.outside,
      "boss",
      "the boss is less than twice as wide as the insert",
    ),
  ];
};

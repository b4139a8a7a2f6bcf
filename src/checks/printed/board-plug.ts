// Plugs of a tray's boards that can't be mated: the layer in front, or a body that hangs down from it, is in their room.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { Contour } from "../../geometry/contour.ts";
import { contoursOverlap } from "../../geometry/distance.ts";
import type { Extent } from "../../geometry/extent.ts";
import { rectangle } from "../../geometry/shapes.ts";
import type { BoardFact } from "../../parts/printed/printed-facts.ts";
import type { PrintedPart } from "../../parts/printed/printed-part.ts";
import { uprightPlug } from "../../parts/printed/upright-plug.ts";
import { boardSource } from "../board-source.ts";
import { isOver } from "../limits.ts";
import { roundedUp } from "../round-length.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/board-plug",
  severity: "query",
  title: "a board's plug that can't be mated",
  why: "A plug needs its own length, its latch and the bend of its cable. What stands against the stack, or against a switch that hangs down from it, can't be pushed home. Give the tray more depth, or move the board.",
  example: `stack:
  - { layer: backing, sheet: aluminium-2 }
  - { layer: tray, behind: 6 mm, boards: [avr-328-45x18] }`,
};

export const boardPlug: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    facts.printedParts.flatMap((part) => {
      const troubles = part.facts.boards.flatMap((board) => [
        ...tooHigh(board, part, facts),
        ...inTheWay(board, part, facts),
      ]);
      return troubles.map((trouble) => told(trouble, { troubles, part, facts }));
    }),
};

type Connector = BoardFact["connectors"][number];

interface Trouble {
  readonly board: string;
  readonly message: string;
  readonly subjects: readonly string[];
  readonly measured: number;
  readonly limit: number;
}

interface OnTray {
  readonly troubles: readonly Trouble[];
  readonly part: PrintedPart;
  readonly facts: PanelFacts;
}

/** Deeper by what the worst plug lacks, the tray frees all of them: its boards lie in one plane. */
const told = (
  { board, message, subjects, measured, limit }: Trouble,
  { troubles, part, facts }: OnTray,
): Finding => {
  const layer = facts.layout.layers.find(({ id }) => id === part.owner)?.design;
  const lacks = Math.max(...troubles.map((one) => one.measured - one.limit));
  const parts = {
    span: part.span,
    subjects,
    measured: measureMm(measured),
    limit: measureMm(limit),
    source: boardSource(board, facts.catalogue),
  };
  if (layer?.kind !== "tray") return finding(entry, { ...parts, message });
  const span = spanOf(layer.written, "behind");
  const value = roundedUp(facts, span, layer.behind + lacks);
  const deepest = facts.layout.design.depth;
  const goesIn = deepest === null || !isOver(lacks - part.facts.box.rear, deepest);
  return finding(entry, {
    ...parts,
    message: `${message} behind: ${value} leaves room for it${goesIn ? "" : ", and wants more depth: behind the panel"}.`,
    remedies: [
      { title: `behind: ${value} (${part.owner})`, edits: goesIn ? [facts.edit(span, value)] : [] },
    ],
  });
};

/** One finding a board: its highest plug. */
const tooHigh = (board: BoardFact, part: PrintedPart, facts: PanelFacts): readonly Trouble[] => {
  const layer = facts.layout.layers.find(({ id }) => id === part.owner);
  const highest = board.connectors.reduce<Connector | null>(
    (most, one) => (most === null || one.height > most.height ? one : most),
    null,
  );
  if (layer === undefined || highest === null) return [];
  const room = layer.front - board.front;
  if (!isOver(highest.height, room)) return [];
  return [
    {
      board: board.board,
      message: `${board.board}: the plug of ${highest.name} stands ${millimetres(highest.height, room)} above the board, cable and all; behind: leaves ${millimetres(room, highest.height)}, ${millimetres(highest.height - room, 0)} too little.`,
      subjects: [part.owner],
      measured: highest.height,
      limit: room,
    },
  ];
};

const inTheWay = (board: BoardFact, part: PrintedPart, facts: PanelFacts): readonly Trouble[] =>
  board.connectors.flatMap((connector) => {
    const top = board.front + connector.height;
    const body = facts.layout.components
      .flatMap(({ bodies }) => bodies)
      .find(
        ({ low, high, footprint, role }) =>
          role !== "spanner" &&
          role !== "cable" &&
          low < top &&
          high > board.front &&
          contoursOverlap(footprint, roomOf(connector)),
      );
    if (body === undefined) return [];
    return [
      {
        board: board.board,
        message: `${board.board}: the ${body.role} of ${body.owner} hangs ${millimetres(top - body.low, 0)} into the room of the plug of ${connector.name}.`,
        subjects: [part.owner, body.owner],
        measured: top - body.low,
        limit: 0,
      },
    ];
  });

/** A plug that looks up stands over its own place. */
const roomOf = ({ room, at }: Connector): Contour =>
  room === null ? uprightPlug(at) : rectangle(room satisfies Extent);

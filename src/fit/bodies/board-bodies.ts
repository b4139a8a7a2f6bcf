// Boards on a panel's trays, and the room of each plug with the bend of its cable. Their frames are turned with the board: how
// it lies can be read from them.

import type { Span } from "../../diagnostics/finding.ts";
import type { Contour } from "../../geometry/contour.ts";
import { degrees } from "../../geometry/quantity.ts";
import { rectangle } from "../../geometry/shapes.ts";
import { turnedFrame, WORLD } from "../../geometry/space/frame.ts";
import { placedContour, placement } from "../../geometry/transform.ts";
import type { PanelLayout } from "../../layout/panel-layout.ts";
import type { BoardFact } from "../../parts/printed/printed-facts.ts";
import type { PrintedPart } from "../../parts/printed/printed-part.ts";
import { uprightPlug } from "../../parts/printed/upright-plug.ts";
import { latchBody } from "./latch-body.ts";
import { type BodyNames, prismBody, type StandingBody } from "./standing-body.ts";

export const boardBodies = (
  layout: PanelLayout,
  parts: readonly PrintedPart[],
): readonly StandingBody[] =>
  parts.flatMap((part) => {
    const spans = boardSpans(layout, part);
    return part.facts.boards.flatMap((board, index) => bodiesOf(board, part, spans[index]));
  });

/** Where each board that found a place is written: boards are placed in the order of the text, some may be left out. */
const boardSpans = (layout: PanelLayout, part: PrintedPart): readonly (Span | undefined)[] => {
  const design = layout.layers.find(({ id }) => id === part.owner)?.design;
  let waiting = design?.kind === "tray" ? design.boards : [];
  return part.facts.boards.map(({ board }) => {
    const index = waiting.findIndex((use) => use.board === board);
    const span = waiting[index]?.span;
    waiting = waiting.slice(index + 1);
    return span;
  });
};

const bodiesOf = (
  fact: BoardFact,
  part: PrintedPart,
  span: Span = part.span,
): readonly StandingBody[] => {
  const { board, box, turn, from, to } = fact;
  const id = `${part.owner}/${board}`;
  const frame = turnedFrame(WORLD, { about: WORLD.z, through: WORLD.origin, by: turn });
  const within = (contour: Contour): Contour =>
    placedContour(contour, placement(0, 0, degrees(-turn)));
  return [
    prismBody({ id, role: "rear", thing: board, what: "board", span }, within(rectangle(box)), {
      low: from,
      high: to,
      frame,
    }),
    ...fact.connectors.flatMap(({ name, at, room, height, latch }) => {
      const names: BodyNames = {
        id: `${id}/${name}`,
        role: "plug",
        thing: board,
        what: `plug of ${name}`,
        span,
      };
      const outline = within(room === null ? uprightPlug(at) : rectangle(room));
      const plug = prismBody(names, outline, {
        low: fact.front,
        high: fact.front + height,
        frame,
      });
      return latch === null ? [plug] : [plug, latchBody(names, latch)];
    }),
  ];
};

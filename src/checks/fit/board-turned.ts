// A board on a tray turned by a quarter or a half so that its plugs are free: tried about its own middle before it is offered.
// The tray then finds the board's place anew.

import type { Remedy } from "../../diagnostics/finding.ts";
import { bodyGroup, bodyGroups, shapeExtent } from "../../fit/body-groups.ts";
import type { ConsoleBody } from "../../fit/console-body.ts";
import { hullRelation } from "../../fit/hull-relation.ts";
import { pairsBetween } from "../../fit/near-pairs.ts";
import { decimal } from "../../geometry/number.ts";
import { degrees } from "../../geometry/quantity.ts";
import { type Frame, pointOut, turnedFrame } from "../../geometry/space/frame.ts";
import { boxOut } from "../../geometry/space/space-box.ts";
import { dot, vector } from "../../geometry/space/vector.ts";
import type { ConsoleFacts } from "./console-rule.ts";

const TURNS = [180, 90, 270] as const;

/** Nothing for a plug that hangs on no board of a tray. */
export const turnedBoardRemedies = (plug: ConsoleBody, facts: ConsoleFacts): readonly Remedy[] => {
  const { layout, fit } = facts;
  const panel = layout.panels.find(({ name }) => name === plug.panel);
  const use = panel?.layout.layers
    .flatMap(({ design }) => (design.kind === "tray" ? design.boards : []))
    .find(({ span }) => span.file === plug.span.file && span.start === plug.span.start);
  const own = fit.bodies.filter(({ panel: on, span }) => on === plug.panel && span === plug.span);
  const board = own.find(({ role }) => role === "rear");
  if (panel === undefined || use === undefined || board === undefined) return [];
  const turn = TURNS.find((by) => isFree(own, { board, by }, facts));
  if (turn === undefined) return [];
  const value = decimal((quarterOf(board, panel.frame) + turn) % 360, 0);
  const text = `{ board: ${use.board}, turn: ${value} deg }`;
  return [{ title: `turn: ${value} deg (${use.board})`, edits: [facts.edit(use.span, text)] }];
};

/** How it lies now: bodies of boards stand in frames that are turned with them. */
const quarterOf = ({ frame }: ConsoleBody, panel: Frame): number => {
  const along = dot(frame.x, panel.x);
  const up = dot(frame.x, panel.y);
  if (Math.abs(along) > Math.abs(up)) return along > 0 ? 0 : 180;
  return up > 0 ? 90 : 270;
};

const isFree = (
  own: readonly ConsoleBody[],
  { board, by }: { readonly board: ConsoleBody; readonly by: number },
  { fit }: ConsoleFacts,
): boolean => {
  const { minX, minY, maxX, maxY, minZ } = shapeExtent(board.shape);
  const through = pointOut(board.frame, vector((minX + maxX) / 2, (minY + maxY) / 2, minZ));
  const turned = own.map((body): ConsoleBody => {
    const frame = turnedFrame(body.frame, { about: board.frame.z, through, by: degrees(by) });
    return { ...body, frame, box: boxOut(frame, shapeExtent(body.shape)) };
  });
  const group = bodyGroup(board.panel ?? "", turned);
  return bodyGroups(fit.bodies)
    .filter(({ panel }) => panel !== board.panel)
    .flatMap((other) => pairsBetween(group, other, 0))
    .every(([a, b]) => hullRelation(a, b, 0)?.kind !== "meet");
};

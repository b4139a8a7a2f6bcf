// Can a panel be taken out past what stands round it: straight along its normal, or with one end lifted first.
//
// Everything is boxes in the panel's own frame. Straight out: what lies before a moving box, over its whole face, is met.
// Tilted: see tilted-way.ts. Boxes are never smaller than what they stand for: a free way is free, a way said to be barred
// may be free by a hair. Two things that overlap as boxes before anything moves say nothing here: whether they clash is
// asked of the bodies. The studs of a rail stay in the panel, screws are taken out. Cables give way. Levers and knobs count wherever they move.

import type { Mm } from "../../geometry/quantity.ts";
import { type Frame, pointIn, pointOut } from "../../geometry/space/frame.ts";
import { boxCorners, boxRound, joinedBox, type SpaceBox } from "../../geometry/space/space-box.ts";
import type { PlacedPanel } from "../../layout/console/console-layout.ts";
import type { ConsoleBody } from "../console-body.ts";
import type { LiftFact, LiftWay } from "../fit-facts.ts";
import { materialBoxes } from "./material-boxes.ts";
import { runFrameOf } from "./run-frame.ts";
import type { ServiceFigures } from "./service-figures.ts";
import { leastTilt, TOUCH } from "./tilted-way.ts";

export const liftFacts = (
  panels: readonly PlacedPanel[],
  bodies: readonly ConsoleBody[],
  { liftRoom }: ServiceFigures,
): readonly LiftFact[] => {
  const pieces = bodies.filter(({ role }) => role !== "cable").flatMap(piecesOf);
  return panels.map((panel) => {
    const lift = liftOf(panel, pieces, liftRoom);
    const met = lift.pairs.flatMap((pair) => barredAt(pair, lift.travel) ?? []);
    const blockers = [
      ...new Set(met.toSorted((a, b) => a.after - b.after).map(({ body }) => body)),
    ];
    const way: LiftWay | null = blockers.length === 0 ? { kind: "straight" } : tiltedWay(lift);
    return { panel: panel.name, way, blockers };
  });
};

/** One box of a body, in the body's own frame. */
interface Piece {
  readonly body: ConsoleBody;
  readonly box: SpaceBox;
}

const piecesOf = (body: ConsoleBody): readonly Piece[] =>
  materialBoxes(body).map((box) => ({ body, box }));

/** A box that moves with the panel, and one round it, both in the panel's run as it stands. */
interface Pair {
  readonly moving: SpaceBox;
  readonly still: SpaceBox;
  readonly piece: Piece;
}

interface Lift {
  /** Edges of the finished outline. */
  readonly low: number;
  readonly high: number;
  readonly pairs: readonly Pair[];
  /** How far it is pulled: until its rear end is where its front end was, and room for hands. */
  readonly travel: number;
  readonly slides: boolean;
}

const liftOf = (panel: PlacedPanel, pieces: readonly Piece[], room: Mm): Lift => {
  const run = runFrameOf(panel);
  const moving = pieces
    .filter(({ body }) => body.panel === panel.name)
    .map((piece) => boxAt(piece, run.frame));
  const { undersize, holes } = panel.layout.mount;
  const { minY, maxY } = run.nominal;
  // Columns of holes on a rail take studs.
  const edges = { low: minY + undersize, high: maxY - undersize, slides: holes.kind !== "columns" };
  if (moving.length === 0) return { ...edges, pairs: [], travel: 0 };
  const hull = moving.reduce(joinedBox);
  const travel = hull.maxZ - hull.minZ + room;
  const reach = travel + maxY - minY;
  const pairs = pieces.flatMap((piece) => {
    if (piece.body.panel === panel.name) return [];
    const still = boxAt(piece, run.frame);
    if (!overlap(hull, still, -reach)) return [];
    return moving.flatMap((box) => (overlap(box, still) ? [] : [{ moving: box, still, piece }]));
  });
  return { ...edges, pairs, travel };
};

const boxAt = ({ body, box }: Piece, frame: Frame): SpaceBox =>
  boxRound(boxCorners(box).map((corner) => pointIn(frame, pointOut(body.frame, corner))));

const overlap = (a: SpaceBox, b: SpaceBox, by: number = TOUCH): boolean =>
  isOver(a, b, by) && a.minZ < b.maxZ - by && b.minZ < a.maxZ - by;

const isOver = (a: SpaceBox, b: SpaceBox, by: number = TOUCH): boolean =>
  a.minX < b.maxX - by && b.minX < a.maxX - by && a.minY < b.maxY - by && b.minY < a.maxY - by;

/** What bars the straight way, and after how far; null where the pair stays apart. */
const barredAt = (
  { moving, still, piece }: Pair,
  travel: number,
): { readonly body: ConsoleBody; readonly after: number } | null =>
  isOver(moving, still) &&
  still.maxZ > moving.minZ + TOUCH &&
  still.minZ < moving.maxZ + travel - TOUCH
    ? { body: piece.body, after: still.minZ - moving.maxZ }
    : null;

/** The way with the least tilt, whichever end is lifted. */
const tiltedWay = ({ low, high, travel, slides, pairs }: Lift): LiftWay | null => {
  // The turn is about the width: what lies beside it stays beside it.
  const inLine = pairs.filter(
    ({ moving, still }) => moving.minX < still.maxX - TOUCH && still.minX < moving.maxX - TOUCH,
  );
  const ways = (["high-end", "low-end"] as const).flatMap((first) => {
    const tilt = leastTilt({ first, low, high, travel, slides, pairs: inLine });
    return tilt === null ? [] : [{ kind: "tilted" as const, first, tilt }];
  });
  return ways.toSorted((a, b) => a.tilt - b.tilt)[0] ?? null;
};

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
import { wayTouch } from "../fit-tolerance.ts";
import { materialBoxes } from "./material-boxes.ts";
import { runFrameOf } from "./run-frame.ts";
import type { ServiceFigures } from "./service-figures.ts";
import { leastTilt, type SidePair } from "./tilted-way.ts";

export const liftFacts = (
  panels: readonly PlacedPanel[],
  bodies: readonly ConsoleBody[],
  { liftRoom }: ServiceFigures,
): readonly LiftFact[] => {
  const pieces = bodies
    .filter(({ role }) => role !== "cable" && role !== "latch")
    .flatMap(piecesOf);
  return panels.map((panel) => {
    const lift = liftOf(panel, pieces, liftRoom);
    const met = barring(lift).toSorted((one, other) => one.after - other.after);
    const blockers = [...new Set(met.map(({ body }) => body))];
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

/** Boxes in the panel's run as it stands: what moves with the panel, and what is round it. */
interface Lift {
  readonly moving: readonly SpaceBox[];
  readonly still: readonly Piece[];
  /** Edges of the finished outline. */
  readonly low: number;
  readonly high: number;
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
  if (moving.length === 0) return { ...edges, moving, still: [], travel: 0 };
  const hull = moving.reduce(joinedBox);
  const travel = hull.maxZ - hull.minZ + room;
  const reach = travel + maxY - minY;
  const still = pieces
    .filter(({ body }) => body.panel !== panel.name)
    .map((piece) => ({ body: piece.body, box: boxAt(piece, run.frame) }))
    .filter(({ box }) => overlap(hull, box, -reach));
  return { ...edges, moving, still, travel };
};

const boxAt = ({ body, box }: Piece, frame: Frame): SpaceBox =>
  boxRound(boxCorners(box).map((corner) => pointIn(frame, pointOut(body.frame, corner))));

const overlap = (a: SpaceBox, b: SpaceBox, by: number = wayTouch): boolean =>
  isOver(a, b, by) && a.minZ < b.maxZ - by && b.minZ < a.maxZ - by;

const isOver = (a: SpaceBox, b: SpaceBox, by: number = wayTouch): boolean =>
  a.minX < b.maxX - by && b.minX < a.maxX - by && a.minY < b.maxY - by && b.minY < a.maxY - by;

interface Barring {
  readonly body: ConsoleBody;
  readonly after: number;
}

/** What bars the straight way, and after how far. */
const barring = ({ moving, still, travel }: Lift): readonly Barring[] => {
  const found: Barring[] = [];
  for (const { body, box } of still) {
    for (const own of moving) {
      if (isBefore(own, box, travel) && !overlap(own, box))
        found.push({ body, after: box.minZ - own.maxZ });
    }
  }
  return found;
};

const isBefore = (moving: SpaceBox, still: SpaceBox, travel: number): boolean =>
  isOver(moving, still) &&
  still.maxZ > moving.minZ + wayTouch &&
  still.minZ < moving.maxZ + travel - wayTouch;

/** The way with the least tilt, whichever end is lifted. */
const tiltedWay = (lift: Lift): LiftWay | null => {
  const pairs = besideEachOther(lift);
  const ways = (["high-end", "low-end"] as const).flatMap((first) => {
    const tilt = leastTilt({ ...lift, first, pairs });
    return tilt === null ? [] : [{ kind: "tilted" as const, first, tilt }];
  });
  return ways.toSorted((a, b) => a.tilt - b.tilt)[0] ?? null;
};

/** The turn is about the width: what lies beside it stays beside it. */
const besideEachOther = ({ moving, still }: Lift): readonly SidePair[] =>
  still.flatMap(({ box }) =>
    moving.flatMap((own) =>
      own.minX < box.maxX - wayTouch && box.minX < own.maxX - wayTouch && !overlap(own, box)
        ? [{ moving: own, still: box }]
        : [],
    ),
  );

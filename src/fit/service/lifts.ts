// Can a panel be taken out past what stands round it: straight along its normal, or with one end lifted first.
//
// Straight out: what lies before a moving box, over its whole face, may be met; convex pieces swept along the way say whether
// it is (straight-way.ts). Tilted, boxes in the panel's own frame say what is free (tilted-way.ts), and convex pieces of what
// they stand for whether the rest is barred (tilted-pieces.ts). Neither is ever smaller than what it stands for: a free way is
// free, one that is said to be barred may only be hollow there. Of what overlaps before anything moves only material tells.
// The studs of a rail stay in the panel, screws are taken out. Cables give way. Levers and knobs count wherever they move.

import type { Mm } from "../../geometry/quantity.ts";
import { type Frame, pointIn, pointOut } from "../../geometry/space/frame.ts";
import {
  boxCorners,
  boxGap,
  boxOut,
  boxRound,
  joinedBox,
  type SpaceBox,
} from "../../geometry/space/space-box.ts";
import type { PlacedPanel } from "../../layout/console/console-layout.ts";
import type { ConsoleBody } from "../console-body.ts";
import type { LiftFact, LiftWay } from "../fit-facts.ts";
import { wayTouch } from "../fit-tolerance.ts";
import { materialBoxes } from "./material-boxes.ts";
import { runFrameOf } from "./run-frame.ts";
import type { ServiceFigures } from "./service-figures.ts";
import { barsWay } from "./straight-way.ts";
import { type TiltedPieces, tiltedPieces } from "./tilted-pieces.ts";
import { hingeOf, leastTilt, type SidePair, slideOf, type Tilting } from "./tilted-way.ts";

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
    const met = barring(lift, panel).toSorted((one, other) => one.after - other.after);
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

/** The same box in the panel's run as it stands. */
interface Standing extends Piece {
  readonly piece: Piece;
}

/** What moves with the panel, and what is round it. */
interface Lift {
  readonly run: Frame;
  readonly moving: readonly Standing[];
  readonly still: readonly Standing[];
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
    .map((piece) => standingAt(piece, run.frame));
  const { undersize, holes } = panel.layout.mount;
  const { minY, maxY } = run.nominal;
  // Columns of holes on a rail take studs.
  const edges = {
    run: run.frame,
    low: minY + undersize,
    high: maxY - undersize,
    slides: holes.kind !== "columns",
  };
  if (moving.length === 0) return { ...edges, moving, still: [], travel: 0 };
  const hull = moving.map(({ box }) => box).reduce(joinedBox);
  const travel = hull.maxZ - hull.minZ + room;
  const reach = travel + maxY - minY;
  // Along each axis of the run no farther than that: in space no farther than its diagonal.
  const round = boxOut(run.frame, hull);
  const still = pieces
    .filter(
      ({ body }) => body.panel !== panel.name && boxGap(body.box, round) <= reach * Math.sqrt(3),
    )
    .map((piece) => standingAt(piece, run.frame))
    .filter(({ box }) => overlap(hull, box, -reach));
  return { ...edges, moving, still, travel };
};

const standingAt = (piece: Piece, frame: Frame): Standing => {
  const { body, box } = piece;
  const corners = boxCorners(box).map((corner) => pointIn(frame, pointOut(body.frame, corner)));
  return { piece, body, box: boxRound(corners) };
};

const overlap = (a: SpaceBox, b: SpaceBox, by: number = wayTouch): boolean =>
  isOver(a, b, by) && a.minZ < b.maxZ - by && b.minZ < a.maxZ - by;

const isOver = (a: SpaceBox, b: SpaceBox, by: number = wayTouch): boolean =>
  a.minX < b.maxX - by && b.minX < a.maxX - by && a.minY < b.maxY - by && b.minY < a.maxY - by;

interface Barring {
  readonly body: ConsoleBody;
  readonly after: number;
}

/** What bars the straight way, and after how far. */
const barring = (lift: Lift, { frame }: PlacedPanel): readonly Barring[] => {
  const bars = barsWay({ along: frame.z, travel: lift.travel });
  return inTheWay(lift).flatMap(({ own, body, after, isApart }) =>
    bars(own, body, isApart) ? [{ body, after }] : [],
  );
};

interface InTheWay extends Barring {
  readonly own: ConsoleBody;
  /** Some of their boxes lie apart, one before the other. */
  readonly isApart: boolean;
}

/** Two bodies once, by the boxes that come nearest. */
const inTheWay = ({ moving, still, travel }: Lift): readonly InTheWay[] => {
  const found = new Map<ConsoleBody, Map<ConsoleBody, InTheWay>>();
  for (const { body, box } of still) {
    for (const { body: own, box: ownBox } of moving) {
      if (!isBefore(ownBox, box, travel)) continue;
      const isApart = !overlap(ownBox, box);
      const after = isApart ? box.minZ - ownBox.maxZ : 0;
      const ofOwn = found.get(own) ?? new Map<ConsoleBody, InTheWay>();
      const known = ofOwn.get(body);
      found.set(own, ofOwn);
      ofOwn.set(body, {
        own,
        body,
        after: Math.min(after, known?.after ?? after),
        isApart: isApart || (known?.isApart ?? false),
      });
    }
  }
  return [...found.values()].flatMap((ofOwn) => [...ofOwn.values()]);
};

const isBefore = (moving: SpaceBox, still: SpaceBox, travel: number): boolean =>
  isOver(moving, still) &&
  still.maxZ > moving.minZ + wayTouch &&
  still.minZ < moving.maxZ + travel - wayTouch;

/** The way with the least tilt, whichever end is lifted. */
const tiltedWay = (lift: Lift): LiftWay | null => {
  const { run, travel } = lift;
  const ways = (["high-end", "low-end"] as const).flatMap((first) => {
    const end = { ...lift, first };
    const pieces = tiltedPieces({ run, travel, hinge: hingeOf(end), slide: slideOf(end) });
    const tilt = leastTilt({ ...end, ...besideEachOther(lift, pieces) });
    return tilt === null ? [] : [{ kind: "tilted" as const, first, tilt }];
  });
  return ways.toSorted((a, b) => a.tilt - b.tilt)[0] ?? null;
};

/** The turn is about the width: what lies beside it stays beside it. */
const besideEachOther = (
  { moving, still }: Lift,
  { boxesMeet, materialMeets }: TiltedPieces,
): Pick<Tilting, "pairs" | "others"> => {
  const pairs: SidePair[] = [];
  const overlapping = new Map<ConsoleBody, Set<ConsoleBody>>();
  for (const { body, box, piece } of still)
    for (const own of moving) {
      if (own.box.minX >= box.maxX - wayTouch || box.minX >= own.box.maxX - wayTouch) continue;
      if (overlap(own.box, box))
        overlapping.set(own.body, (overlapping.get(own.body) ?? new Set()).add(body));
      else
        pairs.push({
          moving: own.box,
          still: box,
          meets: (place) => boxesMeet(own.piece, piece, place),
        });
    }
  const others = [...overlapping].flatMap(([own, bodies]) =>
    [...bodies].flatMap((body) => materialMeets(own, body) ?? []),
  );
  return { pairs, others };
};

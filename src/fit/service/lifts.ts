// Can a panel be taken out past what stands round it: straight along its normal, or with one end lifted first.
//
// Everything is boxes in the panel's own frame. Straight out: what lies before a moving box, over its whole face, is met.
// Tilted: the panel turns about the edge of its front at one end, half a degree at a time up to 45 degrees. In a step each
// thing round it is the box of where it was and where it is, grown by the bow between, so that nothing is stepped over.
// From every tilt it is tried straight along the tilted normal, and slid along itself toward the lifted end.
// Boxes are never smaller than what they stand for: a free way is free, a way said to be barred may be free by a hair. Two
// things that overlap as boxes before anything moves say nothing here: whether they clash is asked of the bodies.
// Cables give way. Levers and knobs count wherever they move.

import { type Degrees, degrees, mm } from "../../geometry/quantity.ts";
import { type Frame, pointIn, pointOut, turnedFrame } from "../../geometry/space/frame.ts";
import { boxCorners, boxRound, joinedBox, type SpaceBox } from "../../geometry/space/space-box.ts";
import { vector } from "../../geometry/space/vector.ts";
import { direction } from "../../geometry/trigonometry.ts";
import type { PlacedPanel } from "../../layout/console/console-layout.ts";
import type { ConsoleBody } from "../console-body.ts";
import type { LiftFact, LiftWay } from "../fit-facts.ts";
import { materialBoxes } from "./material-boxes.ts";
import { type RunFrame, runFrameOf } from "./run-frame.ts";

export const liftFacts = (
  panels: readonly PlacedPanel[],
  bodies: readonly ConsoleBody[],
): readonly LiftFact[] => {
  const pieces = bodies.filter(({ role }) => role !== "cable").flatMap(piecesOf);
  return panels.map((panel) => {
    const lift = liftOf(panel, pieces);
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
  readonly run: RunFrame;
  /** Edges of the finished outline. */
  readonly low: number;
  readonly high: number;
  readonly pairs: readonly Pair[];
  /** How far it is pulled: until its rear end is where its front end was. */
  readonly travel: number;
}

const liftOf = (panel: PlacedPanel, pieces: readonly Piece[]): Lift => {
  const run = runFrameOf(panel);
  const moving = pieces
    .filter(({ body }) => body.panel === panel.name)
    .map((piece) => boxAt(piece, run.frame));
  const { undersize } = panel.layout.mount;
  const { minY, maxY } = run.nominal;
  const edges = { run, low: minY + undersize, high: maxY - undersize };
  if (moving.length === 0) return { ...edges, pairs: [], travel: 0 };
  const hull = moving.reduce(joinedBox);
  const travel = hull.maxZ - hull.minZ;
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

/** 10 µm: less is a touch, as of a panel on its rails, and what arithmetic makes of it. */
const TOUCH = 0.01;

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

const STEP = 0.5;
const MOST_TILT = 45;

/** The way with the least tilt, whichever end is lifted. */
const tiltedWay = (lift: Lift): LiftWay | null => {
  const ways = (["high-end", "low-end"] as const).flatMap((first) => {
    const tilt = leastTilt(lift, first);
    return tilt === null ? [] : [{ kind: "tilted" as const, first, tilt }];
  });
  return ways.toSorted((a, b) => a.tilt - b.tilt)[0] ?? null;
};

const leastTilt = (lift: Lift, first: "low-end" | "high-end"): Degrees | null => {
  const pieces = [...new Set(lift.pairs.map(({ piece }) => piece))];
  const movingOf = new Map(pieces.map((piece) => [piece, movingBeside(lift, piece)] as const));
  let before = new Map(pieces.map((piece) => [piece, boxAt(piece, lift.run.frame)] as const));
  for (let tilt = STEP; tilt <= MOST_TILT; tilt += STEP) {
    const frame = tiltedFrame(lift, first, tilt);
    const now = new Map(pieces.map((piece) => [piece, boxAt(piece, frame)] as const));
    const isBarred = pieces.some((piece) => {
      const passed = withBow(joinedBox(before.get(piece)!, now.get(piece)!), lift, first);
      return movingOf.get(piece)!.some((box) => overlap(box, passed));
    });
    if (isBarred) return null;
    const isFree = (sweep: Sweep): boolean =>
      pieces.every((piece) =>
        movingOf.get(piece)!.every((box) => !overlap(sweep(box), now.get(piece)!)),
      );
    if (isFree(outward(lift)) || isFree(alongItself(lift, first))) return degrees(tilt);
    before = now;
  }
  return null;
};

const movingBeside = (lift: Lift, piece: Piece): readonly SpaceBox[] =>
  lift.pairs.flatMap((pair) => (pair.piece === piece ? [pair.moving] : []));

/** The end that is not lifted is the hinge, at the front of the panel. */
const tiltedFrame = (
  { run, low, high }: Lift,
  first: "low-end" | "high-end",
  tilt: number,
): Frame =>
  turnedFrame(run.frame, {
    about: run.frame.x,
    through: pointOut(run.frame, vector(0, first === "high-end" ? low : high, 0)),
    by: degrees(first === "high-end" ? tilt : -tilt),
  });

/** On the way from one box to the next a corner goes round in an arc; this is how far it strays from the chord. */
const withBow = (box: SpaceBox, { low, high }: Lift, first: "low-end" | "high-end"): SpaceBox => {
  const hinge = first === "high-end" ? low : high;
  const away = Math.max(Math.abs(box.minY - hinge), Math.abs(box.maxY - hinge));
  const deep = Math.max(Math.abs(box.minZ), Math.abs(box.maxZ));
  const bow = Math.sqrt(away * away + deep * deep) * (1 - direction(degrees(STEP / 2)).x);
  return {
    ...box,
    minY: mm(box.minY - bow),
    maxY: mm(box.maxY + bow),
    minZ: mm(box.minZ - bow),
    maxZ: mm(box.maxZ + bow),
  };
};

type Sweep = (box: SpaceBox) => SpaceBox;

const outward =
  ({ travel }: Lift): Sweep =>
  (box) => ({ ...box, maxZ: mm(box.maxZ + travel) });

/** As far as the panel is long: then its lower end has left its place. */
const alongItself =
  ({ low, high }: Lift, first: "low-end" | "high-end"): Sweep =>
  (box) =>
    first === "high-end"
      ? { ...box, maxY: mm(box.maxY + high - low) }
      : { ...box, minY: mm(box.minY - (high - low)) };

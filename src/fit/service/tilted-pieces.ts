// What a body meets of another when its panel is turned about one end and pulled out or slid from there, by convex pieces. A
// piece turns with the panel, and its sweep with it: each is swept once, however often the panel is tilted.

import type { Degrees } from "../../geometry/quantity.ts";
import { directionIn, type Frame, pointOut, turnedFrame } from "../../geometry/space/frame.ts";
import { boxCorners, type SpaceBox } from "../../geometry/space/space-box.ts";
import { scaled, type Vector, vector } from "../../geometry/space/vector.ts";
import type { ConsoleBody } from "../console-body.ts";
import { type ConvexPiece, convexPiece } from "../convex/convex-piece.ts";
import { shapePieces } from "../convex/recipe-pieces.ts";
import { frameSeenFrom } from "../hull-relation.ts";
import { doMeet, materialOf, sweptPiece } from "./swept-pieces.ts";
import type { Sweep, TiltedPlace } from "./tilted-way.ts";

export interface Turning {
  /** The panel as it is seen along its bay: it turns about x. */
  readonly run: Frame;
  /** y of the end that stays. */
  readonly hinge: number;
  readonly travel: number;
  /** How far it is moved in its own plane, signed. */
  readonly slide: number;
}

/** One box of a body's material, in the body's own frame. */
export interface BodyBox {
  readonly body: ConsoleBody;
  readonly box: SpaceBox;
}

export interface TiltedPieces {
  /**
   * Material lies in its box and in its body's pieces. So two boxes meet only where box and box, box and pieces, and pieces and
   * pieces do: boxes know the openings of a sheet, pieces what is round or stands aslant.
   */
  readonly boxesMeet: (moving: BodyBox, still: BodyBox, place: TiltedPlace) => boolean;
  /** Parts that are material for certain, and apart while nothing is moved, meet there. */
  readonly materialMeets: (
    moving: ConsoleBody,
    still: ConsoleBody,
  ) => ((place: TiltedPlace) => boolean) | null;
}

export const tiltedPieces = (turning: Turning): TiltedPieces => {
  const sweeps = keptSweeps(turning);
  const frameOf = keptFrames(turning);
  const anyMeet = (
    own: readonly ConvexPiece[],
    others: readonly ConvexPiece[],
    of: { readonly moving: ConsoleBody; readonly still: ConsoleBody; readonly place: TiltedPlace },
  ): boolean => {
    const frame = frameSeenFrom(frameOf(of.moving, of.place.by), of.still.frame);
    return own.some((piece) => {
      const swept = sweeps(of.moving, piece, of.place.sweep);
      return others.some((other) => doMeet(swept, other, frame));
    });
  };
  return {
    boxesMeet: (moving, still, place) => {
      const of = { moving: moving.body, still: still.body, place };
      const [own, others] = [[boxPiece(moving.box)], [boxPiece(still.box)]];
      const ownPieces = shapePieces(moving.body.shape);
      const otherPieces = shapePieces(still.body.shape);
      return (
        anyMeet(own, others, of) &&
        anyMeet(ownPieces, others, of) &&
        anyMeet(own, otherPieces, of) &&
        anyMeet(ownPieces, otherPieces, of)
      );
    },
    materialMeets: (moving, still) => {
      const frame = frameSeenFrom(moving.frame, still.frame);
      const others = shapePieces(still.shape).flatMap(materialOf);
      const pairs = shapePieces(moving.shape)
        .flatMap(materialOf)
        .flatMap((own) => {
          const apart = others.filter((other) => !doMeet(own, other, frame));
          return apart.length === 0 ? [] : [{ own, apart }];
        });
      return pairs.length === 0
        ? null
        : (place) =>
            pairs.some(({ own, apart }) => anyMeet([own], apart, { moving, still, place }));
    },
  };
};

const BOXES = new WeakMap<SpaceBox, ConvexPiece>();

const boxPiece = (box: SpaceBox): ConvexPiece => {
  const known = BOXES.get(box) ?? convexPiece(boxCorners(box), { kind: "solid" });
  BOXES.set(box, known);
  return known;
};

/** Where a body of the panel stands when the panel is turned by an angle. Asked of many bodies at one angle, then at the next. */
const keptFrames = ({ run, hinge }: Turning): ((body: ConsoleBody, by: Degrees) => Frame) => {
  const through = pointOut(run, vector(0, hinge, 0));
  let angle: Degrees | null = null;
  const known = new Map<ConsoleBody, Frame>();
  return (body, by) => {
    if (by !== angle) known.clear();
    angle = by;
    const made = known.get(body) ?? turnedFrame(body.frame, { about: run.x, through, by });
    known.set(body, made);
    return made;
  };
};

/** By body: bodies of one recipe share its pieces, and lie each in a frame of its own. */
const keptSweeps = ({
  run,
  travel,
  slide,
}: Turning): ((body: ConsoleBody, piece: ConvexPiece, sweep: Sweep) => ConvexPiece) => {
  const known = new Map<ConsoleBody, Record<Sweep, Map<ConvexPiece, ConvexPiece>>>();
  const ways: Readonly<Record<Sweep, Vector>> = {
    none: vector(0, 0, 0),
    outward: scaled(run.z, travel),
    along: scaled(run.y, slide),
  };
  return (body, piece, sweep) => {
    if (sweep === "none") return piece;
    const ofBody = known.get(body) ?? { none: new Map(), outward: new Map(), along: new Map() };
    known.set(body, ofBody);
    const made =
      ofBody[sweep].get(piece) ?? sweptPiece(piece, directionIn(body.frame, ways[sweep]));
    ofBody[sweep].set(piece, made);
    return made;
  };
};

// Room for knees and feet, where the operator sits at a console.
//
// The box begins at the front edge of the surfaces ahead of the seat and is as wide as KNEE_BOX says. What hangs above the
// lap bounds its height; what stands in the middle half bounds its depth, at the knee and at the foot; what stands only
// at the sides bounds its width. Bodies count as boxes, boards of the frame as several, so that room is never told larger
// than it is.
//
// null for a console beside the seat: nothing of it lies ahead of the seat within the width of the box, so that nobody's
// knees go under it; what stands there is no console that is sat at, whatever its height.

import { mm } from "../../geometry/quantity.ts";
import type { ConsoleLayout, PosedOperator } from "../../layout/console/console-layout.ts";
import { kneeHeightNeeded } from "../../standards/knee-height.ts";
import { FOOT_ROOM, KNEE_BOX } from "../../standards/reach.ts";
import type { ConsoleBody } from "../console-body.ts";
import type { KneeFact, KneeRoom } from "../fit-facts.ts";
import { boardBoxes } from "./board-boxes.ts";
import { surfacesOf } from "./surfaces.ts";

/** Room is looked for this far; where nothing is nearer, this is what the fact says. */
const FAR_ENOUGH = mm(1200);

export const kneeFact = (
  operator: PosedOperator,
  layout: ConsoleLayout,
  bodies: readonly ConsoleBody[],
): KneeFact | null => {
  const ahead = surfacesOf(layout, operator).filter(({ seat }) => seat === "before");
  if (ahead.length === 0) return null;
  const edge = Math.max(operator.seat.x, Math.min(...ahead.map(({ box }) => box.minX)));
  const place = { edge, middle: operator.seat.y, seat: operator.seat.z };
  const under = bodies
    .filter((body) => body.role !== "cable" && body.role !== "latch" && isUnder(body, place))
    .flatMap((body) => boardBoxes(body).map((box): Boxed => ({ body, box })))
    .filter((each) => isUnder(each, place));
  const [knee, foot] = aheadOf(under, place);
  const above = nearest(
    under.filter((body) => isOverLap(body, place)),
    ({ box }) => box.minZ,
  );
  return {
    width: widthOf(sidesOf(under, place)),
    depthAtKnee: roomTo(knee),
    depthAtFoot: roomTo(foot),
    height: roomTo(above, highestLooked(place.seat)),
  };
};

const roomTo = (near: Nearest | null, looked: number = FAR_ENOUGH): KneeRoom => ({
  has: mm(near?.far ?? looked),
  by: near === null ? [] : [near.body],
});

const widthOf = (sides: readonly (Nearest | null)[]): KneeRoom => ({
  has: mm(sides.reduce((sum, side) => sum + (side?.far ?? FAR_ENOUGH / 2), 0)),
  by: sides.flatMap((side) => (side === null ? [] : [side.body])),
});

interface KneePlace {
  readonly edge: number;
  readonly middle: number;
  /** Height of the seat. */
  readonly seat: number;
}

/** A body, or a part of one. */
interface Boxed {
  readonly body: ConsoleBody;
  readonly box: ConsoleBody["box"];
}

interface Nearest {
  readonly body: ConsoleBody;
  readonly far: number;
}

/** It comes into the room that is looked through: from the edge on, as far to the sides and ahead as is far enough. */
const isUnder = ({ box }: Pick<Boxed, "box">, { edge, middle, seat }: KneePlace): boolean =>
  box.maxX > edge &&
  box.minX < edge + FAR_ENOUGH &&
  box.minY < middle + FAR_ENOUGH / 2 &&
  box.maxY > middle - FAR_ENOUGH / 2 &&
  box.maxZ > 0 &&
  box.minZ < highestLooked(seat);

/** As far again over what knees want: of a high seat that alone may be more than is far enough elsewhere. */
const highestLooked = (seat: number): number => kneeHeightNeeded(seat) + FAR_ENOUGH;

/** Its middle half: what stands there is before the knees and not beside them. */
const isInMiddle = ({ box }: Pick<Boxed, "box">, { middle }: KneePlace): boolean =>
  box.minY < middle + KNEE_BOX.width / 4 && box.maxY > middle - KNEE_BOX.width / 4;

/** Above the seat, within the width of the box and as deep as knees go. */
const isOverLap = ({ box }: Pick<Boxed, "box">, { edge, middle, seat }: KneePlace): boolean =>
  box.minZ >= seat &&
  box.minX < edge + KNEE_BOX.depthAtKnee &&
  box.minY < middle + KNEE_BOX.width / 2 &&
  box.maxY > middle - KNEE_BOX.width / 2;

const aheadOf = (
  bodies: readonly Boxed[],
  place: KneePlace,
): readonly [Nearest | null, Nearest | null] => {
  const standing = bodies.filter((body) => body.box.minZ < place.seat && isInMiddle(body, place));
  const depth = ({ box }: Pick<Boxed, "box">): number => Math.max(0, box.minX - place.edge);
  return [
    nearest(
      standing.filter(({ box }) => box.maxZ > FOOT_ROOM.height),
      depth,
    ),
    nearest(
      standing.filter(({ box }) => box.minZ < FOOT_ROOM.height && !isFloor(box)),
      depth,
    ),
  ];
};

/** What is no higher than a carpet is the floor that feet stand on: common practice. */
const isFloor = ({ maxZ }: ConsoleBody["box"]): boolean => maxZ <= THRESHOLD;
const THRESHOLD = 25;

const sidesOf = (
  bodies: readonly Boxed[],
  place: KneePlace,
): readonly [Nearest | null, Nearest | null] => {
  const beside = bodies.filter(
    ({ body, box }) =>
      box.minZ < place.seat &&
      !isFloor(box) &&
      // As a whole: what reaches into the middle bounds the depth.
      !isInMiddle(body, place) &&
      box.minX < place.edge + KNEE_BOX.depthAtKnee,
  );
  return [
    nearest(
      beside.filter(({ box }) => box.minY > place.middle),
      ({ box }) => box.minY - place.middle,
    ),
    nearest(
      beside.filter(({ box }) => box.maxY < place.middle),
      ({ box }) => place.middle - box.maxY,
    ),
  ];
};

const nearest = (bodies: readonly Boxed[], far: (each: Boxed) => number): Nearest | null =>
  bodies.reduce<Nearest | null>((best, each) => {
    const one = far(each);
    return best === null || one < best.far ? { body: each.body, far: one } : best;
  }, null);

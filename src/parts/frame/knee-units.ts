// Which units of a front desk have a knee space: those that stand before the operator, across the width that his knees take.
// One unit alone always has it, and so has each where no operator is written: nobody has said before which he sits. Takes the
// units; gives how wide each has to be for knees, null where it has none.

import { dot, vector } from "../../geometry/space/vector.ts";
import type { PosedOperator } from "../../layout/console/console-layout.ts";
import { KNEE_BOX } from "../../standards/reach.ts";
import type { Span } from "./board.ts";
import { type FrameUnit, forwardReach } from "./frame-units.ts";
import { acrossOf, inProfile, isSameWay, type Profile } from "./profile.ts";

export interface KneeUnit {
  /** Inner faces of its cheeks, as near to one another as they can stand. */
  readonly least: Span;
  readonly unit: FrameUnit;
}

export interface KneesOfUnit {
  /** 0 where the knee space goes on beneath a neighbour: its cheeks are cut out alike, and knees move through both. */
  readonly width: number;
}

export const kneeUnits = (
  units: readonly KneeUnit[],
  operator: PosedOperator | null,
): readonly (KneesOfUnit | null)[] => {
  const over = units.map(
    (each) => units.length === 1 || operator === null || isBefore(each, operator),
  );
  return units.map((each, index) => {
    if (over[index] !== true) return null;
    const isShared = units.some((other, at) => at !== index && over[at] && goesOn(each, other));
    return { width: isShared ? 0 : KNEE_BOX.width };
  });
};

/** He faces forward. */
const isBefore = ({ unit, least }: KneeUnit, { seat }: PosedOperator): boolean => {
  const reaches = unit.bays.map(forwardReach);
  const middle =
    (Math.min(...reaches.map(({ from }) => from)) + Math.max(...reaches.map(({ to }) => to))) / 2;
  const across = acrossOf(unit.profile, seat);
  const half = KNEE_BOX.width / 2;
  return (
    facesAway(unit.profile) &&
    inProfile(unit.profile, seat).x < middle &&
    across - half < least.to &&
    across + half > least.from
  );
};

/** Within 45 degrees of straight ahead. */
const facesAway = ({ forward }: Profile): boolean => dot(forward, vector(1, 0, 0)) > Math.SQRT1_2;

/** Abreast of it, and nearer than a pair of knees is wide. */
const goesOn = (one: KneeUnit, other: KneeUnit): boolean =>
  isSameWay(one.unit.profile, other.unit.profile) &&
  one.least.from - other.least.to < KNEE_BOX.width &&
  other.least.from - one.least.to < KNEE_BOX.width;

// Does a piece lie on the machine's bed, turned a quarter where that helps? Gives what is missing, null where nothing is.

import type { MachineDesign } from "../../design/workshop-design.ts";
import { samePlace } from "../../geometry/tolerance.ts";

export interface Shortage {
  readonly long: number;
  readonly short: number;
  /** The side that is too long, and the most that it may be. */
  readonly measured: number;
  readonly limit: number;
}

export const fitsBed = (
  size: readonly [number, number],
  machine: MachineDesign | null,
): Shortage | null => {
  if (machine === null) return null;
  return shortage(size, [machine.bed[0], machine.bed[1]]);
};

/** Of a pair of sides against an opening. */
export const shortage = (
  size: readonly [number, number],
  room: readonly [number, number],
): Shortage | null => {
  const [short, long] = inOrder(size);
  const [narrow, wide] = inOrder(room);
  if (long > wide + samePlace) return { long, short, measured: long, limit: wide };
  if (short > narrow + samePlace) return { long, short, measured: short, limit: narrow };
  return null;
};

const inOrder = ([a, b]: readonly [number, number]): readonly [number, number] =>
  a <= b ? [a, b] : [b, a];

// How a unit of the frame is called: in the ids of its parts, on its boards, and in what is said of it. A frame of one unit
// says nothing of units.

import type { FrameUnit } from "./frame-units.ts";

export interface UnitName {
  readonly number: number;
  /** Ends the ids of its parts: `-u2`. A number and not a bay's name, so that no two ids can be spelled alike. */
  readonly suffix: string;
  /** ` of unit 2`: after the title of a board that names no bay. */
  readonly ofBoard: string;
  /** `unit 2 (centre)`: it and its first bay. */
  readonly words: string;
}

export const unitName = ({ number, bays }: FrameUnit, count: number): UnitName => {
  const words = `unit ${number} (${bays[0]?.id ?? ""})`;
  return count === 1
    ? { number, suffix: "", ofBoard: "", words }
    : { number, suffix: `-u${number}`, ofBoard: ` of unit ${number}`, words };
};

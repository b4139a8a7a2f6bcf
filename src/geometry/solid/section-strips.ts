// The cut through a piece whose width changes with its height, as strips with straight sides, lower and upper side level.
// A straight flank comes out as one strip, exact; a curved one is halved until its chords stay within the chord height.

import type { Stretch } from "../line-stretches.ts";
import { chordHeight } from "./solid-tolerance.ts";

export interface Strip {
  readonly from: number;
  readonly to: number;
  /** Where it begins and ends at its foot and at its head. */
  readonly foot: Stretch;
  readonly head: Stretch;
}

export interface Flanks {
  readonly from: number;
  readonly to: number;
  /** The cut at a height from `from` to `to`. At a step `side` says of which of its two sides. */
  readonly at: (height: number, side: "above" | "below") => readonly Stretch[];
}

export const sectionStrips = ({ from, to, at }: Flanks): readonly Strip[] =>
  halved(
    { height: from, cut: at(from, "above") },
    { height: to, cut: at(to, "below") },
    { at, left: MOST_HALVINGS },
  );

/** 2^8 strips between two corners: where flanks come and go between two heights, what is lost is lower than that. */
const MOST_HALVINGS = 8;

interface Level {
  readonly height: number;
  readonly cut: readonly Stretch[];
}

const halved = (
  foot: Level,
  head: Level,
  { at, left }: Pick<Flanks, "at"> & { readonly left: number },
): readonly Strip[] => {
  const height = (foot.height + head.height) / 2;
  const middle = { height, cut: at(height, "above") };
  const isStraight = foot.cut.length === head.cut.length && isBetween(middle.cut, foot, head);
  if (isStraight || left === 0) return stripsBetween(foot, head);
  return [
    ...halved(foot, middle, { at, left: left - 1 }),
    ...halved(middle, head, { at, left: left - 1 }),
  ];
};

const isBetween = (cut: readonly Stretch[], foot: Level, head: Level): boolean =>
  cut.length === foot.cut.length &&
  cut.every(({ low, high }, index) => {
    const below = foot.cut[index]!;
    const above = head.cut[index]!;
    return (
      Math.abs((below.low + above.low) / 2 - low) <= chordHeight &&
      Math.abs((below.high + above.high) / 2 - high) <= chordHeight
    );
  });

const stripsBetween = (foot: Level, head: Level): readonly Strip[] =>
  foot.cut.length !== head.cut.length
    ? []
    : foot.cut.map((stretch, index) => ({
        from: foot.height,
        to: head.height,
        foot: stretch,
        head: head.cut[index]!,
      }));

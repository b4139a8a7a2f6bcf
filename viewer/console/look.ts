// How a console is being looked at: what is faded, cut, drawn apart, chosen and marked. Plain data; the picture follows it.

import type { Frame } from "../../src/geometry/space/frame.ts";
import { dot, type Vector } from "../../src/geometry/space/vector.ts";

export interface Look {
  readonly dark: boolean;
  readonly fadeFrame: boolean;
  readonly fadePanels: boolean;
  readonly showReach: boolean;
  readonly showSight: boolean;
  readonly showSweeps: boolean;
  readonly showNames: boolean;
  readonly chosen: string | null;
  /** A panel taken out and turned round, to look at its back. */
  readonly turned: string | null;
  /** Between two levels of the chosen panel's stack, mm. */
  readonly apart: number;
  readonly cut: Cut | null;
  readonly marks: readonly Mark[];
  /** Panels that lie elsewhere while a drag lasts. */
  readonly moved: ReadonlyMap<string, Frame>;
  readonly notes: readonly Note[];
  /** What is measured, from place to place. */
  readonly stretch: { readonly from: Vector; readonly to: Vector } | null;
}

/** How far a panel that is turned round is lifted, mm: clear of its neighbours. */
export const LIFT = 220;

/** How far its face stands before where it lies in the console, mm: a stack drawn apart stands before its rearmost level. */
export const faceLift = (
  { chosen, turned, apart }: Pick<Look, "chosen" | "turned" | "apart">,
  { name, levels }: { readonly name: string; readonly levels: readonly string[] },
): number => {
  if (turned === name) return LIFT;
  // Of the levels the first is what stands before the face.
  return chosen === name ? apart * Math.max(0, levels.length - 2) : 0;
};

export interface Cut {
  /** What is kept lies where `normal · p` is over the offset. */
  readonly normal: Vector;
  readonly offset: number;
}

export const isCutAway = (cut: Cut | null, at: Vector): boolean =>
  cut !== null && dot(cut.normal, at) < cut.offset;

/** A pattern for each: none of them is told by its colour alone. */
export type MarkKind = "clash" | "touching" | "near" | "finding";

export interface Mark {
  readonly kind: MarkKind;
  readonly group: string;
  readonly body: string;
}

/** Words at a place of the picture. */
export interface Note {
  readonly kind: MarkKind | "measure";
  readonly at: Vector;
  readonly words: string;
  /** Whether it lies on its place; else beside it, with a line to it. */
  readonly isOnIt: boolean;
}

export const FIRST_LOOK: Look = {
  dark: false,
  fadeFrame: false,
  fadePanels: false,
  showReach: true,
  showSight: false,
  showSweeps: false,
  showNames: true,
  chosen: null,
  turned: null,
  apart: 0,
  cut: null,
  marks: [],
  moved: new Map(),
  notes: [],
  stretch: null,
};

// What clears a marking of a shape that it lies on: for a legend beside its component the gap, else how far the two part.

import type { Side } from "../../design/panel-design.ts";
import type { Remedy } from "../../diagnostics/finding.ts";
import { type Extent, extentCentre, extentHeight, extentWidth } from "../../geometry/extent.ts";
import { legendOf } from "../../layout/legend-of.ts";
import type { PlacedMarking } from "../../layout/panel-layout.ts";
import { roundedUp } from "../round-length.ts";
import type { PanelFacts } from "../rule.ts";
import { lengthWords } from "../words.ts";

export interface Clearing {
  readonly measured: number;
  readonly limit: number;
  readonly advice: string;
  readonly remedies: readonly Remedy[];
}

/** Left free between a marking and what it must clear: common practice, a pen's width. */
const CLEAR = 0.5;

export const clearingOf = (marking: PlacedMarking, box: Extent, facts: PanelFacts): Clearing => {
  const beside = besideGap(marking, box, facts);
  if (beside !== null) return beside;
  const { apart, needed } = shorterParting(box, marking.box);
  const words = lengthWords(facts, marking.span);
  return {
    measured: apart,
    limit: needed,
    advice: `their middles are ${words(apart, needed)} apart, ${words(needed, apart)} would clear it, ${words(needed - apart, 0)} more`,
    remedies: [],
  };
};

interface Parted {
  readonly apart: number;
  readonly needed: number;
}

/** Across or along, whichever asks for less. */
const shorterParting = (a: Extent, b: Extent): Parted => {
  const [from, to] = [extentCentre(a), extentCentre(b)];
  const across = {
    apart: Math.abs(to.x - from.x),
    needed: (extentWidth(a) + extentWidth(b)) / 2 + CLEAR,
  };
  const along = {
    apart: Math.abs(to.y - from.y),
    needed: (extentHeight(a) + extentHeight(b)) / 2 + CLEAR,
  };
  return across.needed - across.apart < along.needed - along.apart ? across : along;
};

/** A legend that stands on a side of its component clears everything on that side with a larger gap. */
const besideGap = (marking: PlacedMarking, box: Extent, facts: PanelFacts): Clearing | null => {
  const { layout } = facts;
  const legend = marking.side === null ? null : legendOf(marking, layout);
  if (marking.side === null || marking.side === "on" || legend === null) return null;
  if (marking.owner === marking.id) return null;
  const gap = legend.gap ?? layout.design.lettering.gap;
  const needed = gap + overlapOn(marking.side, marking.box, box) + CLEAR;
  const span = legend.written.keys["gap"];
  const text = roundedUp(facts, span ?? legend.written.span, needed);
  const words = lengthWords(facts, span);
  return {
    measured: gap,
    limit: needed,
    advice: `its gap is ${words(gap)}, gap: ${text} would clear it`,
    remedies:
      span === undefined
        ? []
        : [{ title: `gap: ${text} (${marking.owner})`, edits: [facts.edit(span, text)] }],
  };
};

const overlapOn = (side: Side, marking: Extent, box: Extent): number => {
  switch (side) {
    case "above":
      return box.maxY - marking.minY;
    case "below":
      return marking.maxY - box.minY;
    case "left":
      return marking.maxX - box.minX;
    case "right":
      return box.maxX - marking.minX;
  }
};

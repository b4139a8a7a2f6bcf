// The clear distance between two neighbouring glyphs, at the size that they are drawn at.
// Outlines by their boundaries; strokes by their centre lines, so a caller takes off the width as cut.

import type { Path } from "../geometry/contour.ts";
import { contourDistance } from "../geometry/distance.ts";
import { edgeGap } from "../geometry/edge-distance.ts";
import { edgesOf } from "../geometry/edges.ts";
import type { Glyph } from "./glyph-source.ts";
import { scaledPath, scaledRegion } from "./scaled.ts";

/** The offset is from the left glyph's origin to the right one's. Below 0 where they share ground; infinite for a space. */
export const glyphGap = (left: Glyph, right: Glyph, exactOffset: number): number => {
  const offset = Math.round(exactOffset * OFFSET_STEPS) / OFFSET_STEPS;
  const known = keptGaps.get(left)?.get(right);
  if (known !== undefined && known.offset === offset) return known.gap;
  const gap = measuredGap(left, right, offset);
  const kept = keptGaps.get(left) ?? new WeakMap<Glyph, KeptGap>();
  kept.set(right, { offset, gap });
  keptGaps.set(left, kept);
  return gap;
};

/** Offsets are taken to 2^-20 mm (1 nm), so that a pair has the same one wherever it stands in a line. */
const OFFSET_STEPS = 1048576;

interface KeptGap {
  readonly offset: number;
  readonly gap: number;
}

/** The last gap asked for of each pair: in a legend's run of sizes the same offset comes again and again. */
const keptGaps = new WeakMap<Glyph, WeakMap<Glyph, KeptGap>>();

const measuredGap = (left: Glyph, right: Glyph, offset: number): number => {
  const place = { scale: 1, dx: offset, dy: 0 };
  let gap = Number.POSITIVE_INFINITY;
  for (const region of right.fills) {
    const { outline } = scaledRegion(region, place);
    for (const other of left.fills) {
      const measured = contourDistance(other.outline, outline);
      gap = Math.min(gap, measured.overlaps ? -1 : measured.gap);
    }
  }
  for (const stroke of right.strokes) {
    const moved = scaledPath(stroke, place);
    for (const other of left.strokes) gap = Math.min(gap, pathGap(other, moved));
  }
  return gap;
};

const pathGap = (left: Path, right: Path): number => {
  let gap = Number.POSITIVE_INFINITY;
  for (const edge of edgesOf(left))
    for (const other of edgesOf(right)) gap = Math.min(gap, edgeGap(edge, other).gap);
  return gap;
};

// Where the numbered badges of findings stand: beside what each speaks of, where the least of parts, words and other badges is
// covered. Pure; millimetres of the panel, y up.

import type { Point } from "../../src/geometry/contour.ts";
import { type Extent, extent, extentCentre } from "../../src/geometry/extent.ts";
import { mm } from "../../src/geometry/quantity.ts";

export interface BadgeScene {
  /** What each badge speaks of, in the order of their numbers. */
  readonly subjects: readonly Extent[];
  /** Parts and words, which are to be seen. */
  readonly seen: readonly Extent[];
  /** Half the side of a badge. */
  readonly radius: number;
}

/** Middles, one for each subject. */
export function badgePlaces({ subjects, seen, radius }: BadgeScene): readonly Point[] {
  const taken: Extent[] = [];
  return subjects.map((subject) => {
    let best: { readonly at: Point; readonly cost: number } | null = null;
    for (const at of spotsBeside(subject, radius)) {
      const badge = about(at, radius);
      const cost = covered(badge, seen) + WORSE * covered(badge, taken);
      if (best === null || cost < best.cost - ALIKE) best = { at, cost };
      if (cost === 0) break;
    }
    const at = best?.at ?? extentCentre(subject);
    taken.push(about(at, radius));
    return at;
  });
}

/** A badge under another one can't be picked at all. */
const WORSE = 3;
/** Square millimetres that nobody sees. */
const ALIKE = 1e-6;

const about = ({ x, y }: Point, radius: number): Extent =>
  extent(x - radius, y - radius, x + radius, y + radius);

/** At the lower right first: legends usually stand above. */
function spotsBeside(box: Extent, radius: number): readonly Point[] {
  const { x, y } = extentCentre(box);
  const right = box.maxX + radius;
  const left = box.minX - radius;
  const below = box.minY - radius;
  const above = box.maxY + radius;
  const spots: readonly (readonly [number, number])[] = [
    [right, box.minY],
    [right, below],
    [right, y],
    [left, box.minY],
    [left, below],
    [left, y],
    [x, below],
    [right, box.maxY],
    [left, box.maxY],
    [right, above],
    [left, above],
    [x, above],
    // A badge further: the one beside is taken.
    [right + 2 * radius, y],
    [left - 2 * radius, y],
  ];
  return spots.map(([spotX, spotY]) => ({ x: mm(spotX), y: mm(spotY) }));
}

const covered = (badge: Extent, boxes: readonly Extent[]): number =>
  boxes.reduce((sum, box) => sum + shared(badge, box), 0);

const shared = (a: Extent, b: Extent): number =>
  Math.max(0, Math.min(a.maxX, b.maxX) - Math.max(a.minX, b.minX)) *
  Math.max(0, Math.min(a.maxY, b.maxY) - Math.max(a.minY, b.minY));

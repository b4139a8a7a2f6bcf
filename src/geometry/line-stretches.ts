// Where a straight line runs through an area: stretches along it, counted from the line's own point, exact on arcs. A line
// that grazes an edge or meets a corner is taken as moved a hair to its left, so that stretches always close.

import type { Contour, Point, Region } from "./contour.ts";
import { isBesideBow } from "./edge.ts";
import { type ArcEdge, type Edge, edgesOf } from "./edges.ts";
import type { Direction } from "./trigonometry.ts";

/** A point of it, and the unit vector along it. */
export interface StraightLine {
  readonly at: Point;
  readonly along: Direction;
}

export interface Stretch {
  readonly low: number;
  readonly high: number;
}

/** Rising, and apart from each other. The regions may touch; one may stand in another's hole. */
export const lineStretches = (regions: readonly Region[], line: StraightLine): readonly Stretch[] =>
  joinedStretches(
    regions.flatMap(({ outline, holes }) => {
      const inside = contourStretches(outline, line);
      if (inside.length === 0) return [];
      return stretchesWithout(
        inside,
        joinedStretches(holes.flatMap((hole) => contourStretches(hole, line))),
      );
    }),
  );

/** The same of one closed contour. */
export const contourStretches = (contour: Contour, line: StraightLine): readonly Stretch[] => {
  const crossings =
    contour.kind === "circle"
      ? circleCrossings(contour.centre, contour.radius, line)
      : edgesOf(contour).flatMap((edge) => edgeCrossings(edge, line));
  const sorted = crossings.toSorted((a, b) => a - b);
  return sorted.flatMap((low, index) => {
    const high = sorted[index + 1];
    return index % 2 === 0 && high !== undefined && high > low ? [{ low, high }] : [];
  });
};

/** Overlapping and touching ones made one, in order. */
export const joinedStretches = (stretches: readonly Stretch[]): readonly Stretch[] => {
  const apart: Stretch[] = [];
  for (const stretch of stretches.toSorted((a, b) => a.low - b.low)) {
    const last = apart.at(-1);
    if (last === undefined || stretch.low > last.high) apart.push(stretch);
    else apart[apart.length - 1] = { low: last.low, high: Math.max(last.high, stretch.high) };
  }
  return apart;
};

/** What is left outside the gaps. Both lists rise and lie apart. */
export const stretchesWithout = (
  stretches: readonly Stretch[],
  gaps: readonly Stretch[],
): readonly Stretch[] =>
  stretches.flatMap((whole) => {
    const left: Stretch[] = [];
    let from = whole.low;
    for (const { low, high } of gaps) {
      if (high <= from || low >= whole.high) continue;
      if (low > from) left.push({ low: from, high: low });
      from = high;
    }
    return from < whole.high ? [...left, { low: from, high: whole.high }] : left;
  });

/** To the left of the line it is positive. */
const sideOf = ({ at, along }: StraightLine, { x, y }: Point): number =>
  along.x * (y - at.y) - along.y * (x - at.x);

const placeAlong = ({ at, along }: StraightLine, { x, y }: Point): number =>
  along.x * (x - at.x) + along.y * (y - at.y);

const circleCrossings = (centre: Point, radius: number, line: StraightLine): readonly number[] => {
  const away = sideOf(line, centre);
  if (Math.abs(away) >= radius) return [];
  const middle = placeAlong(line, centre);
  const half = halfChord(radius, away);
  return [middle - half, middle + half];
};

const halfChord = (radius: number, away: number): number =>
  Math.sqrt(Math.max(0, radius * radius - away * away));

const edgeCrossings = (edge: Edge, line: StraightLine): readonly number[] => {
  const from = sideOf(line, edge.from);
  const to = sideOf(line, edge.to);
  const crosses = from > 0 !== to > 0;
  if (edge.kind === "arc") return arcCrossings(edge, line, { crosses, isLeft: from > 0 });
  if (!crosses) return [];
  const start = placeAlong(line, edge.from);
  return [start + (from / (from - to)) * (placeAlong(line, edge.to) - start)];
};

const arcCrossings = (
  arc: ArcEdge,
  line: StraightLine,
  { crosses, isLeft }: { readonly crosses: boolean; readonly isLeft: boolean },
): readonly number[] => {
  const away = sideOf(line, arc.centre);
  if (!crosses && !bowsAcross(arc, line, isLeft)) return [];
  const middle = placeAlong(line, arc.centre);
  const half = halfChord(arc.radius, away);
  const both = [middle - half, middle + half];
  if (!crosses) return both;
  // Of the two places on its circle the one on the bow's side of the chord is the arc's.
  const [first, second] = both.map((place) => bowSide(arc, line, place));
  return [(first ?? 0) >= (second ?? 0) ? both[0]! : both[1]!];
};

/** Both ends on one side, and the arc's foremost point beyond the line. */
const bowsAcross = (arc: ArcEdge, { at, along }: StraightLine, isLeft: boolean): boolean => {
  const toward = isLeft ? -arc.radius : arc.radius;
  const x = arc.centre.x - along.y * toward;
  const y = arc.centre.y + along.x * toward;
  const side = along.x * (y - at.y) - along.y * (x - at.x);
  return side > 0 !== isLeft && isBesideBow(arc, x, y);
};

const bowSide = (arc: ArcEdge, { at, along }: StraightLine, place: number): number => {
  const x = at.x + along.x * place;
  const y = at.y + along.y * place;
  const side =
    (arc.to.x - arc.from.x) * (y - arc.from.y) - (arc.to.y - arc.from.y) * (x - arc.from.x);
  return arc.turnsLeft ? -side : side;
};

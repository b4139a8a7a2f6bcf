// Whether a glyph's contours cross or touch (themselves or one another), so that they need a union before they can
// be cut. Most glyphs don't, and keep their arcs exactly; the test is on chords in font units and costs microseconds.

import type { FontPoint, OutlineContour, OutlineCurve } from "./outline-font.ts";

/** Chords a curve is looked at by. Enough to see overlaps that a type designer draws; not a tolerance of the cut. */
const CHORDS = 4;

export const hasCrossings = (contours: readonly OutlineContour[]): boolean => {
  const chords = contours.flatMap(chordsOf).sort((a, b) => a.minX - b.minX);
  for (const [index, chord] of chords.entries())
    for (let other = index + 1; other < chords.length; other += 1) {
      const candidate = chords[other];
      if (candidate === undefined || candidate.minX > chord.maxX) break;
      if (!areNeighbours(chord, candidate) && doMeet(chord, candidate)) return true;
    }
  return false;
};

interface Chord {
  readonly from: FontPoint;
  readonly to: FontPoint;
  readonly contour: OutlineContour;
  readonly place: number;
  readonly count: number;
  readonly minX: number;
  readonly maxX: number;
}

const chordsOf = (contour: OutlineContour): readonly Chord[] => {
  const points = chordPoints(contour);
  return points.map((from, place) => {
    const to = points[(place + 1) % points.length] ?? from;
    return {
      from,
      to,
      contour,
      place,
      count: points.length,
      minX: Math.min(from.x, to.x),
      maxX: Math.max(from.x, to.x),
    };
  });
};

const chordPoints = (contour: OutlineContour): readonly FontPoint[] => {
  const points: FontPoint[] = [];
  let from = contour.start;
  for (const curve of contour.curves) {
    const count = curve.kind === "line" ? 1 : CHORDS;
    for (let step = 1; step <= count; step += 1) {
      const next = step === count ? curve.to : pointOn(from, curve, step / count);
      if (!isSame(points.at(-1), next)) points.push(next);
    }
    from = curve.to;
  }
  if (points.length > 1 && isSame(points[0], from)) points.pop();
  return points;
};

const isSame = (a: FontPoint | undefined, b: FontPoint): boolean => a?.x === b.x && a.y === b.y;

const pointOn = (from: FontPoint, curve: OutlineCurve, t: number): FontPoint => {
  if (curve.kind === "line") return between(from, curve.to, t);
  if (curve.kind === "quadratic")
    return between(between(from, curve.control, t), between(curve.control, curve.to, t), t);
  const first = between(from, curve.first, t);
  const middle = between(curve.first, curve.second, t);
  const last = between(curve.second, curve.to, t);
  return between(between(first, middle, t), between(middle, last, t), t);
};

const between = (a: FontPoint, b: FontPoint, t: number): FontPoint => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});

const areNeighbours = (a: Chord, b: Chord): boolean => {
  if (a.contour !== b.contour) return false;
  const apart = Math.abs(a.place - b.place);
  return apart === 1 || apart === a.count - 1;
};

/** True where the closed segments share a point: a touch counts, because a region's edges must keep clear of each other. */
const doMeet = (a: Chord, b: Chord): boolean => {
  if (Math.max(a.from.y, a.to.y) < Math.min(b.from.y, b.to.y)) return false;
  if (Math.max(b.from.y, b.to.y) < Math.min(a.from.y, a.to.y)) return false;
  return side(a, b.from) * side(a, b.to) <= 0 && side(b, a.from) * side(b, a.to) <= 0;
};

/** Which side of the chord's line a point is on: +1 left, -1 right, 0 on it. */
const side = (chord: Chord, point: FontPoint): number =>
  Math.sign(
    (chord.to.x - chord.from.x) * (point.y - chord.from.y) -
      (chord.to.y - chord.from.y) * (point.x - chord.from.x),
  );

// A simple polygon as convex ones: ears are cut off one by one, then neighbours are joined while they stay convex.
// Takes corners counter-clockwise, gives each piece's corners counter-clockwise.

import type { Point } from "../../geometry/contour.ts";
import { turn } from "../../geometry/convex-hull.ts";
import { convexNoise } from "../fit-tolerance.ts";

type Polygon = readonly Point[];

export const convexPolygons = (corners: Polygon): readonly Polygon[] =>
  isConvex(corners) ? [corners] : joined(ears(corners));

export const isConvex = (corners: Polygon): boolean =>
  corners.every((at, index) => {
    const before = corners[(index + corners.length - 1) % corners.length]!;
    const after = corners[(index + 1) % corners.length]!;
    return turn(before, at, after) >= -convexNoise;
  });

/** Twice the area, positive counter-clockwise. */
export const doubleArea = (corners: Polygon): number =>
  corners.reduce((sum, at, index) => {
    const next = after(corners, index);
    return sum + at.x * next.y - next.x * at.y;
  }, 0);

const ears = (corners: Polygon): Polygon[] => {
  const left = [...corners];
  const cut: Polygon[] = [];
  while (left.length > 3) {
    const index = left.findIndex((_, place) => isEar(left, place));
    // A polygon that touches itself may have no ear left: the rest then stays as it is, and its hull holds it.
    if (index < 0) break;
    cut.push([before(left, index), left[index]!, after(left, index)]);
    left.splice(index, 1);
  }
  return [...cut, left];
};

const isEar = (corners: Polygon, index: number): boolean => {
  const [a, b, c] = [before(corners, index), corners[index]!, after(corners, index)];
  if (turn(a, b, c) <= 0) return false;
  return corners.every((at) => at === a || at === b || at === c || !isInTriangle(at, [a, b, c]));
};

const before = (corners: Polygon, index: number): Point =>
  corners[(index + corners.length - 1) % corners.length]!;

const after = (corners: Polygon, index: number): Point => corners[(index + 1) % corners.length]!;

const isInTriangle = (at: Point, [a, b, c]: readonly [Point, Point, Point]): boolean =>
  turn(a, b, at) >= 0 && turn(b, c, at) >= 0 && turn(c, a, at) >= 0;

/** Two pieces that share an edge become one where that one is convex. */
const joined = (pieces: Polygon[]): readonly Polygon[] => {
  const done: Polygon[] = [];
  let [current, ...waiting] = pieces;
  while (current !== undefined) {
    const piece: Polygon = current;
    const found = waiting.findIndex((other) => joinedPair(piece, other) !== null);
    const larger = found < 0 ? null : joinedPair(piece, waiting[found]!);
    if (larger === null) {
      done.push(piece);
      [current, ...waiting] = waiting;
    } else {
      waiting = waiting.filter((_, index) => index !== found);
      current = larger;
    }
  }
  return done;
};

const joinedPair = (first: Polygon, second: Polygon): Polygon | null => {
  for (const [index, from] of first.entries()) {
    const to = after(first, index);
    const place = second.findIndex((at, other) => at === to && after(second, other) === from);
    if (place < 0) continue;
    const rest = Array.from(
      { length: second.length - 2 },
      (_, step) => second[(place + 2 + step) % second.length]!,
    );
    const whole = [...first.slice(0, index + 1), ...rest, ...first.slice(index + 1)];
    if (isConvex(whole)) return whole;
  }
  return null;
};

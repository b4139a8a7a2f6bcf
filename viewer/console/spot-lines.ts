// Places of words in a picture, in pixels, and the lines that lead from them to what they name: what lies over what, and which line
// runs through what.

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** `x` and `y` are its middle. */
export interface Spot extends Point {
  readonly width: number;
  readonly height: number;
}

export interface Line {
  readonly from: Point;
  readonly to: Point;
}

/** Between two labels, in pixels. */
export const GAP = 2;

export const isOver = (a: Spot, b: Spot): boolean =>
  Math.abs(a.x - b.x) < (a.width + b.width) / 2 + GAP &&
  Math.abs(a.y - b.y) < (a.height + b.height) / 2 + GAP - 1;

export const isOn = ({ x, y }: Point, spot: Spot): boolean =>
  Math.abs(x - spot.x) < spot.width / 2 + GAP && Math.abs(y - spot.y) < spot.height / 2 + GAP;

/** Whether a part of the line lies on it: its share between the two edges across and that between the two along meet. */
export const isThrough = ({ from, to }: Line, spot: Spot): boolean => {
  let [first, last] = [0, 1];
  for (const [start, way, middle, half] of [
    [from.x, to.x - from.x, spot.x, spot.width / 2 + GAP],
    [from.y, to.y - from.y, spot.y, spot.height / 2 + GAP],
  ] as const) {
    const [low, high] = [middle - half - start, middle + half - start];
    if (way === 0) {
      if (low > 0 || high < 0) return false;
      continue;
    }
    first = Math.max(first, Math.min(low / way, high / way));
    last = Math.min(last, Math.max(low / way, high / way));
  }
  return first <= last;
};

/** Both ends of each lie on the two sides of the other. */
export const isCrossing = (a: Line, b: Line): boolean =>
  sideOf(a, b.from) * sideOf(a, b.to) < 0 && sideOf(b, a.from) * sideOf(b, a.to) < 0;

const sideOf = ({ from, to }: Line, { x, y }: Point): number =>
  Math.sign((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x));

/** Round points of the picture; null where none is in it. */
export const spotRound = (points: readonly Point[]): Spot | null => {
  if (points.length === 0) return null;
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  return {
    x: (left + right) / 2,
    y: (top + bottom) / 2,
    width: right - left,
    height: bottom - top,
  };
};

/** From the edge of a label to what it names; null where that lies under the label. */
export const leadOf = (spot: Spot, to: Point): Line | null => {
  const line = lineOf(spot, to);
  return line.from.x === to.x && line.from.y === to.y ? null : line;
};

/** From the nearest point of its edge: upright where what it names lies under or over it, and never longer than it must be. */
export const lineOf = ({ x, y, width, height }: Spot, to: Point): Line => {
  const from = (at: number, middle: number, size: number): number =>
    Math.max(middle - size / 2, Math.min(middle + size / 2, at));
  return { from: { x: from(to.x, x, width), y: from(to.y, y, height) }, to };
};

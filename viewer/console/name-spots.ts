// Where words stand over a picture so that all of them can be read, in pixels. A note keeps its place or gives way by a line; a
// name goes as far as it must, off the panels where there is ground, and a line leads from it to what it names.

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** `x` and `y` are its middle. */
export interface Spot extends Point {
  readonly width: number;
  readonly height: number;
}

export interface WantedSpot extends Spot {
  readonly key: string;
  /** Which stays where two would lie over each other: the higher. */
  readonly rank: number;
  /** Of a name: it may go anywhere, and is led from there to its first place. */
  readonly isLed: boolean;
}

export interface Ground {
  readonly width: number;
  readonly height: number;
  /** What names keep off where they can. */
  readonly covered: readonly Spot[];
}

/** How far a name went from its first place, and whether it came off what is covered. */
interface Way extends Point {
  readonly isOff: boolean;
}

/** The ways that names went in the picture before, by their keys. */
export type Ways = ReadonlyMap<string, Way>;

export const NO_WAYS: Ways = new Map();

export interface PartedSpots {
  /** Where each is drawn, by its key; what finds no room is left out. */
  readonly spots: ReadonlyMap<string, Spot>;
  readonly ways: Ways;
}

/** Between two labels, in pixels. */
const GAP = 2;

/** A name goes the way that it went `before` while that does: a picture that turns has no names that jump. */
export const partedSpots = (
  wanted: readonly WantedSpot[],
  ground: Ground,
  before: Ways,
): PartedSpots => {
  const taken = new Map<string, Spot>();
  const ways = new Map<string, Way>();
  const lines: Line[] = [];
  for (const each of wanted.toSorted((a, b) => b.rank - a.rank || a.x - b.x)) {
    const spot = each.isLed
      ? (keptSpot(each, before.get(each.key), { ground, taken, lines }) ??
        ledSpot(each, { ground, taken, lines }))
      : nearSpot(each, taken);
    if (spot === undefined) continue;
    taken.set(each.key, spot);
    if (!each.isLed) continue;
    lines.push({ from: spot, to: each });
    const isOff = isFree(spot, ground.covered);
    ways.set(each.key, { x: spot.x - each.x, y: spot.y - each.y, isOff });
  }
  return { spots: taken, ways };
};

interface Line {
  readonly from: Point;
  readonly to: Point;
}

interface Standing {
  readonly ground: Ground;
  readonly taken: ReadonlyMap<string, Spot>;
  readonly lines: readonly Line[];
}

/** Of its own height, that a note may give way by: farther off it would speak of something else. */
const NEAR_ROWS = [0, 1, -1, 2, -2];

const nearSpot = (
  { x, y, width, height }: WantedSpot,
  taken: ReadonlyMap<string, Spot>,
): Spot | undefined =>
  NEAR_ROWS.map((by) => ({ x, y: y + by * (height + GAP), width, height })).find((spot) =>
    isFree(spot, [...taken.values()]),
  );

/** Where the way that it went before leads now; undefined where that is no good place any more. */
const keptSpot = (
  name: WantedSpot,
  way: Way | undefined,
  { ground, taken, lines }: Standing,
): Spot | undefined => {
  if (way === undefined) return undefined;
  const { x, y, width, height } = name;
  const spot = { x: x + way.x, y: y + way.y, width, height };
  const isGood =
    isInside(spot, ground) &&
    isFree(spot, [...taken.values()]) &&
    isApart(spot, name, lines) &&
    (!way.isOff || isFree(spot, ground.covered));
  return isGood ? spot : undefined;
};

const isApart = (spot: Spot, name: Point, lines: readonly Line[]): boolean =>
  !lines.some((line) => isCrossing({ from: spot, to: name }, line));

/** Rows above and below, and shares of its own width aside, that a name may go. */
const ROWS = 16;
const ASIDE = [0, 0.3, 0.6, 0.9, 1.2, 1.6, 2, 2.6];

/** The nearest free place off the panels whose line crosses no other; else over them; else with a crossing line. */
const ledSpot = (name: WantedSpot, { ground, taken, lines }: Standing): Spot | undefined => {
  const others = [...taken.values()];
  const places = placesRound(name)
    .filter((spot) => isInside(spot, ground) && isFree(spot, others))
    .toSorted((a, b) => away(a, name) - away(b, name));
  const isGood = (spot: Spot): boolean => isApart(spot, name, lines);
  const off = places.filter((spot) => isFree(spot, ground.covered));
  return off.find(isGood) ?? places.find(isGood) ?? off[0] ?? places[0];
};

const placesRound = ({ x, y, width, height }: Spot): readonly Spot[] =>
  Array.from({ length: 2 * ROWS + 1 }, (_, row) => row - ROWS).flatMap((row) =>
    ASIDE.flatMap((share) => (share === 0 ? [0] : [share, -share])).map((share) => ({
      x: x + share * width,
      y: y + row * (height + GAP),
      width,
      height,
    })),
  );

/** From its nearest edge, and a little from its middle, so that of two as near the straighter one is taken. */
const away = (spot: Spot, to: Point): number => {
  const [across, up] = [Math.abs(spot.x - to.x), Math.abs(spot.y - to.y)];
  const edge = Math.hypot(Math.max(0, across - spot.width / 2), Math.max(0, up - spot.height / 2));
  return edge + 0.1 * across;
};

const isInside = ({ x, y, width, height }: Spot, ground: Ground): boolean =>
  x >= width / 2 &&
  x <= ground.width - width / 2 &&
  y >= height / 2 &&
  y <= ground.height - height / 2;

const isFree = (spot: Spot, others: readonly Spot[]): boolean =>
  !others.some((other) => isOver(spot, other));

const isOver = (a: Spot, b: Spot): boolean =>
  Math.abs(a.x - b.x) < (a.width + b.width) / 2 + GAP &&
  Math.abs(a.y - b.y) < (a.height + b.height) / 2 + GAP - 1;

/** Both ends of each lie on the two sides of the other. */
const isCrossing = (a: Line, b: Line): boolean =>
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
  const [x, y] = [to.x - spot.x, to.y - spot.y];
  const share = Math.max(Math.abs(x) / (spot.width / 2), Math.abs(y) / (spot.height / 2));
  return share <= 1 ? null : { from: { x: spot.x + x / share, y: spot.y + y / share }, to };
};

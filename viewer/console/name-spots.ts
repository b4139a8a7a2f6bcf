// Where words stand over a picture so that all of them can be read, in pixels. A number keeps its place or gives way by a line; a
// note stands beside what it speaks of, within the picture; a name goes as far as it must, off the panels where there is ground.
// From notes and names a line leads to their places.

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
  /** A name may stand anywhere, a note stands beside its place: from both a line leads to it. */
  readonly stands: "on" | "beside" | "anywhere";
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

/**
 * A name goes the way that it went `before` while that does, and else goes aside by as little as it can: a picture that turns
 * has names that give way to each other and few that jump. Where a name has come to stand far off, one a picture is placed anew.
 */
export const partedSpots = (
  wanted: readonly WantedSpot[],
  ground: Ground,
  before: Ways,
): PartedSpots => {
  const table: Table = { ground, taken: new Map(), lines: new Map() };
  const led = wanted.filter(({ stands }) => stands === "anywhere");
  const notes = wanted.filter(({ stands }) => stands === "beside");
  for (const note of notes.toSorted(higherFirst)) put(table, note, besideSpot(note, notes, table));
  for (const number of wanted.filter(({ stands }) => stands === "on").toSorted(higherFirst))
    put(table, number, nearSpot(number, table));
  // In the order of before, which no turn of the picture changes: else two that meet would take turns in giving way.
  const order = new Map([...before.keys()].map((key, at) => [key, at]));
  const known = led
    .filter(({ key }) => order.has(key))
    .toSorted((a, b) => b.rank - a.rank || order.get(a.key)! - order.get(b.key)!);
  for (const name of known) put(table, name, keptSpot(name, before.get(name.key)!, table));
  for (const name of known)
    if (!table.taken.has(name.key)) put(table, name, slidSpot(name, before.get(name.key)!, table));
  for (const name of led.toSorted(higherFirst))
    if (!table.taken.has(name.key)) put(table, name, ledSpot(name, table));
  bringBack(table, known);
  return { spots: table.taken, ways: waysOf(led, table, order) };
};

const higherFirst = (a: WantedSpot, b: WantedSpot): number => b.rank - a.rank || a.x - b.x;

/** What stands already; filled as names are placed. */
interface Table {
  readonly ground: Ground;
  readonly taken: Map<string, Spot>;
  readonly lines: Map<string, Line>;
}

const put = ({ taken, lines }: Table, each: WantedSpot, spot: Spot | undefined): void => {
  if (spot === undefined) return;
  taken.set(each.key, spot);
  if (each.stands !== "on") lines.set(each.key, { from: spot, to: each });
};

const take = ({ taken, lines }: Table, key: string): void => {
  taken.delete(key);
  lines.delete(key);
};

const waysOf = (
  led: readonly WantedSpot[],
  { ground, taken }: Table,
  order: ReadonlyMap<string, number>,
): Ways =>
  new Map(
    led
      .toSorted((a, b) => (order.get(a.key) ?? order.size) - (order.get(b.key) ?? order.size))
      .flatMap(({ key, x, y }): [string, Way][] => {
        const spot = taken.get(key);
        if (spot === undefined) return [];
        return [[key, { x: spot.x - x, y: spot.y - y, isOff: isFree(spot, ground.covered) }]];
      }),
  );

/** What a name may stand farther off than it could before it is placed anew, in pixels: two of its rows. */
const BROUGHT_BACK = 32;

/** Of the names that kept their ways the one that stands farthest off, where it has become much nearer elsewhere. */
const bringBack = (table: Table, known: readonly WantedSpot[]): void => {
  const [worst] = known
    .flatMap((name) => {
      const spot = table.taken.get(name.key);
      return spot === undefined ? [] : [{ name, spot, off: away(spot, name) }];
    })
    .toSorted((a, b) => b.off - a.off);
  if (worst === undefined || worst.off < BROUGHT_BACK) return;
  const { name, spot, off } = worst;
  take(table, name.key);
  put(table, name, ledSpot(name, table, off - BROUGHT_BACK) ?? spot);
};

interface Line {
  readonly from: Point;
  readonly to: Point;
}

/** Of its own height, that a note may give way by: farther off it would speak of something else. */
const NEAR_ROWS = [0, 1, -1, 2, -2];

const nearSpot = ({ x, y, width, height }: WantedSpot, { taken }: Table): Spot | undefined =>
  NEAR_ROWS.map((by) => ({ x, y: y + by * (height + GAP), width, height })).find((spot) =>
    isFree(spot, [...taken.values()]),
  );

/** Between a note and its place, in pixels: what it speaks of is to be seen. */
const CLEAR = 26;
/** Of its own height, that a note goes up or down beside its place. */
const BESIDE_ROWS = [0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5];

/** The nearest free place beside it, and over no other note's place. Of what lies out of the picture: at the edge next to it. */
const besideSpot = (
  note: WantedSpot,
  notes: readonly WantedSpot[],
  { ground, taken, lines }: Table,
): Spot | undefined => {
  const { width, height } = note;
  const places = notes.map((each) => keptInside(ground, { ...each, width: 0, height: 0 }));
  const place = keptInside(ground, { ...note, width: 0, height: 0 });
  const aside = width / 2 + CLEAR;
  const free = BESIDE_ROWS.flatMap((row) => {
    const up = row * (height + 2 * GAP);
    const over = Math.sign(row) * (height / 2 + CLEAR) + up;
    return [{ x: aside, y: up }, { x: -aside, y: up }, ...(row === 0 ? [] : [{ x: 0, y: over }])];
  })
    .map((by) => keptInside(ground, { x: place.x + by.x, y: place.y + by.y, width, height }))
    .filter((spot) => isFree(spot, [...taken.values(), ...places]))
    .toSorted((a, b) => away(a, place) - away(b, place));
  const straight = free.find((spot) => isApart(spot, note, [...lines.values()]));
  return straight ?? free[0];
};

/** Moved by as little as it must to lie in the picture. */
const keptInside = (ground: Ground, { x, y, width, height }: Spot): Spot => {
  const kept = (at: number, half: number, end: number): number =>
    Math.max(half, Math.min(end - half, at));
  return {
    x: kept(x, width / 2 + GAP, ground.width),
    y: kept(y, height / 2 + GAP, ground.height),
    width,
    height,
  };
};

/** Where the way that it went before leads now; undefined where that is no good place any more. */
const keptSpot = (name: WantedSpot, way: Way, table: Table): Spot | undefined => {
  const spot = movedBy(name, way);
  return isGood(spot, name, table, way.isOff) ? spot : undefined;
};

/** How far aside a name is looked a place for, in pixels, and in how many directions. */
const ASIDE_BY = [1, 2, 3, 4, 6, 8, 11, 15, 20, 26, 34];
const DIRECTIONS = 16;

/** The nearest good place to where that way leads. */
const slidSpot = (name: WantedSpot, way: Way, table: Table): Spot | undefined => {
  for (const by of ASIDE_BY) {
    const spots = Array.from({ length: DIRECTIONS }, (_, at) => (2 * Math.PI * at) / DIRECTIONS)
      .map((turn) => ({ x: way.x + by * Math.cos(turn), y: way.y + by * Math.sin(turn) }))
      .map((next) => movedBy(name, next))
      .filter((spot) => isGood(spot, name, table, way.isOff))
      .toSorted((a, b) => away(a, name) - away(b, name));
    if (spots[0] !== undefined) return spots[0];
  }
  return undefined;
};

const movedBy = ({ x, y, width, height }: Spot, way: Point): Spot => ({
  x: x + way.x,
  y: y + way.y,
  width,
  height,
});

const isGood = (
  spot: Spot,
  name: Point,
  { ground, taken, lines }: Table,
  isOff: boolean,
): boolean =>
  isInside(spot, ground) &&
  isFree(spot, [...taken.values()]) &&
  isApart(spot, name, [...lines.values()]) &&
  (!isOff || isFree(spot, ground.covered));

const isApart = (spot: Spot, name: Point, lines: readonly Line[]): boolean =>
  !lines.some((line) => isCrossing({ from: spot, to: name }, line));

/** Rows above and below, and shares of its own width aside, that a name may go. */
const ROWS = 16;
const ASIDE = [0, 0.3, 0.6, 0.9, 1.2, 1.6, 2, 2.6];

/**
 * The nearest free place off the panels whose line crosses no other; else over them; else with a crossing line. `within`: no
 * farther off, and nothing else will do.
 */
const ledSpot = (
  name: WantedSpot,
  table: Table,
  within: number | null = null,
): Spot | undefined => {
  const worthOf = worthOn(table, name);
  let best: { readonly spot: Spot; readonly worth: number } | null = null;
  for (const way of waysRound(name)) {
    const spot = movedBy(name, way);
    if (within !== null && away(spot, name) > within) break;
    const worth = worthOf(spot);
    if (worth === BEST) return spot;
    if (worth > (best?.worth ?? NO_ROOM)) best = { spot, worth };
  }
  return within === null ? best?.spot : undefined;
};

/** Off the panels, and its line crosses no other. */
const BEST = 3;
const NO_ROOM = -1;

const worthOn = ({ ground, taken, lines }: Table, name: Point): ((spot: Spot) => number) => {
  const [others, crossed] = [[...taken.values()], [...lines.values()]];
  return (spot) =>
    isInside(spot, ground) && isFree(spot, others)
      ? (isApart(spot, name, crossed) ? 2 : 0) + (isFree(spot, ground.covered) ? 1 : 0)
      : NO_ROOM;
};

/** Where a name of that size may go from its first place, the nearest first. */
const waysRound = ({ width, height }: Spot): readonly Point[] => {
  const key = `${width} ${height}`;
  const known = waysBySize.get(key) ?? sortedWays(width, height);
  waysBySize.set(key, known);
  return known;
};

const waysBySize = new Map<string, readonly Point[]>();

const sortedWays = (width: number, height: number): readonly Point[] => {
  const first = { x: 0, y: 0 };
  return Array.from({ length: 2 * ROWS + 1 }, (_, row) => row - ROWS)
    .flatMap((row) =>
      ASIDE.flatMap((share) => (share === 0 ? [0] : [share, -share])).map((share) => ({
        x: share * width,
        y: row * (height + GAP),
        width,
        height,
      })),
    )
    .toSorted((a, b) => away(a, first) - away(b, first));
};

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

// Where words stand over a picture so that all of them can be read, in pixels. A number keeps its place or gives way by a line; a
// note stands beside what it speaks of, within the picture; a name goes as far as it must, off the panels where there is ground.
// From notes and names a line leads to their places.

import {
  GAP,
  isCrossing,
  isOn,
  isOver,
  isThrough,
  type Line,
  lineOf,
  type Point,
  type Spot,
} from "./spot-lines.ts";

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

/**
 * A name goes the way that it went `before` while that does, and else goes aside by as little as it can: a picture that turns
 * has names that give way to each other and few that jump. Where a name has come to stand far off, one a picture is placed anew.
 * One that finds no room has others make way; what finds none even so is left out.
 */
export const partedSpots = (
  wanted: readonly WantedSpot[],
  ground: Ground,
  before: Ways,
): PartedSpots => {
  const led = wanted.filter(({ stands }) => stands === "anywhere");
  const table: Table = { ground, places: led, taken: new Map(), lines: new Map() };
  const notes = wanted.filter(({ stands }) => stands === "beside");
  for (const note of notes.toSorted(higherFirst)) put(table, note, besideSpot(note, notes, table));
  for (const number of wanted.filter(({ stands }) => stands === "on").toSorted(higherFirst))
    put(table, number, nearSpot(number, table));
  const order = orderOf(before);
  const known = led
    .filter(({ key }) => order.has(key))
    .toSorted((a, b) => b.rank - a.rank || order.get(a.key)! - order.get(b.key)!);
  for (const name of known) put(table, name, keptSpot(name, before.get(name.key)!, table));
  for (const name of known)
    if (!table.taken.has(name.key)) put(table, name, slidSpot(name, before.get(name.key)!, table));
  const ranked = led.toSorted(higherFirst);
  // Off the panels where there is ground, and only then over them.
  for (const isOff of [true, false]) {
    const left = (): readonly WantedSpot[] => ranked.filter(({ key }) => !table.taken.has(key));
    for (const name of left()) put(table, name, ledSpot(name, table, { isOff }));
    for (const name of left()) makeWay(name, table, { isOff, deeper: DEEPER });
  }
  // In a first picture all of them, in one that goes on one at a time.
  for (let turns = known.length === 0 ? led.length : 1; turns > 0; turns -= 1)
    bringBack(table, led);
  return { spots: table.taken, ways: waysOf(led, table, order) };
};

/** In the order of before, which no turn of the picture changes: else two that meet would take turns in giving way. */
const orderOf = (before: Ways): ReadonlyMap<string, number> =>
  new Map([...before.keys()].map((key, at) => [key, at]));

const higherFirst = (a: WantedSpot, b: WantedSpot): number => b.rank - a.rank || a.x - b.x;

/** What stands already; filled as names are placed. */
interface Table {
  readonly ground: Ground;
  /** What names lead to. */
  readonly places: readonly WantedSpot[];
  readonly taken: Map<string, Spot>;
  readonly lines: Map<string, Line>;
}

const put = ({ taken, lines }: Table, each: WantedSpot, spot: Spot | undefined): void => {
  if (spot === undefined) return;
  taken.set(each.key, spot);
  if (each.stands !== "on") lines.set(each.key, lineOf(spot, each));
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

/** How many others make way for one, and how many places are tried for it: each is a search for each of these. */
const MAKE_WAY = 2;
const TRIED = 48;
/** Whether those who make way may have others make way in their turn: how often. */
const DEEPER = 1;

/** Puts it where the fewest stand in its way that all find room elsewhere. */
const makeWay = (
  name: WantedSpot,
  table: Table,
  { isOff, deeper }: Room & { readonly deeper: number },
): boolean => {
  const { ground, places, taken, lines } = table;
  const tries = waysRound(name)
    .map((way) => movedBy(name, way))
    .filter((spot) => isOnGround(spot, ground, isOff) && isOffPlaces(spot, name, places))
    .flatMap((spot) => {
      const line = lineOf(spot, name);
      const inWay = [...taken]
        .filter(([key, other]) => isInWay({ spot, line }, { spot: other, line: lines.get(key) }))
        .map(([key]) => places.find((place) => place.key === key));
      const others = inWay.filter((other) => other !== undefined);
      return others.length < inWay.length || others.length > MAKE_WAY ? [] : [{ spot, others }];
    })
    .toSorted((a, b) => a.others.length - b.others.length)
    .slice(0, TRIED);
  const stood = new Map(taken);
  for (const { spot, others } of tries) {
    for (const { key } of others) take(table, key);
    put(table, name, spot);
    for (const other of others) put(table, other, ledSpot(other, table, { isOff }));
    const left = others.filter(({ key }) => !taken.has(key));
    if (left.every((other) => deeper > 0 && makeWay(other, table, { isOff, deeper: deeper - 1 })))
      return true;
    for (const each of places) take(table, each.key);
    for (const each of places) put(table, each, stood.get(each.key));
  }
  return false;
};

interface Standing {
  readonly spot: Spot;
  readonly line: Line | undefined;
}

/** One lies over the other, or a line of theirs runs through either or through the other's line. */
const isInWay = (a: Standing, b: Standing): boolean =>
  isOver(a.spot, b.spot) ||
  (a.line !== undefined && isThrough(a.line, b.spot)) ||
  (b.line !== undefined && isThrough(b.line, a.spot)) ||
  (a.line !== undefined && b.line !== undefined && isCrossing(a.line, b.line));

/** What a name may stand farther off than it could before it is placed anew, in pixels: two of its rows. */
const BROUGHT_BACK = 32;

/** Of the names that have become much nearer elsewhere the one that stands farthest off. */
const bringBack = (table: Table, led: readonly WantedSpot[]): void => {
  const far = led
    .flatMap((name) => {
      const spot = table.taken.get(name.key);
      const off = spot === undefined ? 0 : away(spot, name);
      return spot === undefined || off < BROUGHT_BACK ? [] : [{ name, spot, off }];
    })
    .toSorted((a, b) => b.off - a.off);
  for (const { name, spot, off } of far) {
    take(table, name.key);
    const nearer = ledSpot(name, table, { isOff: true, within: off - BROUGHT_BACK });
    put(table, name, nearer ?? spot);
    if (nearer !== undefined) return;
  }
};

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

const isGood = (spot: Spot, name: WantedSpot, table: Table, isOff: boolean): boolean =>
  isOnGround(spot, table.ground, isOff) && hasRoom(spot, name, table);

/** In the picture, over nothing else that is read, and no line crosses another or runs through words. */
const hasRoom = (
  spot: Spot,
  name: WantedSpot,
  { ground, places, taken, lines }: Table,
): boolean => {
  if (!isInside(spot, ground)) return false;
  const line = lineOf(spot, name);
  for (const [key, other] of taken)
    if (isInWay({ spot, line }, { spot: other, line: lines.get(key) })) return false;
  return isOffPlaces(spot, name, places);
};

/** Round the dot at the end of a line, in pixels. */
const DOT = 8;

/** Under another's name or line the end of a line would be lost; ends that lie on each other already are not told apart. */
const isOffPlaces = (spot: Spot, name: WantedSpot, places: readonly WantedSpot[]): boolean => {
  const line = lineOf(spot, name);
  return places.every(
    ({ key, x, y }) =>
      key === name.key ||
      !(
        isOn({ x, y }, spot) ||
        (Math.hypot(x - name.x, y - name.y) > 2 * DOT &&
          isThrough(line, { x, y, width: DOT, height: DOT }))
      ),
  );
};

const isApart = (spot: Spot, name: Point, lines: readonly Line[]): boolean =>
  !lines.some((line) => isCrossing(lineOf(spot, name), line));

/** How far up or down a name may go, in pixels: by little near its place, by a row farther off; and shares of its width aside. */
const NEAR = { step: 5, end: 40 };
const FAR = { step: 16, end: 256 };
const ASIDE = [0, 0.3, 0.6, 0.9, 1.2, 1.6, 2, 2.6];

interface Room {
  /** Off the panels. */
  readonly isOff: boolean;
}

/** The nearest place that has room; `within`: no farther off. */
const ledSpot = (
  name: WantedSpot,
  table: Table,
  { isOff, within = Number.POSITIVE_INFINITY }: Room & { readonly within?: number },
): Spot | undefined => {
  for (const way of waysRound(name)) {
    const spot = movedBy(name, way);
    if (away(spot, name) > within) return undefined;
    if (isOnGround(spot, table.ground, isOff) && hasRoom(spot, name, table)) return spot;
  }
  return undefined;
};

const isOnGround = (spot: Spot, ground: Ground, isOff: boolean): boolean =>
  isInside(spot, ground) && (!isOff || isFree(spot, ground.covered));

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
  return stepsUp(height)
    .flatMap((up) =>
      ASIDE.flatMap((share) => (share === 0 ? [0] : [share, -share])).map((share) => ({
        x: share * width,
        y: up,
        width,
        height,
      })),
    )
    .toSorted((a, b) => away(a, first) - away(b, first));
};

/** For words of that height, which stand off by half of it. */
const stepsUp = (height: number): readonly number[] => {
  const near = Math.floor(NEAR.end / NEAR.step);
  const far = Math.ceil((FAR.end + height / 2 - NEAR.end) / FAR.step);
  const up = [
    ...Array.from({ length: near }, (_, at) => (at + 1) * NEAR.step),
    ...Array.from({ length: far }, (_, at) => NEAR.end + (at + 1) * FAR.step),
  ];
  return [0, ...up, ...up.map((by) => -by)];
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

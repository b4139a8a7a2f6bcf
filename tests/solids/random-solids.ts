// Random solids like those that stand behind a panel: a plate with openings, layers above it with wider or narrower
// openings, notches, a rim, collars round the openings. The same seed gives the same solid.

import { type Contour, circle, loop, point, vertex } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { degrees, mm } from "../../src/geometry/quantity.ts";
import { rectangle, roundedRectangle, slotContour } from "../../src/geometry/shapes.ts";
import {
  type ComposedSolid,
  composed,
  type LayeredSolid,
  layered,
  lofted,
  placed,
  prism,
  revolved,
  type Solid,
  type SolidRegion,
  solidLayer,
  solidRegion,
} from "../../src/geometry/solid/solid.ts";

/** Mulberry32 (public domain): a number from 0 to 1 at each call. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** An opening by how much wider than drawn it is. */
type Opening = (more: number) => Contour;

export function randomLayeredSolid(seed: number): LayeredSolid {
  const random = seeded(seed);
  const columns = 2 + Math.floor(random() * 7);
  const rows = 1 + Math.floor(random() * 4);
  const pitch = 15 + Math.floor(random() * 4000) / 1000;
  const width = columns * pitch + 8;
  const height = rows * pitch + 8;
  const openings: Opening[] = [];
  for (let column = 0; column < columns; column += 1)
    for (let row = 0; row < rows; row += 1) {
      const [x, y] = [4 + pitch * (column + 0.5), 4 + pitch * (row + 0.5)];
      if (random() < 0.85) openings.push(anyOpening(x, y, random));
    }
  const outline = roundedRectangle(extent(0, 0, width, height), 1 + Math.floor(random() * 2));
  const notched = notchedOutline(width, height, random);
  const plate = region(
    outline,
    openings.map((opening) => opening(0)),
  );
  const levels = [0, 1.5 + random() * 2];
  const layers = [solidLayer(0, levels[1]!, [plate])];
  const add = (thickness: number, regions: readonly SolidRegion[]): void => {
    const from = levels.at(-1)!;
    levels.push(from + thickness);
    layers.push(solidLayer(from, from + thickness, regions));
  };
  if (random() < 0.7)
    add(2 + random() * 6, [
      region(
        random() < 0.5 ? outline : notched,
        openings.map((opening) => opening(pick([0, 0.7, 1.3], random))),
      ),
    ]);
  if (random() < 0.7) add(3 + random() * 9, rimAndCollars(width, height, openings));
  return layered(layers);
}

const pick = <Choice>(choices: readonly Choice[], random: () => number): Choice =>
  choices[Math.floor(random() * choices.length)]!;

const region = (outline: Contour, holes: readonly Contour[]): SolidRegion =>
  solidRegion({ outline, holes });

function anyOpening(x: number, y: number, random: () => number): Opening {
  const size = 1.5 + random() * 3;
  const turn = degrees(pick([0, 30, 37, 45, 90], random));
  return pick<Opening>(
    [
      (more) => circle(point(x, y), size + more),
      (more) =>
        rectangle(extent(x - size - more, y - size - more, x + size + more, y + size + more)),
      (more) =>
        slotContour(point(x, y), {
          length: mm(2 * size + 1 + 2 * more),
          width: mm(2 + 2 * more),
          turn,
        }),
      (more) => flattedHole(x, y, size + more),
    ],
    random,
  );
}

/** A round hole with a flat, as a bush with an anti-rotation feature takes. */
function flattedHole(x: number, y: number, radius: number): Contour {
  const flat = 0.8 * radius;
  const half = 0.6 * radius;
  // The arc is the long way round: 360 degrees less twice the angle whose sine is 0.6.
  const bulge = Math.tan((2 * Math.PI - 2 * Math.asin(0.6)) / 4);
  return loop([vertex(x + half, y + flat, 0), vertex(x - half, y + flat, bulge)]);
}

function notchedOutline(width: number, height: number, random: () => number): Contour {
  const at = width * (0.3 + 0.4 * random());
  const half = 1.1 + random();
  return loop([
    vertex(0, 0),
    vertex(at - half, 0),
    vertex(at - half, 1, -1),
    vertex(at + half, 1),
    vertex(at + half, 0),
    vertex(width, 0),
    vertex(width, height),
    vertex(0, height),
  ]);
}

const rimAndCollars = (
  width: number,
  height: number,
  openings: readonly Opening[],
): readonly SolidRegion[] => [
  region(rectangle(extent(0, 0, width, height)), [rectangle(extent(2, 2, width - 2, height - 2))]),
  ...openings.map((opening) => region(opening(1.35), [opening(0)])),
];

/** A block with what can be cut into it from above and put upon it, one thing to a place. */
export function randomComposedSolid(seed: number): ComposedSolid {
  const random = seeded(seed);
  const add: Solid[] = [prism(0, 6, region(roundedRectangle(extent(0, 0, 64, 34), 2), []))];
  const cut: Solid[] = [];
  for (const x of [9.5, 24.5, 39.5, 54.5])
    for (const y of [9.5, 24.5]) {
      const thing = pick([countersink, taperedPocket, collar, gusset, tab], random);
      const { solid, isCut } = thing(x + random(), y + random(), random);
      (isCut ? cut : add).push(solid);
    }
  return composed(add, cut);
}

interface Thing {
  readonly solid: Solid;
  readonly isCut: boolean;
}

function countersink(x: number, y: number, random: () => number): Thing {
  const radius = 1 + random();
  const profile = [
    vertex(0, 0),
    vertex(radius, 0),
    vertex(radius, 6 - 1.2 * radius),
    vertex(2.2 * radius, 6),
    vertex(0, 6),
  ];
  return { solid: revolved(point(x, y), loop(profile), "clear"), isCut: true };
}

function taperedPocket(x: number, y: number, random: () => number): Thing {
  const section = (height: number, half: number) => ({
    height: mm(height),
    outline: roundedRectangle(extent(x - half, y - half, x + half, y + half), half / 4),
    holes: [],
  });
  const half = 2 + random();
  return { solid: lofted([section(2, half), section(6, half * 1.5)]), isCut: true };
}

/** A ring with a rounded top. */
function collar(x: number, y: number, random: () => number): Thing {
  const inner = 1.5 + random();
  const profile = [
    vertex(inner, 6),
    vertex(inner + 2, 6),
    vertex(inner + 2, 8, 1),
    vertex(inner, 8),
  ];
  return { solid: revolved(point(x, y), loop(profile)), isCut: false };
}

/** A triangle on edge. */
function gusset(x: number, y: number, random: () => number): Thing {
  const outline = loop([vertex(0, 0), vertex(4 + random(), 0), vertex(0, 5)]);
  const upright = prism(0, 1.35, region(outline, [circle(point(1.2, 1.2), 0.6)]));
  return { solid: placed(upright, { x, y, z: 6 }, { x: 90, z: 0 }), isCut: false };
}

/** A slot's shape in relief, turned as it falls. */
function tab(x: number, y: number, random: () => number): Thing {
  const shape = slotContour(point(0, 0), { length: mm(7), width: mm(2), turn: degrees(0) });
  const turned = placed(prism(0, 0.6, region(shape, [])), { x, y, z: 6 }, { z: 360 * random() });
  return { solid: turned, isCut: false };
}

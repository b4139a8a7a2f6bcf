// A piece that measures a printer with one stock: ladders of holes, pegs and clearances, walls of one to six lines, bosses for
// inserts. Drawn at nominal size, so that what is read is the printer's own; a loose key is printed beside it.

import type { PrinterDesign, StockDesign } from "../../design/workshop-design.ts";
import {
  type Circle,
  type Contour,
  circle,
  type Point,
  point,
  type Region,
} from "../../geometry/contour.ts";
import { extent } from "../../geometry/extent.ts";
import { mm } from "../../geometry/quantity.ts";
import { rectangle, roundedRectangle } from "../../geometry/shapes.ts";
import { type LayeredSolid, layered, prism, solidRegion } from "../../geometry/solid/solid.ts";
import { placedRegion, placement } from "../../geometry/transform.ts";
import type { Lettering } from "../../lettering/lettering.ts";
import { HEAT_SET_BOSS, HEAT_SET_PILOTS } from "../../standards/heat-set.ts";
import { bareFacts, solidBox } from "./bare-facts.ts";
import { plainRegion } from "./grown-regions.ts";
import type { PrintedPart } from "./printed-part.ts";
import {
  TEST_CLEARANCES,
  TEST_HOLES,
  TEST_KEY,
  TEST_PEGS,
  TEST_PILOTS,
  TEST_PLATE,
  TEST_WALLS,
  testLabel,
} from "./printer-test-piece-features.ts";
import { layerOf } from "./region-sums.ts";
import { reliefFace, reliefText } from "./relief-text.ts";
import { singlePart } from "./single-part.ts";

/** The plate, and the key that tries its slots. */
export const printerTestPiece = (
  printer: PrinterDesign,
  stock: StockDesign,
  lettering: Lettering,
): readonly PrintedPart[] => [
  testPart({ what: "plate", printer, stock, solid: plateSolid(printer, lettering) }),
  testPart({ what: "key", printer, stock, solid: keySolid() }),
];

const testPart = ({
  what,
  printer,
  stock,
  solid,
}: {
  readonly what: string;
  readonly printer: PrinterDesign;
  readonly stock: StockDesign;
  readonly solid: LayeredSolid;
}): PrintedPart =>
  singlePart({
    id: `test-piece-${printer.id}-${stock.id}-${what}`,
    panel: "test-piece",
    title: `Printer test piece, ${printer.id}, ${stock.id}, ${what}`,
    revision: "A",
    role: "test-piece",
    owner: what,
    stock,
    printer,
    solid,
    bedSide: "rear",
    facts: bareFacts(solidBox(solid)),
    span: stock.written.span,
  });

/** Upright, so that its sides are the walls that a part's sides are. */
const keySolid = (): LayeredSolid =>
  prism(
    0,
    TEST_KEY.height,
    solidRegion(plainRegion(rectangle(extent(0, 0, TEST_KEY.width, TEST_KEY.length)))),
  );

/** Of an M3 insert that is 5.7 mm long. */
const BOSS = { outside: 9.2, insert: 5.7 } as const;
const PEG_HEIGHT = 8;
const WALL_HEIGHT = 12;
const WALL_LENGTH = 12;
const LABEL_HEIGHT = 3;
const LABEL_RELIEF = 0.4;
const PLATE_CORNER = 2;

/** Where each row stands on the plate, from its lower left corner. */
const ROWS = { bosses: 11, walls: 36, slots: 60, holes: 86 } as const;

const plateSolid = (printer: PrinterDesign, lettering: Lettering): LayeredSolid => {
  const { width, height, thickness } = TEST_PLATE;
  const outline = roundedRectangle(extent(0, 0, width, height), PLATE_CORNER);
  const plate: Region = { outline, holes: [...holes(), ...slots()] };
  const pegs = pegCircles().map(plainRegion);
  const walls = wallContours(printer).map(plainRegion);
  const bosses = bossPlaces().map((at) => circle(at, BOSS.outside / 2));
  const bored = bosses.map((outside, index) => ({
    outline: outside,
    holes: [circle(outside.centre, (HEAT_SET_PILOTS.m3 + TEST_PILOTS[index]!) / 2)],
  }));
  const solid = bosses.map(plainRegion);
  const words = labels(lettering);
  const boss = thickness + HEAT_SET_BOSS.solidBelow;
  const bossTop = boss + BOSS.insert + HEAT_SET_BOSS.holeBeyondInsert.most;
  const layer = (from: number, to: number, regions: readonly Region[]) =>
    layerOf(from, to, { regions, loops: "exact" });
  return layered([
    layer(0, thickness, [plate]),
    layer(thickness, thickness + LABEL_RELIEF, [...pegs, ...walls, ...solid, ...words]),
    layer(thickness + LABEL_RELIEF, boss, [...pegs, ...walls, ...solid]),
    layer(boss, thickness + PEG_HEIGHT, [...pegs, ...walls, ...bored]),
    layer(thickness + PEG_HEIGHT, bossTop, [...walls, ...bored]),
    layer(bossTop, thickness + WALL_HEIGHT, walls),
  ]);
};

const HOLE_GAP = 5.5;

const holes = (): readonly Circle[] => {
  let x = 0;
  return TEST_HOLES.map((diameter) => {
    const at = point(x + HOLE_GAP + diameter / 2, ROWS.holes);
    x += HOLE_GAP + diameter;
    return circle(at, diameter / 2);
  });
};

const slots = (): readonly Contour[] =>
  TEST_CLEARANCES.map((clearance, index) => {
    const at = slotPlace(index);
    const [across, up] = [TEST_KEY.width / 2 + clearance, TEST_KEY.length / 2 + clearance];
    return rectangle(extent(at.x - across, at.y - up, at.x + across, at.y + up));
  });

const slotPlace = (index: number): Point => point(12 + 15 * index, ROWS.slots);

const PEG_PLACES: readonly number[] = [9, 22, 37, 56];

const pegCircles = (): readonly Circle[] =>
  TEST_PEGS.map((diameter, index) => circle(point(PEG_PLACES[index]!, ROWS.walls), diameter / 2));

const wallPlace = (index: number): Point => point(74 + 9.5 * index, ROWS.walls);

const wallContours = ({ line }: PrinterDesign): readonly Contour[] =>
  TEST_WALLS.map((lines, index) => {
    const at = wallPlace(index);
    const half = (lines * line) / 2;
    return rectangle(
      extent(at.x - half, at.y - WALL_LENGTH / 2, at.x + half, at.y + WALL_LENGTH / 2),
    );
  });

const bossPlaces = (): readonly Point[] =>
  TEST_PILOTS.map((_, index) => point(10 + 24 * index, ROWS.bosses));

/** Below what they name; a boss's stands to its right. */
const labels = (lettering: Lettering): readonly Region[] => {
  const face = reliefFace(lettering);
  if (face === null) return [];
  const below = (x: number, row: number, down: number): Point => point(x, row - down);
  const words: readonly (readonly [string, Point])[] = [
    ...holes().map(
      ({ centre, radius }) => [testLabel(2 * radius), below(centre.x, ROWS.holes, 14)] as const,
    ),
    ...TEST_CLEARANCES.map(
      (clearance, index) =>
        [testLabel(clearance), below(slotPlace(index).x, ROWS.slots, 10.5)] as const,
    ),
    ...pegCircles().map(
      ({ centre, radius }) => [testLabel(2 * radius), below(centre.x, ROWS.walls, 12)] as const,
    ),
    ...TEST_WALLS.map(
      (lines, index) => [testLabel(lines), below(wallPlace(index).x, ROWS.walls, 12)] as const,
    ),
    ...bossPlaces().map(
      (at, index) => [testLabel(TEST_PILOTS[index]!), point(at.x + 12, at.y - 1.5)] as const,
    ),
  ];
  return words.flatMap(([text, at]) =>
    reliefText(face, text, mm(LABEL_HEIGHT)).map((region) =>
      placedRegion(region, placement(at.x, at.y)),
    ),
  );
};

// A piece that measures a laser on one stock: squares and slots along both axes for the kerf, circles, a row of holes
// for a go / no-go pin, lettering at three heights, a solid patch for opacity. Drawn at nominal size: no kerf is put in.

import type { MachineDesign, StockDesign } from "../design/workshop-design.ts";
import {
  type Contour,
  circle,
  type Path,
  type Point,
  path,
  point,
  vertex,
} from "../geometry/contour.ts";
import { type Extent, extent, extentCentre, grownExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { decimal } from "../geometry/number.ts";
import { mm } from "../geometry/quantity.ts";
import { rectangle } from "../geometry/shapes.ts";
import { placedPath, placedRegion, placement } from "../geometry/transform.ts";
import { cutWidthOf } from "../layout/markings/style.ts";
import type { Face } from "../lettering/face.ts";
import type { Lettering } from "../lettering/lettering.ts";
import { setText } from "../lettering/set-text.ts";
import type { Operation, SheetPart } from "./sheet-part.ts";

/** What is measured, by the name that stands beside it on the piece. Nominal sizes in mm. */
export interface TestFeature {
  readonly id: string;
  readonly what: "piece-x" | "piece-y" | "opening-x" | "opening-y" | "circle" | "pin-hole";
  readonly nominal: number;
}

const PLATE: Extent = extent(0, 0, 120, 80);
const SQUARE = 20;
const SLOT_LENGTH = 20;
const SLOT_WIDTH = 3;
const CIRCLE = 10;
/** Go / no-go row for a 1/4-40 bush of 6.35 mm: 6.4 to 7.0. */
const PIN_HOLES: readonly number[] = [6.4, 6.5, 6.6, 6.7, 6.8, 6.9, 7];
const LETTER_HEIGHTS: readonly number[] = [3, 3.5, 4];

export const TEST_FEATURES: readonly TestFeature[] = [
  { id: "square-x", what: "piece-x", nominal: SQUARE },
  { id: "square-y", what: "piece-y", nominal: SQUARE },
  { id: "slot-x", what: "opening-x", nominal: SLOT_WIDTH },
  { id: "slot-y", what: "opening-y", nominal: SLOT_WIDTH },
  { id: "circle", what: "circle", nominal: CIRCLE },
  ...PIN_HOLES.map((nominal) => ({
    id: `pin-${decimal(nominal, 1)}`,
    what: "pin-hole" as const,
    nominal,
  })),
];

export const laserTestPiece = (
  machine: MachineDesign,
  stock: StockDesign,
  lettering: Lettering,
): SheetPart => {
  const line = [...lettering.faces.values()].find(({ kind }) => kind === "single-line");
  const outline = [...lettering.faces.values()].find(({ kind }) => kind === "outline");
  const width = cutWidthOf(machine);
  return {
    kind: "sheet-part",
    id: `test-piece-${stock.id}`,
    panel: "test-piece",
    layer: stock.id,
    title: `Laser test piece, ${stock.id}`,
    revision: "A",
    stock,
    thickness: stock.measured ?? stock.nominal,
    setUps: [
      {
        id: "1-engrave-and-cut",
        machine,
        faceUp: "front",
        instructions: [
          "Cut at the settings that the panel will be cut with. No kerf is compensated in this file, on purpose.",
          "Keep the square: it is measured as a piece. Measure slots and circle as openings.",
        ],
        operations: [
          ...(line === undefined ? [] : captions(line, width)),
          ...letters(outline),
          ...cuts(),
        ],
        sheet: grownExtent(PLATE, 8),
        kerf: { kind: "left-to-cutter" },
      },
    ],
    handOperations: [],
  };
};

const cuts = (): readonly Operation[] => [
  cut("square", rectangle(box(24, 58, SQUARE, SQUARE))),
  // A slot's width is measured across it: the upright one gives x, the lying one y.
  cut("slot-x", rectangle(box(50, 58, SLOT_WIDTH, SLOT_LENGTH))),
  cut("slot-y", rectangle(box(72, 58, SLOT_LENGTH, SLOT_WIDTH))),
  cut("circle", circle(point(100, 58), CIRCLE / 2)),
  ...PIN_HOLES.map((size, index) =>
    cut(`pin-${decimal(size, 1)}`, circle(pinPlace(index), size / 2)),
  ),
  { ...cut("outline", rectangle(PLATE)), process: "cut-outer" },
];

const pinPlace = (index: number): Point => point(15 + 15 * index, 32);

const box = (x: number, y: number, width: number, height: number): Extent =>
  extent(x - width / 2, y - height / 2, x + width / 2, y + height / 2);

const cut = (feature: string, contour: Contour): Operation & { readonly kind: "cut" } => ({
  kind: "cut",
  process: "cut-inner",
  feature,
  centre: extentCentre(contourExtent(contour)),
  contour,
});

/** Names beside what they belong to, in a single line, and the axes. */
const captions = (face: Face, width: number): readonly Operation[] => {
  const words: readonly (readonly [string, Point])[] = [
    ["SQUARE X Y", point(24, 71)],
    ["SLOT X", point(50, 71)],
    ["SLOT Y", point(72, 62.5)],
    ["CIRCLE", point(100, 66)],
    ...PIN_HOLES.map((size, index) => [decimal(size, 1), point(pinPlace(index).x, 38)] as const),
    ["X >", point(112, 3)],
    ["OPACITY", point(101, 18)],
  ];
  const paths = words.flatMap(([text, at]) => written(face, text, at));
  const axis = path([vertex(104, 8), vertex(116, 8)]);
  return [
    {
      kind: "stroke",
      process: "score",
      feature: "captions",
      paths: [...paths, axis],
      width: mm(width),
    },
  ];
};

const written = (face: Face, text: string, at: Point): readonly Path[] => {
  const set = setText(face, text, { capHeight: mm(2.5), align: "middle" });
  return set.strokes.map((stroke) => placedPath(stroke, placement(at.x, at.y)));
};

/** Capitals at three heights, and a patch that shows how opaque the paint is once it is engraved away beside it. */
const letters = (face: Face | undefined): readonly Operation[] => {
  const patch = { outline: rectangle(box(101, 12.5, 12, 5)), holes: [] };
  const opacity: Operation = {
    kind: "fill",
    process: "engrave",
    feature: "opacity",
    regions: [patch],
  };
  if (face === undefined) return [opacity];
  const lines = LETTER_HEIGHTS.map((height, index): Operation => {
    const set = setText(face, `LEGEND ${decimal(height, 1)}`, {
      capHeight: mm(height),
      align: "start",
    });
    const at = placement(6 + 30 * index, 14);
    const regions = set.fills.map((region) => placedRegion(region, at));
    return { kind: "fill", process: "engrave", feature: `legend-${decimal(height, 1)}`, regions };
  });
  return [...lines, opacity];
};

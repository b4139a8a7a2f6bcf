// Two hashes of a sheet part: of its shape (what a caliper would find) and of its setting (kerf, machine, side).
// Titles, revision letters, witness marks and the place in the design text are left out: they change nothing that is cut.

import type { Contour, Path } from "../geometry/contour.ts";
import type { Operation, SetUp, SheetPart } from "../parts/sheet-part.ts";
import { sha256 } from "./sha256.ts";
import { utf8Bytes } from "./utf8.ts";

/** Coordinates count to a ten-thousandth of a millimetre, as in the cut files. */
const GRID = 10_000;

export interface PartHash {
  readonly id: string;
  readonly shape: string;
  readonly setting: string;
}

export const partHash = (part: SheetPart): PartHash => ({
  id: part.id,
  shape: hashOf([
    part.stock.id,
    onGrid(part.thickness),
    part.setUps.map((setUp) =>
      setUp.operations.filter(({ process }) => process !== "witness").map(operationShape),
    ),
    part.handOperations.map((hand) => [
      hand.what,
      hand.tool,
      hand.side,
      hand.depth === null ? null : onGrid(hand.depth),
      hand.at === null ? null : [onGrid(hand.at.x), onGrid(hand.at.y)],
    ]),
  ]),
  setting: hashOf(part.setUps.map(setUpSetting)),
});

const hashOf = (value: unknown): string => sha256(utf8Bytes(JSON.stringify(value)));

// Adding zero turns -0 into 0.
const onGrid = (value: number): number => Math.round(value * GRID) / GRID + 0;

const setUpSetting = ({ id, machine, faceUp, kerf }: SetUp): unknown => [
  id,
  machine.id,
  faceUp,
  kerf.kind === "in-file" ? [onGrid(kerf.x), onGrid(kerf.y)] : kerf.kind,
];

const operationShape = (operation: Operation): unknown => {
  switch (operation.kind) {
    case "cut":
      return [operation.process, contourShape(operation.contour)];
    case "fill":
      return [
        operation.process,
        operation.regions.map(({ outline, holes }) => [
          contourShape(outline),
          holes.map(contourShape),
        ]),
      ];
    case "stroke":
      return [operation.process, onGrid(operation.width), operation.paths.map(vertexShape)];
  }
};

const contourShape = (contour: Contour): unknown =>
  contour.kind === "circle"
    ? [onGrid(contour.centre.x), onGrid(contour.centre.y), onGrid(contour.radius)]
    : vertexShape(contour);

const vertexShape = ({ vertices }: Pick<Path, "vertices">): unknown =>
  vertices.map(({ x, y, bulge }) => [onGrid(x), onGrid(y), onGrid(bulge)]);

// Where light of a lamp box's cell could get to besides its own window: the other cells, other openings of the face, and
// out past the box's own wall. A cell that its walls shut off at every height, between lid and sheet, has none of them.

import { containsPoint } from "../geometry/containment.ts";
import type { Point } from "../geometry/contour.ts";
import { contourDistance } from "../geometry/distance.ts";
import { extentCentre, grownExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { samePlace } from "../geometry/tolerance.ts";
import type { PanelLayout } from "../layout/panel-layout.ts";
import {
  isLampBoxPart,
  type LampBoxPart,
  type LampCellFact,
} from "../parts/printed/lamp-box-facts.ts";
import { cellAt, printedSlices, type Slice } from "./air-cell.ts";
import { cellLamps, type Lamp } from "./lamp.ts";
import type { LightScene } from "./light-scene.ts";
import { holeOpening, type Opening } from "./opening.ts";
import { holeTargets, rimTargets, wallTargets } from "./opening-targets.ts";

export interface CellOpenings {
  readonly lamps: readonly Lamp[];
  readonly openings: readonly Opening[];
}

export const cellOpenings = (scene: LightScene): readonly CellOpenings[] =>
  scene.printedParts.filter(isLampBoxPart).flatMap((box) => {
    const slices = printedSlices(box.id, scene);
    const seat = seatOf(box, scene.layout);
    const lid = lidOf(box, scene);
    const isShut = isShutInFront(slices, seat) && isShutBehind(slices, lid);
    return box.lampBox.cells
      .filter((cell) => !isShut || !isWalled(cell, box, slices))
      .map((cell) => ({
        lamps: cellLamps(cell, box.lampBox),
        openings: openingsOf(cell, box, { seat, lid, scene }),
      }));
  });

/** The rear of the sheet that its windows are cut in. */
const seatOf = ({ lampBox, facts }: LampBoxPart, { components }: PanelLayout): number =>
  components.find(({ id }) => id === lampBox.cells[0]?.window)?.seat ?? facts.box.front;

const isShutInFront = (slices: readonly Slice[], seat: number): boolean =>
  Math.max(...slices.map(({ high }) => high)) >= seat - samePlace;

/** z of the lid's face, on which the box lies; the box's own rear where it has none. */
const lidOf = ({ owner, facts }: LampBoxPart, { printedParts }: LightScene): number =>
  printedParts.find((part) => part.role === "lamp-box-lid" && part.owner === owner)?.facts.box
    .front ?? facts.box.rear;

const isShutBehind = (slices: readonly Slice[], lid: number): boolean =>
  Math.min(...slices.map(({ low }) => low)) <= lid + samePlace;

/** At every height its room is closed, and its own alone. */
const isWalled = (
  cell: LampCellFact,
  { lampBox }: LampBoxPart,
  slices: readonly Slice[],
): boolean => {
  const at = middleOf(cell);
  const others = lampBox.cells.filter((other) => other !== cell).map(middleOf);
  return slices.every((slice) => {
    const { within } = cellAt(slice, at);
    return (
      within !== null &&
      containsPoint(within, at) &&
      !others.some((other) => containsPoint(within, other))
    );
  });
};

const middleOf = ({ inside }: LampCellFact): Point => extentCentre(contourExtent(inside));

interface BoxScene {
  /** z of the sheet in front of the box, and of the lid behind it. */
  readonly seat: number;
  readonly lid: number;
  readonly scene: LightScene;
}

const openingsOf = (
  cell: LampCellFact,
  box: LampBoxPart,
  { seat, lid, scene }: BoxScene,
): readonly Opening[] => [
  ...box.lampBox.cells
    .filter((other) => other !== cell && areNeighbours(cell, other))
    .map((other) => intoCell(other, box)),
  ...inFace(box, scene),
  pastWall(cell, box, { low: lid, high: seat }),
];

/** Light that gets past a neighbour gets into that one first. */
const areNeighbours = (a: LampCellFact, b: LampCellFact): boolean =>
  contourDistance(a.opening, b.opening).gap <= NEIGHBOURS_APART;

/** Wider than any wall between cells; narrower than a cell. */
const NEIGHBOURS_APART = 8;

/** It is enough that light comes in: white walls and a diffuser spread it over the whole window. */
const intoCell = ({ window, opening, inside }: LampCellFact, box: LampBoxPart): Opening => {
  const { rear, front } = box.facts.box;
  const shelf = front - box.lampBox.shelf.depth;
  return {
    kind: "cell",
    owner: window,
    at: extentCentre(contourExtent(opening)),
    targets: () => [
      ...HEIGHTS.flatMap((share) => rimTargets(inside, rear + share * (shelf - rear), [])),
      ...holeTargets(opening, front, []),
    ],
    throat: null,
    reach: "into",
  };
};

/** So many heights of a wall that light may fall on: a gap's light has spread to several times its height there. */
const HEIGHTS = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9] as const;

const inFace = ({ lampBox }: LampBoxPart, { layout }: LightScene): readonly Opening[] => {
  const [face] = layout.layers;
  if (face === undefined || face.kind !== "sheet") return [];
  const own = new Set(lampBox.cells.map(({ window }) => window));
  return face.cutOuts
    .filter(({ owner }) => !own.has(owner))
    .flatMap((cutOut) => holeOpening(cutOut, face, layout));
};

/** From a cell to the box's own sides: wall, flange, and the bosses of its lid. */
const TO_SIDES = 16;

/** Out over the box's sides, as far as they lie near the cell. */
const pastWall = (
  cell: LampCellFact,
  { facts: { box } }: LampBoxPart,
  heights: { readonly low: number; readonly high: number },
): Opening => {
  const near = grownExtent(contourExtent(cell.opening), TO_SIDES);
  return {
    kind: "box",
    owner: cell.window,
    at: middleOf(cell),
    targets: () =>
      wallTargets(box.plan, heights).filter(
        ({ x, y }) => x >= near.minX && x <= near.maxX && y >= near.minY && y <= near.maxY,
      ),
    throat: null,
    reach: "beyond",
  };
};

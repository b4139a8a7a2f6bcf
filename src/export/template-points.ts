// What a paper template marks on a part: every opening with its number, place and size, and what a hand does there.
// Takes a sheet part and the side that is looked at; gives numbered points in that side's coordinates, from the lower left
// corner of the part's outline. Seen from behind, x runs the other way: mirrored here, once.

import type { Contour, Point } from "../geometry/contour.ts";
import { point } from "../geometry/contour.ts";
import {
  type Extent,
  extent,
  extentHeight,
  extentWidth,
  joinedExtent,
} from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { decimal } from "../geometry/number.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { mirroredContour, placedContour, placement } from "../geometry/transform.ts";
import type { HandOperation, Operation, SheetPart } from "../parts/sheet-part.ts";

export type TemplateSide = "FRONT" | "BACK";

export interface TemplatePoints {
  readonly width: Mm;
  readonly height: Mm;
  readonly outlines: readonly Contour[];
  readonly points: readonly TemplatePoint[];
  /** Work that has no place of its own: "paint, two coats". */
  readonly placeless: readonly string[];
}

export interface TemplatePoint {
  readonly number: number;
  readonly feature: string;
  readonly at: Point;
  /** null where only a hand works. */
  readonly contour: Contour | null;
  readonly size: string;
  readonly work: readonly string[];
}

/** mm on paper: a rule reads no more. */
const PLACES = 2;

export const templatePoints = (part: SheetPart, side: TemplateSide): TemplatePoints => {
  const cuts = part.setUps.flatMap((setUp) => setUp.operations).filter(isCut);
  const outers = cuts.filter((cut) => cut.process === "cut-outer");
  const box = boxOf(outers.length > 0 ? outers : cuts);
  const seen = sideView(box, side);
  const openings = uniqueOpenings(cuts.filter((cut) => cut.process !== "cut-outer"));
  const { entries, others } = entriesOf(openings, part.handOperations);
  return {
    width: extentWidth(box),
    height: extentHeight(box),
    outlines: outers.map((cut) => seen.contour(cut.contour)),
    points: entries.map((entry, index) => ({
      number: index + 1,
      feature: entry.feature,
      at: seen.place(entry.at),
      contour: entry.contour === null ? null : seen.contour(entry.contour),
      size: entry.contour === null ? "" : sizeWords(entry.contour),
      work: entry.operations.map(workWords),
    })),
    placeless: others.map((work) => `${work.feature}: ${workWords(work)}`),
  };
};

interface Entry {
  readonly feature: string;
  readonly at: Point;
  readonly contour: Contour | null;
  readonly operations: readonly HandOperation[];
}

/** Openings with the work that belongs to them, then places where only a hand works, then work without a place. */
const entriesOf = (
  openings: readonly Cut[],
  work: readonly HandOperation[],
): { readonly entries: readonly Entry[]; readonly others: readonly HandOperation[] } => {
  const entries: Entry[] = openings.map((cut) => ({
    feature: cut.feature,
    at: cut.centre,
    contour: cut.contour,
    operations: work.filter((operation) => isAt(operation, cut, openings)),
  }));
  const handled = new Set(entries.flatMap((entry) => entry.operations));
  const others = work.filter((operation) => !handled.has(operation));
  for (const operation of others) {
    const { feature, at } = operation;
    if (at !== null) entries.push({ feature, at, contour: null, operations: [operation] });
  }
  return { entries, others: others.filter((operation) => operation.at === null) };
};

const boxOf = (cuts: readonly Cut[]): Extent => {
  const boxes = cuts.map((cut) => contourExtent(cut.contour));
  const first = boxes[0] ?? extent(0, 0, 0, 0);
  return boxes.reduce(joinedExtent, first);
};

type Cut = Extract<Operation, { readonly kind: "cut" }>;

const isCut = (operation: Operation): operation is Cut => operation.kind === "cut";

/** A hole that two set-ups share is one hole. */
const uniqueOpenings = (cuts: readonly Cut[]): readonly Cut[] =>
  cuts.filter((cut, index) => cuts.findIndex((other) => isSameOpening(other, cut)) === index);

const isSameOpening = (a: Cut, b: Cut): boolean =>
  a.feature === b.feature && a.centre.x === b.centre.x && a.centre.y === b.centre.y;

/** A hand operation belongs to the opening of its feature, or to the nearest of several. */
const isAt = (work: HandOperation, cut: Cut, openings: readonly Cut[]): boolean => {
  if (work.feature !== cut.feature) return false;
  const at = work.at;
  if (at === null) return openings.filter((other) => other.feature === work.feature).length === 1;
  return at.x === cut.centre.x && at.y === cut.centre.y;
};

interface SideView {
  readonly place: (at: Point) => Point;
  readonly contour: (contour: Contour) => Contour;
}

const sideView = (box: Extent, side: TemplateSide): SideView => {
  const shift = placement(-box.minX, -box.minY);
  if (side === "FRONT")
    return {
      place: (at) => point(at.x - box.minX, at.y - box.minY),
      contour: (contour) => placedContour(contour, shift),
    };
  const axis = mm((box.minX + box.maxX) / 2);
  return {
    place: (at) => point(box.maxX - at.x, at.y - box.minY),
    contour: (contour) => placedContour(mirroredContour(contour, axis), shift),
  };
};

const sizeWords = (contour: Contour): string => {
  if (contour.kind === "circle") return `dia ${decimal(2 * contour.radius, PLACES)}`;
  const box = contourExtent(contour);
  return `${decimal(extentWidth(box), PLACES)} x ${decimal(extentHeight(box), PLACES)}`;
};

const workWords = (work: HandOperation): string => {
  const depth = work.depth === null ? "" : `, ${decimal(work.depth, PLACES)} deep`;
  const tool = work.tool === "" ? "" : `, ${work.tool}`;
  return `${work.what} from the ${work.side}${tool}${depth}`;
};

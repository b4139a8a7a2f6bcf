// One thing of a component list as the arranger sees it: how far it reaches round its axis, by what must stay apart.

import type { Hardware } from "../catalogue/hardware.ts";
import type { Part } from "../catalogue/part.ts";
import type { Catalogue } from "../catalogue/record.ts";
import { shapeContour } from "../catalogue/shape-contour.ts";
import type { ListLine } from "../design/component-list.ts";
import { LEGEND_GAP } from "../design/usual-values.ts";
import { point } from "../geometry/contour.ts";
import { type Extent, extent, joinedExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { partBodies, shapeAtContour } from "../layout/bodies.ts";
import { leverTravel } from "../layout/lever-travel.ts";
import type { TextStyle } from "../layout/markings/style.ts";
import { textBlock } from "../layout/markings/text-block.ts";
import type { HandKind } from "../standards/separation.ts";

export interface Unit {
  readonly id: string;
  /** What a row of its kind is called, should it stand in one. */
  readonly rowId: string;
  readonly line: ListLine;
  readonly part: Part;
  readonly fitted: readonly Hardware[];
  readonly legend: string | null;
  readonly group: string;
  readonly hand: HandKind;
  /** Bodies, openings, face: what can't share space with a neighbour's. */
  readonly solid: Extent;
  /** What the hand takes hold of; null for what is not touched. */
  readonly grasp: Extent | null;
  /** The legend above it; null where it has none. */
  readonly words: Extent | null;
  /** What its legend keeps from it, where the usual gap would leave it under the thrown lever; null elsewhere. */
  readonly gap: Mm | null;
}

/** Everything of a unit together. */
export const unitReach = (unit: Unit): Extent =>
  unit.words === null ? unit.solid : joinedExtent(unit.solid, unit.words);

export const unitOf = (
  named: Pick<Unit, "id" | "rowId" | "line" | "part" | "legend">,
  options: { readonly catalogue: Catalogue; readonly style: TextStyle },
): Unit => {
  const { part, legend, line } = named;
  const { catalogue, style } = options;
  const fitted = part.usual.flatMap((id) => catalogue.hardware.get(id) ?? []);
  const made = partBodies(part, { fitted, catalogue, gripped: TYPICAL_GRIP });
  const openings = openingExtents(part);
  const face = made.face.map(contourExtent);
  const bodies = made.bodies.map((body) => contourExtent(body.footprint));
  const solid = [...openings, ...face, ...bodies].reduce(joinedExtent);
  const front = [...frontExtents(part), ...face].reduce(joinedExtent);
  const foot = face.reduce(joinedExtent, contourExtent(shapeContour(part.openings.clamp)));
  const gap = leverGap(part, fitted, foot);
  return {
    ...named,
    fitted,
    group: line.group ?? "",
    hand: part.hand,
    solid,
    grasp: made.grasp === null ? null : contourExtent(made.grasp),
    words: legend === null ? null : wordsAbove(legend, { front, foot, gap }, style),
    gap,
  };
};

/** Free between a thrown lever and a legend, and the step of what is written: common practice. */
const LEVER_CLEAR = 0.5;
const GAP_STEP = 0.5;

/** A lever that is thrown upward covers what stands close above its nut. */
const leverGap = (part: Part, fitted: readonly Hardware[], foot: Extent): Mm | null => {
  const travel = leverTravel(part, fitted);
  if (travel === null || travel.line % HALF_TURN !== 0) return null;
  const over = travel.reach + LEVER_CLEAR - foot.maxY;
  return over <= LEGEND_GAP + LEVER_CLEAR / 2 ? null : mm(Math.ceil(over / GAP_STEP) * GAP_STEP);
};

const HALF_TURN = 180;

/** A layer or two of sheet: only how far a nut stands off depends on it. */
const TYPICAL_GRIP: Mm = mm(2);

const openingExtents = (part: Part): readonly Extent[] => {
  const { openings, hold } = part;
  const screws =
    hold.kind === "screws"
      ? hold.holes.map(({ at, diameter }) => square(at.x, at.y, diameter / 2))
      : [];
  const behind = openings.behind === null ? [] : [contourExtent(shapeContour(openings.behind))];
  const tabs = openings.tabs.map((tab) => contourExtent(shapeAtContour(tab)));
  return [...frontExtents(part), ...tabs, ...screws, ...behind];
};

const frontExtents = (part: Part): readonly Extent[] => {
  const { openings, display } = part;
  const clamp = contourExtent(shapeContour(openings.clamp));
  if (openings.front === null) return [clamp];
  const at = display?.window.at ?? point(0, 0);
  return [clamp, contourExtent(shapeAtContour({ shape: openings.front, at }))];
};

const square = (x: number, y: number, half: number): Extent =>
  extent(x - half, y - half, x + half, y + half);

const wordsAbove = (
  legend: string,
  on: { readonly front: Extent; readonly foot: Extent; readonly gap: Mm | null },
  style: TextStyle,
): Extent => {
  const { front, foot, gap } = on;
  const { box } = textBlock(legend, style, "middle");
  const middle = (front.minX + front.maxX) / 2;
  const low = Math.max(front.maxY + LEGEND_GAP, foot.maxY + (gap ?? LEGEND_GAP));
  return extent(middle + box.minX, low, middle + box.maxX, low + box.maxY - box.minY);
};

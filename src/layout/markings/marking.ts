// Builders that every kind of marking shares: shapes gathered under one id, a text set at a place, a tick, a line.

import type { Span } from "../../diagnostics/finding.ts";
import { type Point, point, type Region } from "../../geometry/contour.ts";
import { type Extent, joinedExtent, movedExtent } from "../../geometry/extent.ts";
import { pointDistance } from "../../geometry/point.ts";
import { type Degrees, degrees, type Mm, mm } from "../../geometry/quantity.ts";
import { slotContour } from "../../geometry/shapes.ts";
import { type Placement, placedPath, placedRegion, placement } from "../../geometry/transform.ts";
import { arcTangent2, toDegrees } from "../../geometry/trigonometry.ts";
import type { PlacedMarking } from "../panel-layout.ts";
import type { TextStyle } from "./style.ts";
import { type Align, inkBox, type TextBlock, textBlock } from "./text-block.ts";

/** What identifies a marking, whatever its shape. */
export type MarkingHead = Pick<PlacedMarking, "id" | "owner" | "kind" | "layer" | "side"> & {
  readonly span: Span;
};

/** The shapes of a marking, before they are gathered under an id. */
export interface MarkingShapes {
  readonly fills: readonly Region[];
  readonly strokes: PlacedMarking["strokes"];
  readonly thinnest: Mm;
  readonly missing: readonly string[];
  /** Round fills and centre lines; null where there is nothing to see. */
  readonly box: Extent | null;
}

export const joinedShapes = (all: readonly MarkingShapes[]): MarkingShapes => ({
  fills: all.flatMap((shapes) => shapes.fills),
  strokes: all.flatMap((shapes) => shapes.strokes),
  thinnest: mm(Math.min(Infinity, ...all.map((shapes) => shapes.thinnest))),
  missing: [...new Set(all.flatMap((shapes) => shapes.missing))],
  box: boxRound(all.flatMap((shapes) => shapes.box ?? [])),
});

const boxRound = (boxes: readonly Extent[]): Extent | null =>
  boxes.length === 0 ? null : boxes.reduce(joinedExtent);

/** Text about its middle (or start, or end) at a point, turned counter-clockwise about that point. */
export const textAt = (
  text: string,
  at: Point,
  options: { readonly style: TextStyle; readonly align?: Align; readonly turn?: Degrees },
): MarkingShapes => {
  const { style, align = "middle", turn = degrees(0) } = options;
  const block = textBlock(text, style, align);
  return placedText(block, placement(at.x, at.y, turn), style.cutWidth);
};

/** Most words of a panel stand where they stood before an edit: they are the very shapes that they were. */
const placedText = (block: TextBlock, place: Placement, cutWidth: Mm): MarkingShapes => {
  const known = PLACED.get(block) ?? new Map<string, MarkingShapes>();
  PLACED.set(block, known);
  // A block is of one width of line: it was set for it.
  const key = `${place.x} ${place.y} ${place.turn}`;
  const shapes = known.get(key) ?? newlyPlaced(block, place, cutWidth);
  known.delete(key);
  known.set(key, shapes);
  const [oldest] = known.size > MOST_PLACES ? known.keys() : [];
  if (oldest !== undefined) known.delete(oldest);
  return shapes;
};

const PLACED = new WeakMap<TextBlock, Map<string, MarkingShapes>>();
/** Of one word: what stands more often on a panel, or was moved more often since, is placed again. */
const MOST_PLACES = 12;

const newlyPlaced = (block: TextBlock, place: Placement, cutWidth: Mm): MarkingShapes => {
  const { x, y, turn } = place;
  const fills = block.fills.map((region) => placedRegion(region, place));
  const paths = block.strokes.map((path) => placedPath(path, place));
  return {
    fills,
    strokes: paths.map((path) => ({ path, width: cutWidth })),
    thinnest: block.thinnest,
    missing: block.missing,
    box: turn === 0 ? block.ink && movedExtent(block.ink, x, y) : inkBox(fills, paths),
  };
};

/** A straight line with round ends, as a filled shape. */
export const lineShape = (from: Point, to: Point, width: Mm): MarkingShapes => {
  const middle = point((from.x + to.x) / 2, (from.y + to.y) / 2);
  const turn = toDegrees(arcTangent2(to.y - from.y, to.x - from.x));
  const length = mm(pointDistance(from, to) + width);
  return regionShapes(
    [{ outline: slotContour(middle, { length, width, turn }), holes: [] }],
    width,
  );
};

export const regionShapes = (fills: readonly Region[], thinnest: Mm): MarkingShapes => ({
  fills,
  strokes: [],
  thinnest,
  missing: [],
  box: inkBox(fills, []),
});

/** A marking from its shapes; null where nothing is left to mark (a text of blanks). */
export const marking = (
  head: MarkingHead,
  shapes: MarkingShapes,
  lettered: {
    readonly text: string;
    readonly capHeight: Mm;
    /** Where the text is not all of it, or not in one place. */
    readonly words?: readonly Extent[];
  } | null,
): PlacedMarking | null => {
  const { box } = shapes;
  if (box === null && shapes.missing.length === 0) return null;
  const { span } = head;
  return {
    ...head,
    fills: shapes.fills,
    strokes: shapes.strokes,
    text: lettered?.text ?? null,
    capHeight: lettered?.capHeight ?? null,
    strokeWidth: shapes.thinnest,
    box: box ?? EMPTY,
    words: lettered === null || box === null ? [] : (lettered.words ?? [box]),
    missing: shapes.missing,
    span,
  };
};

const EMPTY: Extent = { minX: mm(0), minY: mm(0), maxX: mm(0), maxY: mm(0) };

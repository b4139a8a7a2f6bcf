// One or more lines of lettering as shapes about their own anchor: x by alignment, y = 0 at the block's middle. A text that
// was set before is taken as it was: most of a panel's words stay while one of them is written.

import type { Path, Region } from "../../geometry/contour.ts";
import { type Extent, extent, joinedExtent } from "../../geometry/extent.ts";
import { contourExtent, pathExtent } from "../../geometry/measure.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { placedPath, placedRegion, placement } from "../../geometry/transform.ts";
import type { Face } from "../../lettering/face.ts";
import { setText } from "../../lettering/set-text.ts";
import type { TextStyle } from "./style.ts";

export interface TextBlock {
  readonly fills: readonly Region[];
  readonly strokes: readonly Path[];
  /** Cap-height box of the lines: what spacing is measured from. */
  readonly box: Extent;
  /** Box round what is seen; null where nothing is. */
  readonly ink: Extent | null;
  readonly missing: readonly string[];
  /** Thinnest stroke of its letters as seen. */
  readonly thinnest: Mm;
}

/** From one baseline to the next: a gap of half a height between lines (NUREG-0700 Rev 3, 11.4.1.5-7). */
const LINE_PITCH = 1.5;

export type Align = "start" | "middle" | "end";

export const textBlock = (text: string, style: TextStyle, align: Align): TextBlock => {
  const kept = keptFor(style.face);
  const key = `${style.height} ${style.cutWidth} ${align} ${text}`;
  const known = kept.get(key);
  if (known !== undefined) return known;
  const block = newBlock(text, style, align);
  const [oldest] = kept.size < MOST_KEPT ? [] : kept.keys();
  if (oldest !== undefined) kept.delete(oldest);
  if (text.length <= LONGEST_KEPT) kept.set(key, block);
  return block;
};

/** A dozen crowded panels; what is longer than a legend is not kept. */
const MOST_KEPT = 2000;
const LONGEST_KEPT = 60;

const KEPT = new WeakMap<Face, Map<string, TextBlock>>();

const keptFor = (face: Face): Map<string, TextBlock> => {
  const known = KEPT.get(face);
  if (known !== undefined) return known;
  const fresh = new Map<string, TextBlock>();
  KEPT.set(face, fresh);
  return fresh;
};

const newBlock = (text: string, style: TextStyle, align: Align): TextBlock => {
  const lines = text.split("\n");
  const pitch = style.height * LINE_PITCH;
  const height = style.height + (lines.length - 1) * pitch;
  const blocks = lines.map((line, index) =>
    oneLine(line, style, { align, baseline: height / 2 - style.height - index * pitch }),
  );
  return blocks.reduce(joined);
};

const oneLine = (
  line: string,
  style: TextStyle,
  options: { readonly align: Align; readonly baseline: number },
): TextBlock => {
  const set = setText(style.face, line, { capHeight: style.height, align: options.align });
  const at = placement(0, options.baseline);
  const left = { start: 0, middle: -set.advance / 2, end: -set.advance }[options.align];
  const fills = set.fills.map((region) => placedRegion(region, at));
  const strokes = set.strokes.map((path) => placedPath(path, at));
  return {
    fills,
    strokes,
    ink: inkBox(fills, strokes),
    box: extent(left, options.baseline, left + set.advance, options.baseline + style.height),
    missing: set.missing,
    thinnest: style.face.kind === "single-line" ? style.cutWidth : set.thinnest,
  };
};

const joined = (a: TextBlock, b: TextBlock): TextBlock => ({
  fills: [...a.fills, ...b.fills],
  strokes: [...a.strokes, ...b.strokes],
  box: joinedExtent(a.box, b.box),
  ink: a.ink === null || b.ink === null ? (a.ink ?? b.ink) : joinedExtent(a.ink, b.ink),
  missing: [...new Set([...a.missing, ...b.missing])],
  thinnest: mm(Math.min(a.thinnest, b.thinnest)),
});

/** Box round filled shapes and centre lines; null round nothing. */
export const inkBox = (fills: readonly Region[], strokes: readonly Path[]): Extent | null => {
  const boxes = [
    ...fills.map((region) => contourExtent(region.outline)),
    ...strokes.map(pathExtent),
  ];
  return boxes.length === 0 ? null : boxes.reduce(joinedExtent);
};

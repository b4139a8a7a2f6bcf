// One or more lines of lettering as shapes about their own anchor: x by alignment, y = 0 at the block's middle.

import type { Path, Region } from "../../geometry/contour.ts";
import { type Extent, extent, joinedExtent } from "../../geometry/extent.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { placedPath, placedRegion, placement } from "../../geometry/transform.ts";
import { setText } from "../../lettering/set-text.ts";
import type { TextStyle } from "./style.ts";

export interface TextBlock {
  readonly fills: readonly Region[];
  readonly strokes: readonly Path[];
  /** Cap-height box of the lines: what spacing is measured from. */
  readonly box: Extent;
  readonly missing: readonly string[];
  /** Thinnest stroke of its letters as seen. */
  readonly thinnest: Mm;
}

/** From one baseline to the next: a gap of half a height between lines (NUREG-0700 Rev 3, 11.4.1.5-7). */
const LINE_PITCH = 1.5;

export type Align = "start" | "middle" | "end";

export const textBlock = (text: string, style: TextStyle, align: Align): TextBlock => {
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
  return {
    fills: set.fills.map((region) => placedRegion(region, at)),
    strokes: set.strokes.map((path) => placedPath(path, at)),
    box: extent(left, options.baseline, left + set.advance, options.baseline + style.height),
    missing: set.missing,
    thinnest: style.face.kind === "single-line" ? style.cutWidth : set.thinnest,
  };
};

const joined = (a: TextBlock, b: TextBlock): TextBlock => ({
  fills: [...a.fills, ...b.fills],
  strokes: [...a.strokes, ...b.strokes],
  box: joinedExtent(a.box, b.box),
  missing: [...a.missing, ...b.missing],
  thinnest: mm(Math.min(a.thinnest, b.thinnest)),
});

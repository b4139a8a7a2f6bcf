// A single-line font as the setter of legends needs it: open strokes at a cap height. No kerning: such fonts have none.
// The cap height is measured on H (its centre lines): what these fonts state as theirs is wrong by a fifth and more.

import { type Path, path, point, type Vertex, vertex } from "../geometry/contour.ts";
import { type Extent, joinedExtent } from "../geometry/extent.ts";
import { invariant } from "../geometry/invariant.ts";
import { pathExtent } from "../geometry/measure.ts";
import { mm } from "../geometry/quantity.ts";
import { curveVertices, type FontPlacing } from "./glyph-regions.ts";
import type { GlyphSource } from "./glyph-source.ts";
import { type JoinedStroke, joinedStrokes } from "./joined-strokes.ts";
import { readSvgFont, type StrokeGlyph } from "./svg-font.ts";

/** Takes the text of an SVG font. */
export const openSingleLineSource = (text: string): GlyphSource => {
  const glyphs = readSvgFont(text);
  const capital = capitalMeasure(glyphs);
  return {
    has: (character) => glyphs.has(character),
    draw: (character, capHeight) => {
      const glyph = glyphs.get(character);
      if (glyph === undefined) return null;
      const placing: FontPlacing = ({ x, y }) =>
        point(
          (x / capital.height) * capHeight,
          ((y - capital.baseline) / capital.height) * capHeight,
        );
      const strokes = joinedStrokes(glyph.pieces).map((stroke) => strokePath(stroke, placing));
      return {
        index: glyph.index,
        advance: glyph.advance / capital.height,
        drawnAt: mm(capHeight),
        fills: [],
        strokes,
        box: pathsExtent(strokes),
      };
    },
    kerning: () => 0,
    thinnest: 0,
  };
};

/** The box round the strokes' centre lines; null where there is nothing to see. */
const pathsExtent = (paths: readonly Path[]): Extent | null =>
  paths.reduce<Extent | null>((box, stroke) => {
    const own = pathExtent(stroke);
    return box === null ? own : joinedExtent(box, own);
  }, null);

const strokePath = (stroke: JoinedStroke, placing: FontPlacing): Path => {
  const vertices: Vertex[] = stroke.flatMap(({ from, curve }) => [
    ...curveVertices(from, curve, placing),
  ]);
  const last = stroke.at(-1);
  invariant(last !== undefined, "a stroke has a piece");
  const end = placing(last.curve.to);
  return path([...vertices, vertex(end.x, end.y)]);
};

const capitalMeasure = (
  glyphs: ReadonlyMap<string, StrokeGlyph>,
): { readonly baseline: number; readonly height: number } => {
  const pieces = glyphs.get("H")?.pieces ?? [];
  const heights = pieces.flatMap(({ from, curve }) => [from.y, curve.to.y]);
  const baseline = Math.min(...heights);
  const height = Math.max(...heights) - baseline;
  invariant(heights.length > 0 && height > 0, "a single-line font has a capital H");
  return { baseline, height };
};

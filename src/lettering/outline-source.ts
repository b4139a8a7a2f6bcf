// An outline font as the setter of legends needs it: regions at a cap height, kerning, and its thinnest stroke.
// The cap height is the height of the letter E, not the font's stated one nor H (in one of our faces H is 1.3 % taller).

import type { Region } from "../geometry/contour.ts";
import { point } from "../geometry/contour.ts";
import { type Extent, joinedExtent } from "../geometry/extent.ts";
import { invariant } from "../geometry/invariant.ts";
import { contourExtent } from "../geometry/measure.ts";
import { mm } from "../geometry/quantity.ts";
import { glyphRegions } from "./glyph-regions.ts";
import type { Glyph, GlyphSource } from "./glyph-source.ts";
import { type OutlineContour, type OutlineFont, openOutlineFont } from "./outline-font.ts";
import { pairKerning } from "./pair-kerning.ts";
import { openSfnt } from "./sfnt.ts";
import { thinnestStroke } from "./stroke-width.ts";

/** Index 0 is ".notdef" in every OpenType font: the shape for what the font lacks. */
const NO_GLYPH = 0;

/** Takes the bytes of a WOFF, TrueType or OpenType file. */
export const openOutlineSource = (file: Uint8Array): GlyphSource => {
  const sfnt = openSfnt(file);
  const font = openOutlineFont(sfnt);
  const kerningUnits = pairKerning(sfnt);
  const capital = capitalMeasure(font);
  const has = (character: string): boolean => font.glyphIndex(character) !== NO_GLYPH;
  const draw = (character: string, capHeight: number): Glyph | null => {
    if (!has(character)) return null;
    const glyph = font.glyph(character);
    const fills = glyphRegions(glyph.contours, ({ x, y }) =>
      point(
        (x / capital.height) * capHeight,
        ((y - capital.baseline) / capital.height) * capHeight,
      ),
    );
    return {
      index: glyph.index,
      advance: glyph.advance / capital.height,
      drawnAt: mm(capHeight),
      fills,
      strokes: [],
      box: regionsExtent(fills),
    };
  };
  return {
    has,
    draw,
    kerning: (left, right) => kerningUnits(left.index, right.index) / capital.height,
    thinnest: thinnestStroke(draw),
  };
};

/** The box round the outlines; null where there is nothing to see. */
const regionsExtent = (regions: readonly Region[]): Extent | null =>
  regions.reduce<Extent | null>((box, region) => {
    const own = contourExtent(region.outline);
    return box === null ? own : joinedExtent(box, own);
  }, null);

const capitalMeasure = (
  font: OutlineFont,
): { readonly baseline: number; readonly height: number } => {
  const heights = onCurveHeights(font.glyph("E").contours);
  const baseline = Math.min(...heights);
  const height = Math.max(...heights) - baseline;
  invariant(heights.length > 0 && height > 0, "an outline font has a capital E");
  return { baseline, height };
};

/** E is bounded by flats, so its curves' end points reach its full height. */
const onCurveHeights = (contours: readonly OutlineContour[]): readonly number[] =>
  contours.flatMap((contour) => contour.curves.map((curve) => curve.to.y));

// Sets a legend: text in a face at a cap height, as filled regions or strokes in millimetres, first baseline at y = 0.
// Takes any text at all. A character that the face lacks takes no room and is named in `missing`; nothing replaces it.

import { unionRegions } from "../geometry/boolean.ts";
import type { Path, Region } from "../geometry/contour.ts";
import { type Extent, extent, joinedExtent } from "../geometry/extent.ts";
import { invariant } from "../geometry/invariant.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import type { Face } from "./face.ts";
import { glyphGap } from "./glyph-gap.ts";
import { scaledExtent, scaledPath, scaledRegion } from "./scaled.ts";
import { glyphsOfLine, linesOf, type PlacedGlyph, type TextLine } from "./text-line.ts";

export interface TextSetting {
  /** Height of a capital E (of H in a single-line face). */
  readonly capHeight: Mm;
  /** What of each line lies at x = 0, judged by its advance width. */
  readonly align: "start" | "middle" | "end";
  /** Added between neighbouring characters. Default 0. */
  readonly tracking?: Mm;
  /** From the foot of one line's capitals to the head of the next one's. Default half the cap height. */
  readonly lineGap?: Mm;
}

export interface SetText {
  /** Free of overlaps. Empty for a single-line face. */
  readonly fills: readonly Region[];
  /** Centre lines. Empty for an outline or stencil face. */
  readonly strokes: readonly Path[];
  /** Round everything that is seen (round the centre lines of strokes); at the origin without size where nothing is. */
  readonly box: Extent;
  /** Advance width of the widest line. */
  readonly advance: Mm;
  /** The distinct characters that could not be set, in the order of the text. */
  readonly missing: readonly string[];
  /** Thinnest stroke of the face at this size (see stroke-width.ts); 0 for a single-line face. */
  readonly thinnest: Mm;
}

/** NUREG-0700 Rev. 3, 11.4.1.5-7: at least half a character height between lines. */
const LINE_GAP_HEIGHTS = 0.5;

export const setText = (face: Face, text: string, setting: TextSetting): SetText => {
  const { capHeight, lineGap = LINE_GAP_HEIGHTS * capHeight } = setting;
  invariant(capHeight > 0 && capHeight < Number.POSITIVE_INFINITY, "a cap height is above zero");
  const set: SetSoFar = { fills: [], strokes: [], box: null };
  const missing = new Set<string>();
  let advance = 0;
  for (const [index, written] of linesOf(text).entries()) {
    const line = glyphsOfLine(face, written, setting);
    const baseline = index === 0 ? 0 : -index * (capHeight + lineGap);
    placeLine(set, line, { capHeight, baseline, start: lineStart(line.advance, setting.align) });
    advance = Math.max(advance, line.advance);
    for (const character of line.missing) missing.add(character);
  }
  return {
    fills: set.fills,
    strokes: set.strokes,
    box: set.box ?? extent(0, 0, 0, 0),
    advance: mm(advance),
    missing: [...missing],
    thinnest: mm(face.thinnest() * capHeight),
  };
};

interface SetSoFar {
  readonly fills: Region[];
  readonly strokes: Path[];
  box: Extent | null;
}

const lineStart = (advance: number, align: TextSetting["align"]): number => {
  switch (align) {
    case "start":
      return 0;
    case "middle":
      return -advance / 2;
    case "end":
      return -advance;
  }
};

const placeLine = (
  set: SetSoFar,
  line: TextLine,
  at: { readonly capHeight: number; readonly baseline: number; readonly start: number },
): void => {
  const fills: Region[] = [];
  for (const { glyph, x } of line.glyphs) {
    const place = { scale: at.capHeight / glyph.drawnAt, dx: at.start + x, dy: at.baseline };
    for (const fill of glyph.fills) fills.push(scaledRegion(fill, place));
    for (const stroke of glyph.strokes) set.strokes.push(scaledPath(stroke, place));
    if (glyph.box === null) continue;
    const box = scaledExtent(glyph.box, place);
    set.box = set.box === null ? box : joinedExtent(set.box, box);
  }
  const isTouching = hasTouchingGlyphs(line.glyphs, at.capHeight);
  for (const fill of isTouching ? unionRegions(fills) : fills) set.fills.push(fill);
};

/** True where letters of a line run into each other (tight tracking, a long kern), so that they must be united. */
const hasTouchingGlyphs = (glyphs: readonly PlacedGlyph[], capHeight: number): boolean => {
  const drawn: PlacedGlyph[] = [];
  let reach = Number.NEGATIVE_INFINITY;
  for (const placed of glyphs) {
    const { box, drawnAt, fills } = placed.glyph;
    if (box === null || fills.length === 0) continue;
    const scale = capHeight / drawnAt;
    const isBeyond = placed.x + box.minX * scale > reach;
    if (!isBeyond && isNearAny(placed, drawn, scale)) return true;
    reach = Math.max(reach, placed.x + box.maxX * scale);
    drawn.push(placed);
  }
  return false;
};

/** Letters further back than this are clear of a new one in any setting short of letters piled on letters. */
const LOOK_BACK = 4;

const isNearAny = (placed: PlacedGlyph, drawn: readonly PlacedGlyph[], scale: number): boolean =>
  drawn
    .slice(-LOOK_BACK)
    .some((before) => glyphGap(before.glyph, placed.glyph, (placed.x - before.x) / scale) <= 0);

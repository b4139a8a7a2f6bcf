// The bridges of a stencil legend: the strips of sheet left between the openings of one letter, which hold its middle.
// Their width at the legend's size is what breaks first when the sheet is handled, or burns through when it is cut.

import { contourDistance } from "../geometry/distance.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import type { Face } from "./face.ts";
import type { Glyph } from "./glyph-source.ts";
import { glyphsOfLine, linesOf } from "./text-line.ts";

/** The narrowest bridge inside any letter of the text; null where no letter has one. Gaps between letters are apart from this. */
export const narrowestBridge = (face: Face, text: string, capHeight: Mm): Mm | null => {
  let narrowest: number | null = null;
  for (const line of linesOf(text))
    for (const { glyph } of glyphsOfLine(face, line, { capHeight }).glyphs) {
      const own = glyphBridge(glyph);
      if (own === null) continue;
      const width = (own * capHeight) / glyph.drawnAt;
      if (narrowest === null || width < narrowest) narrowest = width;
    }
  return narrowest === null ? null : mm(narrowest);
};

const glyphBridge = (glyph: Glyph): number | null => {
  const known = keptBridges.get(glyph);
  if (known !== undefined) return known;
  const gaps = glyph.fills.flatMap((one, index) =>
    glyph.fills.slice(index + 1).map((other) => contourDistance(one.outline, other.outline).gap),
  );
  const narrowest = gaps.length === 0 ? null : Math.min(...gaps);
  keptBridges.set(glyph, narrowest);
  return narrowest;
};

const keptBridges = new WeakMap<Glyph, number | null>();

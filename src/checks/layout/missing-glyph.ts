// A character that the font hasn't got.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { legendOf } from "../../layout/legend-of.ts";
import type { PlacedMarking } from "../../layout/panel-layout.ts";
import type { Rule } from "../rule.ts";
import { capitalised, markingName } from "./marking-shapes.ts";

const entry: CodeEntry = {
  code: "checks/missing-glyph",
  severity: "fault",
  title: "a character that the font hasn't got",
  why: "A letter without a shape would leave a hole in the legend, so that nothing is put in its place. Spell it otherwise or choose another font.",
  example: "components:\n  a: { part: led-5, at: { x: 60 mm, y: 30 mm }, legend: 電源 }",
};

const MOST_SHOWN = 5;

export const missingGlyph: Rule = {
  entry,
  move: null,
  judge: ({ layout }) =>
    layout.markings
      .filter(({ missing }) => missing.length > 0)
      .map((marking) => {
        const font = legendOf(marking, layout)?.font ?? layout.design.lettering.font;
        return finding(entry, {
          message: `${capitalised(markingName(marking))}: the font ${font} has no shape for ${shown(marking)}. Spell it otherwise, or name another font.`,
          span: marking.span,
          subjects: [marking.owner],
          source: { kind: "datasheet", name: `the characters of ${font}` },
        });
      }),
};

const shown = (marking: PlacedMarking): string => {
  const characters = [...new Set(marking.missing)];
  const first = characters
    .slice(0, MOST_SHOWN)
    .map((character) => `"${character}" (${codePoint(character)})`);
  const more = characters.length - first.length;
  return more > 0 ? `${first.join(", ")} and ${more} more` : first.join(", ");
};

const codePoint = (character: string): string =>
  `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`;

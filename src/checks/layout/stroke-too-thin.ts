// Are the strokes bold enough for the height of the letters.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { legendOf } from "../../layout/legend-of.ts";
import { STROKE_SHARES } from "../../standards/characters.ts";
import { isUnder } from "../limits.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import {
  andOthers,
  byCause,
  type CauseGroup,
  type Lettered,
  letteredMarkings,
} from "./lettering-cause.ts";
import { capitalised, markingName } from "./marking-shapes.ts";

const entry: CodeEntry = {
  code: "checks/stroke-too-thin",
  severity: "query",
  title: "strokes too thin to read",
  why: "Light letters on a dark face want strokes of a seventh to an eighth of their height; under a twelfth they are a hair. A single pass of a laser is just that: 0.15 mm is one twenty-seventh of a 4.1 mm capital. Take an outline font, or a larger tool.",
  example: "lettering: { font: single-line, height: 4.1 mm }",
};

/** Two thirds of the eighth that is asked for: thin faces that are read every day lie above it. Common practice. */
const LEAST_SHARE = (STROKE_SHARES.lightOnDarkLeast * 2) / 3;

export const strokeTooThin: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const thin = letteredMarkings(facts).filter(({ capHeight, strokeWidth }) =>
      isUnder(strokeWidth, capHeight * LEAST_SHARE),
    );
    const thinness = ({ capHeight, strokeWidth }: Lettered): number => capHeight / strokeWidth;
    return byCause(thin, facts, thinness).map((group) => tooThin(group, facts));
  },
};

const tooThin = ({ cause, markings }: CauseGroup, facts: PanelFacts): Finding => {
  const [worst] = markings;
  const { capHeight, strokeWidth } = worst;
  const least = capHeight * LEAST_SHARE;
  const good = capHeight * STROKE_SHARES.lightOnDarkLeast;
  const font = legendOf(worst, facts.layout)?.font ?? facts.layout.design.lettering.font;
  return finding(entry, {
    message: `${capitalised(markingName(worst))}${andOthers(markings.length - 1)}: ${font} gives strokes of ${millimetres(strokeWidth, least)} on capitals of ${millimetres(capHeight)}, one part in ${decimal(capHeight / strokeWidth, 0)}; ${millimetres(least, strokeWidth)} is the least, ${millimetres(least - strokeWidth, 0)} more, and ${millimetres(good)} reads well. Take a bolder font, or a wider tool.`,
    span: cause.span,
    related: [{ what: worst.owner, span: worst.span }],
    subjects: [...new Set(markings.map(({ owner }) => owner))],
    measured: measureMm(strokeWidth),
    limit: measureMm(least),
    source: {
      kind: "standard",
      name: `two thirds of an eighth of the height: ${STROKE_SHARES.source}`,
    },
    suppressed: markings.length - 1,
  });
};

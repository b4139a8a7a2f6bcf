// Can the legend be read from where the operator sits.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { decimalBeside } from "../../geometry/number.ts";
import { arcMinutes } from "../../standards/characters.ts";
import { isUnder } from "../limits.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { lengthWords, measureMm } from "../words.ts";
import { angleFor, leastHeight, readableHeight } from "./least-height.ts";
import {
  andOthers,
  byCause,
  type CauseGroup,
  heightRemedy,
  type Lettered,
  letteredMarkings,
} from "./lettering-cause.ts";
import { capitalised, markingName } from "./marking-shapes.ts";

const entry: CodeEntry = {
  code: "checks/legend-too-small",
  severity: "query",
  title: "a legend too small for the viewing distance",
  why: "What counts is the angle that a capital fills at the eye: 16 minutes of arc at the least, 20 to 22 for comfort and for anything that alerts. At 700 mm that is 3.3, and 4.1 to 4.5 mm.",
  example: "viewing-distance: 700 mm\nlettering: { height: 2.5 mm }",
};

export const legendTooSmall: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const small = letteredMarkings(facts).filter((marking) =>
      isUnder(marking.capHeight, readableHeight(marking, facts)),
    );
    const shortBy = (marking: Lettered): number =>
      readableHeight(marking, facts) / marking.capHeight;
    return byCause(small, facts, shortBy).map((group) => tooSmall(group, facts));
  },
};

const tooSmall = (group: CauseGroup, facts: PanelFacts): Finding => {
  const { cause, markings } = group;
  const [worst] = markings;
  const { design } = facts.layout;
  const distance = design.viewingDistance;
  const angle = angleFor(worst, facts);
  const needed = readableHeight(worst, facts);
  const words = lengthWords(facts, cause.isOwn ? cause.span : undefined);
  const { text, remedies } = heightRemedy(cause, leastHeight(cause, facts), facts);
  return finding(entry, {
    message: `${capitalised(markingName(worst))}${andOthers(markings.length - 1)}: capitals of ${words(worst.capHeight, needed)} fill ${decimalBeside(arcMinutes(worst.capHeight, distance), angle.arcMinutes, 1)} minutes of arc at ${lengthWords(facts, design.written.keys["viewing-distance"])(distance)}; ${decimalBeside(angle.arcMinutes, arcMinutes(worst.capHeight, distance), 1)} minutes want ${words(Math.ceil(needed * 1000) / 1000, worst.capHeight)}. height: ${text} does.`,
    span: cause.span,
    related: [
      { what: "viewing-distance", span: spanOf(design.written, "viewing-distance") },
      { what: worst.owner, span: worst.span },
    ],
    subjects: [...new Set(markings.map(({ owner }) => owner))],
    measured: measureMm(worst.capHeight),
    limit: measureMm(needed),
    source: { kind: "standard", name: `${angle.arcMinutes} minutes of arc: ${angle.source}` },
    remedies,
    suppressed: markings.length - 1,
  });
};

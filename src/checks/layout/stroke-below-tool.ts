// Can the machine make the strokes of filled letters at all.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { cutWidthOf } from "../../layout/markings/style.ts";
import { isUnder } from "../limits.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
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
  code: "checks/stroke-below-tool",
  severity: "fault",
  title: "strokes finer than the machine's spot or tool",
  why: "A stroke that is narrower than the beam or cutter can't be filled: it comes out at the tool's width, or not at all. Take higher letters, a bolder font, a finer tool, or a single-line font.",
  example: "lettering: { height: 1.2 mm }\nviewing-distance: 250 mm",
};

export const strokeBelowTool: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const fine = letteredMarkings(facts).filter(
      (marking) => marking.fills.length > 0 && isUnder(marking.strokeWidth, toolOf(marking, facts)),
    );
    const fineness = (marking: Lettered): number => toolOf(marking, facts) / marking.strokeWidth;
    return byCause(fine, facts, fineness).map((group) => tooFine(group, facts));
  },
};

const toolOf = (marking: Lettered, facts: PanelFacts): number =>
  cutWidthOf(facts.layout.layers.find(({ id }) => id === marking.layer)?.machine ?? null);

const tooFine = ({ cause, markings }: CauseGroup, facts: PanelFacts): Finding => {
  const [worst] = markings;
  const tool = toolOf(worst, facts);
  const { text, remedies } = heightRemedy(cause, (cause.height * tool) / worst.strokeWidth, facts);
  const machine = facts.layout.layers.find(({ id }) => id === worst.layer)?.machine;
  return finding(entry, {
    message: `${capitalised(markingName(worst))}${andOthers(markings.length - 1)}: strokes of ${millimetres(worst.strokeWidth, tool)} are finer than the ${millimetres(tool, worst.strokeWidth)} that ${machine?.id ?? "an engraver"} cuts, ${millimetres(tool - worst.strokeWidth, 0)} too fine. height: ${text} makes them as wide.`,
    span: cause.span,
    related: [{ what: worst.owner, span: worst.span }],
    subjects: [...new Set(markings.map(({ owner }) => owner))],
    measured: measureMm(worst.strokeWidth),
    limit: measureMm(tool),
    source: { kind: "machine", name: machine?.id ?? "a fine engraving spot (common practice)" },
    remedies,
    suppressed: markings.length - 1,
  });
};

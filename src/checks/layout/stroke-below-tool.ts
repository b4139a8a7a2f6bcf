// Can the machine make the strokes of filled letters at all.

import type { MachineDesign } from "../../design/workshop-design.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { STROKE_SHARES } from "../../standards/characters.ts";
import { isUnder } from "../limits.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { atLeast, atMost, measureMm, millimetres } from "../words.ts";
import { isTooFine, leastHeight, MOST_GROWTH, toolOf } from "./least-height.ts";
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
  why: "A stroke that is narrower than the beam or cutter can't be filled: it comes out at the tool's width, or not at all. Take a finer tool, another process, a bolder or a single-line font; where little is missing, higher letters.",
  example: "lettering: { height: 1.2 mm }\nviewing-distance: 250 mm",
};

export const strokeBelowTool: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const fine = letteredMarkings(facts).filter((marking) => isTooFine(marking, facts));
    const fineness = (marking: Lettered): number => toolOf(marking, facts) / marking.strokeWidth;
    return byCause(fine, facts, fineness).map((group) => tooFine(group, facts));
  },
};

const tooFine = ({ cause, markings }: CauseGroup, facts: PanelFacts): Finding => {
  const [worst] = markings;
  const tool = toolOf(worst, facts);
  const growth = tool / worst.strokeWidth;
  const cut = cause.height * growth;
  const least = Math.max(cut, leastHeight(cause, facts));
  const { text, remedies } = heightRemedy(cause, least, facts);
  const machine = facts.layout.layers.find(({ id }) => id === worst.layer)?.machine ?? null;
  const enough = isUnder(cut, least) ? "wider, and large enough to be read" : "as wide";
  const higher = `height: ${text} makes them ${enough}.`;
  const others = otherWays(worst, tool, machine);
  const ways = growth > MOST_GROWTH ? [...others, higher] : [higher, ...others];
  return finding(entry, {
    message: `${capitalised(markingName(worst))}${andOthers(markings.length - 1)}: strokes of ${millimetres(worst.strokeWidth, tool)} are finer than the ${millimetres(tool, worst.strokeWidth)} that ${machine?.id ?? "an engraver"} cuts, ${millimetres(tool - worst.strokeWidth, 0)} too fine. ${ways.join(" ")}`,
    span: cause.span,
    related: [{ what: worst.owner, span: worst.span }],
    subjects: [...new Set(markings.map(({ owner }) => owner))],
    measured: measureMm(worst.strokeWidth),
    limit: measureMm(tool),
    source: { kind: "machine", name: machine?.id ?? "a fine engraving spot (common practice)" },
    remedies: growth > MOST_GROWTH ? [] : remedies,
    suppressed: markings.length - 1,
  });
};

/** What a builder would sooner change than the size of the panel: the font, the tool, the process. */
const otherWays = (
  { strokeWidth, capHeight }: Lettered,
  tool: number,
  machine: MachineDesign | null,
): readonly string[] => {
  const finest = atMost(strokeWidth);
  const byTool =
    machine?.kind === "router"
      ? `A tool of ${finest} or less cuts them, and so does a laser with a spot as fine.`
      : `A spot of ${finest} or less cuts them.`;
  // A stroke of one pass is as wide as the tool: past a sixth of the height the counters of the letters close.
  return tool > capHeight * STROKE_SHARES.darkOnLight
    ? [byTool]
    : [
        `font: single-line, or an outline font with strokes of ${atLeast(tool)} at this height, needs no other tool.`,
        byTool,
      ];
};

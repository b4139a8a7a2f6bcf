// The rim left between a cut-out and the panel's edge.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { containsContour } from "../../geometry/containment.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { CutOut } from "../../layout/panel-layout.ts";
import { houseLimit } from "../house-rule.ts";
import { isUnder } from "../limits.ts";
import { onePerOwner } from "../one-finding.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { lengthWords, measureMm } from "../words.ts";
import { isClearInside } from "./clear-inside.ts";
import { EDGE } from "./edge-limit.ts";
import { type PanelOpening, panelOpenings } from "./panel-openings.ts";
import { placingSpan } from "./placing-span.ts";

const entry: CodeEntry = {
  code: "checks/edge-distance",
  severity: "query",
  title: "a cut-out close to the edge",
  why: "A narrow rim cracks at the first knock. Holes drilled in acrylic want their centre at least one and a half diameters from the edge.",
  example: "components:\n  a: { part: led-5, at: { left: 30 mm, top: 4 mm } }",
};

export const edgeDistance: Rule = {
  entry,
  move: "inward",
  judge: (facts) => {
    const { limit, source } = houseLimit(facts, EDGE);
    const asked = panelOpenings(facts.layout).filter(({ cutOut }) => isPlacedByHand(cutOut, facts));
    return onePerOwner(asked, (opening) => {
      const gap = rim(opening, limit);
      if (gap === null || !isUnder(gap, limit)) return null;
      const { cutOut } = opening;
      const span = placingSpan(facts.layout, cutOut);
      const words = lengthWords(facts, span);
      return finding(entry, {
        message: `${cutOut.owner} leaves a rim of ${words(gap, limit)} in ${cutOut.layer}; ${words(limit, gap)} is wanted, ${words(limit - gap, 0)} more.`,
        span,
        subjects: [cutOut.owner],
        measured: measureMm(gap),
        limit: measureMm(limit),
        source,
      });
    });
  },
};

/** Fixings that the program set by its own house rule are no question to a builder. */
const isPlacedByHand = ({ purpose }: CutOut, { layout }: PanelFacts): boolean => {
  const { fixings } = layout.design;
  if (purpose === "fixing") return fixings?.at != null;
  return purpose !== "dowel" || fixings?.dowelsAt != null;
};

/** Material between an opening and the outline; null where the opening isn't inside, or lies well within. */
const rim = ({ cutOut, outline }: PanelOpening, limit: number): number | null =>
  isClearInside(contourExtent(cutOut.contour), outline, limit) ||
  !containsContour(outline, cutOut.contour)
    ? null
    : contourDistance(outline, cutOut.contour).gap;

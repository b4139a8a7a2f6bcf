// A sharp inside corner in acrylic, where cracks start.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { tightestInsideRadius } from "../../geometry/corners.ts";
import { decimal } from "../../geometry/number.ts";
import type { CutOut, LayerLayout } from "../../layout/panel-layout.ts";
import { type HouseRule, houseLimit } from "../house-rule.ts";
import { isUnder } from "../limits.ts";
import { onePerOwner } from "../one-finding.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { lengthWords, measureMm } from "../words.ts";
import { designedWindow, windowRemedy } from "./designed-window.ts";

const entry: CodeEntry = {
  code: "checks/sharp-corner",
  severity: "query",
  title: "a sharp inside corner in acrylic",
  why: "Cracks start in sharp inside corners. Half a millimetre of radius costs nothing on a laser.",
  example:
    "markings:\n  - window: { at: { x: 60 mm, y: 30 mm }, width: 20 mm, height: 10 mm, corner: 0 mm, layers: [face] }",
};

const SAFE: HouseRule = {
  key: "acrylic-corner",
  usual: 0.5,
  name: "inside corners of at least 0.5 mm in acrylic (common practice)",
};

/** A part's own opening is the maker's shape; a window's corners are the design's. */
export const sharpCorner: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const layers = facts.layout.layers.filter(
      ({ material }) => material?.startsWith("acrylic") ?? false,
    );
    const openings = layers.flatMap((layer) =>
      layer.cutOuts.map((cutOut): Opening => ({ layer, cutOut })),
    );
    return onePerOwner(openings, (opening) => sharp(opening, facts));
  },
};

interface Opening {
  readonly layer: LayerLayout;
  readonly cutOut: CutOut;
}

const sharp = (
  { layer, cutOut: { owner, contour } }: Opening,
  facts: PanelFacts,
): Finding | null => {
  const { limit, source } = houseLimit(facts, SAFE);
  const window = designedWindow(owner, facts.layout);
  const tightest = window === null ? null : tightestInsideRadius(contour);
  if (window === null || tightest === null || !isUnder(tightest, limit)) return null;
  const span = window.design.written.keys["corner"] ?? window.design.written.span;
  const words = lengthWords(facts, span);
  const works = `${decimal(limit, 3)} mm`;
  return finding(entry, {
    message: `${owner}: its corners in ${layer.id} have a radius of ${words(tightest, limit)}; ${words(limit, tightest)} keeps cracks from starting, ${words(limit - tightest, 0)} more. corner: ${works} works.`,
    span,
    subjects: [owner],
    measured: measureMm(tightest),
    limit: measureMm(limit),
    source,
    remedies: windowRemedy(window, works, facts),
  });
};

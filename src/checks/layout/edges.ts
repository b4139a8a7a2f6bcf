// Cut-outs against the panel's outline: outside it, or too near its edge.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { containsContour } from "../../geometry/containment.ts";
import type { Contour } from "../../geometry/contour.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { CutOut, PanelLayout } from "../../layout/panel-layout.ts";
import { type HouseRule, houseLimit } from "../house-rule.ts";
import { isUnder } from "../limits.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const offPanel: CodeEntry = {
  code: "checks/off-panel",
  severity: "fault",
  title: "a cut-out that leaves the panel",
  why: "An opening that crosses the outline is a notch in the edge. Check the distance's unit, and from which edge it was meant.",
  example: "components:\n  a: { part: toggle-12, at: { left: 150 mm, top: 30 mm } }",
};

const tooLarge: CodeEntry = {
  code: "checks/instrument-fit",
  severity: "fault",
  title: "an opening larger than the panel can carry",
  why: "The opening is as large as the panel itself, or leaves no web beside it, wherever it is put: a 57.15 mm instrument can't be made in a panel of six modules, which is 57.15 mm high. Take a higher panel or a smaller instrument.",
  example:
    "height: 6 modules\ncomponents:\n  gauge: { part: gauge-57, at: { x: centre, y: centre } }",
};

const edgeDistance: CodeEntry = {
  code: "checks/edge-distance",
  severity: "query",
  title: "a cut-out close to the edge",
  why: "A narrow rim cracks at the first knock. Holes drilled in acrylic want their centre at least one and a half diameters from the edge.",
  example: "components:\n  a: { part: toggle-12, at: { left: 30 mm, top: 5 mm } }",
};

const EDGE: HouseRule = {
  key: "edge",
  usual: 2.5,
  name: "a rim of at least 2.5 mm (common practice)",
};

/** Openings by owner, nearest to the edge first found; mount holes are judged by the mount's own record. */
const ownersOpenings = (layout: PanelLayout): readonly CutOut[] =>
  layout.layers.flatMap((layer) => layer.cutOuts).filter(({ purpose }) => purpose !== "mount");

export const instrumentFit: Rule = {
  entry: tooLarge,
  judge: (facts) =>
    onePerOwner(facts, (cutOut) =>
      isTooLarge(cutOut, facts) ? tooLargeFinding(cutOut, facts) : null,
    ),
};

const isTooLarge = (cutOut: CutOut, facts: PanelFacts): boolean => {
  const room = contourExtent(facts.layout.outline);
  const box = contourExtent(cutOut.contour);
  return extentWidth(box) + 2 > extentWidth(room) || extentHeight(box) + 2 > extentHeight(room);
};

const tooLargeFinding = (cutOut: CutOut, { layout }: PanelFacts): Finding => {
  const box = contourExtent(cutOut.contour);
  const room = contourExtent(layout.outline);
  const isHigh = extentHeight(box) + 2 > extentHeight(room);
  const size = isHigh ? extentHeight(box) : extentWidth(box);
  const most = (isHigh ? extentHeight(room) : extentWidth(room)) - 2;
  return finding(tooLarge, {
    message: `${cutOut.owner} needs an opening ${millimetres(size)} ${isHigh ? "high" : "wide"}; this panel takes ${millimetres(most)} at most, with a web of 1 mm on both sides.`,
    span: cutOut.span,
    subjects: [cutOut.owner],
    measured: measureMm(size),
    limit: measureMm(most),
    source: { kind: "geometry", name: `the panel's finished outline` },
  });
};

export const outsidePanel: Rule = {
  entry: offPanel,
  judge: (facts) =>
    onePerOwner(facts, (cutOut) =>
      isTooLarge(cutOut, facts) || containsContour(outlineOf(cutOut, facts.layout), cutOut.contour)
        ? null
        : offPanelFinding(cutOut, facts.layout),
    ),
};

const offPanelFinding = (cutOut: CutOut, layout: PanelLayout): Finding => {
  const box = contourExtent(cutOut.contour);
  const room = contourExtent(layout.outline);
  const over = Math.max(
    room.minX - box.minX,
    box.maxX - room.maxX,
    room.minY - box.minY,
    box.maxY - room.maxY,
  );
  return finding(offPanel, {
    message: `${cutOut.owner} leaves the panel by ${millimetres(over)}: the opening in ${cutOut.layer} reaches from ${millimetres(box.minX)} to ${millimetres(box.maxX)} across and ${millimetres(box.minY)} to ${millimetres(box.maxY)} up, the panel from ${millimetres(room.minX)} to ${millimetres(room.maxX)} and ${millimetres(room.minY)} to ${millimetres(room.maxY)}.`,
    span: cutOut.span,
    subjects: [cutOut.owner],
    measured: measureMm(over),
    limit: measureMm(0),
    source: { kind: "geometry", name: "the panel's finished outline" },
  });
};

export const edges: Rule = {
  entry: edgeDistance,
  judge: (facts) => {
    const { limit, source } = houseLimit(facts, EDGE);
    return onePerOwner(facts, (cutOut) => {
      const gap = rim(outlineOf(cutOut, facts.layout), cutOut);
      if (gap === null || !isUnder(gap, limit)) return null;
      return finding(edgeDistance, {
        message: `${cutOut.owner} leaves a rim of ${millimetres(gap)} in ${cutOut.layer}; ${millimetres(limit)} is wanted, ${millimetres(limit - gap)} more.`,
        span: cutOut.span,
        subjects: [cutOut.owner],
        measured: measureMm(gap),
        limit: measureMm(limit),
        source,
      });
    });
  },
};

const outlineOf = (cutOut: CutOut, layout: PanelLayout): Contour =>
  layout.layers.find(({ id }) => id === cutOut.layer)?.outline ?? layout.outline;

/** Material between an opening and the outline; null where the opening isn't inside. */
const rim = (outline: Contour, cutOut: CutOut): number | null =>
  containsContour(outline, cutOut.contour) ? contourDistance(outline, cutOut.contour).gap : null;

/** The first opening of each owner that `judgeOne` objects to. */
const onePerOwner = (
  facts: PanelFacts,
  judgeOne: (cutOut: CutOut) => Finding | null,
): readonly Finding[] => {
  const found = new Map<string, Finding>();
  for (const cutOut of ownersOpenings(facts.layout)) {
    if (found.has(cutOut.owner)) continue;
    const one = judgeOne(cutOut);
    if (one !== null) found.set(cutOut.owner, one);
  }
  return [...found.values()];
};

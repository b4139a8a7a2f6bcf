// Stack fixings too far apart along the edge.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { type Point, point } from "../../geometry/contour.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { PanelLayout } from "../../layout/panel-layout.ts";
import { type HouseRule, houseLimit } from "../house-rule.ts";
import { isOver } from "../limits.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/fixings-apart",
  severity: "query",
  title: "stack fixings too far apart",
  why: "Between two screws a thin sheet bows, and light comes out of the gap. 60 to 80 mm is what builders keep to.",
  example:
    "fixings: { screws: m3, dowels: 3 mm, at: [ { left: 15 mm, bottom: 6 mm }, { right: 15 mm, top: 6 mm } ] }",
};

const APART: HouseRule = {
  key: "fixings-apart",
  usual: 80,
  name: "stack fixings at most 80 mm apart (common practice)",
};

export const fixingsApart: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const { layout } = facts;
    const { limit, source } = houseLimit(facts, APART);
    const held = layout.fixings.filter(({ kind }) => kind === "screw").map(({ at }) => at);
    if (layout.design.fixings === null || held.length === 0) return [];
    const widest = widestGap(held, layout);
    if (!isOver(widest.gap, limit)) return [];
    return [
      finding(entry, {
        message: `Stack fixings are ${millimetres(widest.gap, limit)} apart round the edge; ${millimetres(limit, widest.gap)} is the most, ${millimetres(widest.gap - limit, 0)} too far. Another beside (${millimetres(widest.at.x)}, ${millimetres(widest.at.y)}) would halve the gap.`,
        span: layout.design.fixings.written.span,
        subjects: ["fixing"],
        measured: measureMm(widest.gap),
        limit: measureMm(limit),
        source,
      }),
    ];
  },
};

/** Twice the largest distance along the edge from one of its points to the nearest fixing. */
const widestGap = (
  held: readonly Point[],
  layout: PanelLayout,
): { readonly gap: number; readonly at: Point } =>
  edgePoints(layout)
    .map((at) => ({ at, gap: 2 * toNearest(at, held) }))
    .reduce((widest, one) => (isOver(one.gap, widest.gap) ? one : widest));

const toNearest = (at: Point, held: readonly Point[]): number => {
  let nearest = Number.POSITIVE_INFINITY;
  for (const fixing of held) nearest = Math.min(nearest, alongEdge(at, fixing));
  return nearest;
};

/** Distance along the edge, not across the inset: the smaller of the two coordinates' differences is the inset. */
const alongEdge = (at: Point, fixing: Point): number =>
  Math.max(Math.abs(at.x - fixing.x), Math.abs(at.y - fixing.y));

const EDGE_STEP = 2;

/** Along the edges that are free of rails. */
const edgePoints = ({ outline, rails }: PanelLayout): readonly Point[] => {
  const box = contourExtent(outline);
  const inset = rails[0] === undefined ? 0 : rails[0].maxX - rails[0].minX;
  const low = box.minX + inset;
  const high = box.maxX - inset;
  return [
    ...steps(low, high).flatMap((x) => [point(x, box.minY), point(x, box.maxY)]),
    ...steps(box.minY, box.maxY).flatMap((y) => [point(low, y), point(high, y)]),
  ];
};

const steps = (low: number, high: number): readonly number[] => {
  const count = Math.max(1, Math.round((high - low) / EDGE_STEP));
  return Array.from({ length: count + 1 }, (_, index) => low + ((high - low) * index) / count);
};

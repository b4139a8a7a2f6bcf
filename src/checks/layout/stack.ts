// Does the stack hold together, register, and go together only one way.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { type Point, point } from "../../geometry/contour.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { contourCentroid, contourExtent } from "../../geometry/measure.ts";
import { pointDistance } from "../../geometry/point.ts";
import type { LayerLayout, PanelLayout } from "../../layout/panel-layout.ts";
import { type HouseRule, houseLimit } from "../house-rule.ts";
import { isOver } from "../limits.ts";
import type { Rule } from "../rule.ts";
import { measureMm, measureOf, millimetres } from "../words.ts";

const apart: CodeEntry = {
  code: "checks/fixings-apart",
  severity: "query",
  title: "stack fixings too far apart",
  why: "Between two screws a thin sheet bows, and light comes out of the gap. 60 to 80 mm is what builders keep to.",
  example: "fixings: { screws: m3, dowels: 3 mm, at: [ { left: 15 mm, bottom: 6 mm } ] }",
};

const loose: CodeEntry = {
  code: "checks/stack-loose",
  severity: "query",
  title: "layers that only the components' nuts hold together",
  why: "A stack wants screws and dowels of its own: take one switch out for service and the layers shift.",
  example:
    "stack:\n  - { layer: face, sheet: opal-acrylic-3 }\n  - { layer: backing, sheet: aluminium-2 }",
};

const reversible: CodeEntry = {
  code: "checks/layer-reversible",
  severity: "query",
  title: "a layer that could go in backwards",
  why: "Turned half round or flipped over, this layer's fixings and dowels meet their holes again while its openings don't meet the components. Set the two dowels unsymmetrically.",
  example: "fixings: { screws: m3, dowels: 3 mm, dowels-at: [ ... ] }",
};

const APART: HouseRule = {
  key: "fixings-apart",
  usual: 80,
  name: "stack fixings at most 80 mm apart (common practice)",
};

export const stackLoose: Rule = {
  entry: loose,
  judge: ({ layout }) => {
    const solid = layout.layers.filter(({ kind }) => kind === "sheet" || kind === "spacer");
    if (solid.length < 2 || layout.design.fixings !== null) return [];
    return [
      finding(loose, {
        message: `The stack has ${solid.length} layers (${solid.map(({ id }) => id).join(", ")}) and no fixings. fixings: { screws: m3, dowels: 3 mm } sets them.`,
        span: spanOf(layout.design.written, "stack"),
        subjects: solid.map(({ id }) => id),
        measured: measureOf(0, "count"),
        limit: measureOf(2, "count"),
        source: {
          kind: "house-rule",
          name: "a stack has screws and two dowels (common practice)",
          key: "fixings",
        },
      }),
    ];
  },
};

export const fixingsApart: Rule = {
  entry: apart,
  judge: (facts) => {
    const { layout } = facts;
    const { limit, source } = houseLimit(facts, APART);
    const held = layout.fixings.filter(({ kind }) => kind === "screw").map(({ at }) => at);
    if (layout.design.fixings === null || held.length === 0) return [];
    const widest = widestGap(held, layout);
    if (!isOver(widest.gap, limit)) return [];
    return [
      finding(apart, {
        message: `The edge at (${millimetres(widest.at.x)}, ${millimetres(widest.at.y)}) lies half way between fixings ${millimetres(widest.gap)} apart; ${millimetres(limit)} is the most.`,
        span: layout.design.fixings.written.span,
        subjects: ["fixings"],
        measured: measureMm(widest.gap),
        limit: measureMm(limit),
        source,
      }),
    ];
  },
};

/** Walks the outline's box: twice the largest distance from an edge point to its nearest fixing, less the inset. */
const widestGap = (
  held: readonly Point[],
  layout: PanelLayout,
): { readonly gap: number; readonly at: Point } => {
  const around = edgePoints(layout);
  const gaps = around.map((at) => {
    const near = Math.min(...held.map((fixing) => alongEdge(at, fixing)));
    return { at, gap: 2 * near };
  });
  return gaps.reduce((a, b) => (b.gap > a.gap ? b : a));
};

/** Distance along the edge, not across the inset: the smaller of the two coordinates' differences is the inset. */
const alongEdge = (at: Point, fixing: Point): number =>
  Math.max(Math.abs(at.x - fixing.x), Math.abs(at.y - fixing.y));

const EDGE_STEP = 2;

const edgePoints = ({ outline, rails }: PanelLayout): readonly Point[] => {
  const box = contourExtent(outline);
  const inset = rails[0] === undefined ? 0 : rails[0].maxX - rails[0].minX;
  const low = box.minX + inset;
  const high = box.maxX - inset;
  const columns = steps(low, high);
  const rows = steps(box.minY, box.maxY);
  return [
    ...columns.flatMap((x) => [point(x, box.minY), point(x, box.maxY)]),
    ...rows.flatMap((y) => [point(low, y), point(high, y)]),
  ];
};

const steps = (low: number, high: number): readonly number[] => {
  const count = Math.max(1, Math.round((high - low) / EDGE_STEP));
  return Array.from({ length: count + 1 }, (_, index) => low + ((high - low) * index) / count);
};

export const layerReversible: Rule = {
  entry: reversible,
  judge: ({ layout }) =>
    layout.layers.flatMap((layer) => {
      const way = layer.kind === "sheet" ? wrongWayIn(layer, layout) : null;
      if (way === null) return [];
      return [
        finding(reversible, {
          message: `${layer.id} also goes in ${way}: its fixings and dowels meet their holes again, its openings don't.`,
          span: layout.design.fixings?.written.span ?? layer.design.written.span,
          subjects: [layer.id],
          measured: measureMm(0),
          limit: measureMm(MATCH),
          source: { kind: "geometry", name: "fixings that fit only one way" },
        }),
      ];
    }),
};

/** Holes nearer than this to a fixing's place take it with a little force. */
const MATCH = 1;

interface Hole {
  readonly at: Point;
  readonly size: number;
}

const wrongWayIn = (layer: LayerLayout, layout: PanelLayout): string | null => {
  const fixed = holesOf(layer, (purpose) => purpose === "fixing" || purpose === "dowel");
  const open = holesOf(
    layer,
    (purpose) => purpose !== "fixing" && purpose !== "dowel" && purpose !== "mount",
  );
  if (fixed.length === 0 || open.length === 0) return null;
  const { maxX, maxY } = layout.nominal;
  const ways: readonly (readonly [string, (from: Point) => Point])[] = [
    ["turned half round", (from) => point(maxX - from.x, maxY - from.y)],
    ["flipped left to right", (from) => point(maxX - from.x, from.y)],
    ["flipped top to bottom", (from) => point(from.x, maxY - from.y)],
  ];
  return ways.find(([, turned]) => meets(fixed, turned) && !meets(open, turned))?.[0] ?? null;
};

const holesOf = (
  layer: LayerLayout,
  wanted: (purpose: LayerLayout["cutOuts"][number]["purpose"]) => boolean,
): readonly Hole[] =>
  layer.cutOuts
    .filter(({ purpose }) => wanted(purpose))
    .map(({ contour }) => {
      const box = contourExtent(contour);
      return { at: contourCentroid(contour), size: Math.min(extentWidth(box), extentHeight(box)) };
    });

/** True where every hole, turned, lands on a hole of about the same size. */
const meets = (holes: readonly Hole[], turned: (from: Point) => Point): boolean =>
  holes.every((hole) =>
    holes.some(
      (other) =>
        pointDistance(turned(hole.at), other.at) < MATCH &&
        Math.abs(hole.size - other.size) < MATCH,
    ),
  );

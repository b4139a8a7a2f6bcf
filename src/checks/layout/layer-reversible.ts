// A layer whose fixings and dowels fit a wrong way round as well.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { type Point, point } from "../../geometry/contour.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { contourCentroid, contourExtent } from "../../geometry/measure.ts";
import { pointDistance } from "../../geometry/point.ts";
import type { LayerLayout, PanelLayout } from "../../layout/panel-layout.ts";
import type { Rule } from "../rule.ts";
import { millimetres } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/layer-reversible",
  severity: "query",
  title: "a layer that could go in backwards",
  why: "Turned half round or flipped over, this layer's fixings and dowels meet their holes again while its openings don't meet the components. Set the two dowels unsymmetrically.",
  example:
    "fixings: { screws: m3, dowels: 3 mm, at: [ { left: 14 mm, top: 14 mm }, { right: 14 mm, bottom: 14 mm } ], dowels-at: [ { left: 14 mm, bottom: 14 mm }, { right: 14 mm, top: 14 mm } ] }",
};

/** Holes nearer than this to a fixing's place take it with a little force: common practice. */
const MATCH = 1;

/** One finding, however many layers: the dowels are one cause. */
export const layerReversible: Rule = {
  entry,
  move: null,
  judge: ({ layout }) => {
    const ways = layout.layers.flatMap((layer) => {
      const way = layer.kind === "sheet" ? wrongWayIn(layer, layout) : null;
      return way === null ? [] : [{ layer, way }];
    });
    const first = ways[0];
    if (first === undefined) return [];
    const ids = ways.map(({ layer }) => layer.id);
    const { design } = layout;
    return [
      finding(entry, {
        message: `${ids.join(" and ")} also ${ids.length === 1 ? "goes" : "go"} in ${first.way}: fixings and dowels meet their holes again, the openings don't. Move one dowel by ${millimetres(MOVE)} along its edge.`,
        span:
          design.fixings?.written.keys["dowels-at"] ??
          design.fixings?.written.span ??
          first.layer.design.written.span,
        subjects: ids,
        source: { kind: "geometry", name: "dowels that fit one way only" },
        suppressed: ids.length - 1,
      }),
    ];
  },
};

/** Far enough for a dowel of 3 mm to bear on solid sheet: two diameters. */
const MOVE = 6;

interface Hole {
  readonly at: Point;
  readonly size: number;
}

const wrongWayIn = (layer: LayerLayout, layout: PanelLayout): string | null => {
  const isFixing = (purpose: Purpose): boolean => purpose === "fixing" || purpose === "dowel";
  const fixed = holesOf(layer, isFixing);
  const open = holesOf(layer, (purpose) => !isFixing(purpose) && purpose !== "mount");
  if (fixed.length === 0 || open.length === 0) return null;
  const { maxX, maxY } = layout.nominal;
  const ways: readonly (readonly [string, (from: Point) => Point])[] = [
    ["turned half round", (from) => point(maxX - from.x, maxY - from.y)],
    ["flipped left to right", (from) => point(maxX - from.x, from.y)],
    ["flipped top to bottom", (from) => point(from.x, maxY - from.y)],
  ];
  return ways.find(([, turned]) => meets(fixed, turned) && !meets(open, turned))?.[0] ?? null;
};

type Purpose = LayerLayout["cutOuts"][number]["purpose"];

const holesOf = (layer: LayerLayout, wanted: (purpose: Purpose) => boolean): readonly Hole[] =>
  layer.cutOuts
    .filter(({ purpose }) => wanted(purpose))
    .map(({ contour }) => {
      const box = contourExtent(contour);
      return { at: contourCentroid(contour), size: Math.min(extentWidth(box), extentHeight(box)) };
    });

/** True where every hole, turned, lands on a hole of about the same size. */
const meets = (holes: readonly Hole[], turned: (from: Point) => Point): boolean =>
  holes.every((hole) => {
    const at = turned(hole.at);
    return holes.some(
      (other) => Math.abs(hole.size - other.size) < MATCH && pointDistance(at, other.at) < MATCH,
    );
  });

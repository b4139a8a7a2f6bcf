// A layer whose fixings and dowels fit a wrong way round as well.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { inWords } from "../../diagnostics/nearest.ts";
import { type Point, point } from "../../geometry/contour.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { contourCentroid, contourExtent } from "../../geometry/measure.ts";
import { pointDistance } from "../../geometry/point.ts";
import type { LayerLayout, PanelLayout } from "../../layout/panel-layout.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

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
        message: `${waysInWords(ways)}: fixings and dowels then stand ${first.way.off > 0 ? `within ${millimetres(first.way.off, MATCH)} of` : "right over"} a hole, and the openings don't meet their components; more than ${millimetres(MATCH, first.way.off)} beside it keeps a layer the right way round. Move one dowel by ${millimetres(MOVE)} along its edge.`,
        span:
          design.fixings?.written.keys["dowels-at"] ??
          design.fixings?.written.span ??
          first.layer.design.written.span,
        subjects: ids,
        measured: measureMm(first.way.off),
        limit: measureMm(MATCH),
        source: {
          kind: "practice",
          name: "holes that are forced onto fixings up to 1 mm beside them",
        },
        suppressed: ids.length - 1,
      }),
    ];
  },
};

/** `face and middle also go in turned half round, backing flipped left to right`: layers of one way together, in their order. */
const waysInWords = (
  ways: readonly { readonly layer: LayerLayout; readonly way: WrongWay }[],
): string => {
  const names = [...new Set(ways.map(({ way }) => way.how))];
  return names
    .map((how, index) => {
      const ids = ways.filter(({ way }) => way.how === how).map(({ layer }) => layer.id);
      const go = index > 0 ? "" : ` also ${ids.length === 1 ? "goes" : "go"} in`;
      return `${inWords(ids, "and")}${go} ${how}`;
    })
    .join(", ");
};

/** Far enough for a dowel of 3 mm to bear on solid sheet: two diameters. */
const MOVE = 6;

interface Hole {
  readonly at: Point;
  readonly size: number;
}

interface WrongWay {
  readonly how: string;
  /** The farthest that a fixing or a dowel then stands from a hole. */
  readonly off: number;
}

const wrongWayIn = (layer: LayerLayout, layout: PanelLayout): WrongWay | null => {
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
  for (const [how, turned] of ways) {
    const off = farthestOff(fixed, turned);
    if (off < MATCH && farthestOff(open, turned) >= MATCH) return { how, off };
  }
  return null;
};

type Purpose = LayerLayout["cutOuts"][number]["purpose"];

const holesOf = (layer: LayerLayout, wanted: (purpose: Purpose) => boolean): readonly Hole[] =>
  layer.cutOuts
    .filter(({ purpose }) => wanted(purpose))
    .map(({ contour }) => {
      const box = contourExtent(contour);
      return { at: contourCentroid(contour), size: Math.min(extentWidth(box), extentHeight(box)) };
    });

/** Of the holes, turned, the farthest from the nearest hole of about the same size. */
const farthestOff = (holes: readonly Hole[], turned: (from: Point) => Point): number =>
  Math.max(
    ...holes.map((hole) => {
      const alike = holes.filter((other) => Math.abs(hole.size - other.size) < MATCH);
      return Math.min(...alike.map((other) => pointDistance(turned(hole.at), other.at)));
    }),
  );

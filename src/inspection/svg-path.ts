// One path's `d` as loops of edges, read by makerjs: its importer knows the grammar, its chain finder says
// whether the pieces close, its measure gives the box. None of it writes anything that is read here.

import makerjs from "makerjs";
import { type Point, point } from "../geometry/contour.ts";
import { type Extent, extent } from "../geometry/extent.ts";
import { between, edgeOfArc, movedEdge } from "./edge.ts";
import { loopOfEdges } from "./loop.ts";
import type { Edge, ReadLoop } from "./read-file.ts";

/** The loops of a path in the order of drawing, `zero` being where the place 0 0 of the file lies; empty where nothing in it can be read. */
export const loopsOfPath = (data: string, zero: Point): readonly ReadLoop[] =>
  data
    .split(/(?=M)/i)
    .map((run) => loopOfRun(run, zero))
    .filter((loop) => loop !== null);

/** The edges of a model that is one closed chain, in their order; null where it is anything else. */
export const edgesOfModel = (model: makerjs.IModel): readonly Edge[] | null => {
  const chains = makerjs.model.findChains(model);
  const chain = Array.isArray(chains) ? chains[0] : undefined;
  if (!Array.isArray(chains) || chain === undefined) return null;
  if (chains.length !== 1 || !chain.endless) return null;
  const edges = chain.links.map(({ walkedPath, endPoints }) =>
    edgeFrom(pointOf(endPoints[0] ?? []), walkedPath.pathContext),
  );
  return edges.every((edge) => edge !== null) ? edges : null;
};

const loopOfRun = (run: string, zero: Point): ReadLoop | null => {
  const start = /^M\s*([^\s,]+)[\s,]+([^\s,A-Za-z]+)/i.exec(run);
  if (start === null) return null;
  const model = makerjs.importer.fromSVGPathData(run);
  // makerjs draws upward where SVG counts downward.
  let at = point(Number(start[1]), -Number(start[2]));
  const edges: Edge[] = [];
  for (const path of Object.values(model.paths ?? {})) {
    const edge = edgeFrom(at, path);
    if (edge === null) return null;
    edges.push(movedEdge(edge, zero));
    at = edge.to;
  }
  const loop = loopOfEdges(edges);
  const size = makerjs.measure.modelExtents(model);
  if (loop === null || size === null) return null;
  return { ...loop, chains: closedChains(model), box: movedBox(size, zero) };
};

const movedBox = (size: makerjs.IMeasure, zero: Point): Extent => {
  const [low, high] = [pointOf(size.low), pointOf(size.high)];
  return extent(low.x + zero.x, low.y + zero.y, high.x + zero.x, high.y + zero.y);
};

const closedChains = (model: makerjs.IModel): number => {
  const chains = makerjs.model.findChains(model);
  return Array.isArray(chains) ? chains.filter(({ endless }) => endless).length : 0;
};

/** A makerjs path as the edge that is drawn onward from `at`: an arc keeps no direction of its own there. */
const edgeFrom = (at: Point, path: makerjs.IPath): Edge | null => {
  const ends: readonly makerjs.IPoint[] | null = makerjs.point.fromPathEnds(path);
  const first = ends?.[0];
  const second = ends?.[1];
  if (first === undefined || second === undefined) return null;
  const a = pointOf(first);
  const b = pointOf(second);
  const turnsLeft = between(at, a) <= between(at, b);
  if (makerjs.isPathLine(path)) {
    return { kind: "line", from: turnsLeft ? a : b, to: turnsLeft ? b : a };
  }
  if (!isArc(path)) return null;
  const arc = { centre: pointOf(path.origin), radius: path.radius, turnsLeft };
  return turnsLeft ? edgeOfArc(a, b, arc) : edgeOfArc(b, a, arc);
};

const isArc = (path: makerjs.IPath): path is makerjs.IPathArc => makerjs.isPathArc(path);

const pointOf = (place: makerjs.IPoint): Point => point(place[0] ?? 0, place[1] ?? 0);

// Second opinion on kerf: how large a line must be that runs `offset` outside (or, negative, inside) a contour.
// Where nothing but smooth corners matter this is Steiner's formula; where an opening has sharp corners makerjs
// outlines it. Neither knows the offset that wrote the file.

import makerjs from "makerjs";
import { type Point, point } from "../geometry/contour.ts";
import { type Extent, extent, grownExtent } from "../geometry/extent.ts";
import { fixed } from "../geometry/number.ts";
import { radians } from "../geometry/quantity.ts";
import { arcTangent2, toDegrees } from "../geometry/trigonometry.ts";
import { smoothSine } from "./allowance.ts";
import { angleOf, movedEdge, tangentAt } from "./edge.ts";
import { loopArea, loopLength } from "./loop.ts";
import type { Edge } from "./read-file.ts";
import { edgesOfModel } from "./svg-path.ts";

export interface LineSize {
  readonly box: Extent;
  /** Unsigned. */
  readonly area: number;
}

/** `edges`: a closed loop; `box`: its extent. */
export const lineBeside = (edges: readonly Edge[], box: Extent, offset: number): LineSize => {
  if (offset >= 0 || !hasSharpCorner(edges)) return smoothLine(edges, box, offset);
  const corner = point(box.minX, box.minY);
  const line = outlinedInside(
    edges.map((edge) => movedEdge(edge, point(-corner.x, -corner.y))),
    -offset,
  );
  if (line === null) return smoothLine(edges, box, offset);
  return {
    box: extent(
      line.box.minX + corner.x,
      line.box.minY + corner.y,
      line.box.maxX + corner.x,
      line.box.maxY + corner.y,
    ),
    area: line.area,
  };
};

const smoothLine = (edges: readonly Edge[], box: Extent, offset: number): LineSize => ({
  box: grownExtent(box, offset),
  area: areaBeside(edges, offset, offset > 0 ? "mitred" : "round"),
});

/** A corner that points out of the loop; a line inside it is shorter at both sides of such a corner. */
const hasSharpCorner = (edges: readonly Edge[]): boolean => {
  const turn = loopArea(edges) < 0 ? -1 : 1;
  return edges.some((edge, index) => {
    const before = tangentAt(edges[index === 0 ? edges.length - 1 : index - 1] ?? edge, "to");
    const after = tangentAt(edge, "from");
    return (before.x * after.y - before.y * after.x) * turn > smoothSine;
  });
};

/** Outlining takes makerjs 2 to 8 ms: each shape is done once, wherever on a panel it stands. */
const known = new Map<string, LineSize | null>();
const MOST_KNOWN = 512;

const outlinedInside = (edges: readonly Edge[], distance: number): LineSize | null => {
  const key = `${fixed(distance, 6)} ${edges.map(edgeKey).join(" ")}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  if (known.size >= MOST_KNOWN) known.clear();
  const line = outline(edges.map(keyedEdge), distance);
  known.set(key, line);
  return line;
};

const KEY_PLACES = 6;

const edgeKey = (edge: Edge): string =>
  [
    ...pointKey(edge.from),
    ...pointKey(edge.to),
    ...(edge.kind === "arc" ? [...pointKey(edge.centre), fixed(edge.sweep, KEY_PLACES)] : []),
  ].join(",");

const pointKey = (place: Point): readonly string[] => [
  fixed(place.x, KEY_PLACES),
  fixed(place.y, KEY_PLACES),
];

/** The edge as its key tells it: the answer depends on nothing that the key does not hold. */
const keyedEdge = (edge: Edge): Edge => {
  const from = keyedPoint(edge.from);
  const to = keyedPoint(edge.to);
  if (edge.kind === "line") return { kind: "line", from, to };
  return { ...edge, from, to, centre: keyedPoint(edge.centre) };
};

const keyedPoint = (place: Point): Point =>
  point(Number(fixed(place.x, KEY_PLACES)), Number(fixed(place.y, KEY_PLACES)));

/** Null where makerjs gives no single closed chain. */
const outline = (edges: readonly Edge[], distance: number): LineSize | null => {
  const model: makerjs.IModel = { paths: {} };
  for (const [index, edge] of edges.entries()) {
    makerjs.model.addPath(model, makerPath(edge), `edge${index}`);
  }
  const inside = makerjs.model.originate(
    makerjs.model.outline(model, distance, ROUND_JOINTS, true),
  );
  const line = edgesOfModel(inside);
  const size = makerjs.measure.modelExtents(inside);
  if (line === null || size === null) return null;
  const [minX = 0, minY = 0] = [size.low[0], size.low[1]];
  const [maxX = 0, maxY = 0] = [size.high[0], size.high[1]];
  return { box: extent(minX, minY, maxX, maxY), area: Math.abs(loopArea(line)) };
};

/** makerjs counts points at a joint: none makes it round. */
const ROUND_JOINTS = 0;

const makerPath = (edge: Edge): makerjs.IPath => {
  const ends = [
    [edge.from.x, edge.from.y],
    [edge.to.x, edge.to.y],
  ] as const;
  if (edge.kind === "line") return new makerjs.paths.Line([...ends[0]], [...ends[1]]);
  const [start, end] = edge.sweep > 0 ? [edge.from, edge.to] : [edge.to, edge.from];
  return new makerjs.paths.Arc(
    [edge.centre.x, edge.centre.y],
    edge.radius,
    toDegrees(radians(angleOf(start, edge.centre))),
    toDegrees(radians(angleOf(end, edge.centre))),
  );
};

/**
 * Area of a loop offset evenly. Steiner's formula (area, length times offset, a circle of the offset) holds where corners are
 * smooth or rounded; where the lines beside a corner run on until they meet, a turn of `a` there counts tan(a/2) for a/2.
 * Lines within a corner always meet; lines round it do where they are `mitred`.
 */
export const areaBeside = (
  edges: readonly Edge[],
  offset: number,
  corners: "round" | "mitred",
): number => {
  const around = offset < 0 ? cornerExcess(edges, 1) : cornerExcess(edges, -1);
  const mitres = offset > 0 && corners === "mitred" ? cornerExcess(edges, 1) : 0;
  const turned = Math.PI + around + mitres;
  return Math.abs(loopArea(edges)) + loopLength(edges) * offset + turned * offset * offset;
};

/** A turn sharper than 120 degrees is rounded by every cutter's software (the usual mitre limit of 2). */
const SHARPEST_MITRE = -0.5;

/** Sum of tan(a/2) - a/2 over the sharp corners that point outward (1) or inward (-1), the latter counted negative. */
const cornerExcess = (edges: readonly Edge[], side: 1 | -1): number => {
  const around = loopArea(edges) < 0 ? -1 : 1;
  let sum = 0;
  for (const [index, edge] of edges.entries()) {
    const before = tangentAt(edges[index === 0 ? edges.length - 1 : index - 1] ?? edge, "to");
    const after = tangentAt(edge, "from");
    const sine = (before.x * after.y - before.y * after.x) * around * side;
    const cosine = before.x * after.x + before.y * after.y;
    if (sine <= smoothSine || cosine < SHARPEST_MITRE - smoothSine) continue;
    sum += side * (sine / (1 + cosine) - arcTangent2(sine, cosine) / 2);
  }
  return sum;
};

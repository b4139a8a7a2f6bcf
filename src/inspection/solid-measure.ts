// Measures a read body: how its edges are used, how many shells it has and which way each faces, flat triangles, volume
// and box. Facts only; the table says what they should be.

import { joinGroups, leaderOf, ownLeaders } from "../geometry/leaders.ts";
import { flatHeight } from "./allowance.ts";
import type { SolidBody } from "./solid-file.ts";
import { heightOf, sixfoldVolume, trianglePoints } from "./solid-triangle.ts";

export interface SolidMeasures {
  /** Edges with a triangle on one side only. */
  readonly open: number;
  /** Edges run along more than once in one direction: a triangle is turned over, or more than two meet. */
  readonly crowded: number;
  readonly flat: number;
  /** Signed volume of each shell in mm³, the largest first. */
  readonly shells: readonly number[];
  readonly volume: number;
  readonly low: readonly [number, number, number];
  readonly high: readonly [number, number, number];
}

export const measuredSolid = (body: SolidBody): SolidMeasures => {
  const uses = edgeUses(body);
  const shells = shellVolumes(body, uses);
  return {
    ...edgeFaults(uses),
    flat: flatTriangles(body),
    shells,
    volume: shells.reduce((sum, volume) => sum + volume, 0),
    ...boxOf(body),
  };
};

/** For each directed edge the triangles that run along it. */
interface EdgeUses {
  readonly corners: number;
  /** By number: the edge's first corner times the number of corners, and its second. */
  readonly byEdge: ReadonlyMap<number, readonly number[]>;
}

const edgeUses = ({ corners, triangles }: SolidBody): EdgeUses => {
  const count = corners.length / 3;
  const byEdge = new Map<number, number[]>();
  for (let at = 0; at < triangles.length; at += 3) {
    for (const [from, to] of sides) {
      const edge = triangles[at + from]! * count + triangles[at + to]!;
      const known = byEdge.get(edge);
      if (known === undefined) byEdge.set(edge, [at]);
      else known.push(at);
    }
  }
  return { corners: count, byEdge };
};

const sides = [
  [0, 1],
  [1, 2],
  [2, 0],
] as const;

const oppositeOf = (edge: number, { corners }: EdgeUses): number => {
  const from = Math.floor(edge / corners);
  return (edge - from * corners) * corners + from;
};

const edgeFaults = (uses: EdgeUses): { readonly open: number; readonly crowded: number } => {
  let open = 0;
  let crowded = 0;
  for (const [edge, along] of uses.byEdge) {
    if (along.length > 1) crowded += 1;
    if (!uses.byEdge.has(oppositeOf(edge, uses))) open += 1;
  }
  return { open, crowded };
};

/** Triangles that hang together by their edges, whichever way they run along them. */
const shellVolumes = (body: SolidBody, uses: EdgeUses): readonly number[] => {
  const leaders = ownLeaders(body.triangles.length / 3);
  for (const [edge, along] of uses.byEdge) {
    const first = along[0]! / 3;
    for (const at of [...along, ...(uses.byEdge.get(oppositeOf(edge, uses)) ?? [])])
      joinGroups(leaders, first, at / 3);
  }
  const volumes = new Map<number, number>();
  for (let index = 0; index < leaders.length; index += 1) {
    const leader = leaderOf(leaders, index);
    const six = sixfoldVolume(trianglePoints(body, 3 * index));
    volumes.set(leader, (volumes.get(leader) ?? 0) + six / 6);
  }
  return [...volumes.values()].sort((a, b) => Math.abs(b) - Math.abs(a));
};

const flatTriangles = (body: SolidBody): number => {
  let flat = 0;
  for (let at = 0; at < body.triangles.length; at += 3)
    if (!(heightOf(trianglePoints(body, at)) > flatHeight)) flat += 1;
  return flat;
};

/** Of the corners that triangles use. */
const boxOf = ({ corners, triangles }: SolidBody): Pick<SolidMeasures, "low" | "high"> => {
  const axes = [0, 1, 2].map((axis) => {
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (const corner of triangles) {
      const value = corners[3 * corner + axis]!;
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    return { low, high };
  });
  const [x, y, z] = [axes[0]!, axes[1]!, axes[2]!];
  return { low: [x.low, y.low, z.low], high: [x.high, y.high, z.high] };
};

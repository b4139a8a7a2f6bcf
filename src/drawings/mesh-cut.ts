// A mesh cut by a plane: the lines of its triangles joined into loops, and the loops into areas with their holes. What does
// not close stays lines.

import { containsContour } from "../geometry/containment.ts";
import {
  type Contour,
  loop,
  type Path,
  type Point,
  type Region,
  vertex,
} from "../geometry/contour.ts";
import { contourArea } from "../geometry/measure.ts";
import type { Mesh } from "../geometry/solid/mesh.ts";
import type { Vector } from "../geometry/space/vector.ts";
import { dot, minus, plus, scaled } from "../geometry/space/vector.ts";
import { run } from "./items.ts";

export interface MeshPlane {
  readonly normal: Vector;
  readonly through: Vector;
  /** A corner of the mesh in the space of the plane, and a point of the plane on the sheet. */
  readonly stood: (corner: Vector) => Vector;
  readonly onSheet: (at: Vector) => Point;
}

export interface MeshCut {
  readonly regions: readonly Region[];
  readonly lines: readonly Path[];
}

export const meshCut = (mesh: Mesh, plane: MeshPlane): MeshCut => {
  const { loops, open } = chained(stretchesOf(mesh, plane));
  return {
    regions: regionsOf(loops.filter((points) => points.length > 2).map(loopThrough)),
    lines: open.map((points) => run(...points)),
  };
};

/** As it runs: which way round tells material from cavity. */
const loopThrough = (points: readonly Point[]): Contour =>
  loop(points.map(({ x, y }) => vertex(x, y)));

/** Of one triangle, from the edge on which it comes up through the plane to that on which it goes down again. */
interface Stretch {
  readonly from: string;
  readonly to: string;
  readonly start: Point;
  readonly end: Point;
}

const stretchesOf = ({ positions, triangles }: Mesh, plane: MeshPlane): readonly Stretch[] => {
  const corners = Array.from({ length: positions.length / 3 }, (_, index): Stood => {
    const [x = 0, y = 0, z = 0] = positions.subarray(3 * index, 3 * index + 3);
    const at = plane.stood({ x, y, z });
    return { index, at, height: dot(minus(at, plane.through), plane.normal) };
  });
  return Array.from({ length: triangles.length / 3 }, (_, triangle) => {
    const three = [0, 1, 2].map((side) => corners[triangles[3 * triangle + side]!]!);
    const edges = three.map((corner, side) => ({ from: corner, to: three[(side + 1) % 3]! }));
    const up = edges.find(({ from, to }) => from.height < 0 && to.height >= 0);
    const down = edges.find(({ from, to }) => from.height >= 0 && to.height < 0);
    if (up === undefined || down === undefined) return [];
    return [
      {
        from: edgeKey(up),
        to: edgeKey(down),
        start: crossing(up, plane),
        end: crossing(down, plane),
      },
    ];
  }).flat();
};

interface Stood {
  readonly index: number;
  readonly at: Vector;
  readonly height: number;
}

interface Edge {
  readonly from: Stood;
  readonly to: Stood;
}

/** The same for both triangles of an edge, and so is the place where it is cut. */
const ordered = ({ from, to }: Edge): Edge =>
  from.index < to.index ? { from, to } : { from: to, to: from };

const edgeKey = (edge: Edge): string => {
  const { from, to } = ordered(edge);
  return `${from.index} ${to.index}`;
};

const crossing = (edge: Edge, { onSheet }: MeshPlane): Point => {
  const { from, to } = ordered(edge);
  const share = from.height / (from.height - to.height);
  return onSheet(plus(from.at, scaled(minus(to.at, from.at), share)));
};

interface Chains {
  readonly loops: readonly (readonly Point[])[];
  readonly open: readonly (readonly Point[])[];
}

/** Neighbours run along their edge in opposite directions, so that one ends where the next begins. */
const chained = (stretches: readonly Stretch[]): Chains => {
  const waiting = new Map<string, Stretch[]>();
  for (const stretch of stretches)
    waiting.set(stretch.from, [...(waiting.get(stretch.from) ?? []), stretch]);
  const entered = new Set(stretches.map(({ to }) => to));
  const loops: (readonly Point[])[] = [];
  const open: (readonly Point[])[] = [];
  // What nothing leads to begins an open run: those first, or a loop would be begun in the middle of one.
  const starts = [
    ...stretches.filter(({ from }) => !entered.has(from)),
    ...stretches.filter(({ from }) => entered.has(from)),
  ];
  for (const first of starts) {
    const points: Point[] = [];
    let last: Stretch | null = null;
    let next = waiting.get(first.from)?.pop();
    while (next !== undefined) {
      points.push(next.start);
      last = next;
      next = waiting.get(next.to)?.pop();
    }
    if (last === null) continue;
    if (last.to === first.from) loops.push(points);
    else open.push([...points, last.end]);
  }
  return { loops, open };
};

/** A loop bounds material where one side of it lies in as many shells as not: cavities are holes, what lies within material is nothing. */
const regionsOf = (loops: readonly Contour[]): readonly Region[] => {
  const rings = loops.map((contour) => {
    const area = contourArea(contour);
    return { contour, size: Math.abs(area), turn: Math.sign(area) };
  });
  const sides = rings.map((ring) => {
    const round = rings.filter(
      (other) =>
        other !== ring && other.size > ring.size && containsContour(other.contour, ring.contour),
    );
    const outside = round.reduce((sum, { turn }) => sum + turn, 0);
    return { ring, round, outside, inside: outside + ring.turn };
  });
  const outlines = sides.filter(({ outside, inside }) => outside === 0 && inside !== 0);
  const holes = sides.filter(({ outside, inside }) => outside !== 0 && inside === 0);
  return outlines.map(({ ring }) => ({
    outline: ring.contour,
    holes: holes
      .filter(({ round }) => innermost(round, outlines) === ring)
      .map((hole) => hole.ring.contour),
  }));
};

interface Ring {
  readonly contour: Contour;
  readonly size: number;
  readonly turn: number;
}

const innermost = (
  round: readonly Ring[],
  outlines: readonly { readonly ring: Ring }[],
): Ring | null =>
  round
    .filter((ring) => outlines.some((outline) => outline.ring === ring))
    .reduce<Ring | null>(
      (least, ring) => (least === null || ring.size < least.size ? ring : least),
      null,
    );

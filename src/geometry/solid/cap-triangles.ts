// Polygons cut into triangles by the kernel, with nothing of the kernel's own memory left behind. Its own wrapper deletes
// neither the lists of corners that it hands in nor the list of triangles that comes back: 108 kB for 3,000 corners, each time
// (manifold-3d 3.5.4, measured over 4,000 calls). So the lists are made and deleted here.

import { type Kernel, withKept } from "./kernel.ts";

type Corner = readonly [number, number];

/** Places in the polygons' corners, one polygon after the other; three a triangle. */
export const capTriangles = (
  polygons: readonly (readonly Corner[])[],
  kernel: Kernel,
): readonly (readonly [number, number, number])[] =>
  hasLists(kernel) ? triangulated(polygons, kernel) : kernel.triangulate(copied(polygons));

const copied = (polygons: readonly (readonly Corner[])[]): [number, number][][] =>
  polygons.map((corners) => corners.map(([x, y]) => [x, y]));

interface List<Item> {
  push_back(item: Item): void;
  get(index: number): Item;
  size(): number;
  delete(): void;
}

/** Of the kernel's own making: it has its numbers by place, and is no array. */
interface Triangle {
  readonly 0: number;
  readonly 1: number;
  readonly 2: number;
}

type Corners = List<{ readonly x: number; readonly y: number }>;

/** What the kernel's module carries beside its documented parts. */
interface KernelLists {
  readonly Vector_vec2: new () => Corners;
  readonly Vector2_vec2: new () => List<Corners>;
  _Triangulate(polygons: List<Corners>, tolerance: number, allowConvex: boolean): List<Triangle>;
}

const hasLists = (kernel: object): kernel is KernelLists =>
  ["Vector_vec2", "Vector2_vec2", "_Triangulate"].every((name) => name in kernel);

/** The kernel's own tolerance. */
const OWN = -1;

const triangulated = (
  polygons: readonly (readonly Corner[])[],
  kernel: KernelLists,
): readonly (readonly [number, number, number])[] =>
  withKept((keep) => {
    const lists = keep(new kernel.Vector2_vec2());
    for (const polygon of polygons) {
      const corners = keep(new kernel.Vector_vec2());
      for (const [x, y] of polygon) corners.push_back({ x, y });
      lists.push_back(corners);
    }
    const found = keep(kernel._Triangulate(lists, OWN, true));
    return Array.from({ length: found.size() }, (_, index) => {
      const { 0: a, 1: b, 2: c } = found.get(index);
      return [a, b, c] as const;
    });
  });

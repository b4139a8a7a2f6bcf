// How two bodies lie to one another, to the full grade: clash, touching or apart. Convex pieces answer alone where they are
// the bodies themselves; everything else is asked of the solid kernel, in the frame of the first body.

import type { Manifold } from "manifold-3d";
import { mm } from "../geometry/quantity.ts";
import { withKept } from "../geometry/solid/kernel.ts";
import { pointOut } from "../geometry/space/frame.ts";
import { type Vector, vector } from "../geometry/space/vector.ts";
import type { ConsoleBody } from "./console-body.ts";
import type { PairRelation } from "./fit-facts.ts";
import { sharedVolume, touchDepth, wholeShare } from "./fit-tolerance.ts";
import { frameSeenFrom, type HullRelation, hullRelation } from "./hull-relation.ts";
import { type KernelShapes, kernelFrame } from "./kernel-shapes.ts";

/** null: farther apart than `within`. */
export const pairRelation = (
  a: ConsoleBody,
  b: ConsoleBody,
  { shapes, within }: { readonly shapes: KernelShapes; readonly within: number },
): PairRelation | null => {
  const hulls = hullRelation(a, b, within);
  if (hulls === null) return null;
  if (hulls.isExact && hulls.kind !== "meet") return ofHulls(hulls);
  return withKept((keep): PairRelation | null => {
    const first = shapes.of(a.shape);
    const moved = kernelFrame(frameSeenFrom(a.frame, b.frame));
    const second = keep(shapes.of(b.shape).transform(moved));
    const shared = hulls.kind === "meet" ? keep(first.intersect(second)) : null;
    const clash = shared === null ? null : clashOf(shared, { first, second, a });
    if (clash !== null) return clash;
    const gap = first.minGap(second, within);
    // The kernel answers with the search length where nothing is nearer.
    if (gap >= within) return null;
    const at = hulls.kind === "meet" ? middleBetween(a, b) : hulls.at;
    return gap <= touchDepth ? { kind: "touching", at } : { kind: "apart", gap: mm(gap), at };
  });
};

const ofHulls = (hulls: Exclude<HullRelation, { kind: "meet" }>): PairRelation =>
  hulls.kind === "touching"
    ? { kind: "touching", at: hulls.at }
    : { kind: "apart", gap: hulls.gap, at: hulls.at };

const clashOf = (
  shared: Manifold,
  of: { readonly first: Manifold; readonly second: Manifold; readonly a: ConsoleBody },
): PairRelation | null => {
  const volume = shared.isEmpty() ? 0 : shared.volume();
  if (volume <= sharedVolume) return null;
  const { size, middle } = extentOf(shared);
  const depth = Math.min(size.x, size.y, size.z);
  if (depth <= touchDepth) return null;
  const smaller = Math.min(of.first.volume(), of.second.volume());
  return {
    kind: "clash",
    volume,
    depth: mm(depth),
    at: pointOut(of.a.frame, middle),
    isWithin: volume >= smaller * wholeShare,
  };
};

export const extentOf = (solid: Manifold): { readonly size: Vector; readonly middle: Vector } => {
  const { min, max } = solid.boundingBox();
  return {
    size: vector(max[0] - min[0], max[1] - min[1], max[2] - min[2]),
    middle: vector((min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2),
  };
};

/** The middle of what their boxes share: where pieces meet, and the bodies themselves do not. */
const middleBetween = ({ box: a }: ConsoleBody, { box: b }: ConsoleBody): Vector =>
  vector(
    (Math.max(a.minX, b.minX) + Math.min(a.maxX, b.maxX)) / 2,
    (Math.max(a.minY, b.minY) + Math.min(a.maxY, b.maxY)) / 2,
    (Math.max(a.minZ, b.minZ) + Math.min(a.maxZ, b.maxZ)) / 2,
  );

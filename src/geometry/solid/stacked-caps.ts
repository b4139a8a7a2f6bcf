// The level faces between two layers: up where the layer below is bare, down where the layer above overhangs. Loops run
// with the face on their left. null where faces meet in a way that only the solid kernel sorts out.

import {
  isInside,
  type StackedPolygon,
  type Step,
  sideOf,
  stepName,
  twiceArea,
} from "./stacked-polygon.ts";
import type { TouchedPolygon, Touches } from "./stacked-touches.ts";

export interface StackedCap {
  readonly faces: "up" | "down";
  /** The outline, then the holes. */
  readonly loops: readonly (readonly Step[])[];
}

export const capsBetween = (touches: Touches): readonly StackedCap[] | null => {
  const below = boundsOf(touches.below, touches.above);
  const above = boundsOf(touches.above, touches.below);
  if (below === null || above === null) return null;
  const up = loopsOf([...below.bare, ...above.covered]);
  const down = loopsOf([...above.bare, ...below.covered]);
  return up === null || down === null ? null : [...capsOf(up, "up"), ...capsOf(down, "down")];
};

interface Bound {
  readonly from: Step;
  readonly to: Step;
}

/** Sides of a layer that bound its own face (`bare`), and those that bound, run the other way, the other layer's. */
interface Bounds {
  readonly bare: readonly Bound[];
  readonly covered: readonly Bound[];
}

/** null where a side lies on one of the other layer that runs the other way: four faces would meet there. */
const boundsOf = (
  own: readonly TouchedPolygon[],
  other: readonly TouchedPolygon[],
): Bounds | null => {
  const shared = new Set(other.filter(({ isTouched }) => isTouched).flatMap(sideNames));
  const material = other.map(cutPolygon);
  const alone = own.filter(({ same }) => same < 0);
  if (
    alone.some((polygon) => sidesOf(polygon).some(({ from, to }) => shared.has(nameOf(to, from))))
  )
    return null;
  const bare: Bound[] = [];
  const covered: Bound[] = [];
  for (const polygon of alone) {
    const isCovered = coverOf(polygon, material);
    for (const side of sidesOf(polygon)) {
      if (shared.has(nameOf(side.from, side.to))) continue;
      if (isCovered(side)) covered.push({ from: side.to, to: side.from });
      else bare.push(side);
    }
  }
  return { bare, covered };
};

/** Does the other layer's material lie over a side? One answer holds for a polygon that touches nothing. */
const coverOf = (
  polygon: TouchedPolygon,
  material: readonly Pick<StackedPolygon, "corners">[],
): ((side: Bound) => boolean) => {
  if (polygon.isTouched) return (side) => isInside(material, middleOf(side));
  const [start, next] = polygon.sides[0]!;
  const isCovered = isInside(material, middleOf({ from: start!, to: next! }));
  return () => isCovered;
};

const sidesOf = ({ sides }: TouchedPolygon): readonly Bound[] =>
  sides.flatMap((corners) => corners.slice(1).map((to, index) => ({ from: corners[index]!, to })));

/** With the corners that it was given where others come upon it. */
const cutPolygon = ({ sides }: TouchedPolygon): Pick<StackedPolygon, "corners"> => ({
  corners: sides.flatMap((corners) => corners.slice(0, -1)),
});

const sideNames = (polygon: TouchedPolygon): readonly string[] =>
  sidesOf(polygon).map(({ from, to }) => nameOf(from, to));

const nameOf = (from: Step, to: Step): string => `${stepName(from)},${stepName(to)}`;

const middleOf = ({ from, to }: Bound): Step => ({
  x: (from.x + to.x) / 2,
  y: (from.y + to.y) / 2,
});

/** null where a bound leads nowhere. */
const loopsOf = (bounds: readonly Bound[]): readonly (readonly Step[])[] | null => {
  const leaving = new Map<number, Bound[]>();
  for (const bound of bounds) {
    const name = stepName(bound.from);
    leaving.set(name, [...(leaving.get(name) ?? []), bound]);
  }
  const loops: (readonly Step[])[] = [];
  for (const bound of bounds) {
    const loop = loopFrom(bound, leaving);
    if (loop === null) return null;
    if (loop.length > 0) loops.push(loop);
  }
  return loops;
};

/** Where loops share a corner each goes on to its own left. Empty where the bound was taken before. */
const loopFrom = (first: Bound, leaving: Map<number, Bound[]>): readonly Step[] | null => {
  const run: Step[] = [];
  let next = taken(leaving.get(stepName(first.from)), first);
  while (next !== undefined) {
    run.push(next.from);
    const open = leaving.get(stepName(next.to));
    const isBack = stepName(next.to) === stepName(first.from);
    const onward = leftmost(next, [...(isBack ? [first] : []), ...(open ?? [])]);
    if (onward === first) return run;
    next = taken(open, onward);
  }
  return run.length === 0 ? run : null;
};

/** The wanted bound, which is then no longer open; undefined where it was taken before. */
const taken = (open: Bound[] | undefined, wanted: Bound | undefined): Bound | undefined => {
  const place = wanted === undefined ? -1 : (open?.indexOf(wanted) ?? -1);
  return place < 0 ? undefined : open?.splice(place, 1)[0];
};

/** The first to be met clockwise from where the arriving bound comes from: between the two lies the face. */
const leftmost = ({ from, to }: Bound, open: readonly Bound[]): Bound | undefined => {
  const halfOf = (at: Step): number => {
    const side = sideOf(to, from, at);
    if (side !== 0) return side < 0 ? 0 : 2;
    return isBackAt(at) ? 3 : 1;
  };
  const isBackAt = (at: Step): boolean =>
    (at.x - to.x) * (from.x - to.x) + (at.y - to.y) * (from.y - to.y) > 0;
  return open.reduce<Bound | undefined>((best, one) => {
    if (best === undefined) return one;
    const apart = halfOf(one.to) - halfOf(best.to);
    return apart < 0 || (apart === 0 && sideOf(to, best.to, one.to) > 0) ? one : best;
  }, undefined);
};

/** Each hole goes to the smallest outline round it; what stands in a hole may touch it. */
const capsOf = (
  loops: readonly (readonly Step[])[],
  faces: StackedCap["faces"],
): readonly StackedCap[] => {
  const sized = loops.map((corners) => ({ corners, twice: twiceArea(corners) }));
  const outlines = sized.filter(({ twice }) => twice > 0).sort((a, b) => a.twice - b.twice);
  const holes = sized
    .filter(({ twice }) => twice < 0)
    .map((hole) => ({
      hole,
      owner: outlines.find(
        ({ corners, twice }) => twice > -hole.twice && isInside([{ corners }], hole.corners[0]!),
      ),
    }));
  return outlines.map((outline) => ({
    faces,
    loops: [
      outline.corners,
      ...holes.filter(({ owner }) => owner === outline).map(({ hole }) => hole.corners),
    ],
  }));
};

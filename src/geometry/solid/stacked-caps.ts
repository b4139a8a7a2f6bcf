// The level faces between two layers: up where the layer below is bare, down where the layer above overhangs. Loops run
// with the face on their left. null where faces meet in a way that only the solid kernel sorts out.

import {
  isInside,
  type StackedPolygon,
  type Step,
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
  const material = other.map(({ polygon }) => polygon);
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
  material: readonly StackedPolygon[],
): ((side: Bound) => boolean) => {
  if (polygon.isTouched) return (side) => isInside(material, middleOf(side));
  const [start, next] = polygon.sides[0]!;
  const isCovered = isInside(material, middleOf({ from: start!, to: next! }));
  return () => isCovered;
};

const sidesOf = ({ sides }: TouchedPolygon): readonly Bound[] =>
  sides.flatMap((corners) => corners.slice(1).map((to, index) => ({ from: corners[index]!, to })));

const sideNames = (polygon: TouchedPolygon): readonly string[] =>
  sidesOf(polygon).map(({ from, to }) => nameOf(from, to));

const nameOf = (from: Step, to: Step): string => `${stepName(from)},${stepName(to)}`;

const middleOf = ({ from, to }: Bound): Step => ({
  x: (from.x + to.x) / 2,
  y: (from.y + to.y) / 2,
});

/** null where two loops share a corner, or a bound leads nowhere. */
const loopsOf = (bounds: readonly Bound[]): readonly (readonly Step[])[] | null => {
  const leaving = new Map(bounds.map((bound) => [stepName(bound.from), bound]));
  if (leaving.size < bounds.length) return null;
  const loops: Step[][] = [];
  for (const { from } of bounds) {
    const run: Step[] = [];
    let next = leaving.get(stepName(from));
    while (next !== undefined) {
      leaving.delete(stepName(next.from));
      run.push(next.from);
      if (stepName(next.to) === stepName(from)) break;
      next = leaving.get(stepName(next.to));
      if (next === undefined) return null;
    }
    if (run.length > 0) loops.push(run);
  }
  return loops;
};

/** Each hole goes to the smallest outline round it. */
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
      owner: outlines.find((outline) => isInside([outline], hole.corners[0]!)),
    }));
  return outlines.map((outline) => ({
    faces,
    loops: [
      outline.corners,
      ...holes.filter(({ owner }) => owner === outline).map(({ hole }) => hole.corners),
    ],
  }));
};

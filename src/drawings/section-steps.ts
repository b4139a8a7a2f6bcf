// Where a stepped section cuts at each height of the panel: through the axis of the component that is nearest there, so that
// a pocket, a collar or a boss shows as wide as it is round its own component.

import { contourExtent } from "../geometry/measure.ts";
import type { PlacedComponent } from "../layout/panel-layout.ts";
import type { SectionPlane } from "./section-planes.ts";

export interface SectionStep {
  readonly x: number;
  /** Stretch of y; the first and last have no end. */
  readonly low: number;
  readonly high: number;
}

/** From the panel's foot up. Neighbours on one x are one step. */
export const sectionSteps = ({ x, components }: SectionPlane): readonly SectionStep[] => {
  const levels = levelsOf(components, x);
  const [first] = levels;
  if (first === undefined) return [{ x, low: -Infinity, high: Infinity }];
  const steps: SectionStep[] = [{ x: first.x, low: -Infinity, high: Infinity }];
  for (const [index, level] of levels.entries()) {
    const below = levels[index - 1];
    const last = steps.at(-1);
    if (below === undefined || last === undefined || last.x === level.x) continue;
    const between = (below.high + level.low) / 2;
    steps[steps.length - 1] = { ...last, high: between };
    steps.push({ x: level.x, low: between, high: Infinity });
  }
  return steps;
};

interface Level {
  readonly x: number;
  readonly axis: number;
  /** Reach of its bodies in y. */
  readonly low: number;
  readonly high: number;
}

/** Components that hide each other share a level: cut is the one that stands nearest to the plane. */
const levelsOf = (components: readonly PlacedComponent[], x: number): readonly Level[] => {
  const nearest = new Map<number, PlacedComponent>();
  for (const component of components) {
    const known = nearest.get(component.at.y);
    const isNearer = known === undefined || Math.abs(component.at.x - x) < Math.abs(known.at.x - x);
    if (isNearer) nearest.set(component.at.y, component);
  }
  return [...nearest.values()].map(levelOf).toSorted((a, b) => a.axis - b.axis);
};

const levelOf = ({ at, bodies }: PlacedComponent): Level => {
  const boxes = bodies.map(({ footprint }) => contourExtent(footprint));
  return {
    x: at.x,
    axis: at.y,
    low: Math.min(at.y, ...boxes.map(({ minY }) => minY)),
    high: Math.max(at.y, ...boxes.map(({ maxY }) => maxY)),
  };
};

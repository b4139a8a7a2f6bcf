// The box of a body that was read, side by side with what it must be: a row for each axis.

import type { SolidExtent } from "../geometry/solid/recipe-extent.ts";
import { length, type Reading, roundedDifference } from "./row.ts";

export interface MeasuredBox {
  readonly low: readonly [number, number, number];
  readonly high: readonly [number, number, number];
}

export const boxReadings = (
  name: string,
  { low, high }: MeasuredBox,
  must: { readonly box: SolidExtent; readonly allowance: number },
): readonly Reading[] => {
  const { box, allowance } = must;
  const axes = [
    { axis: "x", low: box.minX, high: box.maxX },
    { axis: "y", low: box.minY, high: box.maxY },
    { axis: "z", low: box.minZ, high: box.maxZ },
  ];
  return axes.map((side, index) => {
    const measuredLow = finite(low[index]!);
    const measuredHigh = finite(high[index]!);
    const difference = Math.max(
      roundedDifference(measuredLow - side.low),
      roundedDifference(measuredHigh - side.high),
    );
    return {
      feature: `${name} ${side.axis}`,
      what: "box",
      expected: `${length(side.low)} to ${length(side.high)}`,
      measured: `${length(measuredLow)} to ${length(measuredHigh)}`,
      difference,
      passed: difference <= allowance,
    };
  });
};

/** A row can say how far off a number is only where it is one: what is none is as far off as can be written. */
export const finite = (value: number): number =>
  Math.abs(value) < Number.MAX_SAFE_INTEGER ? value : Number.MAX_SAFE_INTEGER;

// What was measured on the laser test piece, turned into the kerf along each axis and the allowance on holes.
// A piece comes out smaller than drawn by the kerf, an opening larger; both ways along an axis are averaged.

import type { Mm } from "../geometry/quantity.ts";
import { tooFineReadings, worked } from "./caliper.ts";
import { TEST_FEATURES, type TestFeature } from "./laser-test-piece.ts";

export interface LaserReadings {
  /** Full kerf width across x and across y. */
  readonly kerf: readonly [Mm, Mm];
  /** Added to a hole's diameter beside kerf. */
  readonly holeAllowance: Mm;
}

export type ReadLaser =
  | { readonly kind: "read"; readonly readings: LaserReadings }
  | { readonly kind: "refused"; readonly why: readonly string[] };

/** No laser in a workshop takes more than this: a larger difference is a slip of the caliper, or of the scale. */
const MOST_KERF = 1;
/** Major diameter of the pin, a 1/4-40 bush, and the hole that takes it (common practice: 6.4 to 6.5). */
const PIN_HOLE = 6.4;

/**
 * `measured` by the names on the piece (`square-x: 19.79`); `pin` is the smallest hole of the row that a 6.35 mm bush
 * enters, by its drawn size, or null where it was not tried.
 */
export const readLaser = (
  measured: Readonly<Record<string, number>>,
  pin: number | null,
): ReadLaser => {
  const why = [
    ...unknownNames(measured),
    ...missingAxes(measured),
    ...unlikely(measured),
    ...tooFineReadings(measured),
  ];
  if (pin !== null && !PINS.includes(pin))
    why.push(`pin: ${pin} is not a hole of the row (${PINS.join(", ")})`);
  if (why.length > 0) return { kind: "refused", why };
  const x = averageKerf(measured, ["piece-x", "opening-x"]);
  const y = averageKerf(measured, ["piece-y", "opening-y"]);
  const came = pin === null ? PIN_HOLE : pin + (x + y) / 2;
  return {
    kind: "read",
    readings: { kerf: [worked(x), worked(y)], holeAllowance: worked(came - PIN_HOLE) },
  };
};

const PINS: readonly number[] = TEST_FEATURES.filter(({ what }) => what === "pin-hole").map(
  ({ nominal }) => nominal,
);

const MEASURED: readonly TestFeature[] = TEST_FEATURES.filter(({ what }) => what !== "pin-hole");

const kerfOf = (feature: TestFeature, value: number): number =>
  feature.what.startsWith("piece") ? feature.nominal - value : value - feature.nominal;

const averageKerf = (
  measured: Readonly<Record<string, number>>,
  kinds: readonly TestFeature["what"][],
): number => {
  const values = MEASURED.filter(({ what }) => kinds.includes(what)).flatMap((feature) => {
    const value = measured[feature.id];
    return value === undefined ? [] : [kerfOf(feature, value)];
  });
  return values.reduce((sum, value) => sum + value, 0) / values.length;
};

const unknownNames = (measured: Readonly<Record<string, number>>): string[] =>
  Object.keys(measured)
    .filter((name) => !MEASURED.some(({ id }) => id === name))
    .map((name) => `${name} is not on the test piece (${MEASURED.map(({ id }) => id).join(", ")})`);

const missingAxes = (measured: Readonly<Record<string, number>>): string[] =>
  (["x", "y"] as const)
    .filter(
      (axis) => measured[`square-${axis}`] === undefined && measured[`slot-${axis}`] === undefined,
    )
    .map((axis) => `${axis} has no reading: square-${axis} or slot-${axis}`);

const unlikely = (measured: Readonly<Record<string, number>>): string[] =>
  MEASURED.flatMap((feature) => {
    const value = measured[feature.id];
    if (value === undefined) return [];
    const kerf = kerfOf(feature, value);
    if (kerf >= 0 && kerf <= MOST_KERF) return [];
    return [
      `${feature.id}: ${value} mm on a nominal ${feature.nominal} mm would be a kerf of ${worked(kerf)} mm`,
    ];
  });

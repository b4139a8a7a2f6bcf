// Areas less areas, where both may have holes, and areas as layers of a solid.

import { difference, intersection, union } from "../../geometry/boolean.ts";
import { containsContour } from "../../geometry/containment.ts";
import type { Region } from "../../geometry/contour.ts";
import { regionFaults } from "../../geometry/simple.ts";
import { type Clearance, type SolidLayer, solidLayer } from "../../geometry/solid/solid.ts";
import { closedRegions, openedRegions } from "./grown-regions.ts";
import { mergedRegion } from "./merged-edges.ts";

/** What is left of the areas outside all cutters. The cutters lie apart; one may stand in another's hole. */
export const subtracted = (
  areas: readonly Region[],
  cutters: readonly Region[],
): readonly Region[] => {
  const left = difference(
    areas,
    cutters.map(({ outline }) => outline),
  );
  const inHoles = cutters.flatMap((cutter) =>
    cutter.holes.flatMap((hole) => {
      const inner = intersection(areas, union([hole]));
      const within = cutters.filter(
        (other) => other !== cutter && containsContour(hole, other.outline),
      );
      return subtracted(inner, within);
    }),
  );
  return [...left, ...inHoles];
};

/**
 * The same areas without necks and slits that come within a hair of closing. A printer's nozzle is many times as wide, so
 * that nothing printed changes; a mesher would find two edges in one place.
 */
export const soundRegions = (regions: readonly Region[]): readonly Region[] =>
  regions.flatMap((region) => soundRegion(region));

/** Tried in turn, all below a tenth of a nozzle's line. */
const HAIRS = [0.005, 0.02, 0.04] as const;

const soundRegion = (region: Region): readonly Region[] => {
  if (regionFaults(region).length === 0) return [region];
  const merged = mergedRegion(region);
  if (regionFaults(merged).length === 0) return [merged];
  for (const hair of HAIRS) {
    const opened = openedRegions([merged], hair);
    if (opened.every((one) => regionFaults(one).length === 0)) return opened;
    const closed = closedRegions([merged], hair);
    if (closed.every((one) => regionFaults(one).length === 0)) return closed;
  }
  return [region];
};

/**
 * One layer. What passes a round hole must clear; `loops` says what other holes do: a second body that stands against
 * them keeps the same corners.
 */
export const layerOf = (
  from: number,
  to: number,
  { regions, loops }: { readonly regions: readonly Region[]; readonly loops: Clearance },
): SolidLayer =>
  solidLayer(
    from,
    to,
    soundRegions(regions).map(({ outline, holes }) => ({
      outline: { contour: outline, clearance: "exact" as const },
      holes: holes.map((contour) => ({
        contour,
        clearance: contour.kind === "circle" ? ("clear" as const) : loops,
      })),
    })),
  );

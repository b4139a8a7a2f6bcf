// Areas less areas, where both may have holes, and areas as layers of a solid.

import { difference, intersection, union } from "../../geometry/boolean.ts";
import { containsContour } from "../../geometry/containment.ts";
import type { Region } from "../../geometry/contour.ts";
import { type Clearance, type SolidLayer, solidLayer } from "../../geometry/solid/solid.ts";

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
    regions.map(({ outline, holes }) => ({
      outline: { contour: outline, clearance: "exact" as const },
      holes: holes.map((contour) => ({
        contour,
        clearance: contour.kind === "circle" ? ("clear" as const) : loops,
      })),
    })),
  );

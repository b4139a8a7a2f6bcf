// Volume of a recipe in mm³, exact for its arcs, lines and lofts: nothing is faceted. Of a composed solid it is the sum
// of what is added less the sum of what is cut, which holds where the pieces keep to that recipe's rule.

import { contourArea, contourCentroid, regionArea } from "../measure.ts";
import { contourBetween } from "./loft-between.ts";
import type { LoftSection, RevolvedSolid, Solid, SolidLayer } from "./solid.ts";

export const recipeVolume = (solid: Solid): number => {
  switch (solid.kind) {
    case "layered":
      return sum(solid.layers.map(layerVolume));
    case "revolved":
      return revolvedVolume(solid);
    case "lofted":
      return loftedVolume(solid.sections);
    case "composed":
      return sum(solid.add.map(recipeVolume)) - sum(solid.cut.map(recipeVolume));
    case "placed":
      return recipeVolume(solid.solid);
  }
};

const sum = (values: readonly number[]): number => {
  let total = 0;
  for (const value of values) total += value;
  return total;
};

const layerVolume = ({ from, to, regions }: SolidLayer): number =>
  (to - from) *
  sum(
    regions.map(({ outline, holes }) =>
      regionArea({
        outline: outline.contour,
        holes: holes.map(({ contour }) => contour),
      }),
    ),
  );

/** Pappus: the area times the way that its centre goes. */
const revolvedVolume = ({ profile }: RevolvedSolid): number =>
  2 * Math.PI * Math.abs(contourArea(profile)) * contourCentroid(profile).x;

/** Between two sections the area is a quadratic in the height, which Simpson's rule sums exactly. */
const loftedVolume = (sections: readonly LoftSection[]): number =>
  sum(
    sections.slice(1).map((above, index) => {
      const below = sections[index]!;
      const areas =
        sectionArea(below) + 4 * sectionArea(middleSection(below, above)) + sectionArea(above);
      return ((above.height - below.height) * areas) / 6;
    }),
  );

const sectionArea = ({ outline, holes }: LoftSection): number => regionArea({ outline, holes });

const middleSection = (below: LoftSection, above: LoftSection): LoftSection => ({
  height: below.height,
  outline: contourBetween(below.outline, above.outline, 1 / 2),
  holes: below.holes.map((hole, index) => contourBetween(hole, above.holes[index], 1 / 2)),
});

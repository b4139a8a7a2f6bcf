// What is wrong with a recipe before any mesher sees it: shapes that are not simple, layers that leave a gap, a profile
// across its axis, sections that don't match. Gives sentences; an empty list can be meshed.

import { containsPoint } from "../containment.ts";
import type { Contour } from "../contour.ts";
import { boundariesTouch } from "../distance.ts";
import { edgesOf } from "../edges.ts";
import { extentGap } from "../extent.ts";
import { invariant } from "../invariant.ts";
import { contourExtent } from "../measure.ts";
import { loopFaults, type OutlineFault, regionFaults } from "../simple.ts";
import { samePlace } from "../tolerance.ts";
import { hasFacets } from "./facets.ts";
import type {
  LayeredSolid,
  LoftedSolid,
  LoftSection,
  RevolvedSolid,
  Solid,
  SolidContour,
  SolidRegion,
} from "./solid.ts";
import { sameBulge } from "./solid-tolerance.ts";

export const recipeFaults = (solid: Solid): readonly string[] => {
  switch (solid.kind) {
    case "layered":
      return layeredFaults(solid);
    case "revolved":
      return revolvedFaults(solid);
    case "lofted":
      return loftedFaults(solid);
    case "composed":
      return [
        ...(solid.add.length === 0 ? ["nothing is added"] : []),
        ...[...solid.add, ...solid.cut].flatMap(recipeFaults),
      ];
    case "placed":
      return recipeFaults(solid.solid);
  }
};

const layeredFaults = ({ layers }: LayeredSolid): readonly string[] => [
  ...(layers.length === 0 ? ["no layer"] : []),
  ...layers.flatMap(({ from, to, regions }, index) => {
    const below = layers[index - 1];
    return [
      ...(to - from > samePlace ? [] : ["a layer without thickness"]),
      ...(below === undefined || below.to === from ? [] : ["a gap between two layers"]),
      ...(regions.length === 0 ? ["a layer without material"] : []),
      ...layerFaults(regions),
    ];
  }),
];

const layerFaults = (regions: readonly SolidRegion[]): readonly string[] => {
  const own = regions.flatMap(({ outline, holes }) =>
    regionFaults({
      outline: outline.contour,
      holes: holes.map(({ contour }) => contour),
    }).map(sentence),
  );
  if (own.length > 0) return own;
  const slight = slightFaults(regions);
  return slight.length > 0 ? slight : overlapFaults(regions);
};

const sentence = ({ at, why }: OutlineFault): string => `${why} at ${at.x}, ${at.y}`;

const slightFaults = (regions: readonly SolidRegion[]): readonly string[] =>
  regions
    .flatMap(({ outline, holes }) => [outline, ...holes])
    .filter(({ contour }) => !hasFacets(contour))
    .map((contour) => `a shape too thin for the grid of a mesh at ${placeOf(contour)}`);

/** Regions of one layer stand apart, or one in another's hole. */
const overlapFaults = (regions: readonly SolidRegion[]): readonly string[] =>
  regions.flatMap((region, index) =>
    regions
      .slice(index + 1)
      .filter((other) => meet(region, other) || meet(other, region))
      .map(({ outline }) => `two regions of a layer overlap or touch at ${placeOf(outline)}`),
  );

/** The second's outline touches the first's boundary, or stands in its material. */
const meet = (first: SolidRegion, second: SolidRegion): boolean => {
  const inner = second.outline.contour;
  if (extentGap(contourExtent(first.outline.contour), contourExtent(inner)) > samePlace)
    return false;
  if ([first.outline, ...first.holes].some(({ contour }) => boundariesTouch(contour, inner)))
    return true;
  const { from } = edgesOf(inner)[0]!;
  return (
    containsPoint(first.outline.contour, from) &&
    !first.holes.some(({ contour }) => containsPoint(contour, from))
  );
};

const placeOf = ({ contour }: SolidContour): string => {
  const { from } = edgesOf(contour)[0]!;
  return `${from.x}, ${from.y}`;
};

const revolvedFaults = ({ at, profile }: RevolvedSolid): readonly string[] => [
  ...(Number.isFinite(at.x + at.y) ? [] : ["an axis that is nowhere"]),
  ...loopFaults(profile).map(sentence),
  ...(profile.vertices.some(({ x }) => x < 0) ? ["a profile across its axis"] : []),
];

const loftedFaults = ({ sections }: LoftedSolid): readonly string[] => {
  const [lowest] = sections;
  if (lowest === undefined || sections.length < 2) return ["fewer than two sections"];
  return sections.slice(1).flatMap((section, index) => {
    const below = sections[index];
    invariant(below !== undefined, "a section has one below it");
    return [
      ...(section.height - below.height > samePlace ? [] : ["sections without height between"]),
      ...(areAlike(lowest, section) ? [] : ["sections that don't match"]),
    ];
  });
};

const areAlike = (a: LoftSection, b: LoftSection): boolean => {
  const ofA = [a.outline, ...a.holes];
  const ofB = [b.outline, ...b.holes];
  return (
    ofA.length === ofB.length &&
    ofA.every((contour, index) => areAlikeContours(contour, ofB[index]))
  );
};

const areAlikeContours = (a: Contour, b: Contour | undefined): boolean => {
  if (b === undefined || a.kind !== b.kind) return false;
  if (a.kind === "circle" || b.kind === "circle") return true;
  return (
    edgesOf(a).length === edgesOf(b).length &&
    a.vertices.every(({ bulge }, index) => {
      const facing = b.vertices[index]?.bulge;
      return facing !== undefined && Math.abs(facing - bulge) <= sameBulge;
    })
  );
};

// Areas less areas, where both may have holes, and areas as layers of a solid.

import { difference, intersection, union } from "../../geometry/boolean.ts";
import { containsContour } from "../../geometry/containment.ts";
import type { Contour, Region } from "../../geometry/contour.ts";
import { boundariesTouch, contourDistance } from "../../geometry/distance.ts";
import { extentGap } from "../../geometry/extent.ts";
import { contourArea, contourExtent, reversedContour } from "../../geometry/measure.ts";
import { regionFaults } from "../../geometry/simple.ts";
import { hasFacets } from "../../geometry/solid/facets.ts";
import { type Clearance, type SolidLayer, solidLayer } from "../../geometry/solid/solid.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import { closedRegions, openedRegions } from "./grown-regions.ts";
import { mergedRegion } from "./merged-edges.ts";

/** What is left of the areas outside all cutters. The cutters lie apart; one may stand in another's hole. */
export const subtracted = (
  areas: readonly Region[],
  cutters: readonly Region[],
): readonly Region[] => {
  const outermost = cutters.filter(
    (cutter) => !cutters.some((other) => other !== cutter && standsInHole(cutter, other)),
  );
  const left = difference(
    areas,
    outermost.map(({ outline }) => outline),
  );
  const inHoles = outermost.flatMap((cutter) =>
    cutter.holes.flatMap((hole) => {
      const inner = intersection(areas, union([hole]));
      return subtracted(
        inner,
        cutters.filter((other) => other !== cutter && containsContour(hole, other.outline)),
      );
    }),
  );
  return [...left, ...inHoles];
};

const standsInHole = (region: Region, other: Region): boolean =>
  other.holes.some((hole) => containsContour(hole, region.outline));

/**
 * The areas without the openings. One that stands free inside its area becomes a hole of it as it is: the outline passes
 * untouched, so that it is the same in every layer, and nothing is worked out.
 */
export const openedBy = (
  areas: readonly Region[],
  openings: readonly Contour[],
): readonly Region[] => areas.flatMap((area) => areaOpenedBy(area, openings));

const areaOpenedBy = (area: Region, openings: readonly Contour[]): readonly Region[] => {
  const near = openings.filter((one) => !isFar(area.outline, one));
  const free = near.filter(
    (one) =>
      standsWithin(area, one) &&
      near.every((other) => other === one || isFar(one, other) || areApart(one, other)),
  );
  const others = near.filter((one) => !free.includes(one));
  const left = others.length === 0 ? [area] : difference([area], others);
  return left.map(({ outline, holes }) => {
    const own = left.length === 1 ? free : free.filter((one) => containsContour(outline, one));
    return { outline, holes: [...holes, ...own.map(clockwise)] };
  });
};

const isFar = (a: Contour, b: Contour): boolean =>
  extentGap(contourExtent(a), contourExtent(b)) > samePlace;

/** Nothing in common, not even a touch; neither stands in the other. */
const areApart = (a: Contour, b: Contour): boolean =>
  !boundariesTouch(a, b) && !contourDistance(a, b).overlaps;

const standsWithin = ({ outline, holes }: Region, one: Contour): boolean =>
  containsContour(outline, one) &&
  !boundariesTouch(outline, one) &&
  holes.every((hole) => isFar(hole, one) || areApart(counterClockwise(hole), one));

const clockwise = (contour: Contour): Contour =>
  contour.kind === "loop" && contourArea(contour) > 0 ? reversedContour(contour) : contour;

const counterClockwise = (contour: Contour): Contour =>
  contour.kind === "loop" && contourArea(contour) < 0 ? reversedContour(contour) : contour;

/**
 * The same areas without necks and slits that come within a hair of closing. A printer's nozzle is many times as wide, so
 * that nothing printed changes; a mesher would find two edges in one place.
 */
const soundRegions = (regions: readonly Region[]): readonly Region[] => {
  const sound = regions.flatMap((region) => soundRegion(region));
  const doTouch = sound.some((one, index) =>
    sound.slice(index + 1).some((other) => touch(one, other) || touch(other, one)),
  );
  return doTouch ? closedRegions(sound, HAIRS[1]).flatMap((region) => soundRegion(region)) : sound;
};

/** The other's outline comes upon the first's outline, or upon the hole that it stands in. */
const touch = (one: Region, other: Region): boolean =>
  extentGap(contourExtent(one.outline), contourExtent(other.outline)) <= samePlace &&
  [one.outline, ...one.holes].some((contour) => boundariesTouch(contour, other.outline));

/** Tried in turn, all below a tenth of a nozzle's line. */
const HAIRS = [0.005, 0.02, 0.04] as const;

const soundRegion = (region: Region): readonly Region[] => {
  if (isSound(region)) return [region];
  const merged = mergedRegion(region);
  if (isSound(merged)) return [merged];
  for (const hair of HAIRS) {
    const opened = openedRegions([merged], hair);
    // What would vanish is no neck: it stays, for whoever leaves slivers out and tells of them.
    if (opened.length === 0) break;
    if (opened.every(isSound)) return opened;
    const closed = closedRegions([merged], hair);
    if (closed.every(isSound)) return closed;
  }
  return [region];
};

const isSound = (region: Region): boolean =>
  regionFaults(region).length === 0 &&
  [region.outline, ...region.holes].every(hasFacets) &&
  !hasHairWall(region);

/** Two of its loops are nearer than a hair: rounded to a mesher's grid they may be one. */
const hasHairWall = ({ outline, holes }: Region): boolean =>
  [outline, ...holes].some((one, index) =>
    holes
      .slice(index)
      .some(
        (other) =>
          extentGap(contourExtent(one), contourExtent(other)) < HAIRS[0] &&
          contourDistance(one, other).gap < HAIRS[0],
      ),
  );

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

// A printed recipe as slabs, regions between two heights, for whoever follows a straight line through it. Layered recipes
// are exact; of a turned or lofted piece each slab takes what both of its ends cover, so that light is never stopped by too much.

import { difference, intersection } from "../boolean.ts";
import { type Contour, circle, type Region } from "../contour.ts";
import { edgesOf } from "../edges.ts";
import { placedRegion, placement } from "../transform.ts";
import type { LoftedSolid, RevolvedSolid, Solid, SolidRegion } from "./solid.ts";

export interface Slab {
  readonly from: number;
  readonly to: number;
  readonly regions: readonly Region[];
}

/** Pieces that stand turned about a level axis have no slabs. */
export const slabsOf = (solid: Solid): readonly Slab[] => {
  switch (solid.kind) {
    case "layered":
      return solid.layers.map(({ from, to, regions }) => ({
        from,
        to,
        regions: regions.map(plainRegion),
      }));
    case "lofted":
      return loftSlabs(solid);
    case "revolved":
      return revolvedSlabs(solid);
    case "composed":
      return withoutCuts(solid.add.flatMap(slabsOf), solid.cut.flatMap(cutterSlabs));
    case "placed": {
      const { turn, to } = solid;
      if (turn.x !== 0 || turn.y !== 0) return [];
      const at = placement(to.x, to.y, turn.z);
      return slabsOf(solid.solid).map((slab) => ({
        from: slab.from + to.z,
        to: slab.to + to.z,
        regions: slab.regions.map((region) => placedRegion(region, at)),
      }));
    }
  }
};

const plainRegion = ({ outline, holes }: SolidRegion): Region => ({
  outline: outline.contour,
  holes: holes.map(({ contour }) => contour),
});

const loftSlabs = ({ sections }: LoftedSolid): readonly Slab[] =>
  sections.slice(1).map((upper, index) => {
    const lower = sections[index]!;
    const regionOf = ({ outline, holes }: typeof upper): Region => ({ outline, holes });
    return {
      from: lower.height,
      to: upper.height,
      regions: intersection([regionOf(lower)], [regionOf(upper)]),
    };
  });

/** Between two corners of its profile a turned piece is at least as wide as at the narrower one. */
const revolvedSlabs = ({ at, profile }: RevolvedSolid): readonly Slab[] => {
  const heights = [...new Set(profile.vertices.map(({ y }) => y))].sort((a, b) => a - b);
  return heights.slice(1).flatMap((to, index): readonly Slab[] => {
    const from = heights[index]!;
    const inside = [from, to].map((height) => radiiAt(profile, height, (from + to) / 2));
    const outer = Math.min(...inside.map((radii) => Math.max(...radii)));
    const inner = Math.max(...inside.map((radii) => (radii.length > 1 ? Math.min(...radii) : 0)));
    if (!(outer > inner)) return [];
    const holes: readonly Contour[] = inner > 0 ? [circle(at, inner)] : [];
    return [{ from, to, regions: [{ outline: circle(at, outer), holes }] }];
  });
};

/** Where the profile's edges that pass the middle height stand at a height. */
const radiiAt = (profile: Contour, height: number, middle: number): readonly number[] => {
  const radii = edgesOf(profile).flatMap(({ from, to }) => {
    if (from.y > middle === to.y > middle) return [];
    return [from.x + ((height - from.y) / (to.y - from.y)) * (to.x - from.x)];
  });
  return radii.some((radius) => radius > 0) ? radii : [0];
};

/** What is taken out opens at least as far as it does at either end of a slab. */
const cutterSlabs = (solid: Solid): readonly Slab[] => {
  if (solid.kind !== "lofted") return slabsOf(solid);
  return solid.sections.slice(1).map((upper, index) => {
    const lower = solid.sections[index]!;
    return {
      from: lower.height,
      to: upper.height,
      regions: [lower, upper].map(({ outline }) => ({ outline, holes: [] })),
    };
  });
};

const withoutCuts = (added: readonly Slab[], cuts: readonly Slab[]): readonly Slab[] =>
  added.flatMap((slab) => {
    const meeting = cuts.filter(({ from, to }) => from < slab.to && to > slab.from);
    if (meeting.length === 0) return [slab];
    const inside = meeting.flatMap(({ from, to }) => [from, to]);
    const heights = [slab.from, ...inside.filter((z) => z > slab.from && z < slab.to), slab.to];
    const steps = [...new Set(heights)].sort((a, b) => a - b);
    return steps.slice(1).flatMap((to, index): readonly Slab[] => {
      const from = steps[index]!;
      const here = meeting.filter((cut) => cut.from <= from && cut.to >= to);
      const openings = here.flatMap(({ regions }) => regions.map(({ outline }) => outline));
      const regions = openings.length === 0 ? slab.regions : difference(slab.regions, openings);
      return regions.length === 0 ? [] : [{ from, to, regions }];
    });
  });

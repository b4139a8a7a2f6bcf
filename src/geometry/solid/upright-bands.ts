// An upright recipe as bands, the lowest first: between two heights everything that is material there, in regions that lie
// apart. Where layers or pieces touch there is then no wall. Kept with the recipe.

import { difference, unionRegions } from "../boolean.ts";
import type { Region } from "../contour.ts";
import { placedRegion, placement } from "../transform.ts";
import type { ComposedSolid, LayeredSolid, PlacedSolid, Solid, SolidRegion } from "./solid.ts";

export interface Band {
  readonly from: number;
  readonly to: number;
  readonly regions: readonly Region[];
}

/** null where a part leans, is turned about a level axis or has no straight sides. */
export const uprightBands = (solid: Solid): readonly Band[] | null => {
  const known = KNOWN.get(solid);
  if (known !== undefined) return known;
  const made = bandsOf(solid);
  KNOWN.set(solid, made);
  return made;
};

const KNOWN = new WeakMap<Solid, readonly Band[] | null>();

const bandsOf = (solid: Solid): readonly Band[] | null => {
  switch (solid.kind) {
    case "layered":
      return layeredBands(solid);
    case "composed":
      return composedBands(solid);
    case "placed":
      return placedBands(solid);
    case "revolved":
    case "lofted":
      return null;
  }
};

/** Regions of a layer lie apart already. */
export const layeredBands = (solid: LayeredSolid): readonly Band[] => {
  const known = LAYERED.get(solid);
  if (known !== undefined) return known;
  const made = solid.layers.map(({ from, to, regions }) => ({
    from,
    to,
    regions: regions.map(plainRegion),
  }));
  LAYERED.set(solid, made);
  return made;
};

const LAYERED = new WeakMap<LayeredSolid, readonly Band[]>();

const plainRegion = ({ outline, holes }: SolidRegion): Region => ({
  outline: outline.contour,
  holes: holes.map(({ contour }) => contour),
});

const placedBands = ({ solid, turn, to }: PlacedSolid): readonly Band[] | null => {
  if (turn.x !== 0 || turn.y !== 0) return null;
  const at = placement(to.x, to.y, turn.z);
  return (
    uprightBands(solid)?.map((band) => ({
      from: band.from + to.z,
      to: band.to + to.z,
      regions: band.regions.map((region) => placedRegion(region, at)),
    })) ?? null
  );
};

const composedBands = ({ add, cut }: ComposedSolid): readonly Band[] | null => {
  const added = allBands(add);
  const taken = allBands(cut);
  if (added === null || taken === null) return null;
  // What stands in a hole of what is taken out stays: a difference of outlines does not know it.
  if (taken.some(({ regions }) => regions.some(({ holes }) => holes.length > 0))) return null;
  const heights = [...added, ...taken].flatMap(({ from, to }) => [from, to]);
  const steps = [...new Set(heights)].sort((a, b) => a - b);
  return steps.slice(1).flatMap((to, index): readonly Band[] => {
    const from = steps[index]!;
    const isHere = (band: Band): boolean => band.from <= from && band.to >= to;
    const here = added.filter(isHere);
    const whole = here.flatMap(({ regions }) => regions);
    const openings = taken
      .filter(isHere)
      .flatMap(({ regions }) => regions.map(({ outline }) => outline));
    const joined = here.length > 1 ? unionRegions(whole) : whole;
    const regions = openings.length === 0 ? joined : difference(joined, openings);
    return regions.length === 0 ? [] : [{ from, to, regions }];
  });
};

const allBands = (solids: readonly Solid[]): readonly Band[] | null => {
  const bands: Band[] = [];
  for (const solid of solids) {
    const found = uprightBands(solid);
    if (found === null) return null;
    bands.push(...found);
  }
  return bands;
};

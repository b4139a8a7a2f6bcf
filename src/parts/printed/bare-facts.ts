// Facts of a part with none of a spacer's features: its box, its walls and bosses, and empty lists.

import { type Extent, extentHeight, extentWidth } from "../../geometry/extent.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { recipeExtent } from "../../geometry/solid/recipe-extent.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import type { OpaqueWall } from "./opaque-wall.ts";
import type { BossFact, PrintedFacts, WallFact } from "./printed-facts.ts";

export const bareFacts = (
  box: { readonly plan: Extent; readonly rear: number; readonly front: number },
  has: { readonly walls?: readonly WallFact[]; readonly bosses?: readonly BossFact[] } = {},
): PrintedFacts => ({
  box: { plan: box.plan, rear: mm(box.rear), front: mm(box.front) },
  walls: has.walls ?? [],
  floor: null,
  rim: null,
  collars: [],
  pockets: [],
  bosses: has.bosses ?? [],
  channels: [],
  notches: [],
  boards: [],
  joints: [],
  flatness: {
    longest: mm(Math.max(extentWidth(box.plan), extentHeight(box.plan))),
    thickness: mm(box.front - box.rear),
  },
  inside: "none",
});

/** Exact for the recipe's arcs. */
export const solidBox = (
  solid: Solid,
): { readonly plan: Extent; readonly rear: Mm; readonly front: Mm } => {
  const { minX, minY, minZ, maxX, maxY, maxZ } = recipeExtent(solid);
  return { plan: { minX, minY, maxX, maxY }, rear: minZ, front: maxZ };
};

export const wallFact = (
  kind: WallFact["kind"],
  owners: readonly string[],
  of: { readonly thickness: number; readonly wall: OpaqueWall },
): WallFact => ({
  kind,
  owners,
  thickness: mm(of.thickness),
  lines: Math.round(of.thickness / of.wall.line),
  line: of.wall.line,
  opaqueFrom: of.wall.opaqueFrom,
});

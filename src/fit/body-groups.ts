// Bodies by what carries them, each group with the box round it: the coarse answer to what can meet what. Kernel-free.

import { type Mesh, meshExtent } from "../geometry/solid/mesh.ts";
import { recipeExtent, type SolidExtent } from "../geometry/solid/recipe-extent.ts";
import type { Solid } from "../geometry/solid/solid.ts";
import { joinedBox, type SpaceBox } from "../geometry/space/space-box.ts";
import type { BodyShape, ConsoleBody } from "./console-body.ts";

export interface BodyGroup {
  /** null: a single body of the console's own. */
  readonly panel: string | null;
  readonly bodies: readonly ConsoleBody[];
  readonly box: SpaceBox;
}

/** A group for each panel, and one for each body of the console's own. */
export const bodyGroups = (bodies: readonly ConsoleBody[]): readonly BodyGroup[] => {
  const byPanel = new Map<string, ConsoleBody[]>();
  const own: BodyGroup[] = [];
  for (const body of bodies) {
    const { panel, box } = body;
    if (panel === null) own.push({ panel, bodies: [body], box });
    else {
      const carried = byPanel.get(panel);
      if (carried === undefined) byPanel.set(panel, [body]);
      else carried.push(body);
    }
  }
  return [...[...byPanel].map(([panel, carried]) => bodyGroup(panel, carried)), ...own];
};

export const bodyGroup = (panel: string, bodies: readonly ConsoleBody[]): BodyGroup => ({
  panel,
  bodies,
  box: bodies.map(({ box }) => box).reduce(joinedBox),
});

/** The box of a shape in its own frame, kept with its recipe. */
export const shapeExtent = (shape: BodyShape): SolidExtent => {
  const recipe = shape.kind === "recipe" ? shape.solid : shape.mesh;
  const known = EXTENTS.get(recipe);
  if (known !== undefined) return known;
  const found = shape.kind === "recipe" ? recipeExtent(shape.solid) : meshExtent(shape.mesh);
  EXTENTS.set(recipe, found);
  return found;
};

const EXTENTS = new WeakMap<Solid | Mesh, SolidExtent>();

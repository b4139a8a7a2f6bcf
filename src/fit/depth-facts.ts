// How deep the deepest body of each panel reaches behind its seat, plug and bend included, beside what its bay has.

import { mm } from "../geometry/quantity.ts";
import { boxOut } from "../geometry/space/space-box.ts";
import type { BayLayout, PlacedPanel } from "../layout/console/console-layout.ts";
import { shapeExtent } from "./body-groups.ts";
import type { ConsoleBody } from "./console-body.ts";
import type { DepthFact } from "./fit-facts.ts";
import { frameSeenFrom } from "./hull-relation.ts";

/** One for each panel in a bay that has a body. */
export const depthFacts = (
  panels: readonly { readonly panel: PlacedPanel; readonly bodies: readonly ConsoleBody[] }[],
  bays: readonly BayLayout[],
): readonly DepthFact[] =>
  panels.flatMap(({ panel, bodies }) => {
    const { place, name, seat } = panel;
    const bay = place.kind === "bay" ? bays.find(({ id }) => id === place.bay) : undefined;
    const deepest = bay === undefined ? null : deepestOf(bodies, panel);
    if (bay === undefined || deepest === null) return [];
    const { body, level } = deepest;
    return [{ panel: name, bay: bay.id, has: bay.depth, takes: mm(seat - level), body }];
  });

const deepestOf = (
  bodies: readonly ConsoleBody[],
  panel: PlacedPanel,
): { readonly body: ConsoleBody; readonly level: number } | null => {
  let found: { readonly body: ConsoleBody; readonly level: number } | null = null;
  for (const body of bodies) {
    const level = lowest(body, panel);
    if (found === null || level < found.level) found = { body, level };
  }
  return found;
};

/** z in panel coordinates. */
const lowest = ({ shape, frame }: ConsoleBody, panel: PlacedPanel): number => {
  const seen = frameSeenFrom(panel.frame, frame);
  return boxOut(seen, shapeExtent(shape)).minZ;
};

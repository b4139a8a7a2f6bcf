// The moves that mend a finding, told from the finding itself: what lies too near another moves away from it, what lies too
// near an edge moves inward. Looked for once the followers are held back, and for the first findings only: whoever mends a
// dozen of them judges anew.

import type { Finding, Remedy } from "../diagnostics/finding.ts";
import type { Point } from "../geometry/contour.ts";
import type { PanelLayout } from "../layout/panel-layout.ts";
import { moveRemedy } from "./move-remedy.ts";
import { inwardWays } from "./move-ways.ts";
import { pairRemedies } from "./pair-remedies.ts";
import type { Move, PanelFacts } from "./rule.ts";

export const moveRemedies = (found: Finding, move: Move, facts: PanelFacts): readonly Remedy[] => {
  switch (move) {
    case "away":
      return awayRemedies(found, facts);
    case "inward":
      return inwardRemedies(found, facts);
  }
};

const awayRemedies = (found: Finding, facts: PanelFacts): readonly Remedy[] => {
  const [mover, other] = found.subjects;
  const { measured, limit } = found;
  if (mover === undefined || other === undefined || measured === null || limit === null) return [];
  const [from, centre] = [centreOf(other, facts.layout), centreOf(mover, facts.layout)];
  if (from === null || centre === null) return [];
  return pairRemedies(
    { owner: other, centre: from },
    { owner: mover, centre },
    { more: limit.value - measured.value, facts },
  );
};

/** A component's axis, or the middle of the opening that stands under the name. */
const centreOf = (id: string, layout: PanelLayout): Point | null => {
  const component = layout.components.find((one) => one.id === id);
  if (component !== undefined) return component.at;
  for (const { cutOuts } of layout.layers) {
    const opening = cutOuts.find(({ owner }) => owner === id);
    if (opening !== undefined) return opening.centre;
  }
  return null;
};

/** The nearest place toward the panel's middle where it stands well, across or along. */
const inwardRemedies = ({ subjects }: Finding, facts: PanelFacts): readonly Remedy[] => {
  const component = facts.layout.components.find(({ id }) => id === subjects[0]);
  if (component === undefined) return [];
  for (const way of inwardWays(component.at, facts.layout)) {
    const remedy = moveRemedy(component, way, facts);
    if (remedy !== null) return [remedy];
  }
  return [];
};

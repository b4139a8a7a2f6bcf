// What brings a component back from an edge, a corner or a rail: the nearest place toward the panel's middle where it
// stands well, across or along.

import type { Remedy } from "../../diagnostics/finding.ts";
import { extentCentre } from "../../geometry/extent.ts";
import { moveRemedy, type Way } from "../move-remedy.ts";
import type { PanelFacts } from "../rule.ts";

export const inwardRemedies = (owner: string, facts: PanelFacts): readonly Remedy[] => {
  const component = facts.layout.components.find(({ id }) => id === owner);
  if (component === undefined) return [];
  const middle = extentCentre(facts.layout.nominal);
  const ways: readonly Way[] = [
    { axis: "across", toward: component.at.x < middle.x ? 1 : -1 },
    { axis: "along", toward: component.at.y < middle.y ? 1 : -1 },
  ];
  for (const way of ways) {
    const remedy = moveRemedy(component, way, facts);
    if (remedy !== null) return [remedy];
  }
  return [];
};

// What the rules about light share: the ways that lamps are seen by, and where an opening's owner is written.

import type { Finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import type { LampOf } from "../../light/lamp.ts";
import { lightScene } from "../../light/light-scene.ts";
import { type Sight, sightsOf } from "../../light/sight.ts";
import type { PanelFacts } from "../rule.ts";

export const sightsIn = ({ layout, printedParts }: PanelFacts): readonly Sight[] =>
  sightsOf(lightScene(layout, printedParts));

/** By whose opening they are. */
export const owned = (
  sights: readonly Sight[],
): readonly { readonly sight: Sight; readonly cutOut: { readonly owner: string } }[] =>
  sights.map((sight) => ({ sight, cutOut: { owner: sight.owner } }));

export const spanOfOwner = (owner: string, { layout }: PanelFacts): Finding["span"] => {
  const component = layout.components.find(({ id }) => id === owner);
  const layer = layout.layers.find(({ id }) => id === owner);
  return component?.placeSpan ?? layer?.design.written.span ?? layout.design.written.span;
};

/** `the lamp of circuit night at 40, 57.5`. */
export const lampWords = ({ lamp }: Sight): string =>
  `${lampName(lamp.of)} at ${decimal(lamp.at.x, 1)}, ${decimal(lamp.at.y, 1)}`;

export const lampName = (of: LampOf): string => {
  switch (of.kind) {
    case "circuit":
      return `the lamp of circuit ${of.circuit}`;
    case "component":
      return `the lamp ${of.id}`;
    case "cell":
      return `the LED of ${of.window}`;
  }
};

// How far each thing that a hand touches lies from the shoulder of the working hand, in the plane of the seat back.
//
// The published reaches are forward ones, taken here as a ball round that shoulder. To the side an arm reaches less than
// forward by what the joint lies before the back; nothing published says by how much, so that nothing is taken off.
// The 5th-percentile woman decides: whoever is larger has a shoulder 137 mm higher at the most and reaches 209 mm further,
// so that what she reaches everybody reaches.

import { mm } from "../../geometry/quantity.ts";
import { spaceDistance } from "../../geometry/space/vector.ts";
import type { PlacedPanel, PosedOperator } from "../../layout/console/console-layout.ts";
import type { ReachFact } from "../fit-facts.ts";
import { touchedOf, touchPoint } from "../touched.ts";
import { workingShoulder } from "./working-shoulder.ts";

export const reachFacts = (
  operator: PosedOperator,
  panels: readonly PlacedPanel[],
): readonly ReachFact[] => {
  const shoulder = workingShoulder(operator);
  return panels.flatMap((panel) =>
    touchedOf(panel).map((component) => {
      const at = touchPoint(component, panel);
      return {
        panel: panel.name,
        component: component.id,
        isImportant: component.common.important,
        distance: mm(spaceDistance(shoulder, at)),
        functional: operator.functionalReach.small,
        extended: operator.extendedReach.small,
        at,
        span: component.placeSpan,
      };
    }),
  );
};

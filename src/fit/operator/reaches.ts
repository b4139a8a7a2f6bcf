// How far each thing that a hand touches lies from the shoulder of the working hand, in the plane of the seat back.
//
// The published reaches are forward ones, taken here as a ball round that shoulder. To the side an arm reaches less than
// forward by what the joint lies before the back; nothing published says by how much, so that nothing is taken off.
// The 5th-percentile woman decides: whoever is larger has a shoulder 137 mm higher at the most and reaches 209 mm further,
// so that what she reaches everybody reaches.

import { mm } from "../../geometry/quantity.ts";
import { plus, spaceDistance, type Vector, vector } from "../../geometry/space/vector.ts";
import type { PlacedPanel, PosedOperator } from "../../layout/console/console-layout.ts";
import type { ReachFact } from "../fit-facts.ts";
import { touchedOf, touchPoint } from "../touched.ts";

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

/**
 * Across the points of the shoulders of a 5th-percentile woman: 325 mm, British adults of 19 to 65, Pheasant, Bodyspace;
 * seen in a secondary copy.
 */
export const SHOULDER_BREADTH = {
  breadth: mm(325),
  source: "Pheasant, Bodyspace: across the shoulders, 5th-percentile woman (secondary copy)",
} as const;

/**
 * Half the shoulder breadth aside, where the arm begins. From the middle of the back a side console on the working side
 * would be told 160 mm further than it is, and one on the other side nearer, which is the dangerous error.
 */
export const workingShoulder = ({ shoulder, hand }: PosedOperator): Vector => {
  const aside = (hand === "right" ? -1 : 1) * (SHOULDER_BREADTH.breadth / 2);
  return plus(shoulder.small, vector(0, aside, 0));
};

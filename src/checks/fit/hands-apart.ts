// What gives two hands their room: the panel a few modules on where that is free, or a control moved on its panel. Both are
// tried with every control of the panels before they are offered.

import type { Remedy } from "../../diagnostics/finding.ts";
import type { HandPlace } from "../../fit/fit-facts.ts";
import { handFacts } from "../../fit/service/hands.ts";
import { type Touched, touchedOf, touchPoint } from "../../fit/touched.ts";
import { point } from "../../geometry/contour.ts";
import { pointIn } from "../../geometry/space/frame.ts";
import { placedContour, placement } from "../../geometry/transform.ts";
import type { PlacedPanel } from "../../layout/console/console-layout.ts";
import { movedWith } from "../../layout/moved-with.ts";
import { isUnder } from "../limits.ts";
import type { Way } from "../move-remedy.ts";
import { awayWays } from "../move-ways.ts";
import type { Shift } from "../place-trouble.ts";
import { componentMoves } from "./component-moves.ts";
import type { ConsoleFacts } from "./console-rule.ts";
import { freeModuleRemedies } from "./free-module.ts";

export const handsApart = (
  first: HandPlace,
  second: HandPlace,
  facts: ConsoleFacts,
): readonly Remedy[] => {
  const [one, other] = [heldAt(first, facts), heldAt(second, facts)];
  if (one === null || other === null) return [];
  const module = freeModuleRemedies(one.panel, facts, (frame) =>
    isFree({ ...one.panel, frame }, facts),
  );
  const own = moved(one, other, facts);
  return [...module, ...(own.length > 0 ? own : moved(other, one, facts))];
};

interface Held {
  readonly panel: PlacedPanel;
  readonly component: Touched;
}

const heldAt = (at: HandPlace, { layout }: ConsoleFacts): Held | null => {
  const panel = layout.panels.find(({ name }) => name === at.panel);
  const component = panel && touchedOf(panel).find(({ id }) => id === at.component);
  return panel === undefined || component === undefined ? null : { panel, component };
};

const moved = (one: Held, other: Held, facts: ConsoleFacts): readonly Remedy[] => {
  const { panel, component } = one;
  const { x, y } = pointIn(panel.frame, touchPoint(other.component, other.panel));
  return awayWays(point(x, y), component.at)
    .flatMap((way) =>
      componentMoves(
        {
          panel,
          component,
          ways: [way],
          suits: (shift) => isFree(shifted(one, way, shift), facts),
        },
        facts,
      ),
    )
    .slice(0, 1);
};

/** The panel with what a hand takes hold of where it would be. */
const shifted = ({ panel, component }: Held, { axis }: Way, { x, y }: Shift): PlacedPanel => {
  const { layout } = panel;
  const going = movedWith([component.entry], axis, layout.components);
  const components = layout.components.map((each) =>
    each.grasp === null || !going.has(each.id)
      ? each
      : { ...each, grasp: placedContour(each.grasp, placement(x, y)) },
  );
  return { ...panel, layout: { ...layout, components } };
};

/** Of this panel's controls beside those of all others. */
const isFree = (panel: PlacedPanel, { layout }: ConsoleFacts): boolean =>
  layout.panels.every(
    (other) =>
      other.name === panel.name ||
      handFacts([panel, other]).every(({ gap, needs }) => !isUnder(gap, needs)),
  );

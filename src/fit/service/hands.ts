// Controls of different panels near each other, edge to edge. Panels of one bay lie in one plane: there the outlines are
// compared as on one panel, exact. Across bays, and for panels on their own feet, each control is the column from its
// panel's face to the top of what is held, and the gap is the least between two columns in space.

import type { Contour } from "../../geometry/contour.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { pointIn, pointOut } from "../../geometry/space/frame.ts";
import { boxGap, boxRound, type SpaceBox } from "../../geometry/space/space-box.ts";
import { vector } from "../../geometry/space/vector.ts";
import { placedContour, placement } from "../../geometry/transform.ts";
import type { PlacedPanel } from "../../layout/console/console-layout.ts";
import { separation } from "../../standards/separation.ts";
import type { HandFact, HandPlace } from "../fit-facts.ts";
import { graspTop, type Touched, touchedOf } from "../touched.ts";
import { columnGap } from "./column-gap.ts";

/** Pairs further apart than this are left out: twice the largest figure of the table. */
const SEARCH = 50;

export const handFacts = (panels: readonly PlacedPanel[]): readonly HandFact[] => {
  const columns = panels.flatMap((panel) =>
    touchedOf(panel).map((component) => columnOf(component, panel)),
  );
  return columns.flatMap((first, index) =>
    columns.slice(index + 1).flatMap((second) => {
      if (first.panel === second.panel || boxGap(first.box, second.box) > SEARCH) return [];
      const rule = separation(first.component.part.hand, second.component.part.hand);
      if (rule === null) return [];
      const gap = gapOf(first, second);
      if (gap > SEARCH) return [];
      return [
        { a: handPlace(first), b: handPlace(second), gap, needs: rule.least, source: rule.source },
      ];
    }),
  );
};

interface Held {
  readonly panel: PlacedPanel;
  readonly component: Touched;
  readonly top: Mm;
  readonly box: SpaceBox;
}

const columnOf = (component: Touched, panel: PlacedPanel): Held => {
  const { minX, minY, maxX, maxY } = contourExtent(component.grasp);
  const top = graspTop(component);
  const corners = [0, top].flatMap((z) => [
    vector(minX, minY, z),
    vector(maxX, minY, z),
    vector(maxX, maxY, z),
    vector(minX, maxY, z),
  ]);
  const box = boxRound(corners.map((corner) => pointOut(panel.frame, corner)));
  return { panel, component, top, box };
};

const handPlace = ({ panel, component }: Held): HandPlace => ({
  panel: panel.name,
  component: component.id,
  hand: component.part.hand,
  span: component.placeSpan,
});

const gapOf = (a: Held, b: Held): Mm => {
  if (!isCoplanar(a.panel, b.panel))
    return columnGap(
      { outline: a.component.grasp, top: a.top, frame: a.panel.frame },
      { outline: b.component.grasp, top: b.top, frame: b.panel.frame },
    );
  const { gap, overlaps } = contourDistance(a.component.grasp, inFrameOf(b, a.panel));
  return overlaps ? mm(0) : gap;
};

const isCoplanar = ({ place: a }: PlacedPanel, { place: b }: PlacedPanel): boolean =>
  a.kind === "bay" && b.kind === "bay" && a.bay === b.bay;

/** Panels of one bay are only shifted against one another. */
const inFrameOf = ({ panel, component }: Held, other: PlacedPanel): Contour => {
  const { x, y } = pointIn(other.frame, panel.frame.origin);
  return placedContour(component.grasp, placement(x, y));
};

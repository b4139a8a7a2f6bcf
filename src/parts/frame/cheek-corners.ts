// The outline of a cheek in the profile: from the back on the floor to the front, and back along the tops.

import { type Point, point } from "../../geometry/contour.ts";
import type { Span } from "./board.ts";
import { closingLift } from "./closing-place.ts";
import { type FrameBay, faceHeight, inBay } from "./frame-bay.ts";
import type { Knees } from "./knees.ts";
import type { PlanScene } from "./plan-options.ts";
import { stepped } from "./profile.ts";
import { type Line, meeting } from "./steps.ts";

export interface CheekSide {
  readonly ends: Span;
  readonly across: number;
  readonly knees: Knees | null;
  /** Between each bay and the next, its edge beyond the strip of a step; null where there is none. */
  readonly steps: readonly (Line | null)[];
}

/** Counter-clockwise; it stands `beyond` over each bay's face as it meets the cheek, and over the strips between them. */
export const cheekCorners = (scene: PlanScene, cheek: CheekSide): readonly Point[] => {
  const { bays } = scene;
  const { ends, knees, steps } = cheek;
  const tops = bays.flatMap((bay, index) => [
    ...beginningOf(bay, scene, { cheek, step: steps[index - 1] ?? null }),
    ...endOf(bay, scene, { cheek, step: steps[index] ?? null }),
  ]);
  const foot =
    knees === null ? [point(ends.from, 0)] : [point(ends.from, knees.height), ...cutOut(knees)];
  const first = tops[0]!;
  const last = tops.at(-1)!;
  return [
    ...foot,
    point(ends.to, 0),
    ...(last.x < ends.to ? [point(ends.to, last.y)] : []),
    ...tops.toReversed(),
    ...(first.x > ends.from ? [point(ends.from, first.y)] : []),
  ];
};

/** From the top of the knee space down to the floor: straight, or by the step over the feet. */
const cutOut = ({ depth, height, foot }: Knees): readonly Point[] => [
  point(depth, height),
  ...(foot === null
    ? [point(depth, 0)]
    : [point(depth, foot.height), point(foot.depth, foot.height), point(foot.depth, 0)]),
];

interface EndScene {
  readonly cheek: CheekSide;
  /** At this end of the bay. */
  readonly step: Line | null;
}

/** Where a bay is lower at the cheek than in its middle its ends stand over it, as what closes them does. */
const beginningOf = (bay: FrameBay, scene: PlanScene, at: EndScene): readonly Point[] => {
  const { beyond } = scene.design;
  const height = heightOf(bay, scene, at);
  const corner = inBay(bay, 0, height);
  if (at.step !== null) return atStep(at.step, { bay, height, corner }).toReversed();
  return height < beyond ? [inBay(bay, 0, beyond), corner] : [corner];
};

const endOf = (bay: FrameBay, scene: PlanScene, at: EndScene): readonly Point[] => {
  const { bays, thickness, design } = scene;
  const { beyond } = design;
  const lift = bay === bays.at(-1) ? closingLift(bay, thickness) : 0;
  const end = bay.length + (lift > 0 ? lift + beyond : 0);
  const height = heightOf(bay, scene, at);
  const corner = inBay(bay, end, height);
  if (at.step !== null) return atStep(at.step, { bay, height, corner });
  return height < beyond ? [corner, inBay(bay, end, beyond)] : [corner];
};

const heightOf = (bay: FrameBay, { design }: PlanScene, { cheek }: EndScene): number =>
  faceHeight(bay, cheek.across) + design.beyond;

/** From the bay to the step: where its edge meets the step's, or on to that where the two run side by side. */
const atStep = (step: Line, { bay, height, corner }: BayEnd): readonly Point[] => {
  const met = meeting({ at: inBay(bay, 0, height), along: bay.along }, step);
  if (met !== null) return [met];
  const [x, y] = [corner.x - step.at.x, corner.y - step.at.y];
  return [corner, stepped(step.at, step.along, x * step.along.x + y * step.along.y)];
};

interface BayEnd {
  readonly bay: FrameBay;
  readonly height: number;
  readonly corner: Point;
}

// The places from which a console is looked at: from the seat, as a whole, from above, from its right, from ahead, square
// on to a bay, on to a panel. Pure: a scene in, goals out.

import {
  minus,
  plus,
  scaled,
  spaceDistance,
  type Vector,
  vectorLength,
} from "../../src/geometry/space/vector.ts";
import type { CameraGoal } from "./camera-goal.ts";
import type { ConsoleScene, ScenePanel } from "./console-messages.ts";
import { middleOf } from "./operator-figure.ts";

/** From how far a ball of a radius is seen whole. */
export type DistanceFor = (radius: number) => number;

export interface StandingView {
  readonly id: string;
  readonly words: string;
  readonly goal: CameraGoal;
}

export const standingViews = (
  scene: ConsoleScene,
  distanceFor: DistanceFor,
): readonly StandingView[] => {
  const { low, high } = scene.box;
  const middle = scaled(plus(low, high), 1 / 2);
  const distance = distanceFor(spaceDistance(low, high) / 2);
  const whole = { target: middle, distance };
  return [
    { id: "whole", words: "Whole", goal: { ...whole, side: 300, rise: 42 } },
    ...seatView(scene),
    { id: "above", words: "Above", goal: { ...whole, side: 0, rise: 89 } },
    { id: "left", words: "Left side", goal: { ...whole, side: 270, rise: 2 } },
    { id: "right", words: "Right side", goal: { ...whole, side: 90, rise: 2 } },
    { id: "behind", words: "Behind", goal: { ...whole, side: 0, rise: 2 } },
    ...scene.bays.map((bay) => ({
      id: `bay ${bay.id}`,
      words: `Bay ${bay.id}`,
      goal: {
        ...towardFrom(bay.frame.z),
        target: middleOf(bay),
        distance: distanceFor(bay.length * 0.55),
      },
    })),
  ];
};

/** What the operator sees: from between the eyes of the smallest and the largest person to the middle of the bays. */
const seatView = ({ operator, bays }: ConsoleScene): readonly StandingView[] => {
  const [small, large] = operator?.eyes ?? [];
  if (small === undefined || large === undefined || bays.length === 0) return [];
  const eye = scaled(plus(small, large), 1 / 2);
  const target = scaled(bays.map(middleOf).reduce(plus), 1 / bays.length);
  const out = minus(eye, target);
  const goal = { ...towardFrom(out), target, distance: vectorLength(out) };
  return [{ id: "seat", words: "From the seat", goal }];
};

/** Side and rise of a camera that looks against a direction. */
const towardFrom = (out: Vector): Pick<CameraGoal, "side" | "rise"> => {
  const degrees = 180 / Math.PI;
  const side = Math.atan2(-out.y, -out.x) * degrees;
  const rise = Math.asin(out.z / vectorLength(out)) * degrees;
  return { side: (side + 360) % 360, rise: Math.min(89.5, Math.max(-89.5, rise)) };
};

/** Toward a panel from where one stands, nearer; `lift`: what it has been lifted by. */
export const panelGoal = (
  scene: ConsoleScene,
  panel: ScenePanel,
  from: {
    readonly goal: CameraGoal;
    readonly distanceFor: DistanceFor;
    readonly lift: number;
  },
): CameraGoal => {
  const frame = scene.groups.find(({ key }) => key === panel.name)?.frame;
  if (frame === undefined) return from.goal;
  const middle = plus(scaled(frame.x, panel.width / 2), scaled(frame.y, panel.height / 2));
  const radius = Math.hypot(panel.width, panel.height) * 0.9;
  return {
    ...from.goal,
    target: plus(plus(frame.origin, middle), scaled(frame.z, from.lift)),
    distance: from.distanceFor(radius),
  };
};

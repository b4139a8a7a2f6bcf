// The places from which a console is looked at: from the seat, as a whole, from above, from its sides, from behind, before
// a bay as one reads it, on to a panel. Pure: a scene in, goals out.

import {
  minus,
  plus,
  scaled,
  type Vector,
  vector,
  vectorLength,
} from "../../src/geometry/space/vector.ts";
import {
  type CameraGoal,
  framingGoal,
  type Opening,
  readersStance,
  towardFrom,
} from "./camera-goal.ts";
import type { ConsoleScene, SceneBay } from "./console-messages.ts";
import type { Look } from "./look.ts";
import { middleOf, operatorLines } from "./operator-figure.ts";

/** From how far a ball of a radius is seen whole. */
type DistanceFor = (radius: number) => number;

export interface StandingView {
  readonly id: string;
  readonly words: string;
  readonly goal: CameraGoal;
}

/** From where the faces are seen, from a little behind them and not steeply: common practice for a first view of a desk. */
const FIRST_RISE = 30;
const FIRST_TURN = 25;
/** Of faces that lie flat within 3 degrees: the sine of it. */
const FLAT = 0.05;
/** Where there is no face. */
const FIRST_SIDE = 320;

const firstSide = ({ bays }: ConsoleScene): number => {
  const [first, ...others] = bays.map(({ frame }) => frame.z);
  if (first === undefined) return FIRST_SIDE;
  const facing = others.reduce(plus, first);
  const up = bays.map(({ frame }) => frame.y).reduce(plus);
  // Faces that lie flat look to no side: then it is theirs who reads them.
  const isFlat = Math.hypot(facing.x, facing.y) < FLAT * vectorLength(facing);
  const { side } = isFlat ? readersStance({ y: up, z: facing }) : towardFrom(facing);
  // Turned to where the bays are seen along less and across more: a row is long.
  const run = towardFrom(up).side;
  const along = (turned: number): number => Math.abs(Math.cos(((turned - run) * Math.PI) / 180));
  const [left, right] = [side - FIRST_TURN, side + FIRST_TURN];
  return ((along(left) < along(right) ? left : right) + 360) % 360;
};

/** `showReach`: whether the rings of reach are drawn, and so framed. */
export const standingViews = (
  scene: ConsoleScene,
  opening: Opening,
  { showReach }: Pick<Look, "showReach">,
): readonly StandingView[] => {
  const { figure, reach } = operatorPoints(scene);
  const seen = [...boxPoints(scene), ...figure];
  const framed = (side: number, rise: number): CameraGoal =>
    framingGoal(showReach ? [...seen, ...reach] : seen, { side, rise }, opening);
  // The reach may leave the first picture: with it the console would take a third of it.
  const first = framingGoal(seen, { side: firstSide(scene), rise: FIRST_RISE }, opening);
  return [
    { id: "whole", words: "Whole", goal: first },
    ...seatView(scene),
    { id: "above", words: "Above", goal: framed(0, 89) },
    { id: "left", words: "Left side", goal: framed(270, 2) },
    { id: "right", words: "Right side", goal: framed(90, 2) },
    { id: "behind", words: "Behind", goal: framed(0, 2) },
    ...scene.bays.map((bay) => ({
      id: `bay ${bay.id}`,
      words: `Bay ${bay.id}`,
      goal: framingGoal(bayPoints(bay), readersStance(bay.frame), opening),
    })),
  ];
};

/** Square on to a cut, from the side that is taken away. */
export const cutGoal = (scene: ConsoleScene, normal: Vector, opening: Opening): CameraGoal =>
  framingGoal(boxPoints(scene), towardFrom(scaled(normal, -1)), opening);

const boxPoints = ({ box: { low, high } }: ConsoleScene): readonly Vector[] =>
  [low.x, high.x].flatMap((x) =>
    [low.y, high.y].flatMap((y) => [low.z, high.z].map((z) => vector(x, y, z))),
  );

/** The figure and the arcs of its reach, as they are drawn. */
const operatorPoints = ({
  operator,
  bays,
}: ConsoleScene): { readonly figure: readonly Vector[]; readonly reach: readonly Vector[] } => {
  if (operator === null) return { figure: [], reach: [] };
  const { figure, functional, extended } = operatorLines(operator, bays);
  return { figure: endsOf(figure), reach: [...endsOf(functional), ...endsOf(extended)] };
};

const endsOf = (lines: ArrayLike<number>): readonly Vector[] =>
  Array.from({ length: lines.length / 3 }, (_, at) =>
    vector(lines[3 * at]!, lines[3 * at + 1]!, lines[3 * at + 2]!),
  );

const bayPoints = ({ frame, length, width }: SceneBay): readonly Vector[] =>
  [0, length].flatMap((along) =>
    [-width / 2, width / 2].map((aside) =>
      plus(plus(frame.origin, scaled(frame.y, along)), scaled(frame.x, aside)),
    ),
  );

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

/** What is small is not gone nearer to than a ball of this radius is, mm: what stands round it tells where it is. */
const NEAREST_BALL = 60;

/** Toward what a ball holds, from the side from which one looks; with some of what stands round it. */
export const goalOnBall = (
  { middle, radius }: { readonly middle: Vector; readonly radius: number },
  from: { readonly goal: CameraGoal; readonly distanceFor: DistanceFor },
): CameraGoal => ({
  ...from.goal,
  target: middle,
  distance: from.distanceFor(Math.max(NEAREST_BALL, radius * 1.4)),
});

/** Round a panel there is room for its name and its neighbours. */
const AROUND = 1.25;

/** Toward a panel from the side from which one looks; `points`: of all that is drawn of it. */
export const panelGoal = (
  points: readonly Vector[],
  { goal, opening }: { readonly goal: CameraGoal; readonly opening: Opening },
): CameraGoal => {
  if (points.length === 0) return goal;
  const framed = framingGoal(points, goal, opening);
  return { ...framed, distance: framed.distance * AROUND };
};

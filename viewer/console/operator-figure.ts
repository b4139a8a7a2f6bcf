// The operator as lines: trunk, head, thighs and legs by published sizes, the working arm's reach as arcs, and sight lines
// to the middle of each bay. Pure: two points each, one after the other.

import { plus, scaled, type Vector, vector } from "../../src/geometry/space/vector.ts";
import { EYE_BEFORE_SEAT_BACK, SEATED_PERSON } from "../../src/standards/reach.ts";
import type { SceneBay, SceneOperator } from "./console-messages.ts";

export interface OperatorLines {
  readonly figure: readonly number[];
  /** Without leaning. */
  readonly functional: readonly number[];
  /** Leaning forward. */
  readonly extended: readonly number[];
  readonly sight: readonly number[];
  readonly eye: Vector;
}

export const operatorLines = (
  operator: SceneOperator,
  bays: readonly SceneBay[],
): OperatorLines => {
  const [small, large] = operator.eyes;
  const eye = scaled(plus(small ?? operator.seat, large ?? small ?? operator.seat), 1 / 2);
  return {
    figure: figureLines(operator, eye),
    functional: reachArcs(operator.shoulder, operator.functional),
    extended: reachArcs(operator.shoulder, operator.extended),
    sight: bays.flatMap((bay) => line(eye, middleOf(bay))),
    eye,
  };
};

export const middleOf = ({ frame, length }: SceneBay): Vector =>
  plus(frame.origin, scaled(frame.y, length / 2));

/** Radius of a head that is drawn, not judged: common practice. */
const HEAD = 95;

const middle = ({ small, large }: { readonly small: number; readonly large: number }): number =>
  (small + large) / 2;

const figureLines = ({ seat, shoulder }: SceneOperator, eye: Vector): readonly number[] => {
  const { kneeHeight, popliteal } = SEATED_PERSON;
  const neck = vector(seat.x, seat.y, seat.z + middle(SEATED_PERSON.shoulderAboveSeat));
  const half = Math.abs(shoulder.y - seat.y);
  const head = vector(eye.x - EYE_BEFORE_SEAT_BACK.distance / 2, eye.y, eye.z + HEAD / 4);
  const knee = vector(
    seat.x + middle(kneeHeight),
    seat.y,
    seat.z + (middle(kneeHeight) - middle(popliteal)) / 2,
  );
  return [
    ...line(seat, neck),
    ...line(plus(neck, vector(0, -half, 0)), plus(neck, vector(0, half, 0))),
    ...line(neck, head),
    ...circle(head, HEAD, [vector(1, 0, 0), vector(0, 0, 1)]),
    ...circle(head, HEAD, [vector(0, 1, 0), vector(0, 0, 1)]),
    ...[-half / 2, half / 2].flatMap((aside) => {
      const hip = plus(seat, vector(0, aside, 0));
      const bent = plus(knee, vector(0, aside, 0));
      const foot = vector(bent.x, bent.y, 0);
      return [
        ...line(hip, bent),
        ...line(bent, foot),
        ...line(foot, plus(foot, vector(200, 0, 0))),
      ];
    }),
    ...line(plus(seat, vector(0, -half, 0)), plus(seat, vector(0, half, 0))),
  ];
};

/** What a ball of that radius round the shoulder shows: level, upright ahead, and upright aside. */
const reachArcs = (shoulder: Vector, radius: number): readonly number[] => [
  ...circle(shoulder, radius, [vector(1, 0, 0), vector(0, 1, 0)]),
  ...circle(shoulder, radius, [vector(1, 0, 0), vector(0, 0, 1)]),
  ...circle(shoulder, radius, [vector(0, 1, 0), vector(0, 0, 1)]),
];

const SIDES = 72;

const circle = (
  centre: Vector,
  radius: number,
  [x, y]: readonly [Vector, Vector],
): readonly number[] => {
  const at = (side: number): Vector => {
    const turn = (2 * Math.PI * side) / SIDES;
    return plus(
      centre,
      plus(scaled(x, radius * Math.cos(turn)), scaled(y, radius * Math.sin(turn))),
    );
  };
  return Array.from({ length: SIDES }, (_, side) => line(at(side), at(side + 1))).flat();
};

const line = (a: Vector, b: Vector): readonly number[] => [a.x, a.y, a.z, b.x, b.y, b.z];

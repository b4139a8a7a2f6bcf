// The seated operator on a drawing: the seat and its back, the eyes and shoulders of the smallest and the largest person,
// how far the smallest reaches, and lines of sight to each bay. Published sizes only: no more of a person than they give.

import { workingShoulder } from "../fit/operator/working-shoulder.ts";
import { type Path, path, point, vertex } from "../geometry/contour.ts";
import { type Extent, extent, joinedExtent } from "../geometry/extent.ts";
import { pathExtent } from "../geometry/measure.ts";
import { degrees } from "../geometry/quantity.ts";
import { plus, scaled, type Vector, vector } from "../geometry/space/vector.ts";
import { direction } from "../geometry/trigonometry.ts";
import type { ConsoleLayout, PosedOperator } from "../layout/console/console-layout.ts";
import type { Face } from "../lettering/face.ts";
import { SEATED_PERSON } from "../standards/reach.ts";
import { type ConsoleView, onSheet } from "./console-view.ts";
import { segmentsOfCross } from "./crosses.ts";
import type { DrawingItem } from "./drawing.ts";
import { HAIR, run, stroked, THIN } from "./items.ts";
import { type Words, words } from "./words.ts";

/** A seat as it is drawn, forward and to each side of its middle: a drawing's convention, no figure of a person. */
const SEAT = { forward: 420, side: 230 } as const;
/** In the side view arcs run from this far below the shoulder's level to this far above it, in degrees. */
const SIDE_ARC = { from: -60, to: 45 } as const;
/** In plan they run this far to each side of straight ahead. */
const PLAN_ARC = { from: -60, to: 60 } as const;

export interface OperatorView {
  readonly items: readonly DrawingItem[];
  readonly box: Extent;
}

/** null where nobody is written, and in sections, where nobody sits. */
export const operatorView = (
  face: Face | null,
  layout: ConsoleLayout,
  view: ConsoleView,
): OperatorView | null => {
  const { operator } = layout;
  const room = operatorBox(layout, view);
  if (operator === null || room === null) return null;
  const marks = [...eyes(operator), ...shoulders(operator)];
  const names = view.kind === "plan" ? [] : marks.map((mark) => markWords(face, mark, view));
  return {
    items: [
      stroked(seatLines(operator, view), { ink: "dimension", width: THIN }),
      ...(view.kind === "front" ? [] : reachItems(operator, layout, view)),
      stroked(sightLines(operator, layout, view), { ink: "advisory", width: HAIR, dashed: true }),
      stroked(
        marks.flatMap(({ at }) => segmentsOfCross(onSheet(view, at), 1.2)),
        { ink: "dimension", width: THIN },
      ),
      ...names.flatMap(({ items }) => items),
    ],
    box: names.map(({ box }) => box).reduce(joinedExtent, room),
  };
};

/** Of seat, eyes and shoulders, and with them of the lines of sight, which end at the bays; arcs of reach go on round it. */
export const seatBox = ({ operator }: ConsoleLayout, view: ConsoleView): Extent | null => {
  if (operator === null) return null;
  const marks = [...eyes(operator), ...shoulders(operator)]
    .map(({ at }) => onSheet(view, at))
    .map(({ x, y }) => extent(x, y, x, y));
  return [...seatLines(operator, view).map(pathExtent), ...marks].reduce(joinedExtent);
};

interface Mark {
  readonly name: string;
  readonly at: Vector;
}

const eyes = ({ eye, design }: PosedOperator): readonly Mark[] =>
  design.eye === null
    ? [
        { name: "eye, smallest", at: eye.small },
        { name: "eye, largest", at: eye.large },
      ]
    : [{ name: "eye, measured", at: eye.small }];

/** The smallest person's is that of the working hand, from which reach is told. */
const shoulders = (operator: PosedOperator): readonly Mark[] => [
  { name: "shoulder, smallest", at: workingShoulder(operator) },
  { name: "shoulder, largest", at: operator.shoulder.large },
];

const markWords = (face: Face | null, { name, at }: Mark, view: ConsoleView): Words => {
  const place = onSheet(view, at);
  return words(face, name, point(place.x - 2, place.y - 0.8), {
    capHeight: 1.6,
    align: "end",
    ink: "dimension",
  });
};

const seatLines = ({ seat, eye }: PosedOperator, view: ConsoleView): readonly Path[] => {
  const at = (forward: number, left: number, up: number): ReturnType<typeof onSheet> =>
    onSheet(view, plus(seat, vector(forward, left, up)));
  const top = eye.large.z - seat.z;
  const { forward, side } = SEAT;
  const { thighClearance } = SEATED_PERSON;
  switch (view.kind) {
    case "plan":
      return [
        run(
          at(0, side, 0),
          at(0, -side, 0),
          at(forward, -side, 0),
          at(forward, side, 0),
          at(0, side, 0),
        ),
      ];
    case "side":
      return [
        run(at(0, 0, top), at(0, 0, 0), at(forward, 0, 0)),
        run(at(0, 0, thighClearance.large), at(forward, 0, thighClearance.large)),
      ];
    case "front":
      return [run(at(0, side, 0), at(0, -side, 0)), run(at(0, 0, 0), at(0, 0, top))];
    case "section":
      return [];
  }
};

const reachItems = (
  operator: PosedOperator,
  layout: ConsoleLayout,
  view: ConsoleView,
): readonly DrawingItem[] => {
  const { functionalReach, extendedReach } = operator;
  const arcs = (reach: number): readonly Path[] => reachArc(operator, reach, { layout, view });
  return [
    stroked(arcs(functionalReach.small), { ink: "dimension", width: THIN }),
    stroked(arcs(extendedReach.small), { ink: "dimension", width: THIN, dashed: true }),
  ];
};

/** A ball round the shoulder of the working hand, cut at the panels' middle: a circle less than the reach; none beyond it. */
const reachArc = (
  operator: PosedOperator,
  reach: number,
  { layout, view }: { readonly layout: ConsoleLayout; readonly view: ConsoleView },
): readonly Path[] => {
  const shoulder = workingShoulder(operator);
  const middle = panelsMiddle(layout) ?? shoulder;
  const away = view.kind === "side" ? shoulder.y - middle.y : shoulder.z - middle.z;
  const square = reach * reach - away * away;
  if (square <= 0) return [];
  const span = view.kind === "side" ? SIDE_ARC : PLAN_ARC;
  return [arcPath(shoulder, Math.sqrt(square), { view, ...span })];
};

/** Of the middles of all panels; null where there are none. */
export const panelsMiddle = ({ panels }: ConsoleLayout): Vector | null => {
  const middles = panels.map(({ frame, layout }) => {
    const { maxX, maxY } = layout.nominal;
    return plus(frame.origin, plus(scaled(frame.x, maxX / 2), scaled(frame.y, maxY / 2)));
  });
  return middles.length === 0
    ? null
    : scaled(
        middles.reduce((sum, middle) => plus(sum, middle)),
        1 / middles.length,
      );
};

/** Degrees from straight ahead: upward in the side view, to the left in plan. One true arc. */
const arcPath = (
  centre: Vector,
  radius: number,
  { view, from, to }: { readonly view: ConsoleView; readonly from: number; readonly to: number },
): Path => {
  const at = (angle: number): ReturnType<typeof onSheet> => {
    const { x, y } = direction(degrees(angle));
    const off = view.kind === "side" ? vector(x, 0, y) : vector(x, y, 0);
    return onSheet(view, plus(centre, scaled(off, radius)));
  };
  const [start, end] = [at(from), at(to)];
  // tan of a quarter of the arc's angle, from its half: (1 - cos h) / sin h; to the left is to the left on the sheet as well.
  const half = direction(degrees((to - from) / 2));
  const bulge = (1 - half.x) / half.y;
  return path([vertex(start.x, start.y, bulge), vertex(end.x, end.y)]);
};

/** From each eye to the middle of each bay's length. */
const sightLines = (
  operator: PosedOperator,
  { bays }: ConsoleLayout,
  view: ConsoleView,
): readonly Path[] => {
  const from = operator.design.eye === null ? Object.values(operator.eye) : [operator.eye.small];
  return bays.flatMap(({ frame, length }) => {
    const middle = onSheet(view, plus(frame.origin, scaled(frame.y, length / 2)));
    return from.map((eye) => run(onSheet(view, eye), middle));
  });
};

/** What of the operator takes room on the sheet: seat, eyes, arcs; null where nothing of it is drawn. */
export const operatorBox = (layout: ConsoleLayout, view: ConsoleView): Extent | null => {
  const { operator } = layout;
  if (operator === null || view.kind === "section") return null;
  const reach = operator.extendedReach;
  const arcs = view.kind === "front" ? [] : reachArc(operator, reach.small, { layout, view });
  const marks = [...eyes(operator), ...shoulders(operator)].map(({ at }) => onSheet(view, at));
  const boxes = [
    ...[...seatLines(operator, view), ...arcs].map(pathExtent),
    ...marks.map(({ x, y }) => extent(x, y, x, y)),
  ];
  return boxes.reduce(joinedExtent);
};

// The outline of a cheek in the profile: from the back on the floor to the front, and back along the tops.

import { type Point, point } from "../../geometry/contour.ts";
import type { Span } from "./board.ts";
import { closingLift } from "./closing-place.ts";
import { faceHeight, inBay } from "./frame-bay.ts";
import type { Knees } from "./knees.ts";
import type { PlanScene } from "./plan-options.ts";

/** Counter-clockwise; it stands `beyond` over each bay's face as it meets the cheek, and over the strips between them. */
export const cheekCorners = (
  { bays, thickness, design: { beyond } }: PlanScene,
  cheek: { readonly ends: Span; readonly across: number; readonly knees: Knees | null },
): readonly Point[] => {
  const { ends, across, knees } = cheek;
  const tops = bays.flatMap((bay, index) => {
    const lift = index === bays.length - 1 ? closingLift(bay, thickness) : 0;
    const end = bay.length + (lift > 0 ? lift + beyond : 0);
    const height = faceHeight(bay, across) + beyond;
    const at = (along: number, up: number): Point => inBay(bay, along, up);
    const line = [at(0, height), at(end, height)];
    return height < beyond ? [at(0, beyond), ...line, at(end, beyond)] : line;
  });
  const foot =
    knees === null
      ? [point(ends.from, 0)]
      : [point(ends.from, knees.height), point(knees.depth, knees.height), point(knees.depth, 0)];
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

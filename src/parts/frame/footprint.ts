// What a section of the frame stands on: a rectangle of the floor, cheeks and what stands beyond its bays included. Cheeks go
// down to the floor wherever there is no knee space, and nothing else finds room in that, so that two sections whose
// rectangles meet want the same room. Takes a section's plan and its unit's profile.

import { type Point, point } from "../../geometry/contour.ts";
import type { Span } from "./board.ts";
import type { FramePlan } from "./frame-plan.ts";
import { outOfProfile, type Profile } from "./profile.ts";

/** Its sides: forward, and across to the right. */
export interface Footprint {
  readonly ends: Span;
  readonly across: Span;
}

export const footprint = ({ ends, across, thickness }: FramePlan): Footprint => ({
  ends,
  across: { from: across.from - thickness, to: across.to + thickness },
});

/** Its corners on the console's floor: x forward, y to the left; round it one way. */
export const cornersOnFloor = ({ ends, across }: Footprint, profile: Profile): readonly Point[] =>
  (
    [
      [ends.from, across.from],
      [ends.to, across.from],
      [ends.to, across.to],
      [ends.from, across.to],
    ] as const
  ).map(([forward, right]) => {
    const { x, y } = outOfProfile(profile, point(forward, 0), right);
    return point(x, y);
  });

// What a straight way with room round it meets: a line of sight, a driver's blade. Takes bodies at their places, gives those
// that come into the room, the nearest to the start first. Recipes are exact, their arcs too; no mesh is made of them.

import { type Mm, mm } from "../geometry/quantity.ts";
import { meshDistance } from "../geometry/solid/mesh-distance.ts";
import { solidDistance } from "../geometry/solid/solid-distance.ts";
import { pointIn } from "../geometry/space/frame.ts";
import type { SpaceBox } from "../geometry/space/space-box.ts";
import { minus, plus, scaled, type Vector, vectorLength } from "../geometry/space/vector.ts";
import type { ConsoleBody } from "./console-body.ts";
import { wayTouch } from "./fit-tolerance.ts";

export interface Way {
  readonly from: Vector;
  readonly to: Vector;
  /** Room round the line between the two. */
  readonly radius: Mm;
}

export interface Meeting {
  readonly body: ConsoleBody;
  /** From the start of the way. */
  readonly along: Mm;
}

export const metOnWay = (way: Way, bodies: readonly ConsoleBody[]): readonly Meeting[] => {
  return bodies
    .flatMap((body) => {
      if (!mayMeet(way, body.box)) return [];
      const along = firstMeeting(way, body);
      return along === null ? [] : [{ body, along }];
    })
    .toSorted((a, b) => a.along - b.along);
};

/** The line comes into the box grown by the room round it: stretch by stretch along each axis. */
const mayMeet = ({ from, to, radius }: Way, box: SpaceBox): boolean => {
  let [enters, leaves] = [0, 1];
  const slabs = [
    [from.x, to.x, box.minX, box.maxX],
    [from.y, to.y, box.minY, box.maxY],
    [from.z, to.z, box.minZ, box.maxZ],
  ] as const;
  for (const [start, end, low, high] of slabs) {
    const size = end - start;
    const [near, far] = [low - radius - start, high + radius - start];
    if (size === 0) {
      if (near > 0 || far < 0) return false;
      continue;
    }
    enters = Math.max(enters, Math.min(near / size, far / size));
    leaves = Math.min(leaves, Math.max(near / size, far / size));
  }
  return enters <= leaves;
};

/** Steps are as long as the way is free, so that nothing is stepped over. */
const firstMeeting = (way: Way, body: ConsoleBody): Mm | null => {
  const toward = minus(way.to, way.from);
  const length = vectorLength(toward);
  let along = 0;
  for (let step = 0; step < MOST_STEPS && along <= length; step += 1) {
    const at = length === 0 ? way.from : plus(way.from, scaled(toward, along / length));
    const free = bodyDistance(body, at) - way.radius;
    if (free <= -wayTouch) return mm(along);
    along += Math.max(free, wayTouch);
  }
  return null;
};

/** A way that runs along a surface takes the shortest steps that there are: 2 m of them. What touches it farther on is not looked for. */
const MOST_STEPS = 200_000;

const bodyDistance = ({ shape, frame }: ConsoleBody, at: Vector): number => {
  const within = pointIn(frame, at);
  switch (shape.kind) {
    case "recipe":
      return solidDistance(shape.solid, within);
    case "mesh":
      // A mesh tells no inside: its surface is taken so much outward that a way through it is met and not only touched.
      return meshDistance(shape.mesh, within) - 2 * wayTouch;
  }
};

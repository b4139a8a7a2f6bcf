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

export const metOnWay = (way: Way, bodies: readonly ConsoleBody[]): readonly Meeting[] =>
  bodies
    .flatMap((body) => {
      const stretch = stretchNear(way, body.box);
      const along = stretch === null ? null : firstMeeting(way, body, stretch);
      return along === null ? [] : [{ body, along }];
    })
    .toSorted((a, b) => a.along - b.along);

/** Of a way, as shares of its length. */
interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Where the line is within the box grown by the room round it, stretch by stretch along each axis; null: nowhere. */
const stretchNear = ({ from, to, radius }: Way, box: SpaceBox): Stretch | null => {
  let [enters, leaves] = [0, 1];
  const room = radius + 2 * wayTouch;
  const slabs = [
    [from.x, to.x, box.minX, box.maxX],
    [from.y, to.y, box.minY, box.maxY],
    [from.z, to.z, box.minZ, box.maxZ],
  ] as const;
  for (const [start, end, low, high] of slabs) {
    const size = end - start;
    const [near, far] = [low - room - start, high + room - start];
    if (size === 0) {
      if (near > 0 || far < 0) return null;
      continue;
    }
    enters = Math.max(enters, Math.min(near / size, far / size));
    leaves = Math.min(leaves, Math.max(near / size, far / size));
  }
  return enters <= leaves ? { from: enters, to: leaves } : null;
};

/**
 * Steps are as long as the way is free of more than a touch, and never shorter than a touch: on a way along a surface one
 * hundred to the millimetre, as many as its body is long. What reaches in by 1.5 touches is never stepped over: between two
 * places a touch apart, neither of which is met, no distance falls further than that.
 */
const firstMeeting = (way: Way, body: ConsoleBody, { from, to }: Stretch): Mm | null => {
  const toward = minus(way.to, way.from);
  const length = vectorLength(toward);
  const end = to * length;
  let along = from * length;
  while (along <= end) {
    const at = length === 0 ? way.from : plus(way.from, scaled(toward, along / length));
    const free = bodyDistance(body, at) - way.radius;
    if (free <= -wayTouch) return mm(along);
    along += Math.max(free, 0) + wayTouch;
  }
  return null;
};

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

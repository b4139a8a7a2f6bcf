// A console as it stands, seen along one bay: what its bodies take of the bay's own axes, which is what a panel that moves
// along it is held against. Each is measured when it is first asked for and kept, since a drag moves along and never turns.

import { mm } from "../geometry/quantity.ts";
import { type Frame, WORLD } from "../geometry/space/frame.ts";
import { boxOut, joinedBox, type SpaceBox } from "../geometry/space/space-box.ts";
import type { BodyGroup } from "./body-groups.ts";
import type { ConsoleBody } from "./console-body.ts";
import { shapePieces } from "./convex/recipe-pieces.ts";
import { frameSeenFrom } from "./hull-relation.ts";

export interface RailScene {
  /** y runs along the bay. */
  readonly rail: Frame;
  readonly groups: readonly RailGroup[];
}

export interface RailGroup {
  readonly panel: string | null;
  /** In the frame of the bay, as the panel stands; may be larger than need be. */
  readonly box: SpaceBox;
  /** Those that begin first along the bay come first. */
  readonly bodies: () => readonly RailBody[];
}

export interface RailBody {
  readonly body: ConsoleBody;
  /** Round its convex pieces, in the frame of the bay. */
  readonly box: SpaceBox;
}

export const railScene = (groups: readonly BodyGroup[], rail: Frame): RailScene => {
  const outside = frameSeenFrom(rail, WORLD);
  return {
    rail,
    groups: groups.map(({ panel, bodies, box }) => {
      let measured: readonly RailBody[] | null = null;
      return {
        panel,
        box: boxOut(outside, box),
        bodies: () => {
          measured ??= bodies
            .map((body) => ({ body, box: boxOnRail(body, rail) }))
            .sort((one, other) => one.box.minY - other.box.minY);
          return measured;
        },
      };
    }),
  };
};

const boxOnRail = (body: ConsoleBody, rail: Frame): SpaceBox => {
  const frame = frameSeenFrom(rail, body.frame);
  return shapePieces(body.shape)
    .map(({ corners }) => boxOfCorners(corners, frame))
    .reduce(joinedBox);
};

const boxOfCorners = (corners: Float64Array, { x, y, z, origin }: Frame): SpaceBox => {
  let [minX, minY, minZ] = [Infinity, Infinity, Infinity];
  let [maxX, maxY, maxZ] = [-Infinity, -Infinity, -Infinity];
  for (let at = 0; at < corners.length; at += 3) {
    const [cx, cy, cz] = [corners[at]!, corners[at + 1]!, corners[at + 2]!];
    const seenX = origin.x + (x.x * cx + y.x * cy + z.x * cz);
    const seenY = origin.y + (x.y * cx + y.y * cy + z.y * cz);
    const seenZ = origin.z + (x.z * cx + y.z * cy + z.z * cz);
    if (seenX < minX) minX = seenX;
    if (seenY < minY) minY = seenY;
    if (seenZ < minZ) minZ = seenZ;
    if (seenX > maxX) maxX = seenX;
    if (seenY > maxY) maxY = seenY;
    if (seenZ > maxZ) maxZ = seenZ;
  }
  return {
    minX: mm(minX),
    minY: mm(minY),
    minZ: mm(minZ),
    maxX: mm(maxX),
    maxY: mm(maxY),
    maxZ: mm(maxZ),
  };
};

/** The box moved along the bay. */
export const boxAlong = (box: SpaceBox, by: number): SpaceBox => ({
  ...box,
  minY: mm(box.minY + by),
  maxY: mm(box.maxY + by),
});

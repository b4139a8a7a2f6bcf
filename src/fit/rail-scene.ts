// A console as it stands, seen along one bay: what its bodies take of the bay's own axes, which is what a panel that moves
// along it is held against. Each is measured when it is first asked for and kept, since a drag moves along and never turns.

import { mm } from "../geometry/quantity.ts";
import { type Frame, pointOut, WORLD } from "../geometry/space/frame.ts";
import { boxOut, boxRound, type SpaceBox } from "../geometry/space/space-box.ts";
import { vector } from "../geometry/space/vector.ts";
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
  return boxRound(
    shapePieces(body.shape).flatMap(({ corners }) =>
      Array.from({ length: corners.length / 3 }, (_, corner) =>
        pointOut(
          frame,
          vector(corners[3 * corner]!, corners[3 * corner + 1]!, corners[3 * corner + 2]!),
        ),
      ),
    ),
  );
};

/** The box moved along the bay. */
export const boxAlong = (box: SpaceBox, by: number): SpaceBox => ({
  ...box,
  minY: mm(box.minY + by),
  maxY: mm(box.maxY + by),
});

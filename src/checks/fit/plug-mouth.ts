// How much room a plug has before its mouth: from where it is pushed in to what stands in its way.

import { shapeExtent } from "../../fit/body-groups.ts";
import type { ConsoleBody } from "../../fit/console-body.ts";
import { frameSeenFrom, hullRelation } from "../../fit/hull-relation.ts";
import { extent } from "../../geometry/extent.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { rectangle } from "../../geometry/shapes.ts";
import { prism, solidRegion } from "../../geometry/solid/solid.ts";
import { boxOut, type SpaceBox } from "../../geometry/space/space-box.ts";

export interface PlugRoom {
  /** From its mouth to the end of the bend. */
  readonly needs: Mm;
  readonly has: Mm;
}

/** `bodies`: all of the console; the board that the plug belongs to is found among them. */
export const roomBefore = (
  plug: ConsoleBody,
  other: ConsoleBody,
  bodies: readonly ConsoleBody[],
): PlugRoom => {
  const board = bodies.find(
    ({ panel, role, span, what }) =>
      panel === plug.panel && role === "rear" && what === "board" && span === plug.span,
  );
  const room = board === undefined ? beneath(plug) : besideBoard(plug, board);
  const found = hullRelation(slabOf(plug, room.mouth), other, room.needs);
  const has = found === null ? room.needs : found.kind === "apart" ? found.gap : mm(0);
  return { needs: room.needs, has };
};

interface Mouth {
  readonly needs: Mm;
  /** A thin slab as wide as the plug, before its mouth: gaps count from there. */
  readonly mouth: SpaceBox;
}

const THIN = 0.01;

/** A component's plug hangs down; one in front of the panel stands up. */
const beneath = ({ shape }: ConsoleBody): Mouth => {
  const box = shapeExtent(shape);
  const { minZ, maxZ } = box;
  const mouth =
    minZ < 0
      ? { ...box, minZ: maxZ, maxZ: mm(maxZ + THIN) }
      : { ...box, minZ: mm(minZ - THIN), maxZ: minZ };
  return { needs: mm(maxZ - minZ), mouth };
};

/** Of a board's plug, on the side on which it reaches out farthest; their frames are turned alike. */
const besideBoard = (plug: ConsoleBody, board: ConsoleBody): Mouth => {
  const box = shapeExtent(plug.shape);
  const edge = boxOut(frameSeenFrom(plug.frame, board.frame), shapeExtent(board.shape));
  const sides: readonly Mouth[] = [
    {
      needs: mm(edge.minX - box.minX),
      mouth: { ...box, minX: edge.minX, maxX: mm(edge.minX + THIN) },
    },
    {
      needs: mm(box.maxX - edge.maxX),
      mouth: { ...box, minX: mm(edge.maxX - THIN), maxX: edge.maxX },
    },
    {
      needs: mm(edge.minY - box.minY),
      mouth: { ...box, minY: edge.minY, maxY: mm(edge.minY + THIN) },
    },
    {
      needs: mm(box.maxY - edge.maxY),
      mouth: { ...box, minY: mm(edge.maxY - THIN), maxY: edge.maxY },
    },
  ];
  const farthest = sides.reduce((most, side) => (side.needs > most.needs ? side : most));
  return farthest.needs > 0
    ? farthest
    : { ...beneath(plug), mouth: { ...box, maxZ: mm(box.minZ + THIN) } };
};

const slabOf = (plug: ConsoleBody, mouth: SpaceBox): ConsoleBody => {
  const { minX, minY, minZ, maxX, maxY, maxZ } = mouth;
  const outline = rectangle(extent(minX, minY, maxX, maxY));
  const solid = prism(minZ, maxZ, solidRegion({ outline, holes: [] }));
  return { ...plug, shape: { kind: "recipe", solid }, box: boxOut(plug.frame, mouth) };
};

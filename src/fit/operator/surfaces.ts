// The surfaces of a console that an operator works at: each bay, and each panel on feet of its own, as a rectangle in space;
// and whether the operator sits before it or beside it.

import { type Extent, extent } from "../../geometry/extent.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { type Frame, pointOut } from "../../geometry/space/frame.ts";
import { boxRound, type SpaceBox } from "../../geometry/space/space-box.ts";
import { plus, scaled, type Vector, vector } from "../../geometry/space/vector.ts";
import type { ConsoleLayout, PosedOperator } from "../../layout/console/console-layout.ts";
import { KNEE_BOX } from "../../standards/reach.ts";

export interface Surface {
  /** The bay, or the panel that stands alone. */
  readonly name: string;
  readonly frame: Frame;
  /** In the frame's own plane. */
  readonly extent: Extent;
  readonly box: SpaceBox;
  /**
   * before: the operator sits at it with the knees under it: some of it lies ahead of the seat back, within the width of
   * the knee box. beside: none of it does, and it is a side console (or stands behind).
   */
  readonly seat: "before" | "beside";
}

export const surfacesOf = (layout: ConsoleLayout, operator: PosedOperator): readonly Surface[] => [
  ...layout.bays.map((bay) => {
    const half = bay.width / 2;
    return surface(operator, {
      name: bay.id,
      frame: bay.frame,
      extent: extent(-half, 0, half, bay.length),
    });
  }),
  ...layout.panels.flatMap(({ name, frame, place, layout: { nominal } }) =>
    place.kind === "stand" ? [surface(operator, { name, frame, extent: nominal })] : [],
  ),
];

const surface = (
  operator: PosedOperator,
  bare: Pick<Surface, "name" | "frame" | "extent">,
): Surface => {
  const box = boxRound(cornersOf(bare));
  return { ...bare, box, seat: isBefore(operator, box) ? "before" : "beside" };
};

const isBefore = ({ seat }: PosedOperator, box: SpaceBox): boolean =>
  box.maxX > seat.x &&
  box.minY < seat.y + KNEE_BOX.width / 2 &&
  box.maxY > seat.y - KNEE_BOX.width / 2;

const cornersOf = ({ frame, extent: e }: Pick<Surface, "frame" | "extent">): readonly Vector[] =>
  [
    vector(e.minX, e.minY, 0),
    vector(e.maxX, e.minY, 0),
    vector(e.maxX, e.maxY, 0),
    vector(e.minX, e.maxY, 0),
  ].map((corner) => pointOut(frame, corner));

export interface SurfaceEdge {
  readonly from: Vector;
  readonly to: Vector;
  readonly middle: Vector;
  /** A point's distance from this edge, in the surface's own coordinates. */
  readonly inward: (within: { readonly x: number; readonly y: number }) => Mm;
}

/** Its four edges. */
export const edgesOfSurface = (surface: Surface): readonly SurfaceEdge[] => {
  const corners = cornersOf(surface);
  const { minX, minY, maxX, maxY } = surface.extent;
  const inward: readonly SurfaceEdge["inward"][] = [
    ({ y }) => mm(y - minY),
    ({ x }) => mm(maxX - x),
    ({ y }) => mm(maxY - y),
    ({ x }) => mm(x - minX),
  ];
  return inward.map((each, index) => {
    const from = corners[index]!;
    const to = corners[(index + 1) % corners.length]!;
    return { from, to, middle: scaled(plus(from, to), 1 / 2), inward: each };
  });
};

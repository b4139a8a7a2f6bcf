// Solids that several tests look at.

import { circle, loop, point, vertex } from "../../src/geometry/contour.ts";
import { type Extent, extent } from "../../src/geometry/extent.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { rectangle, roundedRectangle } from "../../src/geometry/shapes.ts";
import {
  type ComposedSolid,
  composed,
  type LayeredSolid,
  type LoftedSolid,
  lofted,
  placed,
  prism,
  revolved,
  solidRegion,
} from "../../src/geometry/solid/solid.ts";

export const plainBlock = (box: Extent, from: number, to: number): LayeredSolid =>
  prism(from, to, solidRegion({ outline: rectangle(box), holes: [] }));

/** 146.05 x 57.15 x 3 with four holes of 6.6: 24629.73 mm³. */
export const drilledPlate: LayeredSolid = prism(
  0,
  3,
  solidRegion({
    outline: rectangle(extent(0, 0, 146.05, 57.15)),
    holes: [
      [5, 5],
      [141.05, 5],
      [5, 52.15],
      [141.05, 52.15],
    ].map(([x, y]) => circle(point(x!, y!), 3.3)),
  }),
);

/** A block with a countersunk hole: the countersink and its hole are one turned profile, flush with both faces. */
export const countersunkBlock: ComposedSolid = composed(
  [plainBlock(extent(0, 0, 40, 30), 0, 5)],
  [
    revolved(
      point(17.3, 12.9),
      loop([
        vertex(0, 0),
        vertex(1.7, 0),
        vertex(1.7, 2.7),
        vertex(3.4, 4.4),
        vertex(3.4, 5),
        vertex(0, 5),
      ]),
      "clear",
    ),
  ],
);

/** A ring whose outside and inside lean by 45 degrees. */
export const bevelledRing: LoftedSolid = lofted([
  {
    height: mm(0),
    outline: roundedRectangle(extent(0, 0, 60, 30), 4),
    holes: [roundedRectangle(extent(6, 6, 54, 24), 2)],
  },
  {
    height: mm(2),
    outline: roundedRectangle(extent(2, 2, 58, 28), 2),
    holes: [roundedRectangle(extent(5, 5, 55, 25), 3)],
  },
]);

/** A plate, a gusset that stands on it on edge, and a ring on top. */
export const assembledBracket: ComposedSolid = composed(
  [
    plainBlock(extent(0, 0, 70, 40), 0, 4),
    placed(
      prism(
        0,
        3,
        solidRegion({
          outline: loop([vertex(0, 0), vertex(20, 0), vertex(0, 12)]),
          holes: [circle(point(5, 4), 1.5)],
        }),
      ),
      { x: 2, y: 38, z: 4 },
      { x: 90 },
    ),
    placed(bevelledRing, { x: 5, y: 1, z: 4 }),
  ],
  [
    prism(
      1,
      4,
      solidRegion({ outline: circle(point(66, 35), 2), holes: [] }, { outline: "clear" }),
    ),
  ],
);

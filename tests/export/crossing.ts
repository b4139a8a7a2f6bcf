// A small drawing with every kind of item: filled ring, circles, a long flat arc, a broken line, a stroke of arcs.

import type { Drawing } from "../../src/drawings/drawing.ts";
import { circle, loop, path, point, vertex } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { mm } from "../../src/geometry/quantity.ts";

export const CROSSING: Drawing = {
  title: "Crossing <1>",
  box: extent(-20, -10, 100, 60),
  items: [
    {
      kind: "fill",
      ink: "opaque",
      regions: [
        { outline: circle(point(20, 20), 15), holes: [circle(point(20, 20), 10)] },
        { outline: circle(point(30, 20), 15), holes: [] },
      ],
    },
    {
      kind: "outline",
      ink: "line",
      width: mm(0.25),
      dashed: false,
      contours: [
        circle(point(70, 30), 25),
        loop([vertex(0, 50, -0.05), vertex(90, 50), vertex(90, 55), vertex(0, 55)]),
      ],
    },
    {
      kind: "stroke",
      ink: "dimension",
      width: mm(0.13),
      dashed: true,
      paths: [path([vertex(-15, 0), vertex(95, 0)]), path([vertex(40, 5, 1.5), vertex(60, 5)])],
    },
  ],
};

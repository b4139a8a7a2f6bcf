// Where the section drawing cuts: a letter and an arrow above and below the panel, the arrows in the direction of view.

import { point } from "../geometry/contour.ts";
import { type Extent, extent } from "../geometry/extent.ts";
import { polygon } from "../geometry/shapes.ts";
import type { PanelLayout } from "../layout/panel-layout.ts";
import type { Face } from "../lettering/face.ts";
import type { DrawingItem } from "./drawing.ts";
import { filled, MEDIUM, segment, stroked } from "./items.ts";
import { type SectionPlane, sectionPlanes } from "./section-planes.ts";
import type { Block } from "./text-blocks.ts";
import { words } from "./words.ts";

const REACH = 5.5;
const ARROW = 3;
const LETTER = 2.6;

export const sectionMarks = (face: Face | null, layout: PanelLayout, panel: Extent): Block => ({
  items: sectionPlanes(layout).flatMap((plane) => [
    ...planeMark(face, plane, { edge: panel.maxY, out: 1 }),
    ...planeMark(face, plane, { edge: panel.minY, out: -1 }),
  ]),
  box: extent(panel.minX, panel.minY - REACH, panel.maxX, panel.maxY + REACH),
});

/** Seen from the right: the arrow points left, so that the operator's side comes out on the left. */
const planeMark = (
  face: Face | null,
  { name, x }: SectionPlane,
  at: { readonly edge: number; readonly out: number },
): readonly DrawingItem[] => {
  const near = at.edge + at.out;
  const far = at.edge + at.out * REACH;
  const tip = x - ARROW;
  const letter = words(face, name, point(x + 0.9, far - (at.out > 0 ? LETTER : 0)), {
    capHeight: LETTER,
    align: "start",
    ink: "line",
  });
  const arrowY = far - at.out * 0.6;
  return [
    stroked([segment(x, near, x, far), segment(x, arrowY, tip + 1, arrowY)], {
      ink: "line",
      width: MEDIUM,
    }),
    filled(
      [polygon([point(tip, arrowY), point(tip + 2, arrowY - 0.6), point(tip + 2, arrowY + 0.6)])],
      "line",
    ),
    ...letter.items,
  ];
};

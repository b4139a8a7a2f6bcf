// The material of a body as boxes in its own frame: what moves is asked against boxes. A sheet with openings is the boxes
// round its openings; everything else is a box a piece, which may be larger than the piece and never smaller.

import { containsContour } from "../../geometry/containment.ts";
import type { Contour } from "../../geometry/contour.ts";
import { type Extent, extent, extentsOverlap, grownExtent } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { mm } from "../../geometry/quantity.ts";
import { rectangle } from "../../geometry/shapes.ts";
import { meshExtent } from "../../geometry/solid/mesh.ts";
import { recipeExtent } from "../../geometry/solid/recipe-extent.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import type { SpaceBox } from "../../geometry/space/space-box.ts";
import type { ConsoleBody } from "../console-body.ts";

export const materialBoxes = ({ shape }: ConsoleBody): readonly SpaceBox[] => {
  switch (shape.kind) {
    case "recipe":
      return recipeBoxes(shape.solid);
    case "mesh":
      return [meshExtent(shape.mesh)];
  }
};

const recipeBoxes = (solid: Solid): readonly SpaceBox[] => {
  switch (solid.kind) {
    case "layered":
      return solid.layers.flatMap(({ from, to, regions }) =>
        regions.flatMap(({ outline, holes }) =>
          holes
            .map(({ contour }) => openRectangle(contour))
            .reduce<readonly Extent[]>(
              (boxes, hole) => (hole === null ? boxes : boxes.flatMap((box) => boxLess(box, hole))),
              [contourExtent(outline.contour)],
            )
            .map((box) => ({ ...box, minZ: mm(from), maxZ: mm(to) })),
        ),
      );
    case "composed":
      return solid.add.flatMap(recipeBoxes);
    case "revolved":
    case "lofted":
    case "placed":
      return [recipeExtent(solid)];
  }
};

/** A rectangle that is wholly open: the hole's own, less what its rounded corners take; null where the hole is small. */
const openRectangle = (hole: Contour): Extent | null => {
  const whole = contourExtent(hole);
  const least = Math.min(whole.maxX - whole.minX, whole.maxY - whole.minY);
  if (least < LEAST_OPENING) return null;
  const shares = CORNERS.filter((corner) => 2 * corner < least);
  const found = shares.find((corner) => isOpen(hole, grownExtent(whole, -corner)));
  return found === undefined ? null : grownExtent(whole, -found);
};

/** Nothing of a panel passes a smaller hole than this. */
const LEAST_OPENING = 20;

/** How far the rectangle is drawn in, tried in turn: a rounded corner of radius r wants 0.3 r. */
const CORNERS = [0, 0.1, 0.3, 1, 2, 4] as const;

const isOpen = (hole: Contour, box: Extent): boolean => {
  const open = rectangle(box);
  return containsContour(hole, open);
};

/** What is left of a box round an opening: below, above, left, right. */
const boxLess = (box: Extent, hole: Extent): readonly Extent[] => {
  if (!extentsOverlap(box, hole)) return [box];
  const [low, high] = [Math.max(box.minY, hole.minY), Math.min(box.maxY, hole.maxY)];
  return [
    extent(box.minX, box.minY, box.maxX, low),
    extent(box.minX, high, box.maxX, box.maxY),
    extent(box.minX, low, hole.minX, high),
    extent(hole.maxX, low, box.maxX, high),
  ].filter(({ minX, minY, maxX, maxY }) => maxX > minX && maxY > minY);
};

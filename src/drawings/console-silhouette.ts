// The outline of a body in a view, simplified: a piece of sheet that is looked at square on keeps its own outline and holes,
// everything else shows the hull of its corners. Takes a body and a view; gives areas on the sheet.

import type { ConsoleBody } from "../fit/console-body.ts";
import { type Contour, type Point, point, type Region } from "../geometry/contour.ts";
import { convexHull } from "../geometry/convex-hull.ts";
import { polygon } from "../geometry/shapes.ts";
import type { Mesh } from "../geometry/solid/mesh.ts";
import { recipeExtent } from "../geometry/solid/recipe-extent.ts";
import type { Solid, SolidLayer } from "../geometry/solid/solid.ts";
import { turnMatrix } from "../geometry/solid/turn.ts";
import { type Frame, frameWithin, pointOut } from "../geometry/space/frame.ts";
import { boxCorners } from "../geometry/space/space-box.ts";
import { dot, type Vector, vector } from "../geometry/space/vector.ts";
import { samePlace } from "../geometry/tolerance.ts";
import { drawnCorners } from "./console-corners.ts";
import { type ConsoleView, onSheet } from "./console-view.ts";

/** Nearer to square on than this nobody sees a difference: a part in a million. */
const SQUARE_ON = 1 - 1e-6;

export const silhouette = ({ shape, frame }: ConsoleBody, view: ConsoleView): readonly Region[] => {
  switch (shape.kind) {
    case "recipe":
      return solidSilhouette(shape.solid, frame, view);
    case "mesh":
      return hullRegions(meshCorners(shape.mesh, frame), view);
  }
};

export const solidSilhouette = (
  solid: Solid,
  frame: Frame,
  view: ConsoleView,
): readonly Region[] => {
  switch (solid.kind) {
    case "layered":
      return solid.layers.flatMap((layer) => layerSilhouette(layer, frame, view));
    case "composed":
      return solid.add.flatMap((piece) => solidSilhouette(piece, frame, view));
    case "placed":
      return solidSilhouette(
        solid.solid,
        frameWithin(frame, { ...turnMatrix(solid.turn), origin: solid.to }),
        view,
      );
    case "revolved":
    case "lofted":
      return hullRegions(
        boxCorners(recipeExtent(solid)).map((corner) => pointOut(frame, corner)),
        view,
      );
  }
};

const layerSilhouette = (
  { from, to, regions }: SolidLayer,
  frame: Frame,
  view: ConsoleView,
): readonly Region[] =>
  regions.flatMap(({ outline, holes }): readonly Region[] => {
    if (Math.abs(dot(frame.z, view.toward)) < SQUARE_ON) {
      const corners = drawnCorners(outline.contour, view);
      const places = [from, to].flatMap((z) =>
        corners.map(({ x, y }) => pointOut(frame, vector(x, y, z))),
      );
      return hullRegions(places, view);
    }
    const seen = (contour: Contour): Contour =>
      polygon(
        drawnCorners(contour, view).map(({ x, y }) =>
          onSheet(view, pointOut(frame, vector(x, y, to))),
        ),
      );
    return [{ outline: seen(outline.contour), holes: holes.map(({ contour }) => seen(contour)) }];
  });

const meshCorners = ({ positions }: Mesh, frame: Frame): readonly Vector[] =>
  Array.from({ length: positions.length / 3 }, (_, corner) => {
    const [x = 0, y = 0, z = 0] = positions.subarray(3 * corner, 3 * corner + 3);
    return pointOut(frame, vector(x, y, z));
  });

/** Nothing where all corners lie on one line: such a body can't be seen. */
const hullRegions = (corners: readonly Vector[], view: ConsoleView): readonly Region[] => {
  const outline = convexHull(
    corners.map((corner): Point => onSheet(view, corner)),
    samePlace,
  );
  return outline.length < 3
    ? []
    : [{ outline: polygon(outline.map(({ x, y }) => point(x, y))), holes: [] }];
};

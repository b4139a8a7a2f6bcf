// Path data of shapes, kept from one reading to the next: most of a panel is what it was before an edit, and letters come
// again and again. Data is written about the shape's own first place, so that a shifted copy has the same.

import { copyKeeper, firstPlace, type Outlines } from "../../src/export/shifted-copy.ts";
import type { Contour, Path } from "../../src/geometry/contour.ts";
import { placedContour, placedPath, placement } from "../../src/geometry/transform.ts";
import { contourData, pathData } from "../contour-path.ts";

export type ShapeData = (outlines: Outlines) => string;

/** A page that is open all day begins anew now and then: the largest panel has a few hundred shapes. */
const MOST_KEPT = 20_000;

export function shapeData(): ShapeData {
  let keeper = copyKeeper<string>();
  let count = 0;
  return (outlines) => {
    if (count > MOST_KEPT) {
      keeper = copyKeeper<string>();
      count = 0;
    }
    return keeper(outlines, () => {
      count += 1;
      return dataOf(outlines);
    }).kept;
  };
}

function dataOf(outlines: Outlines): string {
  const { x, y } = firstPlace(outlines);
  const home = placement(-x, -y);
  return outlines
    .map((one: Contour | Path) =>
      one.kind === "path" ? pathData(placedPath(one, home)) : contourData(placedContour(one, home)),
    )
    .join("");
}

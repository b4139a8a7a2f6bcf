// Where the members of a row, column, grid or ring stand, from the datum of it: the first member, the centre of a ring.

import type { PatternDesign } from "../design/panel-design.ts";
import { type Point, point } from "../geometry/contour.ts";
import { type Extent, extent, joinedExtent } from "../geometry/extent.ts";
import { degrees } from "../geometry/quantity.ts";
import { clockDirection } from "../geometry/trigonometry.ts";

/** In reading order: left to right, top to bottom, clockwise. */
export const patternOffsets = (pattern: PatternDesign): readonly Point[] => {
  switch (pattern.kind) {
    case "row":
      return counted(pattern.count, (index) => point(index * pattern.pitch, 0));
    case "column":
      return counted(pattern.count, (index) => point(0, -index * pattern.pitch));
    case "grid":
      return counted(pattern.rows * pattern.columns, (index) =>
        point(
          (index % pattern.columns) * pattern.pitch,
          -Math.floor(index / pattern.columns) * pattern.rowPitch,
        ),
      );
    case "ring":
      return counted(pattern.count, (index) => {
        const toward = clockDirection(degrees(pattern.from + index * pattern.step));
        return point(pattern.radius * toward.x, pattern.radius * toward.y);
      });
  }
};

const counted = (count: number, offset: (index: number) => Point): readonly Point[] =>
  Array.from({ length: count }, (_, index) => offset(index));

/** The box round the centres of members, from their datum. */
export const offsetsExtent = (offsets: readonly Point[]): Extent =>
  offsets.map(({ x, y }) => extent(x, y, x, y)).reduce(joinedExtent);

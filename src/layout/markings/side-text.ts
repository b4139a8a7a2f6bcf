// Text beside a box (or on it), at the style's gap from it, turned or not.

import type { LegendSide } from "../../design/panel-design.ts";
import { type Point, point } from "../../geometry/contour.ts";
import { type Extent, extentCentre, extentHeight, extentWidth } from "../../geometry/extent.ts";
import { type Degrees, degrees } from "../../geometry/quantity.ts";
import { direction } from "../../geometry/trigonometry.ts";
import { type MarkingShapes, textAt } from "./marking.ts";
import type { TextStyle } from "./style.ts";
import { type Align, textBlock } from "./text-block.ts";

export const sideText = (
  text: string,
  reach: Extent,
  options: {
    readonly style: TextStyle;
    readonly side: LegendSide;
    readonly turn?: Degrees;
  },
): MarkingShapes => {
  const { style, side, turn = degrees(0) } = options;
  // Upright text begins or ends at its box; turned text is set by its middle.
  const align = turn === 0 ? SIDE_ALIGN[side] : "middle";
  const size = textBlock(text, style, align).box;
  const across = direction(turn);
  const [width, height] = [extentWidth(size), extentHeight(size)];
  const [cosine, sine] = [Math.abs(across.x), Math.abs(across.y)];
  const at = sideAnchor(reach, side, {
    gap: style.gap,
    halfWidth: align === "middle" ? (width * cosine + height * sine) / 2 : 0,
    halfHeight: (width * sine + height * cosine) / 2,
  });
  return textAt(text, at, { style, align, turn });
};

const SIDE_ALIGN: Readonly<Record<LegendSide, Align>> = {
  above: "middle",
  below: "middle",
  left: "end",
  right: "start",
  on: "middle",
};

const sideAnchor = (
  reach: Extent,
  side: LegendSide,
  size: { readonly gap: number; readonly halfHeight: number; readonly halfWidth: number },
): Point => {
  const centre = extentCentre(reach);
  switch (side) {
    case "on":
      return centre;
    case "above":
      return point(centre.x, reach.maxY + size.gap + size.halfHeight);
    case "below":
      return point(centre.x, reach.minY - size.gap - size.halfHeight);
    case "left":
      return point(reach.minX - size.gap - size.halfWidth, centre.y);
    case "right":
      return point(reach.maxX + size.gap + size.halfWidth, centre.y);
  }
};

// Borders and brackets round a group: about everything that its members cover, legends included.

import type { MarkingDesign, Side } from "../../design/panel-design.ts";
import { spanOf } from "../../design/written.ts";
import { difference } from "../../geometry/boolean.ts";
import { type Point, point, type Region } from "../../geometry/contour.ts";
import {
  type Extent,
  extentCentre,
  extentHeight,
  extentWidth,
  grownExtent,
  joinedExtent,
} from "../../geometry/extent.ts";
import { reversedContour } from "../../geometry/measure.ts";
import { mm } from "../../geometry/quantity.ts";
import { largestCorner, rectangle, roundedRectangle } from "../../geometry/shapes.ts";
import { UNKNOWN_NEIGHBOUR } from "../codes.ts";
import { unknownName } from "../context.ts";
import type { FreeScene, PlacedFree } from "./legend-scene.ts";
import {
  joinedShapes,
  lineShape,
  type MarkingHead,
  type MarkingShapes,
  marking,
  regionShapes,
  textAt,
} from "./marking.ts";
import { legendStyle, lineWidth, type TextStyle } from "./style.ts";
import { textBlock } from "./text-block.ts";

type Group = MarkingDesign & { readonly kind: "border" | "bracket" };

export const groupMarking = (design: Group, head: MarkingHead, scene: FreeScene): PlacedFree => {
  const reaches = design.around.flatMap((id) => scene.reaches.get(id) ?? []);
  const missing = design.around.filter((id) => !(scene.reaches.has(id) || scene.finder.isLost(id)));
  const span = spanOf(design.written, "around");
  const unknown = missing.map((id) =>
    unknownName(UNKNOWN_NEIGHBOUR, id, {
      span,
      known: scene.reaches.keys(),
      subjects: [design.id],
    }),
  );
  const reach = reaches.length === 0 ? null : reaches.reduce(joinedExtent);
  if (reach === null) return { markings: [], findings: unknown };
  const styled =
    design.legend === null ? null : legendStyle(design.legend, scene.style, scene.context);
  const style = styled?.style ?? scene.style;
  const box = grownExtent(reach, design.gap);
  const title = design.legend === null ? null : titleShape(design, box, style);
  const lines =
    design.kind === "border" ? borderShape(design, box, style) : bracketShape(design, box, style);
  const shapes = joinedShapes(title === null ? [lines] : [lines, title]);
  const findings = [...unknown, ...(styled?.findings ?? [])];
  const lettered =
    design.legend === null
      ? null
      : {
          text: design.legend.text,
          capHeight: style.height,
          words: title?.box == null ? [] : [title.box],
        };
  const made = marking(head, shapes, lettered);
  return { markings: made === null ? [] : [made], findings };
};

const titleShape = (design: Group, box: Extent, style: TextStyle): MarkingShapes => {
  const text = design.legend?.text ?? "";
  if (design.kind === "border") return textAt(text, borderTitleAt(box), { style });
  const at = bracketLegendAt(design.side, box, style);
  const align = design.side === "left" ? "end" : design.side === "right" ? "start" : "middle";
  return textAt(text, at, { style, align });
};

const borderTitleAt = (box: Extent): Point => point(extentCentre(box).x, box.maxY);

const borderShape = (
  design: Group & { readonly kind: "border" },
  box: Extent,
  style: TextStyle,
): MarkingShapes => {
  const width = design.width ?? lineWidth(style);
  const outer = grownExtent(box, width / 2);
  const inner = grownExtent(box, -width / 2);
  const corner = Math.min(design.corner, largestCorner(box));
  const ring: Region = {
    outline: roundedRectangle(outer, corner > 0 ? corner + width / 2 : 0),
    holes: isOpen(inner) ? [inward(inner, corner - width / 2)] : [],
  };
  if (design.legend === null) return regionShapes([ring], width);
  const middle = borderTitleAt(box);
  const gap = grownExtent(textBlock(design.legend.text, style, "middle").box, style.height / 2);
  const opening = rectangle({
    minX: mm(middle.x + gap.minX),
    maxX: mm(middle.x + gap.maxX),
    minY: mm(middle.y + gap.minY),
    maxY: mm(middle.y + gap.maxY),
  });
  return regionShapes(difference([ring], [opening]), width);
};

/** A line as wide as what it goes round leaves nothing within. */
const isOpen = (box: Extent): boolean => Math.min(extentWidth(box), extentHeight(box)) > 0;

const inward = (box: Extent, corner: number): Region["outline"] => {
  const hole = roundedRectangle(box, Math.max(0, Math.min(corner, largestCorner(box))));
  return reversedContour(hole);
};

/** Feet of a bracket, in cap heights. */
const BRACKET_FOOT = 0.6;

const bracketShape = (
  design: Group & { readonly kind: "bracket" },
  box: Extent,
  style: TextStyle,
): MarkingShapes => {
  const width = design.width ?? lineWidth(style);
  const corners = bracketCorners(design.side, box, style.height * BRACKET_FOOT);
  const lines = corners
    .slice(1)
    .map((corner, index) => lineShape(corners[index] ?? corner, corner, width));
  return joinedShapes(lines);
};

const bracketCorners = (side: Side, box: Extent, foot: number): readonly Point[] => {
  switch (side) {
    case "above":
      return [
        point(box.minX, box.maxY - foot),
        point(box.minX, box.maxY),
        point(box.maxX, box.maxY),
        point(box.maxX, box.maxY - foot),
      ];
    case "below":
      return [
        point(box.minX, box.minY + foot),
        point(box.minX, box.minY),
        point(box.maxX, box.minY),
        point(box.maxX, box.minY + foot),
      ];
    case "left":
      return [
        point(box.minX + foot, box.minY),
        point(box.minX, box.minY),
        point(box.minX, box.maxY),
        point(box.minX + foot, box.maxY),
      ];
    case "right":
      return [
        point(box.maxX - foot, box.minY),
        point(box.maxX, box.minY),
        point(box.maxX, box.maxY),
        point(box.maxX - foot, box.maxY),
      ];
  }
};

const bracketLegendAt = (side: Side, box: Extent, style: TextStyle): Point => {
  const centre = extentCentre(box);
  const away = style.gap + style.height / 2;
  switch (side) {
    case "above":
      return point(centre.x, box.maxY + away);
    case "below":
      return point(centre.x, box.minY - away);
    case "left":
      return point(box.minX - style.gap, centre.y);
    case "right":
      return point(box.maxX + style.gap, centre.y);
  }
};

// Markings that stand by themselves or go round a group: legends, lines, arrows, borders, brackets.

import type { MarkingDesign, Side } from "../../design/panel-design.ts";
import { spanOf } from "../../design/written.ts";
import type { Finding } from "../../diagnostics/finding.ts";
import { difference } from "../../geometry/boolean.ts";
import { type Point, point, type Region } from "../../geometry/contour.ts";
import { type Extent, extentCentre, grownExtent, joinedExtent } from "../../geometry/extent.ts";
import { reversedContour } from "../../geometry/measure.ts";
import { pointDistance } from "../../geometry/point.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { largestCorner, polygon, rectangle, roundedRectangle } from "../../geometry/shapes.ts";
import { UNKNOWN_NEIGHBOUR } from "../codes.ts";
import { unknownName } from "../context.ts";
import type { PlacedMarking } from "../panel-layout.ts";
import type { LegendScene } from "./legends.ts";
import {
  joinedShapes,
  lineShape,
  type MarkingHead,
  type MarkingShapes,
  marking,
  NO_SHAPES,
  regionShapes,
  textAt,
} from "./marking.ts";
import { legendStyle, lineWidth, type TextStyle } from "./style.ts";
import { textBlock } from "./text-block.ts";

export interface FreeScene extends LegendScene {
  readonly placeOf: (place: (MarkingDesign & { readonly kind: "legend" })["at"]) => Point | null;
  /** Reach of each component or pattern with its legends, by id. */
  readonly reaches: ReadonlyMap<string, Extent>;
  readonly lost: readonly string[];
}

export interface PlacedFree {
  readonly markings: readonly PlacedMarking[];
  readonly findings: readonly Finding[];
}

type Drawn = Exclude<MarkingDesign, { readonly kind: "window" }>;

export const freeMarking = (design: Drawn, scene: FreeScene): PlacedFree => {
  switch (design.kind) {
    case "legend":
      return freeLegend(design, scene);
    case "line":
    case "arrow":
      return lineMarking(design, scene);
    case "border":
    case "bracket":
      return groupMarking(design, scene);
  }
};

const headOf = (design: Drawn, scene: FreeScene, kind: MarkingHead["kind"]): MarkingHead => ({
  id: design.id,
  owner: design.id,
  kind,
  layer: scene.layer,
  side: null,
  span: design.written.span,
});

const single = (made: PlacedMarking | null, findings: readonly Finding[] = []): PlacedFree => ({
  markings: made === null ? [] : [made],
  findings,
});

const ALIGN = { left: "start", centre: "middle", right: "end" } as const;

const freeLegend = (design: Drawn & { readonly kind: "legend" }, scene: FreeScene): PlacedFree => {
  const at = scene.placeOf(design.at);
  if (at === null) return single(null);
  const { style, findings } = legendStyle(design.legend, scene.style, scene.context);
  const shapes = textAt(design.legend.text, at, {
    style,
    align: ALIGN[design.align],
    turn: design.legend.turn,
  });
  const lettered = { text: design.legend.text, capHeight: style.height };
  const head = { ...headOf(design, scene, "legend"), span: spanOf(design.legend.written, "text") };
  return single(marking(head, shapes, lettered), findings);
};

const lineMarking = (
  design: Drawn & { readonly kind: "line" | "arrow" },
  scene: FreeScene,
): PlacedFree => {
  const from = scene.placeOf(design.from);
  const to = scene.placeOf(design.to);
  if (from === null || to === null) return single(null);
  const width = design.width ?? lineWidth(scene.style);
  const shapes = design.kind === "line" ? lineShape(from, to, width) : arrowShape(from, to, width);
  return single(marking(headOf(design, scene, design.kind), shapes, null));
};

/** Length and half width of an arrow's head in line widths: common drawing practice, 3 to 1. */
const HEAD_LENGTH = 6;
const HEAD_HALF_WIDTH = 2;

const arrowShape = (from: Point, to: Point, width: Mm): MarkingShapes => {
  const length = pointDistance(from, to);
  if (length === 0) return NO_SHAPES;
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const head = Math.min(length, HEAD_LENGTH * width);
  const half = HEAD_HALF_WIDTH * width;
  const neck = point(to.x - along.x * head, to.y - along.y * head);
  const tip = polygon([
    to,
    point(neck.x - along.y * half, neck.y + along.x * half),
    point(neck.x + along.y * half, neck.y - along.x * half),
  ]);
  return joinedShapes([
    lineShape(from, neck, width),
    regionShapes([{ outline: tip, holes: [] }], width),
  ]);
};

type Group = Drawn & { readonly kind: "border" | "bracket" };

const groupMarking = (design: Group, scene: FreeScene): PlacedFree => {
  const reaches = design.around.flatMap((id) => scene.reaches.get(id) ?? []);
  const missing = design.around.filter((id) => !scene.reaches.has(id) && !scene.lost.includes(id));
  const span = spanOf(design.written, "around");
  const unknown = missing.map((id) =>
    unknownName(UNKNOWN_NEIGHBOUR, id, {
      span,
      known: scene.reaches.keys(),
      subjects: [design.id],
    }),
  );
  const reach = reaches.length === 0 ? null : reaches.reduce(joinedExtent);
  if (reach === null) return single(null, unknown);
  const styled =
    design.legend === null ? null : legendStyle(design.legend, scene.style, scene.context);
  const style = styled?.style ?? scene.style;
  const box = grownExtent(reach, design.gap);
  const shapes =
    design.kind === "border" ? borderShape(design, box, style) : bracketShape(design, box, style);
  const findings = [...unknown, ...(styled?.findings ?? [])];
  const lettered =
    design.legend === null ? null : { text: design.legend.text, capHeight: style.height };
  return single(marking(headOf(design, scene, design.kind), shapes, lettered), findings);
};

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
    holes: [inward(inner, corner - width / 2)],
  };
  if (design.legend === null) return regionShapes([ring], width);
  const middle = point(extentCentre(box).x, box.maxY);
  const words = textAt(design.legend.text, middle, { style });
  const gap = grownExtent(textBlock(design.legend.text, style, "middle").box, style.height / 2);
  const opening = rectangle({
    minX: mm(middle.x + gap.minX),
    maxX: mm(middle.x + gap.maxX),
    minY: mm(middle.y + gap.minY),
    maxY: mm(middle.y + gap.maxY),
  });
  return joinedShapes([regionShapes(difference([ring], [opening]), width), words]);
};

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
  if (design.legend === null) return joinedShapes(lines);
  const at = bracketLegendAt(design.side, box, style);
  const align = design.side === "left" ? "end" : design.side === "right" ? "start" : "middle";
  return joinedShapes([...lines, textAt(design.legend.text, at, { style, align })]);
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

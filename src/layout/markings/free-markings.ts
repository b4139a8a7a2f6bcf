// Markings that stand by themselves or go round a group: legends, lines, arrows, borders, brackets.

import type { MarkingDesign } from "../../design/panel-design.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { type Point, point } from "../../geometry/contour.ts";
import { pointDistance } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/quantity.ts";
import { polygon } from "../../geometry/shapes.ts";
import { NO_LENGTH } from "../codes.ts";
import type { PlacedMarking } from "../panel-layout.ts";
import { groupMarking } from "./group-markings.ts";
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
import { legendStyle, lineWidth } from "./style.ts";

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
      return groupMarking(design, headOf(design, scene, design.kind), scene);
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
  const at = scene.finder.placeOf(design.at, design.id);
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
  const from = scene.finder.placeOf(design.from, design.id);
  const to = scene.finder.placeOf(design.to, design.id);
  if (from === null || to === null) return single(null);
  if (design.kind === "arrow" && pointDistance(from, to) === 0)
    return single(null, [noLength(design)]);
  const width = design.width ?? lineWidth(scene.style);
  const shapes = design.kind === "line" ? lineShape(from, to, width) : arrowShape(from, to, width);
  return single(marking(headOf(design, scene, design.kind), shapes, null));
};

const noLength = (design: Drawn): Finding =>
  finding(NO_LENGTH, {
    message: `${design.id} ends where it begins; give its end another place.`,
    span: spanOf(design.written, "to"),
    subjects: [design.id],
  });

/** Length and half width of an arrow's head in line widths: common drawing practice, 3 to 1. */
const HEAD_LENGTH = 6;
const HEAD_HALF_WIDTH = 2;

const arrowShape = (from: Point, to: Point, width: Mm): MarkingShapes => {
  const length = pointDistance(from, to);
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

// Markings that stand by themselves or go round a group: legends, lines, arrows, borders, brackets.

import type { MarkingDesign } from "../../design/panel-design.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { type Point, point } from "../../geometry/contour.ts";
import { madeOnceWith } from "../../geometry/made-once.ts";
import { pointDistance } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/quantity.ts";
import { polygon } from "../../geometry/shapes.ts";
import { NO_LENGTH } from "../codes.ts";
import { memberIds } from "../member-ids.ts";
import type { PlacedMarking } from "../panel-layout.ts";
import { groupMarking } from "./group-markings.ts";
import type { FreeScene, LegendScene, PlacedFree } from "./legend-scene.ts";
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
      return groupMarking(design, headOf(design, scene, design), scene);
  }
};

/** `id`: its own name, or a member's. */
const headOf = (
  { written }: Drawn,
  { layer }: LegendScene,
  { id, kind }: Pick<MarkingHead, "id" | "kind">,
): MarkingHead => ({ id, owner: id, kind, layer, side: null, span: written.span });

const placed = (
  made: readonly (PlacedMarking | null)[],
  findings: readonly Finding[] = [],
): PlacedFree => ({ markings: made.filter((one) => one !== null), findings });

const ALIGN = { left: "start", centre: "middle", right: "end" } as const;

type FreeLegend = Drawn & { readonly kind: "legend" };

const freeLegend = (design: FreeLegend, scene: FreeScene): PlacedFree => {
  const { style, layer, context } = scene;
  const ats = scene.finder.placesOf(design.at, design.id, design.pattern);
  return ats === null ? placed([]) : legendsAt(design, { style, layer, context, ats });
};

interface LegendsScene extends LegendScene {
  readonly ats: readonly Point[];
}

const legendsAt = madeOnceWith((design: FreeLegend, scene: LegendsScene): PlacedFree => {
  const { ats } = scene;
  // Its members differ in their words alone.
  const first = design.legends.find((legend) => legend !== null);
  if (first === undefined) return placed([]);
  const { style, findings } = legendStyle(first, scene.style, scene.context);
  const made = memberIds(design.id, design.pattern).map((id, index) => {
    const [legend = null, at] = [design.legends[index], ats[index]];
    if (legend === null || at === undefined) return null;
    const { text, turn, written } = legend;
    const shapes = textAt(text, at, { style, align: ALIGN[design.align], turn });
    const head = {
      ...headOf(design, scene, { id, kind: "legend" }),
      span: spanOf(written, "text"),
    };
    return marking(head, shapes, { text, capHeight: style.height });
  });
  return placed(made, findings);
});

type LineDesign = Drawn & { readonly kind: "line" | "arrow" };

const lineMarking = (design: LineDesign, scene: FreeScene): PlacedFree => {
  const { style, layer, context } = scene;
  const froms = scene.finder.placesOf(design.from, design.id, design.pattern);
  const tos = scene.finder.placesOf(design.to, design.id, design.pattern);
  if (froms === null || tos === null) return placed([]);
  return linesAt(design, { style, layer, context, froms, tos });
};

interface LinesScene extends LegendScene {
  readonly froms: readonly Point[];
  readonly tos: readonly Point[];
}

const linesAt = madeOnceWith((design: LineDesign, scene: LinesScene): PlacedFree => {
  const { id: entry, kind, pattern } = design;
  const { froms, tos } = scene;
  const width = design.width ?? lineWidth(scene.style);
  const made = memberIds(entry, pattern).map((id, index): PlacedMarking | null => {
    const [from, to] = [froms[index], tos[index]];
    if (from === undefined || to === undefined || isPoint(kind, from, to)) return null;
    const shapes = kind === "line" ? lineShape(from, to, width) : arrowShape(from, to, width);
    return marking(headOf(design, scene, { id, kind }), shapes, null);
  });
  const [from, to] = [froms[0], tos[0]];
  const isNothing = from !== undefined && to !== undefined && isPoint(kind, from, to);
  return placed(made, isNothing ? [noLength(design)] : []);
});

/** A line of no length is a dot; an arrow points nowhere. */
const isPoint = (kind: "line" | "arrow", from: Point, to: Point): boolean =>
  kind === "arrow" && pointDistance(from, to) === 0;

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

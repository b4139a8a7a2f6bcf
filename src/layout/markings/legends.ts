// Legends of components: the component's own words beside it, and the words of a lever's positions next to the lever.
// Each text stands off what is already there on its side, so that position words come first and the legend beyond them.

import type { LegendDesign, LegendSide, Side } from "../../design/panel-design.ts";
import { LEGEND_SIDE } from "../../design/usual-values.ts";
import { spanOf } from "../../design/written.ts";
import type { Finding } from "../../diagnostics/finding.ts";
import { type Point, point } from "../../geometry/contour.ts";
import {
  type Extent,
  extentCentre,
  extentHeight,
  extentWidth,
  joinedExtent,
} from "../../geometry/extent.ts";
import { mm } from "../../geometry/quantity.ts";
import type { LayoutContext } from "../context.ts";
import type { PlacedComponent, PlacedMarking } from "../panel-layout.ts";
import { marking, textAt } from "./marking.ts";
import { legendStyle, type TextStyle } from "./style.ts";
import { type Align, textBlock } from "./text-block.ts";

export interface LegendScene {
  readonly style: TextStyle;
  readonly layer: string;
  readonly context: LayoutContext;
}

export interface PlacedLegends {
  readonly markings: readonly PlacedMarking[];
  /** The component's reach with its legends: what a border goes round. */
  readonly reach: Extent;
  readonly findings: readonly Finding[];
}

/** Position words, then the legend. `reach` is what the component and its scale already cover. */
export const componentLegends = (
  component: PlacedComponent,
  reach: Extent,
  scene: LegendScene,
): PlacedLegends => {
  const words = positionWords(component, reach, scene);
  if (component.legend === null) return { ...words, findings: [] };
  const { style, findings } = legendStyle(component.legend, scene.style, scene.context);
  const side = component.legend.side ?? usualSide(component);
  // A second gap keeps the component's name apart from the words of its positions.
  const beyond = words.markings.some((word) => word.side === side) ? 2 : 1;
  const placed = sideText(component.legend.text, words.reach, {
    style: { ...style, gap: mm(style.gap * beyond) },
    side,
    turn: component.legend.turn,
  });
  const made = marking(
    {
      id: `${component.id}/legend`,
      owner: component.id,
      kind: "legend",
      layer: scene.layer,
      side,
      span: legendSpan(component.legend),
    },
    placed.shapes,
    { text: component.legend.text, capHeight: style.height },
  );
  const markings = made === null ? words.markings : [...words.markings, made];
  return { markings, reach: joinedExtent(words.reach, made?.box ?? words.reach), findings };
};

/** The word of a lamp window stands on the face before it; any other legend above its component (NUREG-0700, labels; from memory, unverified). */
const usualSide = ({ part }: PlacedComponent): LegendSide =>
  part.family === "lamp" && part.openings.front === null ? "on" : LEGEND_SIDE;

export const legendSpan = (legend: LegendDesign): Finding["span"] => spanOf(legend.written, "text");

/** Which side of the lever a position's word stands on. Seen from the front, whatever way the part is turned. */
const POSITION_SIDES: Readonly<Record<string, Side>> = {
  up: "above",
  down: "below",
  left: "left",
  right: "right",
  centre: "right",
};

const positionWords = (
  component: PlacedComponent,
  reach: Extent,
  scene: LegendScene,
): Omit<PlacedLegends, "findings"> => {
  const positions = component.common.positions;
  if (positions === null) return { markings: [], reach };
  const markings: PlacedMarking[] = [];
  let covered = reach;
  for (const [position, word] of Object.entries(positions.labels)) {
    const side = POSITION_SIDES[position];
    if (side === undefined) continue;
    const { shapes } = sideText(word, reach, { style: scene.style, side });
    const made = marking(
      {
        id: `${component.id}/${position}`,
        owner: component.id,
        kind: "legend",
        layer: scene.layer,
        side,
        span: spanOf(positions.written, position),
      },
      shapes,
      { text: word, capHeight: scene.style.height },
    );
    if (made === null) continue;
    markings.push(made);
    covered = joinedExtent(covered, made.box);
  }
  return { markings, reach: covered };
};

/** Text beside a box, at the style's gap. */
export const sideText = (
  text: string,
  reach: Extent,
  options: {
    readonly style: TextStyle;
    readonly side: LegendSide;
    readonly turn?: LegendDesign["turn"];
  },
): { readonly shapes: ReturnType<typeof textAt> } => {
  const { style, side } = options;
  const align = options.turn === undefined || options.turn === 0 ? SIDE_ALIGN[side] : "middle";
  const size = textBlock(text, style, align).box;
  const turned = (options.turn ?? 0) % 180 !== 0;
  const high = turned ? extentWidth(size) : extentHeight(size);
  const wide = turned ? extentHeight(size) : 0;
  const at = sideAnchor(reach, side, { gap: style.gap, halfHeight: high / 2, halfWidth: wide / 2 });
  return {
    shapes: textAt(text, at, {
      style,
      align,
      ...(options.turn === undefined ? {} : { turn: options.turn }),
    }),
  };
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

// The stack in section: every layer at its own place and thickness, open where it is cut, hatched by what it is made of.
// Paint is as thick as it is. z runs to the left: the operator is on the left of the sheet.

import { type Extent, extent } from "../geometry/extent.ts";
import { rectangle } from "../geometry/shapes.ts";
import type { LayerLayout, PanelLayout } from "../layout/panel-layout.ts";
import { paintedFaces } from "../layout/stack.ts";
import type { DrawingItem, Ink } from "./drawing.ts";
import { type Hatch, hatchLines } from "./hatch.ts";
import { filled, HAIR, outlined, stroked, THIN } from "./items.ts";
import { openStretches, type Stretch, solidStretches } from "./section-gaps.ts";
import type { SectionPlane } from "./section-planes.ts";

export const layerItems = (
  layout: PanelLayout,
  plane: SectionPlane,
  place: { readonly zero: number; readonly whole: Stretch },
): readonly DrawingItem[] =>
  layout.layers.flatMap((layer) => {
    const pieces = solidStretches(place.whole, openStretches(layer, plane));
    return layer.kind === "air" ? [] : solidItems(layer, pieces, place.zero);
  });

const solidItems = (
  layer: LayerLayout,
  pieces: readonly Stretch[],
  zero: number,
): readonly DrawingItem[] => {
  const between = (front: number, rear: number): readonly Extent[] =>
    pieces.map(({ low, high }) => extent(zero - front, low, zero - rear, high));
  const boxes = between(layer.front, layer.rear);
  if (layer.kind === "tray")
    return [outlined(boxes.map(rectangle), { ink: "printed", width: THIN, dashed: true })];
  const look = lookOf(layer);
  const coats = coatsOf(layer).flatMap(({ front, rear }) => between(front, rear));
  return [
    filled(boxes.map(rectangle), look.ink),
    stroked(
      boxes.flatMap((box) => hatchLines(box, look.hatch)),
      { ink: "line", width: HAIR },
    ),
    ...(coats.length === 0 ? [] : [filled(coats.map(rectangle), "line")]),
    outlined(boxes.map(rectangle), { ink: "line", width: THIN }),
  ];
};

/** On its front, and on its rear where that is painted too. */
const coatsOf = (
  layer: LayerLayout,
): readonly { readonly front: number; readonly rear: number }[] => {
  const coat = layer.paint.nominal;
  if (layer.finish === null || coat === 0) return [];
  const front = { front: layer.front, rear: layer.front - coat };
  const rear = { front: layer.rear + coat, rear: layer.rear };
  return paintedFaces(layer.stock) > 1 ? [front, rear] : [front];
};

interface LayerLook {
  readonly ink: Ink;
  readonly hatch: Hatch;
}

const lookOf = (layer: LayerLayout): LayerLook => {
  if (layer.kind === "spacer") return { ink: "faint", hatch: { pitch: 1.4, lean: "crossed" } };
  if (layer.material === "aluminium")
    return { ink: "metal", hatch: { pitch: 0.9, lean: "rising" } };
  switch (layer.stock?.light ?? "opaque") {
    case "clear":
      return { ink: "clear", hatch: { pitch: 3.2, lean: "rising" } };
    case "translucent":
      return { ink: "translucent", hatch: { pitch: 2.2, lean: "falling" } };
    case "opaque":
      return { ink: "metal", hatch: { pitch: 1.4, lean: "falling" } };
  }
};

// The stack in section: every layer at its own place and thickness, open where it is cut, hatched by what it is made of.
// Paint is as thick as it is. z runs to the left: the operator is on the left of the sheet. Printed layers are drawn from
// their parts elsewhere; one that has no part yet is the room that it would take, in broken lines.

import { type Extent, extent } from "../geometry/extent.ts";
import type { Stretch } from "../geometry/line-stretches.ts";
import { rectangle } from "../geometry/shapes.ts";
import type { LayerLayout, PanelLayout } from "../layout/panel-layout.ts";
import { paintedFaces } from "../layout/stack.ts";
import type { DrawingItem, Ink } from "./drawing.ts";
import { type Hatch, hatchLines } from "./hatch.ts";
import { filled, HAIR, outlined, stroked, THIN } from "./items.ts";
import { openStretches, solidStretches } from "./section-gaps.ts";
import type { SectionPlane } from "./section-planes.ts";

export const layerItems = (
  layout: PanelLayout,
  plane: SectionPlane,
  place: LayerPlace,
): readonly DrawingItem[] =>
  layout.layers.flatMap((layer) =>
    itemsOf(layer, solidStretches(place.whole, openStretches(layer, plane)), place),
  );

interface LayerPlace {
  readonly zero: number;
  readonly whole: Stretch;
  /** Layers that printed parts are drawn for. */
  readonly printed: ReadonlySet<string>;
}

const itemsOf = (
  layer: LayerLayout,
  pieces: readonly Stretch[],
  { zero, printed }: LayerPlace,
): readonly DrawingItem[] => {
  switch (layer.kind) {
    case "sheet":
      return sheetItems(layer, pieces, zero);
    case "spacer":
    case "tray":
      return printed.has(layer.id) ? [] : roomItems(layer, pieces, zero);
    case "air":
      return [];
  }
};

const roomItems = (
  { front, rear }: LayerLayout,
  pieces: readonly Stretch[],
  zero: number,
): readonly DrawingItem[] => {
  const boxes = pieces.map(({ low, high }) => extent(zero - front, low, zero - rear, high));
  return [outlined(boxes.map(rectangle), { ink: "printed", width: THIN, dashed: true })];
};

const sheetItems = (
  layer: LayerLayout,
  pieces: readonly Stretch[],
  zero: number,
): readonly DrawingItem[] => {
  const between = (front: number, rear: number): readonly Extent[] =>
    pieces.map(({ low, high }) => extent(zero - front, low, zero - rear, high));
  const boxes = between(layer.front, layer.rear);
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

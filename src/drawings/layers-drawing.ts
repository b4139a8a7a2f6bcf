// Every layer of a stack side by side, front to back, at half size: what is cut out of each, with its name, sheet and
// thickness. A builder sees at a glance which piece is which.

import type { Contour } from "../geometry/contour.ts";
import { point } from "../geometry/contour.ts";
import { type Extent, extent, grownExtent, joinedExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import type { LayerLayout, PanelLayout } from "../layout/panel-layout.ts";
import type { Face } from "../lettering/face.ts";
import type { Lettering } from "../lettering/lettering.ts";
import { scaledRegion } from "../lettering/scaled.ts";
import type { Drawing, DrawingItem, Ink } from "./drawing.ts";
import { filled, outlined, THIN } from "./items.ts";
import { layerWords } from "./layer-words.ts";
import { paperFace, words, wrapped } from "./words.ts";

const SCALE = 0.5;
const GAP = 8;
const MARGIN = 5;
/** Rows of at most this width: what a page of a README shows. */
const ROW_WIDTH = 340;
const LABEL_HEIGHT = 2.2;
const LINE_PITCH = 3.6;

export const layersDrawing = (layout: PanelLayout, lettering: Lettering): Drawing => {
  const face = paperFace(lettering);
  const views = viewsOf(face, layout);
  return {
    title: `${layout.design.title}, layers front to back, half size`,
    box: grownExtent(views.map(({ box }) => box).reduce(joinedExtent, extent(0, 0, 0, 0)), MARGIN),
    items: views.flatMap(({ items }) => items),
  };
};

interface LayerView {
  readonly items: readonly DrawingItem[];
  readonly box: Extent;
}

const viewsOf = (face: Face | null, layout: PanelLayout): readonly LayerView[] => {
  const views: LayerView[] = [];
  let left = 0;
  let top = 0;
  for (const [index, layer] of layout.layers.filter(({ kind }) => kind !== "air").entries()) {
    const size = contourExtent(layer.outline);
    const width = (size.maxX - size.minX) * SCALE;
    if (left > 0 && left + width > ROW_WIDTH) {
      left = 0;
      top = Math.min(...views.map(({ box }) => box.minY)) - GAP;
    }
    const view = layerView(face, layer, { number: index + 1, left, top, size });
    views.push(view);
    left = Math.max(left + width, view.box.maxX) + GAP;
  }
  return views;
};

const layerView = (
  face: Face | null,
  layer: LayerLayout,
  at: {
    readonly number: number;
    readonly left: number;
    readonly top: number;
    readonly size: Extent;
  },
): LayerView => {
  const { size, left, top } = at;
  const place = {
    scale: SCALE,
    dx: left - size.minX * SCALE,
    dy: top - size.maxY * SCALE,
  };
  const scaled = (contour: Contour): Contour =>
    scaledRegion({ outline: contour, holes: [] }, place).outline;
  const outline = scaled(layer.outline);
  const openings = layer.cutOuts.map(({ contour }) => scaled(contour));
  const box = contourExtent(outline);
  const lines = wrapped(face, `${at.number}  ${layerWords(layer)}`, {
    capHeight: LABEL_HEIGHT,
    width: Math.max(40, box.maxX - box.minX),
  }).map((text, index) =>
    words(face, text, point(left, box.minY - 1 - LINE_PITCH * (index + 1)), {
      capHeight: LABEL_HEIGHT,
      align: "start",
      ink: "line",
    }),
  );
  const look = { ink: "line", width: THIN } as const;
  return {
    items: [
      filled([outline], inkOf(layer)),
      // Openings run into each other where a body needs more room than its bush: one after the other, not even-odd.
      ...openings.map((opening) => filled([opening], "paper")),
      outlined([outline, ...openings], look),
      ...lines.flatMap(({ items }) => items),
    ],
    box: lines.map((line) => line.box).reduce(joinedExtent, box),
  };
};

const inkOf = (layer: LayerLayout): Ink => {
  if (layer.kind !== "sheet") return "faint";
  if (layer.material === "aluminium") return "metal";
  return layer.stock?.light ?? "opaque";
};

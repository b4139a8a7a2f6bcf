// The face of a panel from the front, as a picture or for paper: openings, markings as cut, components, heads of fixings.
// In panel coordinates and true size; nothing here is a dimension.

import type { Extent } from "../geometry/extent.ts";
import { extent, joinedExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import type {
  PanelLayout,
  PlacedBody,
  PlacedComponent,
  PlacedMarking,
} from "../layout/panel-layout.ts";
import { componentArt } from "./art.ts";
import type { DrawingItem, Ink } from "./drawing.ts";
import { areas, outlined, stroked, THIN } from "./items.ts";
import { artItems, type Style } from "./tone.ts";

/** What is drawn of one thing, under the thing's own name. */
export interface FacePiece {
  readonly kind: "component" | "marking";
  readonly id: string;
  readonly owner: string;
  readonly items: readonly DrawingItem[];
}

export const faceItems = (layout: PanelLayout, style: Style, legend: Ink): readonly DrawingItem[] =>
  facePieces(layout, style, legend).flatMap(({ items }) => items);

/** Lamps and displays behind an unopened face are seen through it: they lie under the markings. */
export const facePieces = (
  layout: PanelLayout,
  style: Style,
  legend: Ink,
): readonly FacePiece[] => {
  const under = layout.components.filter((component) => !isThroughFace(component, layout));
  const over = layout.components.filter((component) => isThroughFace(component, layout));
  const components = (those: readonly PlacedComponent[]): readonly FacePiece[] =>
    those.map((component) => ({
      kind: "component",
      id: component.id,
      owner: component.id,
      items: drawn(component, layout, style),
    }));
  return [
    ...components(under),
    ...layout.markings.map(
      (marking): FacePiece => ({
        kind: "marking",
        id: marking.id,
        owner: marking.owner,
        items: markingItems(
          marking,
          style === "picture" ? glowInk(marking, { under, legend }) : legend,
        ),
      }),
    ),
    ...components(over),
  ];
};

const isThroughFace = (component: PlacedComponent, layout: PanelLayout): boolean =>
  layout.layers[0]?.cutOuts.some(({ owner }) => owner === component.id) ?? false;

const drawn = (
  component: PlacedComponent,
  layout: PanelLayout,
  style: Style,
): readonly DrawingItem[] => {
  const isLater = component.common.fitted === "later";
  const items = artItems(componentArt(component, layout), style, { dashed: isLater });
  if (style === "picture" || items.length > 0) return items;
  return [outlined(component.face, { ink: "line", width: THIN, dashed: true })];
};

/** A legend over a lamp that is seen through the face glows in the colour of its alert. */
const glowInk = (
  marking: PlacedMarking,
  { under, legend }: { readonly under: readonly PlacedComponent[]; readonly legend: Ink },
): Ink => {
  const lamp = under.find(({ id }) => id === marking.owner);
  if (marking.kind !== "legend" || lamp?.part.family !== "lamp") return legend;
  switch (lamp.legend?.alert ?? "none") {
    case "warning":
      return "lens-red";
    case "caution":
      return "lens-amber";
    case "advisory":
      return "lens-green";
    case "none":
      return legend;
  }
};

const markingItems = (marking: PlacedMarking, ink: Ink): readonly DrawingItem[] => [
  ...(marking.fills.length === 0 ? [] : [areas(marking.fills, ink)]),
  ...marking.strokes.map(({ path, width }) => stroked([path], { ink, width })),
];

const FRONT_ROLES: readonly PlacedBody["role"][] = [
  "flange",
  "nut",
  "washer",
  "button",
  "lens",
  "cap",
  "knob",
  "guard",
  "needle",
];

/** What is seen of a component from the front. */
export const seenExtent = (component: PlacedComponent, layout: PanelLayout): Extent => {
  const openings = layout.layers[0]?.cutOuts.filter(({ owner }) => owner === component.id) ?? [];
  const bodies = component.bodies.filter(
    ({ role, high }) => FRONT_ROLES.includes(role) && high > 0,
  );
  const contours = [
    ...component.face,
    ...bodies.map(({ footprint }) => footprint),
    ...openings.map(({ contour }) => contour),
  ];
  const { x, y } = component.at;
  return contours.map(contourExtent).reduce(joinedExtent, extent(x, y, x, y));
};

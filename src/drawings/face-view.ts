// The face of a panel from the front, as a picture or for paper: openings, markings as cut, components, heads of fixings.
// In panel coordinates and true size; nothing here is a dimension.

import type { Extent } from "../geometry/extent.ts";
import { extent, joinedExtent } from "../geometry/extent.ts";
import { madeOnceAs, steadyLists } from "../geometry/made-once.ts";
import { contourExtent } from "../geometry/measure.ts";
import { shapeOf } from "../layout/component-shape.ts";
import type {
  CutOut,
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
  const cutOutsOf = ownCutOuts(layout);
  const isUnder = (component: PlacedComponent): boolean => cutOutsOf(component).length === 0;
  const under = layout.components.filter(isUnder);
  const glowing = new Map(under.map((component) => [component.id, component]));
  const pieceOf = (component: PlacedComponent): FacePiece =>
    componentPiece(component, { cutOuts: cutOutsOf(component), style });
  return [
    ...under.map(pieceOf),
    ...layout.markings.map((marking) =>
      markingPiece(marking, {
        id: marking.id,
        owner: marking.owner,
        ink: style === "picture" ? glowInk(marking, { glowing, legend }) : legend,
      }),
    ),
    ...layout.components.filter((component) => !isUnder(component)).map(pieceOf),
  ];
};

/** What the foremost layer opens for each component. */
const ownCutOuts = (layout: PanelLayout): ((component: PlacedComponent) => readonly CutOut[]) => {
  const byOwner = new Map<string, CutOut[]>();
  for (const cutOut of layout.layers[0]?.cutOuts ?? []) {
    const own = byOwner.get(cutOut.owner) ?? [];
    own.push(cutOut);
    byOwner.set(cutOut.owner, own);
  }
  return (component) => steady(shapeOf(component), byOwner.get(component.id) ?? []);
};

/** Of a hole that only its words have moved the outline is the same. */
const steady = steadyLists<readonly PlacedBody[], CutOut>(
  (one, other) => one.contour === other.contour && one.purpose === other.purpose,
);

const componentPiece = madeOnceAs(
  shapeOf,
  (
    component: PlacedComponent,
    { cutOuts, style }: { readonly cutOuts: readonly CutOut[]; readonly style: Style },
  ): FacePiece => ({
    kind: "component",
    id: component.id,
    owner: component.id,
    items: drawn(component, cutOuts, style),
  }),
);

const drawn = (
  component: PlacedComponent,
  cutOuts: readonly CutOut[],
  style: Style,
): readonly DrawingItem[] => {
  const isLater = component.common.fitted === "later";
  const items = artItems(componentArt(component, cutOuts), style, { dashed: isLater });
  if (style === "picture" || items.length > 0) return items;
  return [outlined(component.face, { ink: "line", width: THIN, dashed: true })];
};

interface MarkingPieceGiven {
  readonly id: string;
  readonly owner: string;
  readonly ink: Ink;
}

const markingPiece = madeOnceAs(
  ({ fills, strokes }: PlacedMarking) => (fills.length > 0 ? fills : strokes),
  (marking: PlacedMarking, { ink, id, owner }: MarkingPieceGiven): FacePiece => ({
    kind: "marking",
    id,
    owner,
    items: markingItems(marking, ink),
  }),
);

/** A legend over a lamp that is seen through the face glows in the colour of its alert. */
const glowInk = (
  marking: PlacedMarking,
  on: { readonly glowing: ReadonlyMap<string, PlacedComponent>; readonly legend: Ink },
): Ink => {
  const { legend } = on;
  const lamp = on.glowing.get(marking.owner);
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

/** What is seen of each component from the front, in their order. */
export const seenExtents = (
  layout: PanelLayout,
): readonly (readonly [PlacedComponent, Extent])[] => {
  const cutOutsOf = ownCutOuts(layout);
  return layout.components.map((component) => [
    component,
    seenExtent(component, { cutOuts: cutOutsOf(component) }),
  ]);
};

const seenExtent = madeOnceAs(
  shapeOf,
  (component: PlacedComponent, { cutOuts }: { readonly cutOuts: readonly CutOut[] }): Extent => {
    const bodies = component.bodies.filter(
      ({ role, high }) => FRONT_ROLES.includes(role) && high > 0,
    );
    const contours = [
      ...component.face,
      ...bodies.map(({ footprint }) => footprint),
      ...cutOuts.map(({ contour }) => contour),
    ];
    const { x, y } = component.at;
    return contours.map(contourExtent).reduce(joinedExtent, extent(x, y, x, y));
  },
);

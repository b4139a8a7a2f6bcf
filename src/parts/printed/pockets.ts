// The room that each component needs in a printed layer: everything of it that stands in the layer or has to pass it on the
// way in, the hole that it sits in, and the spanner of a nut behind. Straight through, so that a layer goes on from behind.

import { unionRegions } from "../../geometry/boolean.ts";
import { type Contour, circle, type Region } from "../../geometry/contour.ts";
import type {
  LayerLayout,
  PanelLayout,
  PlacedBody,
  PlacedComponent,
} from "../../layout/panel-layout.ts";
import { grownRegions, plainRegion } from "./grown-regions.ts";

export interface Pocket {
  readonly owner: string;
  readonly regions: readonly Region[];
}

/** A side, beside a printed wall: a loose fit, and half of what a printer takes off a large hole (common practice). */
export const POCKET_CLEARANCE = 0.5;

/** Components that leave the layer alone have no pocket. In the order of the layout. */
export const pocketsOf = (layout: PanelLayout, layer: LayerLayout): readonly Pocket[] =>
  layout.components.flatMap((component) => {
    const room = [
      ...bodyRoom(component, layer),
      ...spannerRoom(component, layer),
      ...holeRoom(component, { layout, layer }),
    ];
    if (room.length === 0) return [];
    return [{ owner: component.id, regions: roomRegions(room) }];
  });

/** A stretch of depth behind the panel, and where it comes in the stack. */
export type Depth = Pick<LayerLayout, "front" | "rear" | "index">;

/** The room of bodies alone: what stands in a depth or has to pass it. */
export const bodyPockets = (layout: PanelLayout, depth: Depth): readonly Pocket[] =>
  layout.components.flatMap((component) => {
    const room = bodyRoom(component, depth);
    return room.length === 0 ? [] : [{ owner: component.id, regions: roomRegions(room) }];
  });

const roomRegions = (room: readonly Contour[]): readonly Region[] =>
  grownRegions(unionRegions(room.map(plainRegion)), POCKET_CLEARANCE);

const bodyRoom = (component: PlacedComponent, layer: Depth): readonly Contour[] =>
  component.bodies
    .filter((body) => standsIn(body, layer) || passes(body, component, layer))
    .map(({ footprint }) => footprint);

const standsIn = (body: PlacedBody, layer: Depth): boolean =>
  body.low < layer.front && body.high > layer.rear;

/** What lies wholly behind and was there before the layer; plugs and cables come after it. */
const passes = (body: PlacedBody, component: PlacedComponent, layer: Depth): boolean =>
  component.clamped.last < layer.index &&
  body.high <= layer.rear &&
  body.role !== "plug" &&
  body.role !== "cable";

/** A nut behind is tightened with the layer on. */
const spannerRoom = (component: PlacedComponent, layer: LayerLayout): readonly Contour[] => {
  const { hold } = component.part;
  const isBehind = hold.kind === "bush" && hold.seat === "front";
  if (!isBehind || component.clamped.last >= layer.index) return [];
  return [circle(component.at, hold.spanner / 2)];
};

/** The component's own holes in the sheet that lies on the layer: whatever shows through them must meet no printed edge. */
const holeRoom = (
  component: PlacedComponent,
  { layout, layer }: { readonly layout: PanelLayout; readonly layer: LayerLayout },
): readonly Contour[] => {
  const sheet = layout.layers.findLast(
    ({ kind, index }) => kind === "sheet" && index < layer.index,
  );
  if (sheet === undefined) return [];
  return sheet.cutOuts.filter(({ owner }) => owner === component.id).map(({ contour }) => contour);
};

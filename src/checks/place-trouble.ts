// Would a thing moved by so much stand well: inside the panel and its rim, off the rails, clear of every other opening,
// body and hand. A remedy that moves something is asked this first, so that it names a place that works.

import { containsContour } from "../geometry/containment.ts";
import type { Contour } from "../geometry/contour.ts";
import { contourDistance } from "../geometry/distance.ts";
import { type Extent, extentGap, extentsOverlap } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { placedContour, placement } from "../geometry/transform.ts";
import type { CutOut, LayerLayout, PlacedBody, PlacedComponent } from "../layout/panel-layout.ts";
import { separation } from "../standards/separation.ts";
import { houseLimit } from "./house-rule.ts";
import { EDGE } from "./layout/edge-limit.ts";
import { isRearBody, railsMeet, seatedLayer } from "./layout/rear.ts";
import { shareHeight } from "./layout/share-height.ts";
import { WEB } from "./layout/web-limit.ts";
import { isUnder } from "./limits.ts";
import type { PanelFacts } from "./rule.ts";

export interface Shift {
  readonly x: number;
  readonly y: number;
}

interface Scene {
  readonly facts: PanelFacts;
  readonly moved: ReadonlySet<string>;
  readonly shift: Shift;
}

/** `moved` are instance ids; whatever else there is stays where it is. */
export const standsWell = (
  moved: ReadonlySet<string>,
  shift: Shift,
  facts: PanelFacts,
): boolean => {
  const scene = { facts, moved, shift };
  const { layout } = facts;
  const movers = layout.components.filter(({ id }) => moved.has(id));
  const others = layout.components.filter(({ id }) => !moved.has(id));
  return (
    layout.layers.every((layer) => openingsStandWell(layer, scene)) &&
    movers.every((component) => bodiesStandWell(component, others, scene)) &&
    movers.every((component) => handsHaveRoom(component, others, scene))
  );
};

const shifted = (contour: Contour, { x, y }: Shift): Contour =>
  placedContour(contour, placement(x, y));

const openingsStandWell = (layer: LayerLayout, scene: Scene): boolean => {
  const own = layer.cutOuts.filter(({ owner }) => scene.moved.has(owner));
  const rest = layer.cutOuts.filter(({ owner }) => !scene.moved.has(owner));
  const web = houseLimit(scene.facts, WEB).limit;
  return own.every((cutOut) => {
    const contour = shifted(cutOut.contour, scene.shift);
    return isInside(contour, layer, scene) && rest.every((other) => isClearOf(contour, other, web));
  });
};

const isInside = (contour: Contour, layer: LayerLayout, { facts }: Scene): boolean => {
  const { layout } = facts;
  if (!containsContour(layer.outline, contour)) return false;
  if (isUnder(contourDistance(layer.outline, contour).gap, houseLimit(facts, EDGE).limit))
    return false;
  return layer.id !== seatedLayer(layout)?.id || !railsMeet(layout, contourExtent(contour));
};

const isClearOf = (contour: Contour, other: CutOut, web: number): boolean => {
  if (extentGap(contourExtent(contour), contourExtent(other.contour)) > web) return true;
  const { gap, overlaps } = contourDistance(contour, other.contour);
  return !overlaps && !isUnder(gap, web);
};

const bodiesStandWell = (
  component: PlacedComponent,
  others: readonly PlacedComponent[],
  { facts, shift }: Scene,
): boolean =>
  component.bodies.every((body) => {
    const contour = shifted(body.footprint, shift);
    const box = contourExtent(contour);
    if (isRearBody(body, facts.layout) && railsMeet(facts.layout, box)) return false;
    return others.every((other) =>
      other.bodies.every((one) => isApart({ body, contour, box }, one)),
    );
  });

const isApart = (
  moved: { readonly body: PlacedBody; readonly contour: Contour; readonly box: Extent },
  other: PlacedBody,
): boolean =>
  !shareHeight(moved.body, other) ||
  !extentsOverlap(moved.box, contourExtent(other.footprint)) ||
  !contourDistance(moved.contour, other.footprint).overlaps;

const handsHaveRoom = (
  component: PlacedComponent,
  others: readonly PlacedComponent[],
  { shift }: Scene,
): boolean => {
  if (component.grasp === null) return true;
  const grasp = shifted(component.grasp, shift);
  const box = contourExtent(grasp);
  return others.every((other) => {
    const rule = separation(component.part.hand, other.part.hand);
    if (rule === null || other.grasp === null) return true;
    if (extentGap(box, contourExtent(other.grasp)) > rule.least) return true;
    const { gap, overlaps } = contourDistance(grasp, other.grasp);
    return !overlaps && !isUnder(gap, rule.least);
  });
};

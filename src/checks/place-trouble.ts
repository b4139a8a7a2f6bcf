// Would a thing moved by so much stand well: inside the panel and its rim with its legend, off the rails, clear of every other
// opening, body and hand. A remedy that moves something is asked this first, so that it names a place that works.

import { containsContour } from "../geometry/containment.ts";
import type { Contour } from "../geometry/contour.ts";
import { contourDistance } from "../geometry/distance.ts";
import { type Extent, extent, extentGap, extentsOverlap } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { rectangle } from "../geometry/shapes.ts";
import { placedContour, placement } from "../geometry/transform.ts";
import type { LayerLayout, PlacedBody } from "../layout/panel-layout.ts";
import { seatedLayer } from "../layout/seated-layer.ts";
import { type HandKind, separation } from "../standards/separation.ts";
import { houseLimit } from "./house-rule.ts";
import { isClearInside } from "./layout/clear-inside.ts";
import { EDGE } from "./layout/edge-limit.ts";
import { isShown } from "./layout/marking-shapes.ts";
import { railsMeet, rearBodies } from "./layout/rear.ts";
import { shareHeight } from "./layout/share-height.ts";
import { WEB } from "./layout/web-limit.ts";
import { isUnder } from "./limits.ts";
import type { PanelFacts } from "./rule.ts";

export interface Shift {
  readonly x: number;
  readonly y: number;
}

/** What a place is tried against. */
export type PlaceFacts = Pick<PanelFacts, "layout" | "workshop">;

interface Shape {
  readonly contour: Contour;
  readonly box: Extent;
}

/** Most places are told by the box alone: the outline is moved there only where that does not say it. */
interface TriedShape {
  readonly box: Extent;
  readonly contour: () => Contour;
}

/** Shapes of one kind, those that move and those that stay. */
interface Divided<Thing extends Shape> {
  readonly moved: readonly Thing[];
  readonly rest: readonly Thing[];
}

/**
 * `moved` are instance ids; whatever else there is stays where it is, and none is moved further than `farthest` either way.
 * The lists are made once for many tries, of what lies on the way alone.
 */
export const placeTester = (
  moved: ReadonlySet<string>,
  farthest: Shift,
  facts: PlaceFacts,
): ((shift: Shift) => boolean) => {
  const web = houseLimit(facts, WEB).limit;
  const openings = facts.layout.layers.map((layer) => {
    const shapes = divided(layer.cutOuts, moved, ({ contour, owner }) => ({ owner, contour }));
    return { layer, shapes: onTheWay(shapes, farthest, web) };
  });
  const bodies = onTheWay(dividedBodies(moved, facts), farthest, 0);
  const grasps = dividedGrasps(moved, facts);
  const markings = movedMarkings(moved, facts);
  return (shift) =>
    handsHaveRoom(grasps, shift) &&
    openings.every(({ layer, shapes }) => openingsStandWell(shapes, { layer, shift, facts })) &&
    bodiesStandWell(bodies, shift, facts) &&
    markings.every(({ box, outline }) => isOnSheet(shiftedBox(box, shift), outline));
};

interface MarkedBox {
  readonly box: Extent;
  readonly outline: Contour;
}

/** What is set from a component goes with it. */
const movedMarkings = (moved: ReadonlySet<string>, { layout }: PlaceFacts): readonly MarkedBox[] =>
  layout.markings
    .filter((marking) => moved.has(marking.owner) && isShown(marking))
    .map(({ box, layer }) => ({
      box,
      outline: layout.layers.find(({ id }) => id === layer)?.outline ?? layout.outline,
    }));

const isOnSheet = (box: Extent, outline: Contour): boolean =>
  isClearInside(box, outline, 0) || containsContour(outline, rectangle(box));

const divided = <From, Thing extends { readonly owner: string; readonly contour: Contour }>(
  all: readonly From[],
  moved: ReadonlySet<string>,
  thingOf: (from: From) => Thing,
): Divided<Thing & Shape> => {
  const things = all.map(thingOf).map((thing) => ({ ...thing, box: contourExtent(thing.contour) }));
  return {
    moved: things.filter(({ owner }) => moved.has(owner)),
    rest: things.filter(({ owner }) => !moved.has(owner)),
  };
};

/** Without what stays farther than `room` from all that moves, wherever that goes. */
const onTheWay = <Thing extends Shape>(
  { moved, rest }: Divided<Thing>,
  farthest: Shift,
  room: number,
): Divided<Thing> => {
  const swept = moved.map(({ box }) => {
    const [across, along] = [Math.abs(farthest.x), Math.abs(farthest.y)];
    return extent(box.minX - across, box.minY - along, box.maxX + across, box.maxY + along);
  });
  return {
    moved,
    rest: rest.filter(({ box }) => swept.some((way) => extentGap(way, box) <= room)),
  };
};

type Heights = Pick<PlacedBody, "low" | "high">;
type BodyShape = Shape & Heights & { readonly isRear: boolean };

const dividedBodies = (moved: ReadonlySet<string>, { layout }: PlaceFacts): Divided<BodyShape> => {
  const rear = new Set(rearBodies(layout).map(({ body }) => body));
  const bodies = layout.components.flatMap((component) => component.bodies);
  return divided(bodies, moved, (body) => ({
    owner: body.owner,
    contour: body.footprint,
    low: body.low,
    high: body.high,
    isRear: rear.has(body),
  }));
};

type GraspShape = Shape & { readonly hand: HandKind };

const dividedGrasps = (moved: ReadonlySet<string>, { layout }: PlaceFacts): Divided<GraspShape> => {
  const held = layout.components.flatMap(({ id, part, grasp }) =>
    grasp === null ? [] : [{ owner: id, contour: grasp, hand: part.hand }],
  );
  return divided(held, moved, (one) => one);
};

const shifted = ({ contour, box }: Shape, shift: Shift): TriedShape => {
  let moved: Contour | null = null;
  return {
    box: shiftedBox(box, shift),
    contour: () => {
      moved ??= placedContour(contour, placement(shift.x, shift.y));
      return moved;
    },
  };
};

const shiftedBox = ({ minX, minY, maxX, maxY }: Extent, { x, y }: Shift): Extent =>
  extent(minX + x, minY + y, maxX + x, maxY + y);

const openingsStandWell = (
  { moved, rest }: Divided<Shape>,
  at: { readonly layer: LayerLayout; readonly shift: Shift; readonly facts: PlaceFacts },
): boolean => {
  const web = houseLimit(at.facts, WEB).limit;
  return moved.every((one) => {
    const opening = shifted(one, at.shift);
    return (
      rest.every((other) => isFree(opening, other, web)) && isInside(opening, at.layer, at.facts)
    );
  });
};

const isFree = (one: TriedShape, other: Shape, least: number): boolean => {
  if (extentGap(one.box, other.box) > least) return true;
  const { gap, overlaps } = contourDistance(one.contour(), other.contour);
  return !overlaps && !isUnder(gap, least);
};

const isInside = (one: TriedShape, layer: LayerLayout, facts: PlaceFacts): boolean => {
  const { layout } = facts;
  const { outline } = layer;
  const least = houseLimit(facts, EDGE).limit;
  if (!isClearInside(one.box, outline, least)) {
    const contour = one.contour();
    if (!containsContour(outline, contour)) return false;
    if (isUnder(contourDistance(outline, contour).gap, least)) return false;
  }
  return layer.id !== seatedLayer(layout)?.id || !railsMeet(layout, one.box);
};

const bodiesStandWell = (
  { moved, rest }: Divided<BodyShape>,
  shift: Shift,
  { layout }: PlaceFacts,
): boolean =>
  moved.every((one) => {
    const body = { ...shifted(one, shift), low: one.low, high: one.high };
    return (
      !(one.isRear && railsMeet(layout, body.box)) && rest.every((other) => isApart(body, other))
    );
  });

const isApart = (one: TriedShape & Heights, other: BodyShape): boolean =>
  !extentsOverlap(one.box, other.box) ||
  !shareHeight(one, other) ||
  !contourDistance(one.contour(), other.contour).overlaps;

const handsHaveRoom = ({ moved, rest }: Divided<GraspShape>, shift: Shift): boolean =>
  moved.every((one) => {
    const held = shifted(one, shift);
    return rest.every((other) => {
      const rule = separation(one.hand, other.hand);
      return rule === null || isFree(held, other, rule.least);
    });
  });

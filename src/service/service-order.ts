// An order in which a panel goes together so that every nut, screw, plug and strip is reached with its tool: found by taking
// it apart, whatever is free first, and turned round. What is never free is taken out all the same, and told with its step.

import { containsContour, containsPoint } from "../geometry/containment.ts";
import type { Contour, Region } from "../geometry/contour.ts";
import { contoursOverlap } from "../geometry/distance.ts";
import { extentsOverlap } from "../geometry/extent.ts";
import { isHeldByOne } from "../geometry/held-by-one.ts";
import { contourExtent } from "../geometry/measure.ts";
import { samePlace } from "../geometry/tolerance.ts";
import type { LayerLayout } from "../layout/panel-layout.ts";
import {
  type Column,
  type Obstacle,
  type ServiceItem,
  type ServiceScene,
  serviceItems,
} from "./service-item.ts";

export interface ServiceStep {
  /** Of assembly, from 1. */
  readonly number: number;
  readonly item: ServiceItem;
}

export interface OutOfReach extends ServiceStep {
  /** Components, layers and printed parts that stand in the tool's way at that step, in order. */
  readonly by: readonly string[];
}

export interface ServiceOrder {
  /** In the order of assembly. */
  readonly steps: readonly ServiceStep[];
  readonly outOfReach: readonly OutOfReach[];
}

export const serviceOrder = (scene: ServiceScene): ServiceOrder => {
  const known = kept.get(scene.printedParts);
  if (known !== undefined && known.layout === scene.layout) return known.order;
  const order = assembled(takenApart(serviceItems(scene)));
  kept.set(scene.printedParts, { layout: scene.layout, order });
  return order;
};

const kept = new WeakMap<
  ServiceScene["printedParts"],
  { readonly layout: ServiceScene["layout"]; readonly order: ServiceOrder }
>();

/** What goes on after an item and then stands in its tool's way: it is put in, or plugged, before that. By the item's id. */
export const closedOver = ({ steps }: ServiceOrder): ReadonlyMap<string, readonly string[]> => {
  const items = steps.map(({ item }) => item);
  return new Map(
    items.map((item, index) => [
      item.id,
      item.kind === "layer" ? [] : inTheWay(item, items.slice(index)),
    ]),
  );
};

interface Taken {
  readonly item: ServiceItem;
  readonly by: readonly string[];
}

/** Taking things away only ever opens ways: the first that is free may always go. */
const takenApart = (items: readonly ServiceItem[]): readonly Taken[] => {
  const waiting = items.map((item): Waiting => ({ item, passed: 0, isHeld: false }));
  const gone = new Set<ServiceItem>();
  const taken: Taken[] = [];
  while (waiting.length > 0) {
    const free = waiting.findIndex((one) => isFree(one, items, gone));
    const at = free < 0 ? firstFastened(waiting) : free;
    const { item } = waiting[at]!;
    const left = free < 0 ? waiting.map((one) => one.item) : [];
    taken.push({ item, by: inTheWay(item, left) });
    gone.add(item);
    waiting.splice(at, 1);
  }
  return taken;
};

interface Waiting {
  readonly item: ServiceItem;
  /** So many of all items, from the first, are gone or never were in its way: no two are held together twice. */
  passed: number;
  /** The one that comes then holds it, as long as it is not gone. */
  isHeld: boolean;
}

const isFree = (
  waiting: Waiting,
  items: readonly ServiceItem[],
  gone: ReadonlySet<ServiceItem>,
): boolean => {
  const { item } = waiting;
  // Off the stack with the part that it lies in, a strip is free whatever else is left.
  if (item.kind === "strip")
    return (
      coveringStrips(
        item,
        items.filter((other) => other.kind === "layer" && !gone.has(other)),
      ).length === 0
    );
  for (; waiting.passed < items.length; waiting.passed += 1) {
    const other = items[waiting.passed]!;
    if (gone.has(other)) waiting.isHeld = false;
    else {
      waiting.isHeld ||= holdsBack(other, item);
      if (waiting.isHeld) return false;
    }
  }
  return true;
};

/** Of two things as they lie in the panel. */
const holdsBack = (other: ServiceItem, item: ServiceItem): boolean => {
  if (item.kind === "layer") return other.kind === "stack-screw" || isHeldBy(other, item);
  return other === item
    ? ownInTheWay(item).length > 0
    : isApart(item, other) && metOwners(item, other).length > 0;
};

/** What is in the way of a component's tool is never the component itself; a layer may be what it is fastened in. */
const isApart = (item: ServiceItem, other: ServiceItem): boolean =>
  other !== item && (other.owner !== item.owner || other.kind === "layer");

/** A nut may be walled in by the print that it holds. */
const ownInTheWay = (item: ServiceItem): readonly string[] =>
  item.kind === "nut" ? metOwners(item, item) : [];

/** Where nothing is free, what has a tool is forced: a layer waits for its fasteners. */
const firstFastened = (left: readonly Waiting[]): number =>
  Math.max(
    0,
    left.findIndex(({ item: { kind } }) => kind !== "layer" && kind !== "strip"),
  );

const assembled = (taken: readonly Taken[]): ServiceOrder => {
  const steps = taken.toReversed().map(({ item, by }, index) => ({ number: index + 1, item, by }));
  return {
    steps: steps.map(({ number, item }) => ({ number, item })),
    outOfReach: steps.filter(({ by }) => by.length > 0),
  };
};

const inTheWay = (item: ServiceItem, left: readonly ServiceItem[]): readonly string[] => {
  if (item.kind === "layer" || item.kind === "strip") {
    const others = left.filter((other) => other !== item);
    return item.kind === "layer" ? holding(item, others) : coveringStrips(item, others);
  }
  const ahead = left
    .filter((other) => isApart(item, other))
    .flatMap((other) => metOwners(item, other));
  const own = ownInTheWay(item);
  return [...new Set([...ahead, ...own])].sort();
};

/** Owners of what of one item stands in the way of another. Of an item's own things only prints count. */
const metOwners = (item: ServiceItem, other: ServiceItem): readonly string[] =>
  item !== other && areFarApart(item, other) ? NOBODY : ownersMet(item, other);

/** The same list each time: every thing is held against every other. */
const NOBODY: readonly string[] = [];

const ownersMet = (item: ServiceItem, other: ServiceItem): readonly string[] => {
  const bodies = item === other ? item.bodies.filter(({ kind }) => kind === "print") : other.bodies;
  return bodies
    .filter((one) => item.columns.some((column) => stands(one, column, item)))
    .map(({ owner }) => owner);
};

/** Most things on a panel are nowhere near each other: two boxes say so at once. What is no body may lie anywhere. */
const areFarApart = ({ room }: ServiceItem, { things }: ServiceItem): boolean =>
  room === null || (things !== null && !extentsOverlap(room, things));

/** A layer is held by the stack's screws, and by layers that lie on its open side. */
const holding = (layer: ServiceItem, others: readonly ServiceItem[]): readonly string[] => {
  const screws = others.filter(({ kind }) => kind === "stack-screw").map(({ owner }) => owner);
  if (screws.length > 0) return screws;
  return others.filter((other) => isHeldBy(other, layer)).map(({ owner }) => owner);
};

/** What is fastened to a sheet, or rests behind the sheets, is put there once they lie: a sheet comes off after it. */
const isHeldBy = (other: ServiceItem, { bodies: [held] }: ServiceItem): boolean => {
  if (held?.kind !== "sheet") return false;
  if (other.kind === "nut") return isClampedThrough(other, held);
  if (other.kind !== "screw") return false;
  const { cutOuts } = held.layer;
  return (
    other.tool === null ||
    cutOuts.some(({ owner, purpose }) => owner === other.owner && purpose === "screw")
  );
};

/** A nut bears on the sheet, or the part stands on its other side: both keep it where it is. */
const isClampedThrough = ({ bodies }: ServiceItem, held: Obstacle): boolean => {
  if (held.kind !== "sheet") return false;
  const { front, rear, cutOuts } = held.layer;
  return bodies.some(
    (one) =>
      one.kind === "body" &&
      one.body.role === "nut" &&
      isNear(one.body, front, rear) &&
      cutOuts.some(({ owner, purpose }) => owner === one.owner && purpose === "clamp"),
  );
};

const isNear = (
  { low, high }: { readonly low: number; readonly high: number },
  front: number,
  rear: number,
): boolean =>
  (low >= front - samePlace && low < front + WASHERS) ||
  (high <= rear + samePlace && high > rear - WASHERS);

/** Between a nut and its sheet at most so much of washers lies: common practice. */
const WASHERS = 3;

/** Strips come out once the part that they lie in is off the stack, or nothing lies on it. */
const coveringStrips = (strip: ServiceItem, others: readonly ServiceItem[]): readonly string[] => {
  const layers = others.filter(({ kind }) => kind === "layer");
  const home = layers.find(({ owner }) => owner === strip.owner);
  if (home === undefined) return [];
  return layers.filter(({ side }) => side === "front").map(({ owner }) => owner);
};

const stands = (one: Obstacle, column: Column, { side, owner }: ServiceItem): boolean => {
  switch (one.kind) {
    case "body":
      return (
        isBeyond(one.body, column, side) &&
        extentsOverlap(contourExtent(one.body.footprint), contourExtent(column.contour)) &&
        contoursOverlap(one.body.footprint, column.contour)
      );
    case "sheet": {
      const { outline, front, rear, cutOuts } = one.layer;
      if (!isBeyond({ low: rear, high: front }, column, side)) return false;
      // Mostly it stands in the hole of the very thing that it fastens.
      const isInOwn = cutOuts.some(
        (cutOut) => cutOut.owner === owner && containsContour(cutOut.contour, column.contour),
      );
      return !isInOwn && meets({ outline, holes: holesOf(cutOuts) }, column);
    }
    case "print":
      return one.slabs.some(
        ({ from, to, regions }) =>
          isBeyond({ low: from, high: to }, column, side) &&
          regions.some((region) => meets(region, column)),
      );
  }
};

/** Every column is held against them. */
const holesOf = (cutOuts: LayerLayout["cutOuts"]): readonly Contour[] => {
  const known = HOLES.get(cutOuts);
  if (known !== undefined) return known;
  const holes = cutOuts.map(({ contour }) => contour);
  HOLES.set(cutOuts, holes);
  return holes;
};

const HOLES = new WeakMap<LayerLayout["cutOuts"], readonly Contour[]>();

const isBeyond = (
  { low, high }: { readonly low: number; readonly high: number },
  { from }: Column,
  side: ServiceItem["side"],
): boolean => (side === "front" ? high > from + samePlace : low < from - samePlace);

/** Holes first, then the middle: each says most of the time what the distance from the outline would say more slowly. */
const meets = ({ outline, holes }: Region, { contour }: Column): boolean => {
  if (isHeldByOne(holes, contour)) return false;
  const isMiddleIn = contour.kind === "circle" && containsPoint(outline, contour.centre);
  return isMiddleIn || contoursOverlap(outline, contour);
};

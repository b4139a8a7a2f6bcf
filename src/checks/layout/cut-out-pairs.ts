// For each two owners whose cut-outs come near each other: the layer where they are closest. Several rules judge the same
// pairs, so they are found once a layout.

import { type ContourDistance, contourDistance } from "../../geometry/distance.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { CutOut, LayerLayout, PanelLayout } from "../../layout/panel-layout.ts";
import { eachNearPair } from "../pairs.ts";
import { inTextOrder, type WrittenThing } from "../text-order.ts";

export interface CutOutPair {
  /** Written first. */
  readonly a: CutOut;
  readonly b: CutOut;
  readonly layer: LayerLayout;
  readonly distance: ContourDistance;
}

/** Farther apart than this no web rule looks. */
const REACH = 8;

const known = new WeakMap<PanelLayout, readonly CutOutPair[]>();

export const cutOutPairs = (layout: PanelLayout): readonly CutOutPair[] => {
  const found = known.get(layout);
  if (found !== undefined) return found;
  const pairs = closestPairs(layout);
  known.set(layout, pairs);
  return pairs;
};

const closestPairs = (layout: PanelLayout): readonly CutOutPair[] => {
  const closest = new Map<string, CutOutPair>();
  for (const layer of layout.layers) {
    const boxed = layer.cutOuts.map((thing) => ({ thing, box: contourExtent(thing.contour) }));
    eachNearPair(boxed, REACH, (first, second) => {
      if (first.owner === second.owner) return;
      const [a, b] = inTextOrder<CutOut>(first, second, writtenAt);
      const key = `${a.owner} ${b.owner}`;
      const pair = { a, b, layer, distance: contourDistance(a.contour, b.contour) };
      if (isCloser(pair, closest.get(key))) closest.set(key, pair);
    });
  }
  return [...closest.values()];
};

const writtenAt = ({ span, owner }: CutOut): WrittenThing => ({ span, name: owner });

const isCloser = (pair: CutOutPair, than: CutOutPair | undefined): boolean => {
  if (than === undefined) return true;
  if (pair.distance.overlaps !== than.distance.overlaps) return pair.distance.overlaps;
  return pair.distance.gap < than.distance.gap;
};

/** Fixings, dowels and mount holes have a rule of their own. */
export const isFixed = (cutOut: CutOut): boolean =>
  cutOut.purpose === "fixing" || cutOut.purpose === "dowel" || cutOut.purpose === "mount";

// How much of each legend gets light: how many lamps have a straight way to it through windows and diffuser, and over how
// much of its box. A legend on an opaque sheet can't be lit, one on its lamp is lit by that: neither has
// a fact.

import { containsPoint } from "../geometry/containment.ts";
import { type Point, point } from "../geometry/contour.ts";
import { type Extent, extentCentre, extentHeight, extentWidth } from "../geometry/extent.ts";
import type { LayerLayout, PlacedMarking } from "../layout/panel-layout.ts";
import { type Blocker, blockersToward, freeWay } from "./blocker.ts";
import type { Lamp } from "./lamp.ts";
import type { LightScene } from "./light-scene.ts";
import { isSeeThrough, sheetRegion } from "./sheet-light.ts";

export interface LegendLight {
  readonly marking: PlacedMarking;
  /** Which of its words: a scale has a fact for each figure. */
  readonly word: Extent;
  /** Lamps with a straight way to some part of it. */
  readonly lamps: number;
  /** Share of its box, 0 to 1, that some lamp has a straight way to. */
  readonly share: number;
  /** The opaque sheet that lies behind its middle; null where none does. */
  readonly behind: string | null;
}

/** In the order of the markings; none where the stack holds no lamps. */
export const legendLightOf = (scene: LightScene): readonly LegendLight[] => {
  const { layout, lamps } = scene;
  if (lamps.length === 0) return [];
  return layout.markings
    .filter(({ side }) => side !== "on")
    .flatMap((marking) => {
      const layer = layout.layers.find(({ id }) => id === marking.layer);
      return layer === undefined || !isSeeThrough(layer)
        ? []
        : marking.words.map((word) => lightOn({ marking, word }, layer, scene));
    });
};

const lightOn = (
  { marking, word }: Pick<LegendLight, "marking" | "word">,
  layer: LayerLayout,
  { layout, lamps, blockers }: LightScene,
): LegendLight => {
  const open = blockers.filter(({ kind, owner }) => kind !== "film" || owner !== layer.id);
  const targets = targetsOn(word);
  const lit = new Set<Point>();
  const seen = lamps.filter((lamp) => {
    const near = targets.filter((target) => isNear(lamp, target, layer));
    const own = near.length === 0 ? [] : litOf(near, { lamp, layer, open, box: word });
    for (const target of own) lit.add(target);
    return own.length > 0;
  });
  const middle = extentCentre(word);
  const cover = layout.layers.find(
    (one) => one.index > layer.index && one.kind === "sheet" && covers(one, middle),
  );
  return {
    marking,
    word,
    lamps: seen.length,
    share: lit.size / targets.length,
    behind: cover?.id ?? null,
  };
};

/** Over a legend's box: letters are fine beside the spread of a lamp. */
const ACROSS = 7;
const UP = 3;

const targetsOn = (box: Extent): readonly Point[] =>
  Array.from({ length: ACROSS * UP }, (_, index) => {
    const across = ((index % ACROSS) + 1 / 2) / ACROSS;
    const up = (Math.floor(index / ACROSS) + 1 / 2) / UP;
    return point(box.minX + across * extentWidth(box), box.minY + up * extentHeight(box));
  });

/**
 * Point by point a Lambertian lamp lights a parallel plane by cos⁴ of the angle to its axis: four times its depth aside
 * that is (1 / 17)², a third of a percent of what it gives straight ahead, and counts as nothing.
 */
const ASIDE_OVER_DEPTH = 4;

const isNear = ({ at }: Lamp, target: Point, layer: LayerLayout): boolean => {
  const depth = layer.front - at.z;
  const reach = depth * ASIDE_OVER_DEPTH;
  const dx = target.x - at.x;
  const dy = target.y - at.y;
  return depth > 0 && dx * dx + dy * dy <= reach * reach;
};

interface LegendScene {
  readonly lamp: Lamp;
  readonly layer: LayerLayout;
  readonly open: readonly Blocker[];
  readonly box: Extent;
}

const litOf = (
  targets: readonly Point[],
  { lamp, layer, open, box }: LegendScene,
): readonly Point[] => {
  const z = layer.front;
  const isFree = freeWay(blockersToward(lamp.at, box, { low: z, high: z }, open));
  return targets.filter(({ x, y }) => isFree(lamp.at, { x, y, z }));
};

const covers = (layer: LayerLayout, at: Point): boolean => {
  if (isSeeThrough(layer)) return false;
  const { outline, holes } = sheetRegion(layer);
  return containsPoint(outline, at) && !holes.some((hole) => containsPoint(hole, at));
};

// What the plane across a bay cuts, so far from its beginning: areas of material, hatched by nothing but their tone, and the floor.

import type { Point } from "../geometry/contour.ts";
import { type Extent, joinedExtent } from "../geometry/extent.ts";
import { contourExtent, pathExtent } from "../geometry/measure.ts";
import { plus, scaled, type Vector } from "../geometry/space/vector.ts";
import type { BayLayout } from "../layout/console/console-layout.ts";
import { type PaintedArea, visibleAnchors } from "./console-anchors.ts";
import { bodyCut } from "./console-cut.ts";
import { BODY_LOOKS, type ConsoleScene } from "./console-scene.ts";
import type { ConsoleView } from "./console-view.ts";
import type { DrawingItem } from "./drawing.ts";
import { areas, HAIR, outlined, stroked, THIN } from "./items.ts";

export interface CutBodies {
  readonly items: readonly DrawingItem[];
  readonly places: ReadonlyMap<string, Extent>;
  readonly anchors: ReadonlyMap<string, Point>;
  /** Things of which the cut is lines, because their surface is open. */
  readonly open: readonly string[];
}

export interface BayCut {
  readonly bay: BayLayout;
  /** From where it begins. */
  readonly at: number;
}

export const placeOfCut = ({ bay, at }: BayCut): Vector =>
  plus(bay.frame.origin, scaled(bay.frame.y, at));

export const cutBodies = ({ bodies }: ConsoleScene, cut: BayCut, view: ConsoleView): CutBodies => {
  const through = placeOfCut(cut);
  const places = new Map<string, Extent>();
  const painted: PaintedArea[] = [];
  const open: string[] = [];
  const items = bodies.flatMap((body): readonly DrawingItem[] => {
    const { regions, lines } = bodyCut(body, { view, through });
    const look = BODY_LOOKS[body.role];
    const outlines = regions.flatMap(({ outline, holes }) => [outline, ...holes]);
    const boxes = [...outlines.map(contourExtent), ...lines.map(pathExtent)];
    if (boxes.length === 0) return [];
    if (lines.length > 0) open.push(body.thing);
    const name = body.panel ?? body.id;
    const box = boxes.reduce(joinedExtent, places.get(name) ?? boxes[0]!);
    if (!look.dashed) {
      places.set(name, box);
      painted.push({ name, regions, isFilled: look.seen !== null });
    }
    const line = { ink: look.line, width: look.dashed ? HAIR : THIN, dashed: look.dashed };
    return [
      ...(look.seen === null ? [] : [areas(regions, look.cut)]),
      outlined(outlines, line),
      stroked(lines, line),
    ];
  });
  return { items, places, anchors: visibleAnchors(painted), open };
};

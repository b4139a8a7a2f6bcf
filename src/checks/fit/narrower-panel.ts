// A panel made narrower to go into its bay: offered only where nothing on it can come too near to anything else. What is
// placed from one side moves against what is placed from the other by all that is taken off, and by no more.

import type { Remedy, Span } from "../../diagnostics/finding.ts";
import { circle, point } from "../../geometry/contour.ts";
import { type Extent, extentsOverlap, grownExtent, joinedExtent } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { decimal } from "../../geometry/number.ts";
import { arithmeticNoise } from "../../geometry/tolerance.ts";
import type { PlacedPanel } from "../../layout/console/console-layout.ts";
import type { PanelLayout } from "../../layout/panel-layout.ts";
import type { ConsoleFacts } from "./console-rule.ts";

/** Asked of everything that is left beside a thing, in mm: more than web, edge and seat want, common practice. */
const ROOM = 6;

export interface Narrower {
  readonly key: "width" | "height";
  readonly span: Span;
  /** Nominal, and what it may be. */
  readonly is: number;
  readonly works: number;
}

export const narrowerPanel = (
  { layout }: PlacedPanel,
  { key, span, is, works }: Narrower,
  facts: Pick<ConsoleFacts, "edit" | "workshop">,
): readonly Remedy[] => {
  const value = Math.floor(works * 1000 + arithmeticNoise) / 1000;
  if (value <= 0 || !hasRoom(layout, is - value + roomBeside(facts))) return [];
  const text = `${decimal(value, 3)} mm`;
  return [{ title: `${key}: ${text}`, edits: [facts.edit(span, text)] }];
};

const roomBeside = ({ workshop }: Pick<ConsoleFacts, "workshop">): number =>
  Math.max(ROOM, workshop?.houseRules.edge ?? 0, workshop?.houseRules.web ?? 0);

/** Of sheets alone: what is printed for a panel finds its own places, and may not find them again. */
const hasRoom = (layout: PanelLayout, room: number): boolean => {
  if (layout.layers.some(({ kind }) => kind !== "sheet")) return false;
  const things = thingsOf(layout);
  const inner = grownExtent(layout.nominal, -room);
  return things.every(
    (one, index) =>
      holds(inner, one) &&
      things.slice(index + 1).every((other) => !extentsOverlap(grownExtent(one, room), other)),
  );
};

const holds = (outer: Extent, box: Extent): boolean =>
  box.minX >= outer.minX &&
  box.maxX <= outer.maxX &&
  box.minY >= outer.minY &&
  box.maxY <= outer.maxY;

/** A component with its holes and what is written about it moves as one. */
const thingsOf = (layout: PanelLayout): readonly Extent[] => {
  const boxes = new Map<string, Extent>();
  const add = (owner: string, box: Extent): void => {
    const before = boxes.get(owner);
    boxes.set(owner, before === undefined ? box : joinedExtent(before, box));
  };
  for (const { id, bodies } of layout.components)
    for (const { footprint } of bodies) add(id, contourExtent(footprint));
  const mounts = new Set(layout.mountHoles.map(({ id }) => id));
  for (const { cutOuts } of layout.layers)
    for (const { owner, contour } of cutOuts)
      if (!mounts.has(owner)) add(owner, contourExtent(contour));
  for (const { owner, box } of layout.markings) add(owner, box);
  for (const { id, at } of layout.fixings)
    add(id, contourExtent(circle(point(at.x, at.y), ROOM / 2)));
  return [...boxes.values()];
};

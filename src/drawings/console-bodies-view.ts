// Bodies of a console seen from outside: painted from far to near, each white inside, so that what is hidden is not drawn.
// Walls and rooms that things move in are broken lines, and so are the cheeks in a side view: seen through.

import type { ConsoleBody } from "../fit/console-body.ts";
import type { Point, Region } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import { extent, joinedExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { boxCorners } from "../geometry/space/space-box.ts";
import { dot, minus } from "../geometry/space/vector.ts";
import { samePlace } from "../geometry/tolerance.ts";
import type { PlacedPanel } from "../layout/console/console-layout.ts";
import { type PaintedArea, visibleAnchors } from "./console-anchors.ts";
import { BODY_LOOKS, type ConsoleScene } from "./console-scene.ts";
import { silhouette } from "./console-silhouette.ts";
import { type ConsoleView, nearness } from "./console-view.ts";
import { isCovered } from "./covered.ts";
import type { DrawingItem, Ink } from "./drawing.ts";
import { areas, HAIR, type LineLook, outlined, THIN } from "./items.ts";

export interface SeenBodies {
  readonly items: readonly DrawingItem[];
  /** By panel, obstacle or part of the frame: where it is on the sheet. */
  readonly places: ReadonlyMap<string, Extent>;
  /** A place of it that is seen; none of what is wholly hidden. */
  readonly anchors: ReadonlyMap<string, Point>;
}

export const seenBodies = (scene: ConsoleScene, view: ConsoleView): SeenBodies => {
  const places = new Map<string, Extent>();
  const painted: PaintedArea[] = [];
  const drawn = unitsOf(scene, view).flatMap(({ bodies }) =>
    bodies.flatMap((body) => drawnBody(body, { scene, view, places, painted }) ?? []),
  );
  const items = withoutCovered(drawn).flatMap(itemsOf);
  return { items, places, anchors: visibleAnchors(painted) };
};

/** In the order in which they are painted. A plan of twelve panels takes a third of the room without what is painted over. */
const withoutCovered = (drawn: readonly DrawnBody[]): readonly DrawnBody[] => {
  const covers: Region[] = [];
  const kept: DrawnBody[] = [];
  for (const body of drawn.toReversed()) {
    const regions = body.regions.filter(({ outline }) => !isCovered(outline, covers));
    if (regions.length > 0) kept.push({ ...body, regions });
    if (body.fill !== null) covers.push(...regions);
  }
  return kept.reverse();
};

/** A panel with all that it carries is painted as one: its parts are sorted among themselves alone. */
interface Unit {
  readonly name: string;
  readonly nearness: number;
  readonly bodies: readonly ConsoleBody[];
}

const unitsOf = ({ bodies, frame, layout }: ConsoleScene, view: ConsoleView): readonly Unit[] => {
  const cheeks = new Set(
    (frame?.parts ?? []).filter(({ role }) => role === "cheek").map(({ id }) => id),
  );
  const seen = bodies.filter(({ role }) => role !== "wall" && role !== "rib");
  const walls = bodies.filter(({ role }) => role === "wall" || role === "rib");
  const names = [...new Set(seen.map(unitName))];
  const units = names.map((name): Unit => {
    const own = seen.filter((body) => unitName(body) === name);
    const panel = layout.panels.find((each) => each.name === own[0]?.panel);
    const isFacing = panel === undefined || dot(panel.frame.z, view.toward) > -FACING;
    const sorted = own.toSorted((a, b) => order(a, isFacing) - order(b, isFacing));
    const rails = panel === undefined ? [] : railsUnder(panel, { frame, layout, seen }, view);
    const nearest = Math.max(middleOf(own, view), ...rails.map((rail) => middleOf([rail], view)));
    return { name, nearness: nearest, bodies: sorted };
  });
  const isThrough = ({ bodies: [first] }: Unit): boolean =>
    view.kind === "side" && first !== undefined && cheeks.has(first.id);
  // Level with a rail comes after it.
  const isPanel = ({ bodies: [first] }: Unit): boolean => (first?.panel ?? null) !== null;
  const byNearness = units.toSorted(
    (a, b) => a.nearness - b.nearness || Number(isPanel(a)) - Number(isPanel(b)),
  );
  return [
    { name: "walls", nearness: 0, bodies: walls },
    ...byNearness.filter((unit) => !isThrough(unit)),
    ...byNearness.filter(isThrough),
  ];
};

/**
 * The rails that a panel lies on, where its face is seen from before them: it is painted after them, though what hangs behind it
 * takes its middle below theirs, or the bay rises to where theirs is. From the side its edge stands over them anyhow.
 */
const railsUnder = (
  panel: PlacedPanel,
  { frame, layout, seen }: Omit<ConsoleScene, "bodies"> & { readonly seen: readonly ConsoleBody[] },
  view: ConsoleView,
): readonly ConsoleBody[] => {
  const { place } = panel;
  const bay = place.kind === "bay" ? layout.bays.find(({ id }) => id === place.bay) : undefined;
  if (bay === undefined || view.kind === "side") return [];
  const { z, origin } = bay.frame;
  if (dot(z, view.toward) < FACING) return [];
  const rails = new Set(
    (frame?.parts ?? [])
      .filter(
        (part) =>
          part.role === "rail-bar" &&
          dot(part.frame.z, z) > 1 - samePlace &&
          Math.abs(dot(minus(part.frame.origin, origin), z)) < samePlace,
      )
      .map(({ id }) => id),
  );
  return seen.filter(({ id }) => rails.has(id));
};

/** Looked at from its edge a panel counts as facing the reader: a hundredth of a turn's sine. */
const FACING = 0.05;

const unitName = ({ panel, id }: ConsoleBody): string => (panel === null ? `:${id}` : panel);

const BEHIND: readonly ConsoleBody["role"][] = ["cable", "plug", "tails", "rear", "print", "layer"];
const BEFORE: readonly ConsoleBody["role"][] = ["front", "sweep"];

/** From the rear of the panel to its front, or the other way where its back is seen. */
const order = ({ role }: ConsoleBody, isFacing: boolean): number => {
  const place = [...BEHIND, ...BEFORE].indexOf(role);
  return isFacing ? place : -place;
};

const middleOf = (bodies: readonly ConsoleBody[], view: ConsoleView): number => {
  const near = bodies.flatMap(({ box }) => boxCorners(box).map((at) => nearness(view, at)));
  return (Math.min(...near) + Math.max(...near)) / 2;
};

interface DrawnBody {
  readonly regions: readonly Region[];
  /** null where one sees through it. */
  readonly fill: Ink | null;
  readonly line: LineLook;
}

const itemsOf = ({ regions, fill, line }: DrawnBody): readonly DrawingItem[] => [
  ...(fill === null ? [] : [areas(regions, fill)]),
  outlined(
    regions.flatMap(({ outline, holes }) => [outline, ...holes]),
    line,
  ),
];

const drawnBody = (
  body: ConsoleBody,
  context: {
    readonly scene: ConsoleScene;
    readonly view: ConsoleView;
    readonly places: Map<string, Extent>;
    readonly painted: PaintedArea[];
  },
): DrawnBody | null => {
  const { scene, view, places, painted } = context;
  const regions = silhouette(body, view);
  if (regions.length === 0) return null;
  const look = BODY_LOOKS[body.role];
  const part = scene.frame?.parts.find(({ id }) => id === body.id);
  const isThrough = view.kind === "side" && part?.role === "cheek";
  const box = regions.map(({ outline }) => contourExtent(outline)).reduce(joinedExtent);
  const fill = isThrough ? null : look.seen;
  if (body.role !== "cable" && body.role !== "sweep") {
    const name = body.panel ?? body.id;
    painted.push({ name, regions, isFilled: fill !== null });
    const known = places.get(name);
    places.set(name, known === undefined ? box : joinedExtent(known, box));
  }
  const isDashed = look.dashed || isThrough;
  const line = { ink: look.line, width: isDashed ? HAIR : THIN, dashed: isDashed };
  return { regions, fill, line };
};

/** The box of all places; a point where there are none. */
export const placesBox = (places: ReadonlyMap<string, Extent>): Extent =>
  [...places.values()].reduce<Extent | null>(
    (box, each) => (box === null ? each : joinedExtent(box, each)),
    null,
  ) ?? extent(0, 0, 0, 0);

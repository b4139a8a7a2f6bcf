// The ribs of a bay: boards square to its run, cut out for the room behind its panels, with tabs up into the rail bars.

import { type Point, point } from "../../geometry/contour.ts";
import type { Board, Span } from "./board.ts";
import { acrossBay, type FrameBay, faceHeight, inBay } from "./frame-bay.ts";
import { endWeb, RAIL_TAB } from "./frame-practice.ts";
import type { PlanOptions } from "./plan-options.ts";
import { railHoleSize } from "./rail-holes.ts";
import { barReach } from "./rail-reach.ts";
import { tabSpans } from "./tabs.ts";

/** Where they begin along the bay: one near each end, the rest evenly between. Empty where the bay is too short for two. */
export const ribPlaces = (
  length: number,
  { thickness, spacing }: { readonly thickness: number; readonly spacing: number },
): readonly number[] => {
  const web = endWeb(thickness);
  const run = length - 2 * web - thickness;
  if (run < 2 * thickness) return [];
  const count = Math.max(1, Math.ceil(run / spacing));
  return Array.from({ length: count + 1 }, (_, index) => web + (run * index) / count);
};

export const ribBoards = (bay: FrameBay, options: PlanOptions): readonly Board[] => {
  const { design, thickness, suffix } = options;
  const { spacing } = design.ribs;
  return ribPlaces(bay.length, { thickness, spacing }).map((place, index) =>
    ribBoard(bay, { ...options, place, id: `rib-${bay.id}-${index + 1}${suffix}` }),
  );
};

const ribBoard = (
  bay: FrameBay,
  options: PlanOptions & { readonly place: number; readonly id: string },
): Board => {
  const { design, thickness, across, place, id } = options;
  const bottom = bay.lowest - design.ribs.web;
  const heightAt = (side: number): number => faceHeight(bay, side, -thickness) - bottom;
  const tabsTo = (height: number): readonly Span[] =>
    design.joints === "half-lap" ? [{ from: height / 2, to: height }] : tabSpans(height, thickness);
  return {
    id,
    role: "rib",
    title: `Rib of ${bay.id}`,
    bay: bay.id,
    at: inBay(bay, place, bottom),
    along: bay.up,
    length: Math.max(heightAt(across.from), heightAt(across.to)),
    faces: "left",
    across,
    top: ribTop(bay, options).map(({ x, y }) => point(x, y - bottom)),
    tabs: { left: tabsTo(heightAt(across.from)), right: tabsTo(heightAt(across.to)) },
  };
};

/** From the right cheek to the left: shoulder, tab into the bar, down round the panels' room, and the same again. */
const ribTop = (bay: FrameBay, options: PlanOptions): readonly Point[] => {
  const { thickness, across, design } = options;
  const at = (x: number, z: number): Point => acrossBay(bay, x, z);
  const shoulder = (side: number): Point => point(side, faceHeight(bay, side, -thickness));
  const hasTabs = design.joints === "tab-and-slot" || design.joints === "half-lap";
  const { left, right } = railTabs(bay, options);
  const tab = (first: number, second: number): readonly Point[] =>
    hasTabs ? [at(first, -thickness), at(first, 0), at(second, 0), at(second, -thickness)] : [];
  return [
    shoulder(across.to),
    ...tab(right.to, right.from),
    at(bay.halfClear, -thickness),
    at(bay.halfClear, -bay.depth),
    at(-bay.halfClear, -bay.depth),
    at(-bay.halfClear, -thickness),
    ...tab(left.from, left.to),
    shoulder(across.from),
  ];
};

/** Across the bay, in its own x: where the ribs' tabs stand in the bars, from the inner end outward. */
export const railTabs = (
  bay: FrameBay,
  options: Pick<PlanOptions, "design" | "thickness" | "across">,
): { readonly left: Span; readonly right: Span } => {
  const reach = barReach(bay, options);
  const { railHoles, halfClear } = bay;
  const holes = railHoles.reach;
  const hole = railHoleSize(options.design, railHoles);
  const from = RAIL_TAB.web + (holes === null ? halfClear : holes.outer + hole / 2);
  const to = (outer: number): number => Math.min(from + RAIL_TAB.longest, outer - RAIL_TAB.web);
  return {
    left: { from: -from, to: -to(-reach.from) },
    right: { from, to: to(reach.to) },
  };
};

// A spacer's plan as layers: floor, channels, walls, the foam's seat; and what makes its inside white. Regions times
// depths, so that the STEP file is exact.

import { difference, intersection, union } from "../../geometry/boolean.ts";
import type { Contour, Region } from "../../geometry/contour.ts";
import { insetRegions } from "../../geometry/inset.ts";
import { offsetContour } from "../../geometry/offset.ts";
import { rectangle } from "../../geometry/shapes.ts";
import { type LayeredSolid, layered, type SolidLayer } from "../../geometry/solid/solid.ts";
import type { Boss } from "./bosses.ts";
import { plainRegion } from "./grown-regions.ts";
import type { LitArea } from "./lit-areas.ts";
import { tidy, wholeSteps } from "./opaque-wall.ts";
import { bedRelief, clearancesOf } from "./print-allowance.ts";
import { layerOf, openedBy, subtracted } from "./region-sums.ts";
import type { SpacerPlan } from "./spacer-plan.ts";

/** The black body. With a white body in it, its floor beside the channels is that body's. */
export const spacerSolid = (plan: SpacerPlan, isLined: boolean): LayeredSolid => {
  const floor = openedBy([plainRegion(plan.outline)], roomContours(plan));
  const walls = subtracted(
    floor,
    plan.areas.map(({ region }) => region),
  );
  const seated = seatedOf(plan, walls);
  const steps = stepsOf(plan);
  const layers = steps.slice(1).map((to, index): SolidLayer => {
    const from = steps[index]!;
    const base = baseOf({ floor, walls, seated }, from, { plan, isLined });
    const regions = openedBy(base, [...bossHoles(plan, from, to), ...lightHoles(plan, from)]);
    return layerOf(from, to, { regions, loops: isLined ? "exact" : "clear" });
  });
  return layered(layers);
};

const roomContours = (plan: SpacerPlan): readonly Contour[] =>
  plan.rooms.map(({ outline }) => outline);

/** Heights at which anything changes, from the rear. */
const stepsOf = (plan: SpacerPlan): readonly number[] => {
  const { rear, floor, channel, seat, front } = plan.heights;
  const reliefs = plan.bosses.some(({ isFit }) => isFit) ? [reliefTop(plan)] : [];
  const holes = plan.bosses.map(({ holeFrom }) => holeFrom);
  const all = [rear, floor, channel, seat, front, ...reliefs, ...holes];
  return [...new Set(all.map(tidy))].filter((z) => z >= rear && z <= front).sort((a, b) => a - b);
};

/** The bed side of a fit is relieved over its first layers. */
const reliefTop = ({ heights, printer, wall }: SpacerPlan): number =>
  tidy(heights.rear + wholeSteps(bedRelief(printer), wall.layer) * wall.layer);

interface Bases {
  readonly floor: readonly Region[];
  readonly walls: readonly Region[];
  readonly seated: readonly Region[];
}

const baseOf = (
  { floor, walls, seated }: Bases,
  from: number,
  { plan, isLined }: { readonly plan: SpacerPlan; readonly isLined: boolean },
): readonly Region[] => {
  const { heights } = plan;
  if (from >= heights.seat) return seated;
  if (from >= heights.channel || (isLined && from >= heights.floor)) return walls;
  return floor;
};

/** The foam's seat is a step round the outside, except where a boss needs its wall. */
const seatedOf = (plan: SpacerPlan, walls: readonly Region[]): readonly Region[] => {
  if (plan.rim.overlap === 0) return walls;
  const inner = insetRegions([plainRegion(plan.outline)], plan.rim.overlap);
  const bosses = plan.bosses.map(({ outside }) => outside);
  return intersection(walls, union([...inner.map(({ outline }) => outline), ...bosses]));
};

const bossHoles = (plan: SpacerPlan, from: number, to: number): readonly Contour[] =>
  plan.bosses
    .filter(({ holeFrom }) => holeFrom <= from)
    .map((boss) => (boss.isFit && to <= reliefTop(plan) ? relieved(boss, plan) : boss.hole));

const relieved = ({ hole }: Boss, { printer }: SpacerPlan): Contour => {
  const wider = offsetContour(hole, bedRelief(printer));
  return wider.kind === "offset" ? wider.contour : hole;
};

/** Channels in the floor, the cables' exits through it, their passages above it. */
const lightHoles = (plan: SpacerPlan, from: number): readonly Contour[] => {
  const { floor, channel } = plan.heights;
  return plan.areas.flatMap(({ lanes, passage }) => {
    if (from >= channel) return passage === null ? [] : [passage.passage];
    const channels = from >= floor ? lanes.map(({ box }) => rectangle(box)) : [];
    return passage === null ? channels : [...channels, passage.exit];
  });
};

/** White inside of one lit area, part of the print: on the floor, round the channels, and up the walls. */
export const whiteSolid = (area: LitArea, plan: SpacerPlan): LayeredSolid => {
  const { floor, channel, front } = plan.heights;
  return layered(linedLayers([area.region], area, { plan, floor, top: channel, front }));
};

/** The same as a part of its own, that drops in: clear of the walls, and over the channels. */
export const linerSolid = (area: LitArea, plan: SpacerPlan): LayeredSolid | null => {
  const { channel, front } = plan.heights;
  const gap = clearancesOf(plan.printer).sliding;
  const top = tidy(channel + LINER_LAYERS * plan.wall.layer);
  const regions = insetRegions([area.region], gap);
  return regions.length === 1
    ? layered(linedLayers(regions, area, { plan, floor: channel, top, front: tidy(front - gap) }))
    : null;
};

/** A liner's floor: three layers of white look white (common practice). */
const LINER_LAYERS = 3;

const linedLayers = (
  regions: readonly Region[],
  { lanes, passage }: LitArea,
  at: {
    readonly plan: SpacerPlan;
    readonly floor: number;
    readonly top: number;
    readonly front: number;
  },
): readonly SolidLayer[] => {
  const onFloor = openedBy(
    regions,
    lanes.map(({ box }) => rectangle(box)),
  );
  const ring = regions.flatMap((region) =>
    subtracted([region], insetRegions([region], at.plan.lining)),
  );
  const walls = difference(ring, passage === null ? [] : [passage.passage]);
  return [
    layerOf(at.floor, at.top, { regions: onFloor, loops: "exact" }),
    layerOf(at.top, at.front, { regions: walls, loops: "exact" }),
  ];
};

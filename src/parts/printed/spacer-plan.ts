// A spacer in plan: its outline, the dark rooms that components stand in, its bosses, and the areas that it lights. Heights
// come with it; layers are made of it in a second step.

import type { LightingDesign } from "../../design/panel-design.ts";
import type { PrinterDesign, StockDesign } from "../../design/workshop-design.ts";
import type { Finding } from "../../diagnostics/finding.ts";
import { union, unionRegions } from "../../geometry/boolean.ts";
import type { Contour, Region } from "../../geometry/contour.ts";
import { insetRegions } from "../../geometry/inset.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { rectangle } from "../../geometry/shapes.ts";
import type { LayerLayout, PanelLayout } from "../../layout/panel-layout.ts";
import { type SplitBand, splitPlan } from "./bed-split.ts";
import { type Boss, bossesOf } from "./bosses.ts";
import { closedRegions, grownRegions, openedRegions, plainRegion } from "./grown-regions.ts";
import { type LampSource, lampSource } from "./lamp-source.ts";
import {
  type CircuitArea,
  circuitAreas,
  LEAST_CHAMBER,
  type LitArea,
  litAreas,
} from "./lit-areas.ts";
import { type OpaqueWall, opaqueWall, tidy, wholeSteps } from "./opaque-wall.ts";
import { type Pocket, pocketsOf } from "./pockets.ts";
import type { PrintedContext } from "./printed-context.ts";
import { subtracted } from "./region-sums.ts";
import { noRoom, noSplit, thinWalls, tooShallow, unknownStrip } from "./spacer-findings.ts";
import { spacerOutline } from "./spacer-outline.ts";

export interface SpacerPlan {
  readonly layout: PanelLayout;
  readonly layer: LayerLayout;
  readonly stock: StockDesign;
  readonly printer: PrinterDesign | null;
  readonly wall: OpaqueWall;
  readonly heights: SpacerHeights;
  readonly outline: Contour;
  readonly rim: { readonly overlap: Mm; readonly wall: Mm };
  readonly pockets: readonly Pocket[];
  /** Pockets that lie nearer than a wall are one room: both are dark. */
  readonly rooms: readonly Region[];
  readonly bosses: readonly Boss[];
  readonly bands: readonly SplitBand[];
  readonly circuits: readonly CircuitArea[];
  readonly source: LampSource | null;
  readonly areas: readonly LitArea[];
  /** Thickness of what makes the inside white, 0 for paint. */
  readonly lining: Mm;
}

/** z of what lies on what, from the rear. */
export interface SpacerHeights {
  readonly rear: Mm;
  /** Top of the floor that keeps light in. */
  readonly floor: Mm;
  /** Top of the floor beside the channels. */
  readonly channel: Mm;
  /** Bottom of the foam's seat; the front where there is none. */
  readonly seat: Mm;
  readonly front: Mm;
}

export interface SpacerRequest {
  readonly layout: PanelLayout;
  readonly layer: LayerLayout;
  readonly stock: StockDesign;
  readonly printer: PrinterDesign | null;
  readonly context: PrintedContext;
  readonly lining: "white-body" | "liner" | "none";
}

export interface PlannedSpacer {
  readonly plan: SpacerPlan | null;
  readonly findings: readonly Finding[];
}

/** A rim overlaps by 1.5 to 2 mm: common practice; the fewest whole lines that do. */
const LEAST_OVERLAP = 1.5;

/** A strip's bed keeps it from wandering: common practice. */
const CHANNEL_DEPTH = 0.6;

/** Foam of 1.5 to 2 mm pressed to this: common practice. */
const SEAT_DEPTH = 1;

/** Light needs some way to spread, even in the shallowest box: common practice. */
const LEAST_CHAMBER_DEPTH = 2;

const LINING_LINES = 2;

export const spacerPlan = (request: SpacerRequest): PlannedSpacer => {
  const { layout, layer, stock, printer, context } = request;
  const outline = spacerOutline(layout);
  if (outline === null) return { plan: null, findings: [noRoom(layer, layout)] };
  const lighting = lightingOf(layer);
  const source = lighting === null ? null : lampSource(lighting.strip, context);
  if (lighting !== null && source === null)
    return { plan: null, findings: [unknownStrip(lighting, context)] };
  const wall = opaqueWall(stock, printer);
  const heights = heightsOf(layer, wall, source);
  if (heights.seat - heights.channel < LEAST_CHAMBER_DEPTH)
    return { plan: null, findings: [tooShallow(layer, leastDepth(heights))] };
  const { bosses, findings } = bossesOf({
    layout,
    layer,
    context,
    printer,
    wall,
    front: heights.front,
    rear: heights.rear,
  });
  const pockets = pocketsOf(layout, layer);
  const base = { layout, layer, stock, printer, wall, heights, outline, bosses, pockets, source };
  const rooms = closedRegions(
    unionRegions(pockets.flatMap(({ regions }) => regions)),
    wall.thickness,
  ).map((region) => plainRegion(region.outline));
  const split = splitPlan(outline, {
    printer,
    depth: heights.front - heights.rear,
    wall: wall.thickness,
    keepOut: [
      ...rooms.map((room) => room.outline),
      ...bosses.map((one) => one.outside),
      ...windowsOf(layout),
    ],
  });
  const bands = split.kind === "split" ? split.bands : [];
  const rim = rimOf(wall, lighting !== null);
  const lining =
    request.lining === "none" || lighting === null ? mm(0) : tidy(LINING_LINES * wall.line);
  const lit = lightPlan({ ...base, rooms, bands, rim, lining }, lighting);
  return {
    plan: { ...base, rooms, bands, rim, lining, circuits: lit.circuits, areas: lit.areas },
    findings: [
      ...findings,
      ...(split.kind === "refused" ? [noSplit(layer, split.why)] : []),
      ...(lighting === null ? [] : thinWalls(base)),
      ...lit.findings,
    ],
  };
};

const lightingOf = ({ design }: LayerLayout): LightingDesign | null =>
  design.kind === "spacer" ? design.lighting : null;

const windowsOf = (layout: PanelLayout): readonly Contour[] =>
  layout.layers.flatMap(({ cutOuts }) =>
    cutOuts.filter(({ purpose }) => purpose === "window").map(({ contour }) => contour),
  );

const heightsOf = (
  layer: LayerLayout,
  wall: OpaqueWall,
  source: LampSource | null,
): SpacerHeights => {
  const { front, rear } = layer;
  const deep = Math.max(CHANNEL_DEPTH, source?.below ?? 0);
  const channel = source === null ? 0 : wholeSteps(deep, wall.layer) * wall.layer;
  const seat = source === null ? 0 : wholeSteps(SEAT_DEPTH, wall.layer) * wall.layer;
  return {
    rear: tidy(rear),
    floor: tidy(rear + wall.floor),
    channel: tidy(rear + wall.floor + channel),
    seat: tidy(front - seat),
    front: tidy(front),
  };
};

const leastDepth = ({ front, seat, channel, rear }: SpacerHeights): number =>
  channel - rear + (front - seat) + LEAST_CHAMBER_DEPTH;

const rimOf = (wall: OpaqueWall, isLit: boolean): SpacerPlan["rim"] => ({
  overlap: isLit ? tidy(wholeSteps(LEAST_OVERLAP, wall.line) * wall.line) : mm(0),
  wall: wall.thickness,
});

type LightPlanScene = Omit<SpacerPlan, "circuits" | "areas">;

/** Lit or not, what nothing stands in is hollow; where there is light, collars and walls between circuits stand in it. */
const lightPlan = (
  scene: LightPlanScene,
  lighting: LightingDesign | null,
): {
  readonly circuits: readonly CircuitArea[];
  readonly areas: readonly LitArea[];
  readonly findings: readonly Finding[];
} => {
  const { layout, wall, source } = scene;
  if (lighting === null || source === null) {
    const hollow = hollowOf(scene, []);
    return {
      circuits: [],
      areas: hollow.map((region) => ({ circuit: "", region, lanes: [], passage: null })),
      findings: [],
    };
  }
  const apart = circuitAreas(lighting, layout, wall.thickness);
  const collars = grownRegions(scene.rooms, wall.thickness);
  const walls = unionRegions([...collars, ...apart.areas.map((area) => area.wall)]);
  const free = hollowOf(scene, walls);
  const distance = litPlane(layout, scene.layer) - lampHeight(scene, source);
  const { lit, findings } = litAreas(free, apart.areas, {
    layout,
    lighting,
    source,
    wall: wall.thickness,
    distance,
    lining: scene.lining,
  });
  return { circuits: apart.areas, areas: lit, findings: [...apart.findings, ...findings] };
};

const hollowOf = (scene: LightPlanScene, walls: readonly Region[]): readonly Region[] => {
  const { outline, rim, bosses, bands } = scene;
  const inner = insetRegions([plainRegion(outline)], rim.overlap + rim.wall);
  const standing = unionRegions([
    ...walls,
    ...union(bosses.map(({ outside }) => outside)),
    ...union(bands.map(({ box }) => rectangle(box))),
  ]);
  return openedRegions(subtracted(inner, standing), LEAST_CHAMBER);
};

/** z of the LEDs' tops. */
export const lampHeight = ({ heights }: Pick<SpacerPlan, "heights">, source: LampSource): Mm =>
  tidy(heights.floor + source.height);

/** z of the rear of the sheet that is lit: the nearest in front that lets light through, else the foremost. */
export const litPlane = (layout: PanelLayout, layer: LayerLayout): Mm => {
  const sheets = layout.layers.filter(({ kind, index }) => kind === "sheet" && index < layer.index);
  const lit = sheets.findLast(({ stock }) => stock?.light !== "opaque") ?? sheets[0];
  return lit?.rear ?? layer.front;
};

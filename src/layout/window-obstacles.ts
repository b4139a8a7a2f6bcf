// What a window behind a legend may not cut into: other openings and their webs, what is pressed on the sheet, the heads of
// screws, the strip on the rail, the rim. Each says how much it wants left.

import type { Mount } from "../catalogue/mount.ts";
import { LEAST_RIM, LEAST_WEB } from "../design/usual-values.ts";
import type { WorkshopDesign } from "../design/workshop-design.ts";
import { containsContour } from "../geometry/containment.ts";
import { type Contour, circle } from "../geometry/contour.ts";
import { contourDistance } from "../geometry/distance.ts";
import { type Extent, extentGap } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { rectangle } from "../geometry/shapes.ts";
import { samePlace } from "../geometry/tolerance.ts";
import { ISO_7089, type MetricThread } from "../standards/metric-fasteners.ts";
import type {
  CutOut,
  MountHole,
  PlacedBody,
  PlacedComponent,
  PlacedFixing,
} from "./panel-layout.ts";
import type { BareLayer } from "./stack.ts";

/** Everything that is known of a panel before its legends' windows are opened. */
export interface WindowScene {
  readonly workshop: WorkshopDesign | null;
  readonly layers: readonly BareLayer[];
  readonly components: readonly PlacedComponent[];
  readonly cutOuts: readonly CutOut[];
  readonly fixings: readonly PlacedFixing[];
  readonly screws: MetricThread | null;
  readonly mount: Mount;
  readonly mountHoles: readonly MountHole[];
  readonly rails: readonly Extent[];
  readonly outlineOf: (layer: BareLayer) => Contour;
}

export interface Blocking {
  readonly owner: string;
  readonly what: string;
  readonly contour: Contour;
  /** Wanted between it and the window. */
  readonly clear: Mm;
  /** The window must lie inside it instead of outside. */
  readonly isRim: boolean;
}

export const windowObstacles = (layer: BareLayer, scene: WindowScene): readonly Blocking[] => {
  const web = leastWeb(scene);
  const openings = scene.cutOuts
    .filter((cutOut) => cutOut.layer === layer.id)
    .map(({ owner, purpose, contour }) => blocking(owner, OPENINGS[purpose], contour, web));
  const pressed = scene.components
    .filter(({ clamped }) => clamped.first <= layer.index && layer.index <= clamped.last)
    .flatMap((component) =>
      component.bodies
        .filter((body) => bears(body, component, scene.layers))
        .map(({ role, footprint }) => blocking(component.id, role, footprint, NONE)),
    );
  const hasHeads = scene.mount.headClearance > 0;
  const heads = (hasHeads ? scene.mountHoles : []).map(({ id, at }) =>
    blocking(id, "head", circle(at, scene.mount.headClearance / 2), NONE),
  );
  const rails = scene.rails.map((rail) =>
    blocking(scene.mount.id, "strip on the rail", rectangle(rail), NONE),
  );
  const rim = { clear: scene.workshop?.houseRules.edge ?? LEAST_RIM, isRim: true };
  const edge = { ...blocking(layer.id, "edge", scene.outlineOf(layer), NONE), ...rim };
  return [...openings, ...pressed, ...washers(scene), ...heads, ...rails, edge];
};

const NONE = mm(0);

export const leastWeb = ({ workshop }: Pick<WindowScene, "workshop">): Mm =>
  workshop?.houseRules.web ?? LEAST_WEB;

const blocking = (owner: string, what: string, contour: Contour, clear: Mm): Blocking => ({
  owner,
  what,
  contour,
  clear,
  isRim: false,
});

const OPENINGS: Readonly<Record<CutOut["purpose"], string>> = {
  clamp: "hole",
  tab: "tab hole",
  screw: "screw hole",
  "front-clearance": "opening",
  "rear-clearance": "opening",
  window: "window",
  fixing: "hole",
  dowel: "hole",
  mount: "hole",
};

/** Pressed on the front or the rear of what the component holds together: flange, nut, washer, the shoulder of a case. */
const bears = (
  { low, high }: PlacedBody,
  { clamped }: PlacedComponent,
  layers: readonly BareLayer[],
): boolean => {
  const [front, rear] = [layers[clamped.first]?.front ?? 0, layers[clamped.last]?.rear ?? 0];
  return Math.abs(low - front) < CONTACT || Math.abs(high - rear) < CONTACT;
};

/** A tenth of a coat of paint. */
const CONTACT = 0.01;

/** A plain washer, or where the standard's table has none twice the thread (common practice). */
const washers = ({ fixings, screws }: WindowScene): readonly Blocking[] =>
  fixings
    .filter(({ kind }) => kind === "screw")
    .map(({ id, at, diameter }) => {
      const across = (screws === null ? null : ISO_7089[screws]?.outside) ?? 2 * diameter;
      return blocking(id, "washer", circle(at, across / 2), NONE);
    });

/** The first that the window comes too near to; null where nothing is in the way. */
export const firstInTheWay = (window: Contour, obstacles: readonly Blocking[]): Blocking | null =>
  obstacles.find((one) => {
    if (!one.isRim && isFar(window, one)) return false;
    const { gap, overlaps } = contourDistance(window, one.contour);
    return one.isRim
      ? gap < one.clear - samePlace || !containsContour(one.contour, window)
      : overlaps || gap < one.clear - samePlace;
  }) ?? null;

const isFar = (window: Contour, { contour, clear }: Blocking): boolean =>
  extentGap(contourExtent(window), contourExtent(contour)) > clear;

/** 0 where the window would cut into it. */
export const gapTo = (window: Contour, { contour, isRim }: Blocking): Mm => {
  const { gap, overlaps } = contourDistance(window, contour);
  return mm((isRim ? !containsContour(contour, window) : overlaps) ? 0 : gap);
};

// The places where light could leave the stack from a chamber: holes in the foremost sheet, gaps at the edge, joints and
// cable ways behind. Each has targets, places in its opening that a straight way out would have to pass.

import type { PartFamily } from "../catalogue/part.ts";
import { containsPoint } from "../geometry/containment.ts";
import { type Contour, circle, type Point, point } from "../geometry/contour.ts";
import { extentCentre, extentsOverlap } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import type { CutOut, LayerLayout, PanelLayout } from "../layout/panel-layout.ts";
import type { PrintedPart } from "../parts/printed/printed-part.ts";
import { type Passed, reachedFrom, type Slice } from "./air-cell.ts";
import type { Place } from "./blocker.ts";
import type { LightScene } from "./light-scene.ts";
import { edgeTargets, holeTargets, jointTargets, rimTargets } from "./opening-targets.ts";
import { hasPaintedEdges, hasPaintedFront, isSeeThrough } from "./sheet-light.ts";

export type OpeningKind =
  | "lever"
  | "shaft"
  | "nut"
  | "button"
  | "lens"
  | "display"
  | "part"
  | "pocket"
  | "stud"
  | "screw"
  | "cable"
  | "joint"
  | "edge"
  | "cell"
  | "box"
  | "bare-edge"
  | "bare-face";

export interface Opening {
  readonly kind: OpeningKind;
  /** Component, fastener, layer or circuit. */
  readonly owner: string;
  readonly at: Point;
  /** Worked out when it is asked for: most openings have no lamp whose light could come to them. */
  readonly targets: () => readonly Place[];
  /** Opaque walls that a way out runs between; null where there are none. */
  readonly throat: Throat | null;
  /** `beyond`: the way must go on to the outside. `into`: it is enough that light comes there, for it spreads. */
  readonly reach: "beyond" | "into";
}

export interface Throat {
  readonly low: number;
  readonly high: number;
  /** Its greatest width. */
  readonly width: number;
}

export const openingsFrom = (
  chamber: Passed,
  slices: readonly Slice[],
  scene: LightScene,
): readonly Opening[] => {
  const forward = reachedFrom(chamber, slices, "forward");
  const back = reachedFrom(chamber, slices, "back").slice(1);
  return [
    ...forward.flatMap((passed) => frontOpenings(passed, slices, scene)),
    ...back.flatMap((passed) => rearOpenings(passed, slices, scene)),
  ];
};

const frontOpenings = (
  { slice, cell }: Passed,
  slices: readonly Slice[],
  scene: LightScene,
): readonly Opening[] => {
  const { layout } = scene;
  if (cell.within === null) return sideOpenings(slice, scene);
  const layer = layout.layers.find(({ id }) => id === slice.owner);
  if (layer === undefined || layer.kind !== "sheet") return [];
  const bare =
    isSeeThrough(layer) && !hasPaintedEdges(layer) && cell.within === layer.outline
      ? [bareOpening("bare-edge", layer)]
      : [];
  if (slice !== slices[0]) return bare;
  const isBareFace = isSeeThrough(layer) && !hasPaintedFront(layer);
  if (isBareFace && cell.within === layer.outline)
    return [...bare, bareOpening("bare-face", layer)];
  const cutOut = layer.cutOuts.find(({ contour }) => contour === cell.within);
  return cutOut === undefined ? bare : [...bare, ...holeOpening(cutOut, layer, layout)];
};

/** A lit sheet glows at every bare face and edge: light that comes into it is enough. */
const bareOpening = (kind: "bare-edge" | "bare-face", layer: LayerLayout): Opening => ({
  kind,
  owner: layer.id,
  at: extentCentre(contourExtent(layer.outline)),
  targets: () => holeTargets(layer.outline, layer.rear, []),
  throat: null,
  reach: "into",
});

/** A window that the design asks for is meant to let light out. */
export const holeOpening = (
  cutOut: CutOut,
  layer: LayerLayout,
  layout: PanelLayout,
): readonly Opening[] => {
  const kind = holeKind(cutOut, layout);
  if (kind === null) return [];
  return [
    {
      kind,
      owner: cutOut.owner,
      at: cutOut.centre,
      targets: () => {
        const filled = fillingOf(cutOut, layer, layout);
        return [
          ...rimTargets(cutOut.contour, layer.rear, filled),
          ...holeTargets(cutOut.contour, layer.front, filled),
        ];
      },
      throat: throatOf(cutOut, layer),
      reach: "beyond",
    },
  ];
};

/** What stands through the layer's front where the hole is. */
const fillingOf = (
  { contour }: CutOut,
  { front }: LayerLayout,
  { components }: PanelLayout,
): readonly Contour[] => {
  const box = contourExtent(contour);
  return components.flatMap(({ bodies }) =>
    bodies.flatMap(({ low, high, footprint }) =>
      low < front && high > front && extentsOverlap(contourExtent(footprint), box)
        ? [footprint]
        : [],
    ),
  );
};

/** Light that comes in at the side of a bare wall needs no throat. */
const throatOf = ({ contour }: CutOut, layer: LayerLayout): Throat | null => {
  if (isSeeThrough(layer) && !hasPaintedEdges(layer)) return null;
  const box = contourExtent(contour);
  const [across, up] = [box.maxX - box.minX, box.maxY - box.minY];
  return {
    low: layer.rear,
    high: layer.front,
    width: Math.sqrt(across * across + up * up),
  };
};

const FAMILY_KINDS: Readonly<Record<PartFamily, OpeningKind>> = {
  toggle: "lever",
  rocker: "button",
  lever: "lever",
  "rotary-switch": "shaft",
  thumbwheel: "part",
  "push-button": "button",
  key: "button",
  keypad: "button",
  potentiometer: "shaft",
  slide: "lever",
  encoder: "shaft",
  lamp: "lens",
  display: "display",
  instrument: "part",
  servo: "shaft",
  connector: "part",
  "fuse-holder": "part",
  "key-switch": "part",
  speaker: "part",
};

const holeKind = (cutOut: CutOut, layout: PanelLayout): OpeningKind | null => {
  const { owner, purpose } = cutOut;
  const component = layout.components.find(({ id }) => id === owner);
  if (component === undefined) {
    if (purpose === "mount") return "stud";
    return purpose === "window" ? null : "screw";
  }
  if (purpose === "screw") return "screw";
  const { hold, family } = component.part;
  const isNutRoom = purpose === "front-clearance" && hold.kind === "bush" && hold.seat === "behind";
  return isNutRoom ? "nut" : FAMILY_KINDS[family];
};

const rearOpenings = (
  { slice, cell }: Passed,
  slices: readonly Slice[],
  scene: LightScene,
): readonly Opening[] => {
  const { within } = cell;
  if (within === null) return sideOpenings(slice, scene);
  if (slice !== slices.at(-1)) return [];
  const part = scene.printedParts.find(({ id }) => id === slice.owner);
  if (part === undefined) return [];
  const named = rearName(within, part);
  return named === null
    ? []
    : [
        {
          ...named,
          at: extentCentre(contourExtent(within)),
          targets: () => holeTargets(within, slice.low, []),
          throat: null,
          reach: "beyond",
        },
      ];
};

/** Whose hole it is in the rear of a printed part; screws fill theirs. */
const rearName = (
  hole: Contour,
  { facts, owner }: PrintedPart,
): Pick<Opening, "kind" | "owner"> | null => {
  const notch = facts.notches.find(({ at }) => containsPoint(hole, at));
  if (notch !== undefined) return { kind: "cable", owner: notch.circuit };
  const centre = extentCentre(contourExtent(hole));
  if (facts.bosses.some(({ at }) => containsPoint(hole, at))) return null;
  const pocket = facts.pockets.find(({ contours }) =>
    contours.some(
      (contour) => containsPoint(contour, centre) || containsPoint(hole, middle(contour)),
    ),
  );
  return { kind: "pocket", owner: pocket?.owner ?? owner };
};

const middle = (contour: Contour): Point => extentCentre(contourExtent(contour));

const sideOpenings = (slice: Slice, scene: LightScene): readonly Opening[] => {
  const layer = scene.layout.layers.find(({ id }) => id === slice.owner);
  if (layer !== undefined) return besideSheet(layer, slice, scene.layout);
  const part = scene.printedParts.find(({ id }) => id === slice.owner);
  return part === undefined ? [] : besidePart(part, slice);
};

/** Past a sheet that is smaller than what lies behind it: at its edge, and in the notches for the studs' heads. */
const besideSheet = (
  layer: LayerLayout,
  slice: Slice,
  { mountHoles, mount, outline }: PanelLayout,
): readonly Opening[] => {
  const notches = mountHoles
    .filter(({ id }) => !layer.cutOuts.some(({ owner }) => owner === id))
    .map(
      ({ id, at }): Opening => ({
        kind: "stud",
        owner: id,
        at,
        targets: () =>
          holeTargets(circle(at, mount.headClearance / 2), slice.high, []).filter(({ x, y }) =>
            containsPoint(outline, point(x, y)),
          ),
        throat: null,
        reach: "beyond",
      }),
    );
  const plan = contourExtent(layer.outline);
  return [
    ...notches,
    {
      kind: "edge",
      owner: layer.id,
      at: extentCentre(plan),
      targets: () => edgeTargets(plan, slice),
      throat: null,
      reach: "beyond",
    },
  ];
};

/** Out at the side: round the whole part, and along its joints. */
const besidePart = (part: PrintedPart, slice: Slice): readonly Opening[] => {
  const { plan } = part.facts.box;
  const notches = part.facts.notches.map(
    ({ circuit, at, exit }): Opening => ({
      kind: "cable",
      owner: circuit,
      at,
      targets: () => holeTargets(exit, slice.low, []),
      throat: null,
      reach: "beyond",
    }),
  );
  const joints = part.facts.joints.map(
    (joint): Opening => ({
      kind: "joint",
      owner: part.id,
      at: joint.across === "x" ? point(joint.at, plan.minY) : point(plan.minX, joint.at),
      targets: () => jointTargets(joint, part.facts.box),
      throat: null,
      reach: "beyond",
    }),
  );
  const edge: Opening = {
    kind: "edge",
    owner: part.owner,
    at: extentCentre(plan),
    targets: () => edgeTargets(plan, slice),
    throat: null,
    reach: "beyond",
  };
  return [...notches, ...joints, edge];
};

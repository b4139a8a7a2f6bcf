// What each layer must open for a component: the clamp hole with its tabs and screws in the layers that it holds,
// clearances in front and behind. All at finished size; paint and kerf are added where the part is made.

import type { Part } from "../catalogue/part.ts";
import type { Catalogue } from "../catalogue/record.ts";
import type { Shape, ShapeAt } from "../catalogue/shape.ts";
import { shapeContour, shapeSize } from "../catalogue/shape-contour.ts";
import type { TrimDesign } from "../design/printed-design.ts";
import type { Span } from "../diagnostics/finding.ts";
import { type Contour, circle, type Point, point } from "../geometry/contour.ts";
import { offsetContour } from "../geometry/offset.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { type Placement, placedContour, placedPoint, placement } from "../geometry/transform.ts";
import { CLEARANCE_HOLES } from "../standards/metric-fasteners.ts";
import type { Clamped } from "./clamping.ts";
import type { CutOut, CutOutPurpose, Gauge } from "./panel-layout.ts";
import type { BareLayer } from "./stack.ts";
import { trimPlan } from "./trim-plan.ts";

export interface CutOutSubject {
  readonly id: string;
  readonly part: Part;
  readonly at: Placement;
  readonly clamped: Clamped;
  readonly holeAsCut: Mm | null;
  readonly trim: TrimDesign | null;
  readonly span: Span;
}

/** The cut-outs of one component, by layer index. Sheets only: pockets in printed parts are the printed parts' own. */
export const componentCutOuts = (
  subject: CutOutSubject,
  layers: readonly BareLayer[],
  catalogue: Catalogue,
): readonly CutOut[] =>
  layers
    .filter((layer) => layer.kind === "sheet")
    .flatMap((layer) => {
      if (layer.index < subject.clamped.first) return frontClearance(subject, layer);
      if (layer.index > subject.clamped.last) return rearClearance(subject, layer);
      return clampHoles(subject, layer, catalogue);
    });

const frontClearance = (subject: CutOutSubject, layer: BareLayer): readonly CutOut[] => {
  if (subject.trim !== null) return [trimOpening(subject, subject.trim, layer)];
  const { front } = subject.part.openings;
  // A display is read through a clear sheet; opaque and translucent ones open.
  const isSeenThrough = subject.part.display !== null && layer.stock?.light === "clear";
  if (front === null || isSeenThrough) return [];
  const purpose = subject.part.display === null ? "front-clearance" : "window";
  return [opening({ subject, layer, purpose }, { shape: front, at: windowCentre(subject.part) })];
};

/** A trim stands in every layer in front of the display, clear ones too. */
const trimOpening = (subject: CutOutSubject, trim: TrimDesign, layer: BareLayer): CutOut =>
  contourCutOut(subject.id, {
    centre: placedPoint(windowCentre(subject.part), subject.at),
    contour: placedContour(trimPlan(subject.part, trim).opening, subject.at),
    purpose: "window",
    layer: layer.id,
    span: subject.span,
    gauge: null,
  });

const trimScrews = (subject: CutOutSubject, layer: BareLayer): readonly CutOut[] =>
  (subject.trim === null ? [] : trimPlan(subject.part, subject.trim).screws).map((at, index) =>
    opening(
      { subject, layer, purpose: "screw", name: `trim-screw.${index + 1}` },
      { shape: { kind: "round", diameter: CLEARANCE_HOLES.m2.medium }, at },
    ),
  );

const windowCentre = (part: Part): Point => part.display?.window.at ?? point(0, 0);

const rearClearance = (subject: CutOutSubject, layer: BareLayer): readonly CutOut[] => {
  const { behind } = subject.part.openings;
  if (behind === null) return [];
  return [
    opening({ subject, layer, purpose: "rear-clearance" }, { shape: behind, at: point(0, 0) }),
  ];
};

const clampHoles = (
  subject: CutOutSubject,
  layer: BareLayer,
  catalogue: Catalogue,
): readonly CutOut[] => {
  const { openings, hold } = subject.part;
  const fit = layer.material === null ? 0 : (catalogue.materials.get(layer.material)?.bushFit ?? 0);
  const tabs = openings.tabs.map((tab, index) =>
    opening({ subject, layer, purpose: "tab", name: `tab.${index + 1}`, grow: fit / 2 }, tab),
  );
  const screws =
    hold.kind === "screws"
      ? hold.holes.map((hole, index) =>
          opening(
            { subject, layer, purpose: "screw", name: `screw.${index + 1}` },
            { shape: { kind: "round", diameter: hole.diameter }, at: hole.at },
          ),
        )
      : [];
  return [clampHole(subject, { layer, fit }), ...tabs, ...screws, ...trimScrews(subject, layer)];
};

const clampHole = (
  subject: CutOutSubject,
  options: { readonly layer: BareLayer; readonly fit: number },
): CutOut => {
  const { openings } = subject.part;
  const { layer } = options;
  const size = shapeSize(openings.clamp);
  const fitted = Math.max(size, shapeSize(openings.passes) + options.fit);
  const of = { subject, layer, purpose: "clamp" } as const;
  const hole = opening(
    { ...of, grow: (fitted - size) / 2 },
    { shape: openings.clamp, at: point(0, 0) },
  );
  const { holeAsCut } = subject;
  const asCut = holeAsCut === null ? null : asCutContour(openings.clamp, holeAsCut);
  if (holeAsCut === null || asCut === null)
    return { ...hole, gauge: gaugeOf(subject, layer, mm(fitted)) };
  return {
    ...hole,
    contour: placedContour(asCut, subject.at),
    gauge: gaugeOf(subject, layer, mm(holeAsCut - 2 * layer.holePaint.nominal)),
    asCut: true,
  };
};

/** A clamp hole at the size that the design gives, every side moved alike; null where the shape does not bear it. */
export const asCutContour = (clamp: Shape, size: Mm): Contour | null => {
  if (clamp.kind === "round") return circle(point(0, 0), size / 2);
  const moved = offsetContour(shapeContour(clamp), (size - shapeSize(clamp)) / 2, "miter");
  return moved.kind === "offset" ? moved.contour : null;
};

/** Go: what must enter. No-go: what nut, washer or flange no longer covers. */
const gaugeOf = (subject: CutOutSubject, layer: BareLayer, finishedSize: Mm): Gauge => {
  const { openings } = subject.part;
  return {
    what: `${subject.part.id} through ${layer.id}`,
    go: placedContour(shapeContour(openings.passes), subject.at),
    noGo: openings.covered,
    goSize: shapeSize(openings.passes),
    finishedSize,
  };
};

interface OpeningOf {
  readonly subject: CutOutSubject;
  readonly layer: BareLayer;
  readonly purpose: CutOutPurpose;
  readonly name?: string;
  readonly grow?: number;
}

const opening = (of: OpeningOf, shape: ShapeAt): CutOut => {
  const { subject, layer, purpose } = of;
  const local = placedContour(
    shapeContour(shape.shape, mm(of.grow ?? 0)),
    placement(shape.at.x, shape.at.y),
  );
  return {
    id: `${subject.id}/${of.name ?? purpose}@${layer.id}`,
    owner: subject.id,
    purpose,
    layer: layer.id,
    centre: placedPoint(shape.at, subject.at),
    contour: placedContour(local, subject.at),
    gauge: null,
    asCut: false,
    span: subject.span,
  };
};

/** A plain round hole that belongs to no component: fixings, dowels, mount holes. */
export const roundCutOut = (
  owner: string,
  at: Point,
  options: {
    readonly diameter: number;
    readonly purpose: CutOutPurpose;
    readonly layer: string;
    readonly span: Span;
    readonly gauge: Gauge | null;
  },
): CutOut =>
  contourCutOut(owner, { ...options, centre: at, contour: circle(at, options.diameter / 2) });

/** Any other hole that belongs to no component. */
export const contourCutOut = (
  owner: string,
  options: {
    readonly centre: Point;
    readonly contour: Contour;
    readonly purpose: CutOutPurpose;
    readonly layer: string;
    readonly span: Span;
    readonly gauge: Gauge | null;
  },
): CutOut => ({
  id: `${owner}/${options.purpose}@${options.layer}`,
  owner,
  purpose: options.purpose,
  layer: options.layer,
  centre: options.centre,
  contour: options.contour,
  gauge: options.gauge,
  asCut: false,
  span: options.span,
});

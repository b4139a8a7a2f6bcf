// Holes that belong to no component: mount holes, fixings, dowels and windows, through every layer that they concern.

import type { Mount } from "../catalogue/mount.ts";
import type { Shape } from "../catalogue/shape.ts";
import { shapeContour, shapeSize } from "../catalogue/shape-contour.ts";
import type { MarkingDesign } from "../design/panel-design.ts";
import type { Span } from "../diagnostics/finding.ts";
import { difference } from "../geometry/boolean.ts";
import { containsContour } from "../geometry/containment.ts";
import { type Contour, circle, type Point } from "../geometry/contour.ts";
import { type Extent, extent } from "../geometry/extent.ts";
import { degrees, type Mm, mm } from "../geometry/quantity.ts";
import { rectangle, roundedRectangle, slotContour } from "../geometry/shapes.ts";
import { placedContour, placement } from "../geometry/transform.ts";
import { contourCutOut, roundCutOut } from "./cut-outs.ts";
import type { CutOut, Gauge, MountHole, PlacedFixing } from "./panel-layout.ts";
import { type BareLayer, lastRigidSheet } from "./stack.ts";

/** Running fit of a dowel in its hole, on the diameter: common practice for a removable pin. */
export const DOWEL_FIT = 0.1;
/** The slotted dowel hole is this much longer than wide: it takes up the spread of hole distances. */
export const DOWEL_SLOT = 1;
/** A mount hole in acrylic is slotted by this much in one column, for 0.2 mm of growth over 20 K and the cutter's spread. */
export const MOUNT_SLOT = 0.4;

export interface MountOptions {
  readonly mount: Mount;
  readonly span: Span;
  /** Diameter of the stud's body or the screw's thread. */
  readonly fastenerSize: Mm;
}

/** Mount holes in the last rigid sheet, and room for the fasteners' heads in the sheets before it where that room is a hole. */
export const mountCutOuts = (
  holes: readonly MountHole[],
  options: MountOptions & { readonly layers: readonly BareLayer[]; readonly outline: Contour },
): readonly CutOut[] => {
  const { mount, layers, span } = options;
  const held = lastRigidSheet(layers);
  return layers
    .filter((layer) => layer.kind === "sheet" && layer.index <= held)
    .flatMap((layer) =>
      holes.flatMap((hole): readonly CutOut[] => {
        if (!isHeadRoom(layer, mount, held)) return [fastenerHole(hole, layer, options)];
        const room = circle(hole.at, mount.headClearance / 2);
        if (!containsContour(options.outline, room)) return [];
        const of = { purpose: "mount" as const, layer: layer.id, span, gauge: null };
        return [contourCutOut(hole.id, { ...of, centre: hole.at, contour: room })];
      }),
    );
};

const isHeadRoom = (layer: BareLayer, mount: Mount, held: number): boolean =>
  layer.index < held && mount.headClearance > 0;

/**
 * A layer's outline. Where a head's room reaches the edge it is a notch, open to the edge: a circle there would leave
 * slivers at the corners.
 */
export const layerOutline = (
  layer: BareLayer,
  holes: readonly MountHole[],
  options: {
    readonly mount: Mount;
    readonly layers: readonly BareLayer[];
    readonly outline: Contour;
    readonly nominal: Extent;
  },
): Contour => {
  const { mount, layers, outline, nominal } = options;
  if (layer.kind !== "sheet" || !isHeadRoom(layer, mount, lastRigidSheet(layers))) return outline;
  const notches = holes
    .map((hole) => ({ hole, room: circle(hole.at, mount.headClearance / 2) }))
    .filter(({ room }) => !containsContour(outline, room))
    .flatMap(({ hole, room }) => [room, ...openToEdge(hole.at, mount.headClearance / 2, nominal)]);
  if (notches.length === 0) return outline;
  const left = difference([{ outline, holes: [] }], notches);
  return left[0]?.outline ?? outline;
};

/** Rectangles that open a round room to each edge that it crosses, and to the corner between two such edges. */
const openToEdge = (at: Point, radius: number, nominal: Extent): readonly Contour[] => {
  const west = at.x - radius < nominal.minX + EDGE_BEYOND ? nominal.minX - EDGE_BEYOND : null;
  const east = at.x + radius > nominal.maxX - EDGE_BEYOND ? nominal.maxX + EDGE_BEYOND : null;
  const south = at.y - radius < nominal.minY + EDGE_BEYOND ? nominal.minY - EDGE_BEYOND : null;
  const north = at.y + radius > nominal.maxY - EDGE_BEYOND ? nominal.maxY + EDGE_BEYOND : null;
  const side = west ?? east;
  const end = south ?? north;
  const across =
    side === null
      ? []
      : [rectangle(ordered(at.x, side, { low: at.y - radius, high: at.y + radius }))];
  const along =
    end === null
      ? []
      : [rectangle(ordered(at.x - radius, at.x + radius, { low: at.y, high: end }))];
  const corner =
    side === null || end === null ? [] : [rectangle(ordered(at.x, side, { low: at.y, high: end }))];
  return [...across, ...along, ...corner];
};

/** A notch runs this far past the nominal edge: more than any undersize. */
const EDGE_BEYOND = 1;

const ordered = (
  from: number,
  to: number,
  along: { readonly low: number; readonly high: number },
): Extent =>
  extent(
    Math.min(from, to),
    Math.min(along.low, along.high),
    Math.max(from, to),
    Math.max(along.low, along.high),
  );

const fastenerHole = (hole: MountHole, layer: BareLayer, options: MountOptions): CutOut => {
  const { mount, span, fastenerSize } = options;
  const shape = mountHoleShape(mount, layer, hole);
  const contour = placedContour(shapeContour(shape), placement(hole.at.x, hole.at.y));
  const gauge = gaugeOf(hole.at, {
    what: `${mount.fastener} through ${layer.id}`,
    shape,
    go: fastenerSize,
  });
  return contourCutOut(hole.id, {
    centre: hole.at,
    contour,
    purpose: "mount",
    layer: layer.id,
    span,
    gauge,
  });
};

const isAcrylic = (layer: BareLayer): boolean => layer.material?.startsWith("acrylic") ?? false;

const mountHoleShape = (mount: Mount, layer: BareLayer, hole: MountHole): Shape => {
  if (mount.holes.kind !== "columns" || !isAcrylic(layer)) return mount.holes.hole;
  const { inAcrylic, slottedColumn } = mount.holes;
  if (hole.column !== slottedColumn) return inAcrylic;
  const width = shapeSize(inAcrylic);
  return { kind: "slot", length: mm(width + MOUNT_SLOT), width, clock: degrees(90) };
};

const gaugeOf = (
  at: Point,
  options: { readonly what: string; readonly shape: Shape; readonly go: Mm },
): Gauge => ({
  what: options.what,
  go: circle(at, options.go / 2),
  noGo: null,
  goSize: options.go,
  finishedSize: shapeSize(options.shape),
});

/** Screws and dowels run through every sheet. */
export const fixingCutOuts = (
  fixings: readonly PlacedFixing[],
  layers: readonly BareLayer[],
): readonly CutOut[] =>
  layers
    .filter((layer) => layer.kind === "sheet")
    .flatMap((layer) => fixings.map((fixing) => fixingCutOut(fixing, layer)));

const fixingCutOut = (fixing: PlacedFixing, layer: BareLayer): CutOut => {
  const options = { layer: layer.id, span: fixing.span };
  if (fixing.kind === "screw")
    return roundCutOut(fixing.id, fixing.at, {
      ...options,
      diameter: fixing.diameter,
      purpose: "fixing",
      gauge: null,
    });
  const width = fixing.diameter + DOWEL_FIT;
  const gauge: Gauge = {
    what: `dowel through ${layer.id}`,
    go: circle(fixing.at, fixing.diameter / 2),
    noGo: mm(fixing.diameter + 0.3),
    goSize: fixing.diameter,
    finishedSize: mm(width),
  };
  if (fixing.kind === "dowel-round")
    return roundCutOut(fixing.id, fixing.at, {
      ...options,
      diameter: width,
      purpose: "dowel",
      gauge,
    });
  const slot = slotContour(fixing.at, {
    length: mm(width + DOWEL_SLOT),
    width: mm(width),
    turn: degrees(0),
  });
  return contourCutOut(fixing.id, {
    ...options,
    centre: fixing.at,
    contour: slot,
    purpose: "dowel",
    gauge,
  });
};

/** A window written as a marking: through the layers named, or through every opaque sheet. */
export const windowCutOuts = (
  window: MarkingDesign & { readonly kind: "window" },
  at: Point,
  layers: readonly BareLayer[],
): readonly CutOut[] =>
  layers
    .filter((layer) => layer.kind === "sheet" && isWindowed(layer, window.layers))
    .map((layer) => {
      const box = extent(
        at.x - window.width / 2,
        at.y - window.height / 2,
        at.x + window.width / 2,
        at.y + window.height / 2,
      );
      const contour = roundedRectangle(box, window.corner);
      return contourCutOut(window.id, {
        centre: at,
        contour,
        purpose: "window",
        layer: layer.id,
        span: window.written.span,
        gauge: null,
      });
    });

const isWindowed = (layer: BareLayer, named: readonly string[]): boolean =>
  named.length === 0 ? layer.stock?.light === "opaque" : named.includes(layer.id);

// Holes that belong to no component: mount holes, fixings and dowels, through every layer that they concern.

import type { Mount } from "../catalogue/mount.ts";
import type { Shape } from "../catalogue/shape.ts";
import { shapeContour, shapeSize } from "../catalogue/shape-contour.ts";
import type { Span } from "../diagnostics/finding.ts";
import { containsContour } from "../geometry/containment.ts";
import { type Contour, circle, type Point } from "../geometry/contour.ts";
import { type Degrees, degrees, type Mm, mm } from "../geometry/quantity.ts";
import { slotContour } from "../geometry/shapes.ts";
import { placedContour, placement } from "../geometry/transform.ts";
import { arcTangent2, toDegrees } from "../geometry/trigonometry.ts";
import { contourCutOut, roundCutOut } from "./cut-outs.ts";
import type { CutOut, Gauge, MountHole, PlacedFixing } from "./panel-layout.ts";
import { type BareLayer, lastRigidSheet } from "./stack.ts";

/** Running fit of a dowel in its hole, on the diameter: common practice for a removable pin. */
export const DOWEL_FIT = 0.1;
/** The slotted dowel hole is this much longer than wide: it takes up the spread of hole distances. */
export const DOWEL_SLOT = 1;
/** A mount hole in acrylic is slotted by this much in one column, for 0.2 mm of growth over 20 K and the cutter's spread. */
const MOUNT_SLOT = 0.4;

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

/** A sheet in front of the one that is held opens for the fasteners' heads. */
export const isHeadRoom = (layer: BareLayer, mount: Mount, held: number): boolean =>
  layer.index < held && mount.headClearance > 0;

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
): readonly CutOut[] => {
  const turn = slotTurn(fixings);
  return layers
    .filter((layer) => layer.kind === "sheet")
    .flatMap((layer) => fixings.map((fixing) => fixingCutOut(fixing, layer, turn)));
};

/** The slotted dowel gives along the line to the round one, and holds across it. */
const slotTurn = (fixings: readonly PlacedFixing[]): Degrees => {
  const round = fixings.find(({ kind }) => kind === "dowel-round");
  const slotted = fixings.find(({ kind }) => kind === "dowel-slotted");
  if (round === undefined || slotted === undefined) return degrees(0);
  return toDegrees(arcTangent2(slotted.at.y - round.at.y, slotted.at.x - round.at.x));
};

const fixingCutOut = (fixing: PlacedFixing, layer: BareLayer, slotAlong: Degrees): CutOut => {
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
    turn: slotAlong,
  });
  return contourCutOut(fixing.id, {
    ...options,
    centre: fixing.at,
    contour: slot,
    purpose: "dowel",
    gauge,
  });
};
